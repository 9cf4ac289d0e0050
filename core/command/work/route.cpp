// SPDX-License-Identifier: GPL-3.0-or-later
// proofwalk work route: in which order to walk (core/measure/ways.h, tour.h).
#include "core/command/work/topic.h"

#include "core/measure/tour.h"
#include "core/measure/ways.h"

#include <fmt/format.h>

namespace proofwalk::command::work {
namespace {

using measure::Errand;

constexpr Range metres{-10000, 10000};
constexpr Range stopNumber{1, 4999};

Result<void> sameCount(const Given& given, const char* name, const char* other)
{
    if (!given.has(name) && !given.has(other)) return {};
    const std::size_t found = given.has(name) ? given.numbers(name).size() : 0;
    const std::size_t wanted = given.has(other) ? given.numbers(other).size() : 0;
    if (found == wanted) return {};
    return failure("work.route.uneven", name,
                   {{"found", static_cast<std::int64_t>(found)},
                    {"other", std::string(other)},
                    {"wanted", static_cast<std::int64_t>(wanted)}});
}

std::vector<std::size_t> stopsOf(const Given& given, const char* name)
{
    std::vector<std::size_t> stops;
    if (given.has(name))
        for (const double each : given.numbers(name)) stops.push_back(static_cast<std::size_t>(each));
    return stops;
}

Result<void> readRules(const Given& given, Errand& errand)
{
    for (const auto& [name, other] : {std::pair{"after", "before"}, std::pair{"agreed_min", "agreed"}})
        if (auto ok = sameCount(given, name, other); !ok) return ok;
    const auto first = stopsOf(given, "before");
    const auto second = stopsOf(given, "after");
    for (std::size_t i = 0; i < first.size(); ++i) errand.before.emplace_back(first[i], second[i]);
    if (given.has("together")) errand.together.push_back(stopsOf(given, "together"));
    errand.last = stopsOf(given, "last");
    const auto agreed = stopsOf(given, "agreed");
    for (std::size_t i = 0; i < agreed.size(); ++i)
        errand.agreed.push_back({agreed[i], 60 * given.numbers("agreed_min")[i]});
    if (!given.has("panel_after")) return {};
    errand.panelAfter.assign(errand.stops, false);
    for (const std::size_t stop : stopsOf(given, "panel_after")) {
        if (stop >= errand.stops)
            return failure("measure.out-of-range", "",
                           {{"input", std::string("panel_after")},
                            {"found", fmt::format("{}", stop)},
                            {"wanted", fmt::format("1 to {}", errand.stops - 1)}});
        errand.panelAfter[stop] = true;
    }
    return {};
}

Result<Errand> errandOf(const Given& given)
{
    if (auto ok = sameCount(given, "y_m", "x_m"); !ok) return passOn(ok);
    if (auto ok = sameCount(given, "stair_y_m", "stair_x_m"); !ok) return passOn(ok);
    if (given.has("floors"))
        if (auto ok = sameCount(given, "floors", "x_m"); !ok) return passOn(ok);
    measure::House building;
    building.speed_mps = given.number("speed_m_per_s");
    building.perFloor_s = given.number("per_floor_s");
    if (given.has("stair_x_m"))
        for (std::size_t i = 0; i < given.numbers("stair_x_m").size(); ++i)
            building.stairs.push_back({{given.numbers("stair_x_m")[i], given.numbers("stair_y_m")[i]}});
    std::vector<measure::Place> places;
    for (std::size_t i = 0; i < given.numbers("x_m").size(); ++i)
        places.push_back({{given.numbers("x_m")[i], given.numbers("y_m")[i]},
                          given.has("floors") ? static_cast<int>(given.numbers("floors")[i]) : 0});
    auto times = measure::walkingTimes_s(building, places);
    if (!times) return passOn(times);
    Errand errand;
    errand.stops = places.size();
    errand.leg_s = std::move(*times);
    errand.back = given.word("back") == "yes";
    errand.stay_s.assign(errand.stops, given.number("stay_s"));
    errand.stay_s[0] = 0;
    if (auto ok = readRules(given, errand); !ok) return passOn(ok);
    return errand;
}

Worked told(const Given& given, const Errand& errand, const measure::Route& route)
{
    Worked worked;
    std::vector<double> order;
    std::vector<double> legs;
    for (std::size_t i = 0; i < route.order.size(); ++i) {
        order.push_back(static_cast<double>(route.order[i]));
        if (i > 0) legs.push_back(errand.leg_s[route.order[i - 1] * errand.stops + route.order[i]]);
    }
    worked.lines.push_back({"least t over all allowed orders", fmt::format("{} stops", errand.stops), "order", order});
    worked.lines.push_back({"t_leg = way / v + |floors| t_floor, by the nearer stair",
                            fmt::format("v = {} m/s, t_floor = {} s", shown(given.number("speed_m_per_s")),
                                        shown(given.number("per_floor_s"))),
                            "legs_s", legs});
    worked.lines.push_back({"of it, waiting for what was agreed", "", "waiting_s", route.waiting_s});
    worked.lines.push_back({"t = sum of legs, stays, waiting, ways to the panel", "", "time_s", route.time_s});
    worked.lines.push_back(
        {"up to 12 stops every order is weighed", "", "exact", std::string(route.exact ? "yes" : "no")});
    worked.limits = {"work.limit.straight-ways", "work.limit.walking-speed"};
    worked.sources = {"work.source.held-karp", "work.source.local-search"};
    return worked;
}

Result<Worked> order(const Given& given)
{
    auto errand = errandOf(given);
    if (!errand) return passOn(errand);
    auto route = measure::goodOrder(*errand, {.seed = static_cast<std::uint64_t>(given.number("seed")),
                                              .rounds = static_cast<std::size_t>(given.number("rounds"))});
    if (!route) return passOn(route);
    return told(given, *errand, *route);
}

Result<Worked> length(const Given& given)
{
    auto errand = errandOf(given);
    if (!errand) return passOn(errand);
    auto route = measure::timeOf(*errand, stopsOf(given, "order"));
    if (!route) return passOn(route);
    Worked worked = told(given, *errand, *route);
    worked.lines.front().formula = "the order given";
    std::erase_if(worked.lines, [](const Line& line) { return line.name == "exact"; });
    worked.sources.clear();
    worked.sources.emplace_back("work.source.sum-of-legs");
    return worked;
}

std::vector<Input> inputs(std::vector<Input> first)
{
    for (Input& each :
         std::vector<Input>{neededList("x_m", metres), neededList("y_m", metres),
                            whole(optionalList("floors", {-100, 200})), optionalList("stair_x_m", metres),
                            optionalList("stair_y_m", metres), usual("speed_m_per_s", "1.2", {0.1, 3}),
                            usual("per_floor_s", "20", {0, 600}), usual("stay_s", "0", {0, 36000}),
                            word("back", {"no", "yes"}, "no"), whole(optionalList("before", stopNumber)),
                            whole(optionalList("after", stopNumber)), whole(optionalList("together", stopNumber)),
                            whole(optionalList("last", stopNumber)), whole(optionalList("agreed", stopNumber)),
                            optionalList("agreed_min", {0, 10000}), whole(optionalList("panel_after", stopNumber))})
        first.push_back(std::move(each));
    return first;
}

} // namespace

Topic routeTopic()
{
    return {"route",
            {{"order", inputs({whole(usual("seed", "1", {0, 1e9})), whole(usual("rounds", "0", {0, 1e7}))}), order,
              "x_m=0,6,12,3,2 y_m=0,2,5,8,2 floors=0,0,0,0,1 stair_x_m=4 stair_y_m=4 last=3"},
             {"length", inputs({whole(neededList("order", {0, 4999}))}), length, "order=0,2,1 x_m=0,3,3 y_m=0,4,0"}}};
}

} // namespace proofwalk::command::work
