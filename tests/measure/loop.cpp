// SPDX-License-Identifier: GPL-3.0-or-later
// Every wiring in every state, by Ohm's law worked by hand; what each state means on each wiring is common practice.
#include "core/measure/loop.h"

#include <QtTest>

#include <limits>

using namespace proofwalk;
using measure::LoopState;
using measure::LoopWiring;

namespace {

constexpr double unbounded = -1;

std::string codeOf(const LoopWiring& wiring, LoopState state = LoopState::closed)
{
    const auto window = measure::loopWindow(wiring, state);
    return window ? "" : window.error().code;
}

std::string inputOf(const LoopWiring& wiring)
{
    const auto window = measure::loopWindow(wiring, LoopState::closed);
    return window ? "" : std::get<std::string>(window.error().arguments.at(0).value);
}

constexpr LoopWiring bare{.resistors = 0, .cable_ohm_max = 12};
constexpr LoopWiring single{.resistors = 1, .eol_ohm = 4700, .tolerance_pct = 1, .cable_ohm_max = 12};

} // namespace

class TestLoop : public QObject {
    Q_OBJECT

private slots:
    void windows_data()
    {
        QTest::addColumn<int>("resistors");
        QTest::addColumn<bool>("fireStyle");
        QTest::addColumn<bool>("restClosed");
        QTest::addColumn<int>("state");
        QTest::addColumn<double>("lower");
        QTest::addColumn<double>("upper");
        const auto row = [](const char* name, int resistors, bool fire, bool restClosed, LoopState state, double lower,
                            double upper) {
            QTest::newRow(name) << resistors << fire << restClosed << static_cast<int>(state) << lower << upper;
        };
        using enum LoopState;
        // 4700 and 2200 ohm +-10 %, cable to 12 ohm.
        row("bare, closed", 0, false, true, closed, 0, 12);
        row("bare, alarm", 0, false, true, alarm, 12, unbounded);
        row("bare, cut", 0, false, true, open, 12, unbounded);
        row("bare, short", 0, false, true, shorted, 0, 12);
        row("bare resting open, normal", 0, false, false, closed, 12, unbounded);
        row("bare resting open, alarm", 0, false, false, alarm, 0, 12);
        row("single, closed", 1, false, true, closed, 4230, 5182);
        row("single, alarm", 1, false, true, alarm, 5182, unbounded);
        row("single, cut", 1, false, true, open, 5182, unbounded);
        row("single, short", 1, false, true, shorted, 0, 12);
        row("single across, closed", 1, false, false, closed, 4230, 5182);
        row("single across, alarm", 1, false, false, alarm, 0, 12);
        row("single across, cut", 1, false, false, open, 5182, unbounded);
        row("two, closed", 2, false, true, closed, 4230, 5182);
        row("two, alarm", 2, false, true, alarm, 6210, 7602);
        row("two, cut", 2, false, true, open, 7602, unbounded);
        row("two, short", 2, false, true, shorted, 0, 12);
        row("fire, closed", 2, true, false, closed, 4230, 5182);
        // 4700 x 2200 / 6900 = 1498.5507 ohm; each end scales with the tolerance: 1348.6957, 1648.4058 + 12.
        row("fire, alarm", 2, true, false, alarm, 1348.695652173913, 1660.405797101449);
        row("fire, cut", 2, true, false, open, 5182, unbounded);
        row("fire, short", 2, true, false, shorted, 0, 12);
    }
    void windows()
    {
        QFETCH(int, resistors);
        QFETCH(bool, fireStyle);
        QFETCH(bool, restClosed);
        QFETCH(int, state);
        QFETCH(double, lower);
        QFETCH(double, upper);
        const LoopWiring wiring{resistors, fireStyle, restClosed, 4700, 2200, 10, 12};
        const auto window = measure::loopWindow(wiring, static_cast<LoopState>(state)).value();
        QVERIFY(window.lower_ohm.has_value());
        QVERIFY(std::fabs(*window.lower_ohm - lower) < 1e-9);
        QCOMPARE(window.upper_ohm.has_value(), upper != unbounded);
        if (window.upper_ohm) QVERIFY(std::fabs(*window.upper_ohm - upper) < 1e-9);
    }

    // The table's own remarks: which states look alike on which wiring, with a perfect meter.
    void whatCannotBeToldApart()
    {
        using enum LoopState;
        using Pairs = std::vector<std::pair<LoopState, LoopState>>;
        QVERIFY(measure::statesNotToldApart(bare, 0).value() == (Pairs{{closed, shorted}, {alarm, open}}));
        QVERIFY(measure::statesNotToldApart(single, 0).value() == (Pairs{{alarm, open}}));
        LoopWiring across = single;
        across.restClosed = false;
        QVERIFY(measure::statesNotToldApart(across, 0).value() == (Pairs{{alarm, shorted}}));
        LoopWiring two = single;
        two.resistors = 2;
        two.alarm_ohm = 2200;
        QVERIFY(measure::statesNotToldApart(two, 0).value().empty());
    }
    void aCoarseMeterTellsLessApart()
    {
        const LoopWiring fire{2, true, false, 3900, 47, 1, 15};
        QVERIFY(measure::statesNotToldApart(fire, 0).value().empty());
        QVERIFY(!measure::statesNotToldApart(fire, 20).value().empty());
    }
    void unknownWirings()
    {
        QCOMPARE(codeOf({2, false, false, 4700, 2200, 1, 0}), std::string("measure.loop-wiring"));
        QCOMPARE(codeOf({1, true, false, 4700, 0, 1, 0}), std::string("measure.loop-wiring"));
        QCOMPARE(codeOf({2, true, true, 4700, 680, 1, 0}), std::string("measure.loop-wiring"));
        QCOMPARE(codeOf({3, false, true, 4700, 2200, 1, 0}), std::string("measure.out-of-range"));
        QCOMPARE(codeOf({-1, false, true, 0, 0, 0, 0}), std::string("measure.out-of-range"));
    }
    void badInputIsNamed()
    {
        constexpr double nan = std::numeric_limits<double>::quiet_NaN();
        constexpr double infinite = std::numeric_limits<double>::infinity();
        QCOMPARE(inputOf({1, false, true, 0, 0, 1, 0}), std::string("eol_ohm"));
        QCOMPARE(inputOf({1, false, true, infinite, 0, 1, 0}), std::string("eol_ohm"));
        QCOMPARE(inputOf({2, false, true, 4700, -1, 1, 0}), std::string("alarm_ohm"));
        QCOMPARE(inputOf({1, false, true, 4700, 0, 100, 0}), std::string("tolerance_pct"));
        QCOMPARE(inputOf({1, false, true, 4700, 0, nan, 0}), std::string("tolerance_pct"));
        QCOMPARE(inputOf({1, false, true, 4700, 0, 1, -0.1}), std::string("cable_ohm_max"));
        QCOMPARE(inputOf({1, false, true, 1e308, 0, 1, 0}), std::string("eol_ohm"));
        QCOMPARE(inputOf({2, false, true, 4700, 1e308, 1, 0}), std::string("alarm_ohm"));
        QCOMPARE(inputOf({1, false, true, 4700, 0, 1, 1e308}), std::string("cable_ohm_max"));
        QCOMPARE(measure::statesNotToldApart(bare, -1).error().code, std::string("measure.out-of-range"));
    }
};

QTEST_GUILESS_MAIN(TestLoop)
#include "loop.moc"
