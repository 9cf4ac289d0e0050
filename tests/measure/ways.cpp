// SPDX-License-Identifier: GPL-3.0-or-later
// Sums by hand; a whole walk through three floors stands in tests/reference/route.cpp.
#include "core/measure/ways.h"

#include <QtTest>

#include <cmath>
#include <limits>

using namespace proofwalk;
using measure::House;
using measure::Place;

namespace {

double time_s(const House& building, const Place& from, const Place& to)
{
    return measure::walkingTime_s(building, from, to).value();
}

} // namespace

class TestWays : public QObject {
    Q_OBJECT

private slots:
    void straightOnOneFloor()
    {
        const House building{{}, {}, 1.0, 20};
        QCOMPARE(time_s(building, {{0, 0}, 2}, {{3, 4}, 2}), 5.0);
    }
    void byTheNearerStair()
    {
        House building{{}, {{{0, 10}}, {{0, 2}}}, 1.0, 20};
        QCOMPARE(time_s(building, {{0, 0}, 0}, {{0, 5}, 3}), 2 + 3 + 3 * 20.0);
        building.stairs[1].highest = 2; // that one does not go so far up
        QCOMPARE(time_s(building, {{0, 0}, 0}, {{0, 5}, 3}), 10 + 5 + 3 * 20.0);
        building.stairs.clear();
        QCOMPARE(measure::walkingTime_s(building, {{0, 0}, 0}, {{0, 5}, 3}).error().code,
                 std::string("measure.no-stair"));
    }
    void outByTheDoor()
    {
        const House building{{{0, {0, 4}}, {0, {10, 4}}}, {}, 1.0, 20};
        QCOMPARE(time_s(building, {{0, 0}, 0, 0}, {{10, 0}, 0, 1}), 4 + 10 + 4.0);
        QCOMPARE(time_s(building, {{0, 0}, 0, 0}, {{3, 4}, 0, 0}), 5.0); // within the room
        QCOMPARE(time_s(building, {{0, 0}, 0, 0}, {{0, 9}, 0, -1}), 4 + 5.0);
    }
    void thereAsBackAndNeverShorterByARoundabout()
    {
        const House building{{{0, {3, 4}}, {1, {8, 2}}}, {{{5, 5}}}, 1.2, 20};
        const std::vector<Place> places{{{0, 0}, 0}, {{4, 1}, 0, 0}, {{9, 1}, 1, 1}, {{2, 7}, 1}, {{7, 7}, 2}};
        const auto times = measure::walkingTimes_s(building, places).value();
        const std::size_t count = places.size();
        for (std::size_t a = 0; a < count; ++a) {
            QCOMPARE(times[a * count + a], 0.0);
            for (std::size_t b = 0; b < count; ++b) {
                QVERIFY(std::fabs(times[a * count + b] - times[b * count + a]) < 1e-9);
                for (std::size_t c = 0; c < count; ++c)
                    if (places[b].room < 0)
                        QVERIFY(times[a * count + c] <= times[a * count + b] + times[b * count + c] + 1e-9);
            }
        }
    }
    void refused()
    {
        for (const double bad : {std::nan(""), std::numeric_limits<double>::infinity(), 1e308, -1e308}) {
            QVERIFY(!measure::walkingTime_s({}, {{bad, 0}, 0}, {{0, 0}, 0}).has_value());
            QVERIFY(!measure::walkingTime_s({{}, {}, bad, 20}, {}, {}).has_value());
            QVERIFY(!measure::walkingTime_s({{}, {}, 1, bad}, {}, {}).has_value());
        }
        QVERIFY(!measure::walkingTime_s({{}, {}, 0, 20}, {}, {}).has_value());
        QVERIFY(!measure::walkingTime_s({}, {{0, 0}, 0, 5}, {}).has_value()); // no such room
        const House building{{{1, {0, 0}}}, {}, 1, 20};
        QVERIFY(!measure::walkingTime_s(building, {{0, 0}, 0, 0}, {}).has_value()); // a room of another floor
    }
};

QTEST_GUILESS_MAIN(TestWays)
#include "ways.moc"
