// SPDX-License-Identifier: GPL-3.0-or-later
// What holds of every walk, and what is refused. The worked values stand in tests/reference/optics.cpp.
#include "core/measure/motion.h"

#include "tests/measure/refusal.h"

using namespace proofwalk;
using namespace proofwalk::measure;
using proofwalk::tests::hostile;
using proofwalk::tests::refused;

class TestMotion : public QObject {
    Q_OBJECT

private slots:
    void acrossAndAlong()
    {
        double before = -1;
        for (const double angle : {0.0, 15.0, 45.0, 80.0, 90.0}) {
            const auto found = crossing({1.3, 8, angle}).value();
            QVERIFY(std::fabs(std::hypot(found.across_m_per_s, found.along_m_per_s) - 1.3) < 1e-12);
            QVERIFY(found.across_m_per_s > before);
            before = found.across_m_per_s;
        }
        QCOMPARE(crossing({1, 8, 0}).value().across_m_per_s, 0.0);
        QCOMPARE(crossing({1, 8, 90}).value().along_m_per_s, 0.0);
    }
    // Twice as far the zones are twice as wide, and twice as seldom crossed.
    void fartherIsSlower()
    {
        QVERIFY(std::fabs(zonePitch_m(16, 5).value() - 2 * zonePitch_m(8, 5).value()) < 1e-12);
        QVERIFY(
            std::fabs(crossingFrequency_hz({1, 8, 90}, 5).value() - 2 * crossingFrequency_hz({1, 16, 90}, 5).value())
            < 1e-12);
        QCOMPARE(crossingFrequency_hz({0, 8, 90}, 5).value(), 0.0);
    }
    void reach()
    {
        QVERIFY(std::fabs(zoneReach_m(2, 45).value() - 2) < 1e-12);
        QVERIFY(zoneReach_m(2.2, 8, 0.4).value() < zoneReach_m(2.2, 8).value());
        QVERIFY(zoneReach_m(2.2, 10).value() < zoneReach_m(2.2, 8).value());
    }
    void hostileNumbers()
    {
        for (const double bad : hostile({.zero = true, .negative = true, .huge = true})) {
            QCOMPARE(refused(zonePitch_m(bad, 5)), std::string("measure.out-of-range range_m"));
            QCOMPARE(refused(zonePitch_m(8, bad)), std::string("measure.out-of-range pitch_deg"));
            QCOMPARE(refused(crossing({1, bad, 90})), std::string("measure.out-of-range range_m"));
            QCOMPARE(refused(crossingFrequency_hz({1, 8, 90}, bad)), std::string("measure.out-of-range pitch_deg"));
            QCOMPARE(refused(zoneReach_m(bad, 8)), std::string("measure.out-of-range height_m"));
            QCOMPARE(refused(zoneReach_m(2, bad)), std::string("measure.out-of-range tilt_deg"));
        }
        for (const double bad : hostile({.negative = true, .huge = true})) {
            QCOMPARE(refused(crossing({bad, 8, 90})), std::string("measure.out-of-range speed_m_per_s"));
            QCOMPARE(refused(crossing({1, 8, bad})), std::string("measure.out-of-range angle_deg"));
            QCOMPARE(refused(zoneReach_m(2, 8, bad)), std::string("measure.out-of-range target_m"));
        }
        QCOMPARE(refused(zoneReach_m(2, 8, 2)), std::string("measure.out-of-range target_m"));
        QCOMPARE(refused(zoneReach_m(2, 90)), std::string("measure.out-of-range tilt_deg"));
    }
};

QTEST_GUILESS_MAIN(TestMotion)
#include "motion.moc"
