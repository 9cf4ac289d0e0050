// SPDX-License-Identifier: GPL-3.0-or-later
// Windows of states and the panel's bands, by Ohm's law worked by hand.
#include "core/measure/loopstates.h"
#include "core/measure/networktext.h"

#include <QtTest>

#include <cmath>
#include <limits>

using namespace proofwalk;
using measure::NetworkState;
using measure::PanelBand;

namespace {

measure::Network made(std::string_view text, double tolerance_pct = 1)
{
    return measure::readNetwork(text, tolerance_pct).value();
}

} // namespace

class TestLoopStates : public QObject {
    Q_OBJECT

private slots:
    void everySetOfAFewContacts()
    {
        const auto two = measure::statesOf(made("cable=12 + a:nc + b:nc + eol=2200"));
        QCOMPARE(two.size(), std::size_t{4 + 2}); // none, a, b, both; cut, shorted
        const auto six = measure::statesOf(made("a:nc + b:nc + c:nc + d:nc + e:nc + f:nc + eol=2200"));
        QCOMPARE(six.size(), std::size_t{1 + 6 + 1 + 2});
    }
    // Two zones on one pair: 1 kilohm beside one contact, 2.2 kilohms beside the other, 4.7 at the end; exact.
    void twoZonesOnOnePair()
    {
        const auto network = made("cable=10..10 + (a:nc | ra=1000) + (b:nc | rb=2200) + eol=4700", 0);
        const auto a = measure::partBit(*network.find("a")), b = measure::partBit(*network.find("b"));
        const std::pair<measure::Parts, double> wanted[]{{0, 4710}, {a, 5710}, {b, 6910}, {a | b, 7910}};
        for (const auto& [acted, ohm] : wanted) {
            const auto window = measure::windowOf(network, {.acted = acted});
            QVERIFY(std::fabs(*window.lower_ohm - ohm) < 1e-9 && std::fabs(*window.upper_ohm - ohm) < 1e-9);
        }
        const auto states = measure::statesOf(network);
        QVERIFY(measure::statesAlike(network, states, 400).value().empty());
        QVERIFY(!measure::statesAlike(network, states, 501).value().empty()); // 5710 - 4710 = 1000 = 2 x 500
    }
    void cutReadsNoLessThanAWholeLoop()
    {
        const auto network = made("cable=12 + (alarm:nc | zone=4700) + eol=2200", 10);
        const auto cut = measure::windowOf(network, {.pair = NetworkState::Pair::cut});
        QVERIFY(std::fabs(*cut.lower_ohm - (6900 * 1.1 + 12)) < 1e-9);
        QVERIFY(!cut.upper_ohm);
        const auto shorted = measure::windowOf(network, {.pair = NetworkState::Pair::shorted});
        QCOMPARE(*shorted.lower_ohm, 0.0);
        QCOMPARE(*shorted.upper_ohm, 12.0);
    }
    void alarmAndCutOfOneResistor()
    {
        const auto network = made("alarm:nc + eol=4700");
        const auto states = measure::statesOf(network);
        const auto alike = measure::statesAlike(network, states, 0).value();
        QCOMPARE(alike.size(), std::size_t{1});
        QCOMPARE(states[alike[0].a].acted, measure::partBit(0));
        QCOMPARE(states[alike[0].b].pair, NetworkState::Pair::cut);
    }
    // Two 1 % resistors of 4700: each alone 47, together 66.468 instead of 94 ohm.
    void independentPartsSpreadLess()
    {
        const auto network = made("cable=40 + (alarm:nc | zone=4700) + eol=4700");
        const NetworkState alarm{.acted = measure::partBit(*network.find("alarm"))};
        const auto worst = measure::windowOf(network, alarm);
        const auto likely = measure::windowOf(network, alarm, measure::Spread::rootSumSquares);
        QVERIFY(std::fabs(*worst.upper_ohm - *worst.lower_ohm - (188 + 40)) < 1e-9);
        QVERIFY(std::fabs(*likely.upper_ohm - *likely.lower_ohm - (2 * std::sqrt(2.0) * 47 + 40)) < 1e-9);
        QVERIFY(*likely.lower_ohm > *worst.lower_ohm && *likely.upper_ohm < *worst.upper_ohm);
    }
    void panelBands()
    {
        const auto network = made("cable=40 + tamper:nc + (alarm:nc | zone=4700) + eol=4700");
        const std::vector<PanelBand> bands{{"short", 0}, {"normal", 1000}, {"alarm", 7000}, {"cut", 20000}};
        const auto at = [&](NetworkState state, double expanded_ohm = 5) {
            return measure::bandsOfState(network, state, bands, expanded_ohm).value();
        };
        const auto alarm = measure::partBit(*network.find("alarm"));
        QCOMPARE(at({}), std::vector<std::size_t>{1});
        QCOMPARE(at({.acted = alarm}), std::vector<std::size_t>{2});
        QCOMPARE(at({.pair = NetworkState::Pair::cut}), std::vector<std::size_t>{3});
        QCOMPARE(at({.pair = NetworkState::Pair::shorted}), std::vector<std::size_t>{0});
        // 7000 - 4787 = 2213 from normal, 9306 - 7000 = 2306 from alarm.
        QCOMPARE(at({}, 2212), std::vector<std::size_t>{1});
        QCOMPARE(at({}, 2214), (std::vector<std::size_t>{1, 2}));
    }
    void thresholdInTheMiddle()
    {
        QCOMPARE(*measure::thresholdBetween_ohm({4653.0, 4787.0}, {9306.0, 9534.0}), 7046.5);
        QVERIFY(!measure::thresholdBetween_ohm({9900.0, 11000.0}, {9000.0, 12100.0}));
    }
    void refused()
    {
        const auto network = made("eol=4700");
        const std::vector<PanelBand> bands{{"short", 0}, {"normal", 1000}};
        for (const double bad : {-1.0, std::nan(""), std::numeric_limits<double>::infinity()}) {
            QCOMPARE(measure::statesAlike(network, {}, bad).error().code, std::string("measure.out-of-range"));
            QCOMPARE(measure::bandsOfState(network, {}, bands, bad).error().code, std::string("measure.out-of-range"));
        }
        for (const std::vector<PanelBand>& wrong :
             {std::vector<PanelBand>{}, std::vector<PanelBand>{{"normal", 1}},
              std::vector<PanelBand>{{"a", 0}, {"b", 0}}, std::vector<PanelBand>{{"a", 0}, {"b", std::nan("")}}})
            QCOMPARE(measure::bandsOfState(network, {}, wrong, 0).error().code, std::string("measure.bands-order"));
    }
};

QTEST_GUILESS_MAIN(TestLoopStates)
#include "loopstates.moc"
