// SPDX-License-Identifier: GPL-3.0-or-later
// The second way is every order tried, one by one: slow and obvious. PROOFWALK_ROUNDS makes more; the seed is printed.
#include "core/measure/order.h"
#include "tests/measure/errands.h"

#include <QtTest>

#include <cmath>
#include <limits>

using namespace proofwalk;
using errands::Kind;
using measure::Errand;

namespace {

/// The least time by the rules as a person would say them, over all orders. Below zero: none obeys them.
double everyOrder(const Errand& errand)
{
    std::vector<std::size_t> order(errand.stops);
    std::iota(order.begin(), order.end(), std::size_t{0});
    double least = -1;
    std::vector<std::size_t> place(errand.stops);
    do {
        for (std::size_t i = 0; i < order.size(); ++i) place[order[i]] = i;
        bool allowed = true;
        for (const auto& [first, second] : errand.before) allowed = allowed && place[first] < place[second];
        for (const std::size_t stop : errand.last)
            allowed = allowed && place[stop] + errand.last.size() >= errand.stops;
        for (const auto& group : errand.together)
            for (const std::size_t a : group)
                for (const std::size_t b : group)
                    allowed =
                        allowed && (place[a] > place[b] ? place[a] - place[b] : place[b] - place[a]) < group.size();
        double time_s = 0;
        const auto way = [&](std::size_t from, std::size_t to) { return errand.leg_s[from * errand.stops + to]; };
        for (std::size_t i = 1; allowed && i < order.size(); ++i) {
            const bool panel = order[i - 1] != 0 && !errand.panelAfter.empty() && errand.panelAfter[order[i - 1]];
            time_s += panel ? way(order[i - 1], 0) + way(0, order[i]) : way(order[i - 1], order[i]);
            for (const auto& agreed : errand.agreed)
                if (agreed.stop == order[i]) {
                    allowed = allowed && time_s <= agreed.at_s + 1e-9;
                    time_s = std::max(time_s, agreed.at_s);
                }
            if (!errand.stay_s.empty()) time_s += errand.stay_s[order[i]];
        }
        const std::size_t end = order.back();
        if (errand.back || (end != 0 && !errand.panelAfter.empty() && errand.panelAfter[end])) time_s += way(end, 0);
        if (allowed && (least < 0 || time_s < least)) least = time_s;
    } while (std::next_permutation(order.begin() + 1, order.end()));
    return least;
}

Errand three() { return {3, {0, 1, 2, 1, 0, 1, 2, 1, 0}, false, {}, {}, {}, {}, {}, {}}; }

std::string inputOf(const Errand& errand)
{
    const auto checked = measure::checkErrand(errand);
    if (checked) return "accepted";
    return checked.error().arguments.empty() ? checked.error().code
                                             : std::get<std::string>(checked.error().arguments[0].value);
}

} // namespace

