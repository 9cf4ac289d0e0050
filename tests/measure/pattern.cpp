// SPDX-License-Identifier: GPL-3.0-or-later
// Source: ISO 8201 (as quoted on a public page) and NFPA 720 (10 % from memory); the worked values stand in
// tests/reference/temporal.cpp. Here what must hold for any times, and what must be refused.
#include "core/measure/pattern.h"

#include <QtTest>

#include <cmath>
#include <limits>

using namespace proofwalk;
using measure::Pattern;
using measure::PatternFault;
using measure::Sounding;

namespace {

std::vector<Sounding> cycles(int count, double scale, double later_s = 0)
{
    std::vector<Sounding> all;
    for (int cycle = 0; cycle < count; ++cycle)
        for (int pulse = 0; pulse < 3; ++pulse) {
            const double from_s = later_s + scale * (4.0 * cycle + pulse);
            all.push_back({from_s, from_s + 0.5 * scale});
        }
    return all;
}

Pattern patternOf(const std::vector<Sounding>& soundings) { return measure::sightOfPattern(soundings).value().pattern; }

} // namespace

class TestPattern : public QObject {
    Q_OBJECT

private slots:
    void theSameLater()
    {
        const auto now = measure::sightOfPattern(cycles(3, 1)).value();
        const auto later = measure::sightOfPattern(cycles(3, 1, 17.3)).value();
        QCOMPARE(later.pattern, now.pattern);
        QVERIFY(std::fabs(*later.period_s - *now.period_s) < 1e-9);
        QCOMPARE(later.cyclesWhole, 3);
    }
    void recognisedWithinTwentyPerCentHeldToTen()
    {
        for (const double scale : {0.81, 0.91, 1.0, 1.09, 1.19}) {
            const auto sight = measure::sightOfPattern(cycles(3, scale)).value();
            QCOMPARE(sight.pattern, Pattern::temporalThree);
            QVERIFY(std::fabs(*sight.period_s - 4 * scale) < 1e-9);
            const auto judged = measure::judgeDurations(sight.pattern, sight.times, 0, 0).value();
            QCOMPARE(judged.conform.value(), std::fabs(scale - 1) < 0.1);
        }
        QVERIFY(patternOf(cycles(3, 0.75)) != Pattern::temporalThree);
        QVERIFY(patternOf(cycles(3, 1.25)) != Pattern::temporalThree);
    }
    void oneCycleIsNoPattern() { QCOMPARE(patternOf(cycles(1, 1)), Pattern::pulsed); }
    void nothingHeardIsNone()
    {
        QCOMPARE(patternOf({}), Pattern::none);
        QCOMPARE(patternOf({{1, 2}}), Pattern::none);
    }
    void begunWithinACycle()
    {
        auto soundings = cycles(4, 1);
        soundings.erase(soundings.begin(), soundings.begin() + 2);
        const auto sight = measure::sightOfPattern(soundings).value();
        QCOMPARE(sight.pattern, Pattern::temporalThree);
        QCOMPARE(sight.cyclesWhole, 3);
        QVERIFY(!sight.missingPulse);
        QCOMPARE(sight.explained, 1.0);
    }
    void aStrayKnockIsExtra()
    {
        auto soundings = cycles(4, 1);
        soundings.insert(soundings.begin() + 6, {7.0, 7.1});
        const auto sight = measure::sightOfPattern(soundings).value();
        QVERIFY(sight.extraPulse || sight.pattern != Pattern::temporalThree);
    }
    void nearALimitNothingIsSaid()
    {
        const measure::PatternTimes times{{0.54}, {0.5}, {1.5}};
        QVERIFY(measure::judgeDurations(Pattern::temporalThree, times, 0, 0.005).value().conform.value());
        QVERIFY(!measure::judgeDurations(Pattern::temporalThree, times, 0, 0.02).value().conform.has_value());
        const measure::PatternTimes wrong{{0.6}, {0.5}, {1.5}};
        const auto judged = measure::judgeDurations(Pattern::temporalThree, wrong, 0, 0.02).value();
        QVERIFY(!judged.conform.value());
        QVERIFY(judged.faults == std::vector{PatternFault::pulse});
    }
    void refused_data()
    {
        QTest::addColumn<double>("from_s");
        QTest::addColumn<double>("to_s");
        QTest::newRow("not a number") << std::nan("") << 1.0;
        QTest::newRow("endless") << 1.0 << std::numeric_limits<double>::infinity();
        QTest::newRow("before the beginning") << -1.0 << 1.0;
        QTest::newRow("ends before it begins") << 2.0 << 1.0;
        QTest::newRow("longer than a day") << 1.0 << 1e308;
    }
    void refused()
    {
        QFETCH(double, from_s);
        QFETCH(double, to_s);
        const std::vector<Sounding> soundings{{from_s, to_s}};
        const auto sight = measure::sightOfPattern(soundings);
        QVERIFY(!sight.has_value());
        QCOMPARE(sight.error().code, std::string("measure.out-of-range"));
        const bool early = !(from_s >= 0 && from_s <= 86400);
        QCOMPARE(std::get<std::string>(sight.error().arguments.at(0).value), std::string(early ? "from_s" : "to_s"));
    }
    void refusesOverlap() { QVERIFY(!measure::sightOfPattern(std::vector<Sounding>{{0, 2}, {1, 3}}).has_value()); }
    void refusesDurationsOfNoPattern()
    {
        QVERIFY(!measure::judgeDurations(Pattern::steady, {{1}, {}, {}}, 0, 0).has_value());
        QVERIFY(!measure::judgeDurations(Pattern::temporalThree, {}, 0, 0).has_value());
        QVERIFY(!measure::judgeDurations(Pattern::temporalThree, {{0.5}, {}, {}}, -1, 0).has_value());
        QVERIFY(!measure::judgeDurations(Pattern::temporalThree, {{0.5}, {}, {}}, 0, std::nan("")).has_value());
    }
};

QTEST_GUILESS_MAIN(TestPattern)
#include "pattern.moc"
