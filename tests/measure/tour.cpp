// SPDX-License-Identifier: GPL-3.0-or-later
// Published optima: tests/reference/route.cpp. Here: against a run four times as long (PROOFWALK_LONG=1: a hundred times),
// on buildings of several floors with rules, made with a printed seed (PROOFWALK_SEED).
#include "core/measure/tour.h"
#include "tests/measure/errands.h"

#include <QtTest>

#include <cmath>
#include <thread>

using namespace proofwalk;
using errands::Kind;
using measure::Errand;

class TestTour : public QObject {
    Q_OBJECT

private slots:
    void withinTwoPerCentOfALongRun_data()
    {
        QTest::addColumn<int>("stops");
        QTest::addColumn<int>("kind");
        QTest::newRow("60, plain") << 60 << 0;
        QTest::newRow("60, rules") << 60 << 1;
        QTest::newRow("60, rules, panel, back") << 60 << 2;
        QTest::newRow("60, agreed") << 60 << 3;
        QTest::newRow("120, rules") << 120 << 1;
        if (qEnvironmentVariable("PROOFWALK_LONG") != "1") return;
        QTest::newRow("120, rules, panel, back") << 120 << 2;
        QTest::newRow("200, rules, panel, back") << 200 << 2;
        QTest::newRow("300, agreed") << 300 << 3;
        QTest::newRow("600, plain") << 600 << 0;
        QTest::newRow("600, rules, panel, back") << 600 << 2;
    }
    void withinTwoPerCentOfALongRun()
    {
        QFETCH(int, stops);
        QFETCH(int, kind);
        constexpr Kind kinds[]{{false, false, false, false},
                               {false, true, false, false},
                               {true, true, true, false},
                               {false, false, false, true}};
        const auto seed = qEnvironmentVariable("PROOFWALK_SEED", "5").toULongLong();
        const Errand errand = errands::make(static_cast<std::size_t>(stops), kinds[kind], seed);
        const std::size_t times = qEnvironmentVariable("PROOFWALK_LONG") == "1" ? 100 : 4;
        Result<measure::Route> longRun = failure("", "");
        std::thread other([&] {
            longRun = measure::goodOrder(
                errand, {.seed = seed + 1, .rounds = times * measure::usualRounds(errand.stops, kind != 0)});
        });
        const auto found = measure::goodOrder(errand, {.seed = seed});
        other.join();
        QVERIFY2(found.has_value() && longRun.has_value(), found ? "" : found.error().code.c_str());
        QVERIFY(measure::timeOf(errand, found->order).has_value());
        qInfo("seed %llu: %.1f s, the long run %.1f s, %+.2f %%", seed, found->time_s, longRun->time_s,
              100 * (found->time_s / longRun->time_s - 1));
        QVERIFY(found->time_s <= 1.02 * longRun->time_s);
    }
    void theSameSeedTheSameOrder()
    {
        const Errand errand = errands::make(80, {true, true, true, false}, 3);
        const auto once = measure::goodOrder(errand, {.seed = 9, .rounds = 500}).value();
        QCOMPARE(measure::goodOrder(errand, {.seed = 9, .rounds = 500}).value().order, once.order);
    }
    void everBetterAndEndedWhenAsked()
    {
        const Errand errand = errands::make(100, {false, true, false, false}, 4);
        std::vector<double> told;
        const auto found =
            measure::goodOrder(errand, {.seed = 1, .rounds = 3000, .better = [&](const measure::Route& route) {
                                            told.push_back(route.time_s);
                                            return told.size() < 5;
                                        }});
        QCOMPARE(told.size(), std::size_t{5});
        for (std::size_t i = 1; i < told.size(); ++i) QVERIFY(told[i] < told[i - 1]);
        QCOMPARE(found.value().time_s, told.back());
    }
    void exactWhenFew()
    {
        const Errand errand = errands::make(11, {true, true, false, false}, 6);
        QVERIFY(measure::goodOrder(errand).value().exact);
        QCOMPARE(measure::goodOrder(errand).value().time_s, measure::bestOrder(errand).value().time_s);
    }
    // Twelve exact, thirteen sought: without rules the search finds what every order tried would.
    void whatIsSoughtIsNoWorseThanExactNeighbours()
    {
        const Errand errand = errands::make(40, {}, 8);
        const auto found = measure::goodOrder(errand).value();
        const auto nearest = measure::timeOf(errand, measure::nearestNeighbour(errand)).value();
        QVERIFY(found.time_s < nearest.time_s);
        QVERIFY(!found.exact);
    }
    void stopsAtOnePlace()
    {
        Errand errand{20, std::vector<double>(400, 0), true, {}, {}, {}, {}, {}, {}};
        QCOMPARE(measure::goodOrder(errand).value().time_s, 0.0);
    }
    void whatCannotBeKeptIsSaid()
    {
        Errand errand = errands::make(30, {}, 2);
        errand.agreed = {{7, 0.001}};
        QCOMPARE(measure::goodOrder(errand).error().code, std::string("measure.route-not-found"));
        errand.agreed = {{7, -1}};
        QCOMPARE(measure::goodOrder(errand).error().code, std::string("measure.out-of-range"));
    }
};

QTEST_GUILESS_MAIN(TestTour)
#include "tour.moc"
