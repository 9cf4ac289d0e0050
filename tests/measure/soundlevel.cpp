// SPDX-License-Identifier: GPL-3.0-or-later
// What holds of every level, and what is refused. The worked values stand in tests/reference/sound.cpp.
#include "core/measure/soundlevel.h"

#include "tests/measure/refusal.h"

using namespace proofwalk;
using namespace proofwalk::measure;
using proofwalk::tests::hostile;
using proofwalk::tests::refused;

class TestSoundLevel : public QObject {
    Q_OBJECT

private slots:
    void distanceAndLevelAreInverse()
    {
        const SoundSource sounder{97, 1};
        double before = 1000;
        for (const double distance_m : {0.5, 1.0, 3.0, 40.0, 500.0}) {
            const double level_db = levelAtDistance_db(sounder, distance_m).value();
            QVERIFY(level_db < before);
            QVERIFY(std::fabs(distanceForLevel_m(sounder, level_db).value() / distance_m - 1) < 1e-12);
            // Rated elsewhere on the same line, it is the same sounder.
            QVERIFY(std::fabs(levelAtDistance_db({level_db, distance_m}, 7).value()
                              - levelAtDistance_db(sounder, 7).value())
                    < 1e-12);
            before = level_db;
        }
    }
    void sumAndMean()
    {
        const std::vector<double> ten(10, 60.0);
        QVERIFY(std::fabs(sumOfLevels_db(ten).value() - 70) < 1e-12);
        QVERIFY(std::fabs(meanOfLevels_db(ten).value() - 60) < 1e-12);
        QCOMPARE(sumOfLevels_db(std::vector<double>{42}).value(), 42.0);
        // The order is nothing, and the sum is at least the loudest.
        const double one = sumOfLevels_db(std::vector<double>{80, 60, 40}).value();
        QVERIFY(std::fabs(one - sumOfLevels_db(std::vector<double>{40, 80, 60}).value()) < 1e-12);
        QVERIFY(one > 80 && one < 80.1);
    }
    // Adding the background again gives what was read.
    void backgroundOffAndOn()
    {
        for (const double without_db : {55.0, 60.0, 63.9}) {
            const auto found = withoutBackground(70, without_db, BackgroundMethod::engineering).value();
            QVERIFY(!found.isUpperBound);
            if (found.correction_db > 0)
                QVERIFY(std::fabs(sumOfLevels_db(std::vector<double>{found.signal_db, without_db}).value() - 70)
                        < 1e-9);
        }
    }
    // ISO 3744: none from 15 dB, 1.26 dB at most; ISO 3746: none above 10 dB, 3.02 dB at most.
    void theEndsOfTheMethods()
    {
        const auto taken = [](double difference_db, BackgroundMethod method) {
            return withoutBackground(90, 90 - difference_db, method).value();
        };
        QCOMPARE(taken(15, BackgroundMethod::engineering).correction_db, 0.0);
        QVERIFY(taken(14.9, BackgroundMethod::engineering).correction_db > 0.13);
        QVERIFY(std::fabs(taken(2, BackgroundMethod::engineering).correction_db - 1.2563) < 5e-5);
        QVERIFY(taken(5.9, BackgroundMethod::engineering).isUpperBound);
        QVERIFY(!taken(6, BackgroundMethod::engineering).isUpperBound);
        QCOMPARE(taken(10.1, BackgroundMethod::survey).correction_db, 0.0);
        QVERIFY(taken(10, BackgroundMethod::survey).correction_db > 0.4);
        QVERIFY(std::fabs(taken(1, BackgroundMethod::survey).correction_db - 3.0206) < 5e-5);
        QVERIFY(taken(2.9, BackgroundMethod::survey).isUpperBound);
        QCOMPARE(refused(withoutBackground(60, 60, BackgroundMethod::survey)),
                 std::string("measure.background-louder"));
    }
    void hostileNumbers()
    {
        for (const double bad : hostile({.huge = true})) {
            QCOMPARE(refused(levelAtDistance_db({bad, 1}, 2)), std::string("measure.out-of-range rated_db"));
            QCOMPARE(refused(distanceForLevel_m({90, 1}, bad)), std::string("measure.out-of-range level_db"));
            QCOMPARE(refused(sumOfLevels_db(std::vector<double>{60, bad})),
                     std::string("measure.out-of-range levels_db"));
            QCOMPARE(refused(withoutBackground(bad, 1, BackgroundMethod::survey)),
                     std::string("measure.out-of-range with_db"));
            QCOMPARE(refused(withoutBackground(1, bad, BackgroundMethod::survey)),
                     std::string("measure.out-of-range without_db"));
        }
        for (const double bad : hostile({.zero = true, .negative = true, .huge = true})) {
            QCOMPARE(refused(levelAtDistance_db({90, bad}, 2)), std::string("measure.out-of-range rated_at_m"));
            QCOMPARE(refused(levelAtDistance_db({90, 1}, bad)), std::string("measure.out-of-range distance_m"));
            QCOMPARE(refused(backgroundCorrection_db(bad)), std::string("measure.out-of-range difference_db"));
        }
        QCOMPARE(refused(sumOfLevels_db({})), std::string("measure.levels-missing"));
        QCOMPARE(refused(meanOfLevels_db({})), std::string("measure.levels-missing"));
    }
};

QTEST_GUILESS_MAIN(TestSoundLevel)
#include "soundlevel.moc"
