// SPDX-License-Identifier: GPL-3.0-or-later
// What holds of every level and margin, and what is refused. The worked values stand in tests/reference/radio.cpp.
#include "core/measure/radiolevel.h"

#include "tests/measure/refusal.h"

using namespace proofwalk;
using namespace proofwalk::measure;
using proofwalk::tests::hostile;
using proofwalk::tests::refused;

class TestRadioLevel : public QObject {
    Q_OBJECT

private slots:
    void unitsThereAndBack()
    {
        for (const double level_dbm : {-120.0, -60.0, 0.0, 30.0})
            QVERIFY(std::fabs(dbmOfDbuv(dbuvOfDbm(level_dbm).value()).value() - level_dbm) < 1e-12);
        QCOMPARE(microvoltsOfDbuv(0).value(), 1.0);
        for (const double level_dbuv : {-100.0, 7.0, 120.0})
            QVERIFY(std::fabs(dbuvOfMicrovolts(microvoltsOfDbuv(level_dbuv).value()).value() - level_dbuv) < 1e-9);
        QVERIFY(std::fabs(microvoltsOfDbuv(40).value() - 100) < 1e-9);
        // 0 dBm is 1 mW: in 50 ohm sqrt(0.001 x 50) V = 0.223607 V.
        QVERIFY(std::fabs(microvoltsOfDbuv(dbuvOfDbm(0).value()).value() - 223606.8) < 0.1);
    }
    void lossGrowsWithDistanceAndFrequency()
    {
        const double one = freeSpaceLoss_db(868, 10).value();
        QVERIFY(std::fabs(freeSpaceLoss_db(868, 100).value() - one - 20) < 1e-9);
        QVERIFY(std::fabs(freeSpaceLoss_db(8680, 10).value() - one - 20) < 1e-9);
        // Nearer than a wavelength (0.345 m) it would be a gain.
        QCOMPARE(refused(freeSpaceLoss_db(868, 0.3)), std::string("measure.out-of-range distance_m"));
    }
    // Field and loss are one law: what an isotropic antenna takes out of the field is eirp - loss.
    void fieldFallsAsTheLossGrows()
    {
        const double at10 = freeSpaceField_dbuv(14, 10).value();
        QVERIFY(std::fabs(freeSpaceField_dbuv(14, 20).value() - at10 + 20 * std::log10(2)) < 1e-9);
        QVERIFY(std::fabs(freeSpaceField_dbuv(20, 10).value() - at10 - 6) < 1e-9);
        QVERIFY(eirpOfErp_dbm(0).value() > 2.14 && eirpOfErp_dbm(0).value() < 2.15);
    }
    void theLesserMarginCounts()
    {
        const auto quiet = measuredMargin({-70, -105, -120, 6}).value();
        QVERIFY(!quiet.noiseLimits);
        QCOMPARE(quiet.margin_db, 35.0);
        const auto noisy = measuredMargin({-70, -105, -90, 6}).value();
        QVERIFY(noisy.noiseLimits);
        QCOMPARE(noisy.margin_db, 14.0);
        const auto link = linkMargin({10, 2, 90, -105, 20}).value();
        QCOMPARE(link.margin_db, 27.0);
        QCOMPARE(link.spare_db, 7.0);
    }
    // The margin holds what it promises: outage 1 - exp(-1 / M).
    void fading()
    {
        double before = 0;
        for (const double availability : {0.6, 0.9, 0.99, 0.9999}) {
            const double margin_db = rayleighMargin_db(availability).value();
            QVERIFY(margin_db > before);
            QVERIFY(std::fabs(std::exp(-1 / std::pow(10, margin_db / 10)) - availability) < 1e-12);
            before = margin_db;
        }
        QCOMPARE(shadowingMargin_db(0.5, 8).value(), 0.0);
        QVERIFY(std::fabs(shadowingMargin_db(0.9, 16).value() - 2 * shadowingMargin_db(0.9, 8).value()) < 1e-12);
        // The rule of thumb covers 90 and 99 % (facts beside radio-12).
        QVERIFY(rayleighMargin_db(0.9).value() < leastLinkMargin_db);
        QVERIFY(rayleighMargin_db(0.99).value() < wishedLinkMargin_db);
    }
    void meansAndRange()
    {
        QVERIFY(std::fabs(meanPower_dbm(std::vector<double>{-70, -70}).value() + 70) < 1e-12);
        QVERIFY(meanPower_dbm(std::vector<double>{-60, -80}).value() > -70);
        QCOMPARE(rangeFactor(0, 28).value(), 1.0);
        QVERIFY(std::fabs(rangeFactor(20, 20).value() - 0.1) < 1e-12);
        QVERIFY(rangeFactor(10, 33).value() > rangeFactor(10, 20).value());
    }
    void hostileNumbers()
    {
        for (const double bad : hostile({.huge = true})) {
            QCOMPARE(refused(dbuvOfDbm(bad)), std::string("measure.out-of-range level_dbm"));
            QCOMPARE(refused(dbmOfDbuv(bad)), std::string("measure.out-of-range level_dbuv"));
            QCOMPARE(refused(microvoltsOfDbuv(bad)), std::string("measure.out-of-range level_dbuv"));
            QCOMPARE(refused(eirpOfErp_dbm(bad)), std::string("measure.out-of-range erp_dbm"));
            QCOMPARE(refused(freeSpaceField_dbuv(bad, 1)), std::string("measure.out-of-range eirp_dbm"));
            QCOMPARE(refused(linkMargin({bad, 0, 90, -105, 10})), std::string("measure.out-of-range eirp_dbm"));
            QCOMPARE(refused(linkMargin({0, bad, 90, -105, 10})), std::string("measure.out-of-range receive_gain_dbi"));
            QCOMPARE(refused(linkMargin({0, 0, 90, bad, 10})), std::string("measure.out-of-range sensitivity_dbm"));
            QCOMPARE(refused(measuredMargin({bad, -105, -120, 6})), std::string("measure.out-of-range received_dbm"));
            QCOMPARE(refused(measuredMargin({-70, -105, bad, 6})), std::string("measure.out-of-range noise_dbm"));
            QCOMPARE(refused(meanPower_dbm(std::vector<double>{bad})), std::string("measure.out-of-range levels_dbm"));
        }
        for (const double bad : hostile({.negative = true, .huge = true})) {
            QCOMPARE(refused(linkMargin({0, 0, bad, -105, 10})), std::string("measure.out-of-range loss_db"));
            QCOMPARE(refused(linkMargin({0, 0, 90, -105, bad})), std::string("measure.out-of-range demanded_db"));
            QCOMPARE(refused(freeSpaceLoss_db(bad, 10)), std::string("measure.out-of-range frequency_mhz"));
            QCOMPARE(refused(freeSpaceLoss_db(868, bad)), std::string("measure.out-of-range distance_m"));
            QCOMPARE(refused(dbuvOfMicrovolts(bad)), std::string("measure.out-of-range level_uv"));
            QCOMPARE(refused(rayleighMargin_db(bad)), std::string("measure.out-of-range availability"));
            QCOMPARE(refused(shadowingMargin_db(bad, 8)), std::string("measure.out-of-range share"));
            QCOMPARE(refused(shadowingMargin_db(0.9, bad)), std::string("measure.out-of-range deviation_db"));
            QCOMPARE(refused(rangeFactor(bad, 20)), std::string("measure.out-of-range less_db"));
            QCOMPARE(refused(rangeFactor(1, bad)), std::string("measure.out-of-range decade_loss_db"));
        }
        QCOMPARE(refused(meanPower_dbm({})), std::string("measure.levels-missing"));
    }
};

QTEST_GUILESS_MAIN(TestRadioLevel)
#include "radiolevel.moc"