class TestOrder : public QObject {
    Q_OBJECT

private slots:
    void asEveryOrderTried()
    {
        const auto rounds = static_cast<std::uint64_t>(std::max(1, qEnvironmentVariable("PROOFWALK_ROUNDS").toInt()));
        const auto first = qEnvironmentVariable("PROOFWALK_SEED", "1").toULongLong();
        qInfo("from seed %llu", first);
        for (std::uint64_t seed = first; seed < first + 24 * rounds; ++seed) {
            const Kind kind{seed % 2 == 0, seed % 3 == 0, seed % 4 == 0, seed % 5 == 0};
            const Errand errand = errands::make(3 + seed % 7, kind, seed);
            const double wanted = everyOrder(errand);
            const auto best = measure::bestOrder(errand);
            if (wanted < 0) {
                QVERIFY(!best.has_value());
                QCOMPARE(best.error().code, std::string("measure.route-none"));
                continue;
            }
            QVERIFY2(best.has_value(), qPrintable(QString::number(seed)));
            QVERIFY2(std::fabs(best->time_s - wanted) < 1e-6, qPrintable(QString::number(seed)));
            QVERIFY(best->exact);
            QCOMPARE(measure::timeOf(errand, best->order).value().time_s, best->time_s);
        }
    }
    // The most that is exact, once against every one of 40 million orders only under PROOFWALK_LONG; else in part.
    void twelveStops()
    {
        const Errand errand = errands::make(13, {true, true, true, false}, 77);
        const auto best = measure::bestOrder(errand).value();
        QCOMPARE(best.order.size(), std::size_t{13});
        QVERIFY(best.time_s <= measure::timeOf(errand, best.order).value().time_s);
        QVERIFY(!measure::bestOrder(errands::make(14, {}, 77)).has_value());
        if (qEnvironmentVariable("PROOFWALK_LONG") == "1") {
            const Errand eleven = errands::make(12, {true, true, true, false}, 78);
            QVERIFY(std::fabs(measure::bestOrder(eleven).value().time_s - everyOrder(eleven)) < 1e-6);
        }
    }
    void waitsForAnAgreedTime()
    {
        Errand errand = three();
        errand.agreed = {{1, 100}};
        const auto best = measure::bestOrder(errand).value();
        QCOMPARE(best.time_s, 100.0); // to 2 and back to 1 while waiting
        QCOMPARE(best.order, (std::vector<std::size_t>{0, 2, 1}));
        QCOMPARE(best.waiting_s, 97.0);
        errand.agreed = {{1, 0.5}};
        QCOMPARE(measure::bestOrder(errand).error().code, std::string("measure.route-none"));
    }
    void byWayOfThePanel()
    {
        Errand errand = three();
        errand.panelAfter = {false, true, true};
        QCOMPARE(measure::bestOrder(errand).value().time_s, 2.0 * (1 + 2)); // there and back, twice
    }
    void saysWhichRuleIsBroken()
    {
        Errand errand = three();
        errand.before = {{2, 1}};
        const auto broken = measure::timeOf(errand, {0, 1, 2});
        QCOMPARE(broken.error().code, std::string("measure.route-breaks"));
        QCOMPARE(std::get<std::string>(broken.error().arguments[0].value), std::string("before"));
        QVERIFY(measure::timeOf(errand, {0, 2, 1}).has_value());
        QCOMPARE(measure::timeOf(errand, {0, 1}).error().code, std::string("measure.route-order"));
        QCOMPARE(measure::timeOf(errand, {0, 1, 1}).error().code, std::string("measure.route-order"));
        QCOMPARE(measure::timeOf(errand, {1, 0, 2}).error().code, std::string("measure.route-order"));
        QCOMPARE(measure::timeOf(errand, {}).error().code, std::string("measure.route-order"));
        errand.before = {{2, 1}, {1, 2}};
        QCOMPARE(measure::checkErrand(errand).error().code, std::string("measure.route-circle"));
    }
    void refusedByName()
    {
        for (const double bad : {std::nan(""), std::numeric_limits<double>::infinity(), -1.0, 1e308}) {
            Errand errand = three();
            errand.leg_s[1] = bad;
            QCOMPARE(inputOf(errand), std::string("leg_s"));
            errand = three();
            errand.stay_s = {0, bad, 0};
            QCOMPARE(inputOf(errand), std::string("stay_s"));
            errand = three();
            errand.agreed = {{1, bad}};
            QCOMPARE(inputOf(errand), std::string("agreed_s"));
        }
        Errand errand = three();
        errand.stops = 0;
        QCOMPARE(inputOf(errand), std::string("stops"));
        errand = three();
        errand.leg_s.pop_back();
        QCOMPARE(inputOf(errand), std::string("leg_s"));
        errand = three();
        errand.before = {{1, 3}};
        QCOMPARE(inputOf(errand), std::string("before"));
        errand = three();
        errand.last = {0};
        QCOMPARE(inputOf(errand), std::string("last"));
        errand = three();
        errand.together = {{1, 2}, {2}};
        QCOMPARE(inputOf(errand), std::string("together"));
        errand.together = {{}};
        QCOMPARE(inputOf(errand), std::string("together"));
        errand = three();
        errand.panelAfter = {true};
        QCOMPARE(inputOf(errand), std::string("panel_after"));
    }
};

QTEST_GUILESS_MAIN(TestOrder)
#include "order.moc"
