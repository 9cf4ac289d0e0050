// SPDX-License-Identifier: GPL-3.0-or-later
// What holds of every prediction, and what is refused. The worked values stand in tests/reference/radio.cpp.
#include "core/measure/indoor.h"

#include "tests/measure/refusal.h"

using namespace proofwalk;
using namespace proofwalk::measure;
using proofwalk::tests::hostile;
using proofwalk::tests::refused;

class TestIndoor : public QObject {
    Q_OBJECT

private slots:
    void floorsAndDistanceOnlyAddLoss()
    {
        for (const auto building : {Building::residential, Building::office, Building::commercial}) {
            double before = 0;
            for (const int floors : {0, 1, 2, 3}) {
                const double loss_db = indoorLoss_db(building, 2000, 20, floors).value();
                QVERIFY(loss_db > before);
                QVERIFY(indoorLoss_db(building, 2000, 40, floors).value() > loss_db);
                before = loss_db;
            }
        }
    }
    // The law of distance is that of its coefficient: a decade costs N.
    void aDecadeCostsN()
    {
        const double n = indoorCoefficients(Building::office, 868, 0).value().decadeLoss_db;
        const double step_db =
            indoorLoss_db(Building::office, 868, 100, 0).value() - indoorLoss_db(Building::office, 868, 10, 0).value();
        QVERIFY(std::fabs(step_db - n) < 1e-9);
    }
    void outsideTheTablesIsRefused()
    {
        for (const double mhz : {433.92, 700.0, 1500.0, 3000.0, 60000.0})
            QCOMPARE(refused(indoorLoss_db(Building::office, mhz, 10, 0)),
                     std::string("measure.no-coefficients frequency_mhz"));
        QCOMPARE(refused(indoorLoss_db(Building::residential, 868, 10, 0)),
                 std::string("measure.no-coefficients frequency_mhz"));
        QCOMPARE(refused(indoorLoss_db(Building::commercial, 2450, 10, 0)),
                 std::string("measure.no-coefficients frequency_mhz"));
        QCOMPARE(refused(indoorLoss_db(Building::office, 868, 10, 4)), std::string("measure.out-of-range floors"));
        QCOMPARE(refused(indoorLoss_db(Building::office, 868, 10, -1)), std::string("measure.out-of-range floors"));
        QCOMPARE(refused(indoorLoss_db(Building::commercial, 868, 10, 1)), std::string("measure.out-of-range floors"));
        QCOMPARE(refused(indoorLoss_db(Building::office, 2450, 10, 2)), std::string("measure.out-of-range floors"));
        QCOMPARE(refused(indoorLoss_db(Building::office, 868, 1, 0)), std::string("measure.out-of-range distance_m"));
    }
    void predictionKeepsToItsRow()
    {
        const Surroundings* row = surroundings("corridor-not-in-sight");
        QVERIFY(row != nullptr);
        QCOMPARE(refused(indoorPrediction(*row, 0.434, 10)), std::string("measure.out-of-range frequency_ghz"));
        QCOMPARE(refused(indoorPrediction(*row, 0.868, 3)), std::string("measure.out-of-range distance_m"));
        QVERIFY(indoorPrediction(*row, 0.868, 40).value().median_db
                > indoorPrediction(*row, 0.868, 20).value().median_db);
        QVERIFY(surroundings("nowhere") == nullptr);
        // In sight loses less than out of it.
        QVERIFY(indoorPrediction(*surroundings("office-in-sight"), 0.868, 20).value().median_db
                < indoorPrediction(*surroundings("office-not-in-sight"), 0.868, 20).value().median_db);
    }
    // At the median one link in two is worse; two deviations out 2.28 % (standard normal table).
    void howLikelyALoss()
    {
        QCOMPARE(chanceOfSuchLoss({80, 5}, 80).value(), 0.5);
        QVERIFY(std::fabs(chanceOfSuchLoss({80, 5}, 90).value() - 0.02275) < 1e-5);
        QVERIFY(chanceOfSuchLoss({80, 5}, 70).value() > 0.97);
    }
    void hostileNumbers()
    {
        const Surroundings* row = surroundings("office-in-sight");
        for (const double bad : hostile({.zero = true, .negative = true, .huge = true})) {
            QCOMPARE(refused(indoorLoss_db(Building::office, bad, 10, 0)),
                     std::string("measure.out-of-range frequency_mhz"));
            QCOMPARE(refused(indoorLoss_db(Building::office, 868, bad, 0)),
                     std::string("measure.out-of-range distance_m"));
            QCOMPARE(refused(indoorPrediction(*row, bad, 10)), std::string("measure.out-of-range frequency_ghz"));
            QCOMPARE(refused(indoorPrediction(*row, 1, bad)), std::string("measure.out-of-range distance_m"));
            if (bad != 0)
                QCOMPARE(refused(chanceOfSuchLoss({80, 5}, bad)), std::string("measure.out-of-range loss_db"));
        }
        QCOMPARE(refused(chanceOfSuchLoss({80, 0}, 80)), std::string("measure.out-of-range deviation_db"));
    }
};

QTEST_GUILESS_MAIN(TestIndoor)
#include "indoor.moc"
