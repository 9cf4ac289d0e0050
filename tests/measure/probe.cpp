// SPDX-License-Identifier: GPL-3.0-or-later
// What holds of every probe, and what is refused. The worked values stand in tests/reference/temperature.cpp.
#include "core/measure/probe.h"

#include "tests/measure/refusal.h"

using namespace proofwalk;
using namespace proofwalk::measure;
using proofwalk::tests::hostile;
using proofwalk::tests::refused;

class TestProbe : public QObject {
    Q_OBJECT

private slots:
    // Three alike readings of 0.2 °C: nothing spreads, the bath alone is left: 2.00 x 0.1 / sqrt 3.
    void iceBath()
    {
        const auto found = icePointCheck(std::vector<double>{0.2, 0.2, 0.2}, 0.1).value();
        QVERIFY(std::fabs(found.correction_c + 0.2) < 1e-12);
        QVERIFY(std::fabs(found.expanded_c - 0.11547) < 1e-4);
        // What the probe shows in the bath is then zero.
        QVERIFY(std::fabs(correctedTemperature({0.2, found.correction_c, found.expanded_c, 0}).value().value_c)
                < 1e-12);
        const auto spread = icePointCheck(std::vector<double>{0.0, 0.2, 0.4}, 0.1).value();
        QVERIFY(spread.expanded_c > found.expanded_c);
    }
    void partsAddUp()
    {
        QVERIFY(std::fabs(correctedTemperature({5, 0, 0, 0.5}).value().standard_c - 0.288675) < 1e-6);
        QCOMPARE(correctedTemperature({5, 0, 1, 0}).value().standard_c, 0.5);
        QCOMPARE(correctedTemperature({5, 0, 0, 0}).value().standard_c, 0.0);
    }
    void higherBoilsCooler()
    {
        QVERIFY(boilingPoint_c(0.9).value() < boilingPoint_c(1).value());
        QCOMPARE(refused(boilingPoint_c(1.03)), std::string("measure.out-of-range pressure_bar"));
        QCOMPARE(refused(boilingPoint_c(0.3)), std::string("measure.out-of-range pressure_bar"));
    }
    void lagThereAndBack()
    {
        for (const Lag& lag : {Lag{180, -20, 4}, Lag{60, 4, -20}}) {
            double before = -1;
            for (const double share : {0.0, 0.2, 0.5, 0.9, 0.99}) {
                const double threshold_c = lag.from_c + share * (lag.into_c - lag.from_c);
                const double t = timeToThreshold_s(lag, threshold_c).value();
                QVERIFY(t > before);
                QVERIFY(std::fabs(probeAfter_c(lag, t).value() - threshold_c) < 1e-9);
                before = t;
            }
        }
        // One time constant is 63.2 % of the way.
        QVERIFY(std::fabs(probeAfter_c({100, 0, 10}, 100).value() - 6.3212) < 1e-4);
    }
    void neverReached()
    {
        QCOMPARE(refused(timeToThreshold_s({180, -20, 4}, 4)), std::string("measure.never-reached"));
        QCOMPARE(refused(timeToThreshold_s({180, -20, 4}, 5)), std::string("measure.never-reached"));
        QCOMPARE(refused(timeToThreshold_s({180, -20, 4}, -21)), std::string("measure.never-reached"));
        QCOMPARE(refused(timeToThreshold_s({180, 4, 4}, 4)), std::string("measure.never-reached"));
    }
    void hostileNumbers()
    {
        for (const double bad : hostile({.zero = true, .negative = true, .huge = true})) {
            QCOMPARE(refused(icePointCheck(std::vector<double>{0, 0}, bad)),
                     std::string("measure.out-of-range bath_c"));
            QCOMPARE(refused(probeAfter_c({bad, 0, 1}, 1)), std::string("measure.out-of-range time_constant_s"));
            QCOMPARE(refused(boilingPoint_c(bad)), std::string("measure.out-of-range pressure_bar"));
        }
        for (const double bad : hostile({.huge = true})) {
            QCOMPARE(refused(icePointCheck(std::vector<double>{0, bad}, 0.1)),
                     std::string("measure.out-of-range readings_c"));
            QCOMPARE(refused(correctedTemperature({bad, 0, 0, 0})), std::string("measure.out-of-range shown_c"));
            QCOMPARE(refused(correctedTemperature({1, bad, 0, 0})), std::string("measure.out-of-range correction_c"));
            QCOMPARE(refused(correctedTemperature({1, 0, bad, 0})),
                     std::string("measure.out-of-range correction_expanded_c"));
            QCOMPARE(refused(correctedTemperature({1, 0, 0, bad})), std::string("measure.out-of-range half_width_c"));
            QCOMPARE(refused(probeAfter_c({1, bad, 1}, 1)), std::string("measure.out-of-range from_c"));
            QCOMPARE(refused(probeAfter_c({1, 1, bad}, 1)), std::string("measure.out-of-range into_c"));
            QCOMPARE(refused(probeAfter_c({1, 1, 2}, bad)), std::string("measure.out-of-range after_s"));
            QCOMPARE(refused(timeToThreshold_s({1, 1, 2}, bad)), std::string("measure.out-of-range threshold_c"));
            QCOMPARE(refused(celsiusOfFahrenheit(bad)), std::string("measure.out-of-range temperature_f"));
        }
        QCOMPARE(refused(icePointCheck(std::vector<double>{0.1}, 0.1)), std::string("measure.too-few-readings"));
    }
};

QTEST_GUILESS_MAIN(TestProbe)
#include "probe.moc"
