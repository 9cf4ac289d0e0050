// SPDX-License-Identifier: GPL-3.0-or-later
// Errands made up by chance: a building of several floors with rooms along a corridor and two stairs, and rules that can
// all be obeyed, since they are read off an order made first.
#pragma once

#include "core/measure/order.h"
#include "core/measure/ways.h"

#include <numeric>
#include <random>

namespace proofwalk::errands {

struct Kind {
    bool back = false;
    bool rules = false; ///< before, together, last
    bool panelAfter = false; ///< back to the panel after some stops
    bool agreed = false; ///< two agreed times, for more than 12 stops with slack
};

inline double unit(std::mt19937_64& chance) { return static_cast<double>(chance() >> 11U) / 9007199254740992.0; }
inline std::size_t below(std::mt19937_64& chance, std::size_t count)
{
    return static_cast<std::size_t>(unit(chance) * static_cast<double>(count));
}

inline std::vector<measure::Place> places(std::size_t stops, measure::House& building, std::mt19937_64& chance)
{
    building.stairs = {{{5, 5}}, {{55, 35}}};
    for (int floor = 0; floor < 4; ++floor)
        for (int i = 0; i < 10; ++i) building.rooms.push_back({floor, {6.0 * i + 3, 20}});
    std::vector<measure::Place> all{{{2, 2}, 0, -1}};
    while (all.size() < stops) {
        const std::size_t room = below(chance, building.rooms.size());
        const measure::Room& in = building.rooms[room];
        const double aside_m = unit(chance) < 0.5 ? 12 * unit(chance) : -12 * unit(chance);
        all.push_back({{in.door.x_m - 3 + 6 * unit(chance), in.door.y_m + aside_m}, in.floor, static_cast<int>(room)});
    }
    return all;
}

inline measure::Errand make(std::size_t stops, const Kind& kind, std::uint64_t seed)
{
    std::mt19937_64 chance(seed);
    measure::House building;
    const auto where = places(stops, building, chance);
    measure::Errand errand;
    errand.stops = stops;
    errand.leg_s = measure::walkingTimes_s(building, where).value();
    errand.back = kind.back;
    // The order that all rules are read off.
    std::vector<std::size_t> order(stops);
    std::iota(order.begin(), order.end(), std::size_t{0});
    for (std::size_t i = stops - 1; i > 1; --i) std::swap(order[i], order[1 + below(chance, i)]);
    if (kind.rules) {
        for (std::size_t i = 0; i < std::max<std::size_t>(2, stops / 20); ++i) {
            const std::size_t a = 1 + below(chance, stops - 1);
            const std::size_t b = 1 + below(chance, stops - 1);
            if (a < b) errand.before.emplace_back(order[a], order[b]);
        }
        for (std::size_t i = 1; i + 6 < stops; i += std::max<std::size_t>(7, stops / 15))
            errand.together.push_back({order[i], order[i + 1], order[i + 2]});
        errand.last = {order[stops - 1], order[stops - 2]};
    }
    if (kind.panelAfter) {
        errand.panelAfter.assign(stops, false);
        for (std::size_t stop = 1; stop < stops; ++stop) errand.panelAfter[stop] = unit(chance) < 0.15;
    }
    if (kind.agreed) {
        errand.stay_s.assign(stops, 10);
        errand.stay_s[0] = 0;
        double time_s = 0;
        for (std::size_t i = 1; i < stops; ++i) {
            time_s += errand.leg_s[order[i - 1] * stops + order[i]];
            if (!errand.panelAfter.empty() && i > 1 && errand.panelAfter[order[i - 1]]) time_s += 300;
            time_s += 10;
            // Half an order by chance is far longer than half a good one: the time can be kept.
            if (i == stops / 3 || i == 2 * stops / 3) errand.agreed.push_back({order[i], time_s});
        }
    }
    return errand;
}

} // namespace proofwalk::errands
