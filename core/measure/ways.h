// SPDX-License-Identifier: GPL-3.0-or-later
// How long it takes to walk from one place in a building to another: out of the room by its door, to the nearest stair,
// up or down, and on. Straight lines between these points: walls within a floor are not known (our choice, no source).
#pragma once

#include "core/base/result.h"

#include <span>
#include <vector>

namespace proofwalk::measure {

/// A point on a floor.
struct Spot {
    double x_m = 0;
    double y_m = 0;
};

/// A room with one door; places of one room reach each other straight.
struct Room {
    int floor = 0;
    Spot door;
};

/// Where a stop is.
struct Place {
    Spot at;
    int floor = 0;
    int room = -1; ///< index into House::rooms; below 0: in the open
};

/// A stair that joins floors.
struct Stair {
    Spot at;
    int lowest = -1000;
    int highest = 1000;
};

struct House {
    std::vector<Room> rooms;
    std::vector<Stair> stairs;
    double speed_mps = 1.2; ///< assumed, no source; belongs with the building's data
    double perFloor_s = 20; ///< up or down one floor; assumed, no source
};

/// Seconds from one place to another, the shortest way. From 0.1 to 3 m/s, 0 to 600 s a floor, coordinates within 10
/// km.
/// Errors: measure.out-of-range {input}; measure.no-stair {from, to}: no stair joins the two floors.
Result<double> walkingTime_s(const House& building, const Place& from, const Place& to);

/// The same between all places, row by row: entry from * count + to.
Result<std::vector<double>> walkingTimes_s(const House& building, std::span<const Place> places);

} // namespace proofwalk::measure
