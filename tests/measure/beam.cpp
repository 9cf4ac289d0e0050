// SPDX-License-Identifier: GPL-3.0-or-later
// What holds of every beam, and what is refused. The worked values stand in tests/reference/optics.cpp.
#include "core/measure/beam.h"

#include "tests/measure/refusal.h"

using namespace proofwalk;
using namespace proofwalk::measure;
using proofwalk::tests::hostile;
using proofwalk::tests::refused;

class TestBeam : public QObject {
    Q_OBJECT

private slots:
    // tan 45 degrees is 1.
    void geometry()
    {
        QVERIFY(std::fabs(spotDiameter_m(10, 90).value() - 20) < 1e-12);
        QCOMPARE(spotDiameter_m(10, 0, 0.05).value(), 0.05);
        QVERIFY(std::fabs(aimOffset_m(10, 45).value() - 10) < 1e-12);
        QVERIFY(std::fabs(mirrorOffset_m(10, 22.5).value() - 10) < 1e-12);
        QCOMPARE(mirrorOffset_m(30, 0.25).value(), aimOffset_m(30, 0.5).value()); // a mirror doubles it
        QVERIFY(std::fabs(spotDiameter_m(20, 1.5).value() - 2 * spotDiameter_m(10, 1.5).value()) < 1e-12);
    }
    void losses()
    {
        QCOMPARE(spreadLoss_db(40, 40).value(), 0.0);
        QVERIFY(std::fabs(spreadLoss_db(10, 100).value() + 20) < 1e-12);
        QVERIFY(std::fabs(spreadLoss_db(40, 60).value() + spreadLoss_db(60, 40).value()) < 1e-12);
        QCOMPARE(filterLoss_db(0).value(), 0.0);
        QVERIFY(filterLoss_db(99).value() < filterLoss_db(90).value());
    }
    // Length after length what is left multiplies: per metre taken L times is the whole again.
    void lengthsMultiply()
    {
        for (const double total : {0.0, 10.0, 50.0, 99.0}) {
            const auto found = obscurationPerLength(total, 20).value();
            QVERIFY(std::fabs(100 * (1 - std::pow(1 - found.perMetre_pct / 100, 20)) - total) < 1e-9);
            QVERIFY(std::fabs(found.loss_db_per_m * 20 + filterLoss_db(total).value()) < 1e-9);
            QVERIFY(found.perFoot_pct <= found.perMetre_pct);
        }
    }
    void hostileNumbers()
    {
        for (const double bad : hostile({.zero = true, .negative = true, .huge = true})) {
            QCOMPARE(refused(spotDiameter_m(bad, 1)), std::string("measure.out-of-range length_m"));
            QCOMPARE(refused(aimOffset_m(bad, 1)), std::string("measure.out-of-range length_m"));
            QCOMPARE(refused(spreadLoss_db(bad, 1)), std::string("measure.out-of-range from_m"));
            QCOMPARE(refused(spreadLoss_db(1, bad)), std::string("measure.out-of-range to_m"));
            QCOMPARE(refused(obscurationPerLength(50, bad)), std::string("measure.out-of-range length_m"));
        }
        for (const double bad : hostile({.negative = true, .huge = true})) {
            QCOMPARE(refused(spotDiameter_m(1, bad)), std::string("measure.out-of-range divergence_deg"));
            QCOMPARE(refused(spotDiameter_m(1, 1, bad)), std::string("measure.out-of-range lens_m"));
            QCOMPARE(refused(aimOffset_m(1, bad)), std::string("measure.out-of-range misalignment_deg"));
            QCOMPARE(refused(mirrorOffset_m(1, bad)), std::string("measure.out-of-range tilt_deg"));
            QCOMPARE(refused(filterLoss_db(bad)), std::string("measure.out-of-range obscuration_pct"));
            QCOMPARE(refused(obscurationPerLength(bad, 1)), std::string("measure.out-of-range obscuration_pct"));
        }
        QCOMPARE(refused(filterLoss_db(100)), std::string("measure.out-of-range obscuration_pct"));
    }
};

QTEST_GUILESS_MAIN(TestBeam)
#include "beam.moc"
