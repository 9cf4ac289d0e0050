// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/measure/ways.h"

#include "core/measure/inputs.h"

#include <algorithm>
#include <cmath>
#include <cstdlib>

namespace proofwalk::measure {
namespace {

constexpr double mostAway_m = 10000;

double apart_m(const Spot& a, const Spot& b) { return std::hypot(a.x_m - b.x_m, a.y_m - b.y_m); }

Result<void> check(const Spot& spot)
{
    if (auto ok = checkWithin("x_m", spot.x_m, -mostAway_m, mostAway_m); !ok) return ok;
    return checkWithin("y_m", spot.y_m, -mostAway_m, mostAway_m);
}

Result<void> check(const House& building)
{
    if (auto ok = checkWithin("speed_m_per_s", building.speed_mps, 0.1, 3); !ok) return ok;
    if (auto ok = checkWithin("per_floor_s", building.perFloor_s, 0, 600); !ok) return ok;
    for (const Room& room : building.rooms)
        if (auto ok = check(room.door); !ok) return ok;
    for (const Stair& stair : building.stairs)
        if (auto ok = check(stair.at); !ok) return ok;
    return {};
}

Result<void> check(const House& building, const Place& place)
{
    if (auto ok = check(place.at); !ok) return ok;
    const auto rooms = static_cast<double>(building.rooms.size());
    if (auto ok = checkWithin("room", place.room, -1, rooms - 1); !ok) return ok;
    const double floor = place.room < 0 ? place.floor : building.rooms[static_cast<std::size_t>(place.room)].floor;
    return checkWithin("floor", place.floor, floor, floor);
}

/// What stands between a place and the open floor.
struct Exit {
    Spot at;
    double way_m = 0;
};

Exit exitOf(const House& building, const Place& place)
{
    if (place.room < 0) return {place.at, 0};
    const Spot door = building.rooms[static_cast<std::size_t>(place.room)].door;
    return {door, apart_m(place.at, door)};
}

Result<double> checkedTime_s(const House& building, const Place& from, const Place& to)
{
    if (from.room >= 0 && from.room == to.room) return apart_m(from.at, to.at) / building.speed_mps;
    const Exit out = exitOf(building, from);
    const Exit in = exitOf(building, to);
    double shortest_m = apart_m(out.at, in.at);
    if (from.floor != to.floor) {
        shortest_m = -1;
        const auto [low, high] = std::minmax(from.floor, to.floor);
        for (const Stair& stair : building.stairs) {
            if (stair.lowest > low || stair.highest < high) continue;
            const double way_m = apart_m(out.at, stair.at) + apart_m(stair.at, in.at);
            if (shortest_m < 0 || way_m < shortest_m) shortest_m = way_m;
        }
        if (shortest_m < 0)
            return failure("measure.no-stair", "",
                           {{"from", std::int64_t{from.floor}}, {"to", std::int64_t{to.floor}}});
    }
    return (out.way_m + shortest_m + in.way_m) / building.speed_mps
         + std::abs(from.floor - to.floor) * building.perFloor_s;
}

} // namespace

Result<double> walkingTime_s(const House& building, const Place& from, const Place& to)
{
    if (auto ok = check(building); !ok) return passOn(ok);
    if (auto ok = check(building, from); !ok) return passOn(ok);
    if (auto ok = check(building, to); !ok) return passOn(ok);
    return checkedTime_s(building, from, to);
}

Result<std::vector<double>> walkingTimes_s(const House& building, std::span<const Place> places)
{
    if (auto ok = check(building); !ok) return passOn(ok);
    for (const Place& place : places)
        if (auto ok = check(building, place); !ok) return passOn(ok);
    std::vector<double> times;
    times.reserve(places.size() * places.size());
    for (const Place& from : places)
        for (const Place& to : places) {
            auto time_s = checkedTime_s(building, from, to);
            if (!time_s) return passOn(time_s);
            times.push_back(*time_s);
        }
    return times;
}

} // namespace proofwalk::measure
