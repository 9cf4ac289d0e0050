// SPDX-License-Identifier: GPL-3.0-or-later
// proofwalk work loop: a supervised loop and its parts (core/measure/loopfaults.h, colourcode.h, eseries.h); a loop
// as a network is in loopstates.cpp and loopdiagnosis.cpp.
#include "core/command/work/loopnetwork.h"

#include "core/base/text.h"
#include "core/measure/cable.h"
#include "core/measure/colourcode.h"
#include "core/measure/drop.h"
#include "core/measure/eseries.h"
#include "core/measure/loopfaults.h"
#include "core/measure/loopstates.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

namespace proofwalk::command::work {
namespace {

constexpr Range resistance{1e-6, 1e9};

Result<Worked> leak(const Given& given)
{
    const double sound = given.number("sound_ohm"), found = given.number("found_ohm");
    auto leak_ohm = measure::leakage_ohm(sound, found);
    if (!leak_ohm) return passOn(leak_ohm);
    Worked worked;
    worked.lines = {{"R_leak = R R_m/(R − R_m)", fmt::format("{0} × {1}/({0} − {1}) Ω", shown(sound), shown(found)),
                     "leak_ohm", *leak_ohm},
                    {"deviation = 100 (R_m/R − 1)", fmt::format("100 ({}/{} − 1)", shown(found), shown(sound)),
                     "deviation_pct", 100 * (found / sound - 1)}};
    worked.limits = {"work.limit.one-leak", "work.limit.loop-disconnected"};
    worked.sources = {"work.source.ohm"};
    return worked;
}

Result<Worked> leaking(const Given& given)
{
    const double sound = given.number("sound_ohm"), leak_ohm = given.number("leak_ohm");
    auto found = measure::withLeakage_ohm(sound, leak_ohm);
    if (!found) return passOn(found);
    Worked worked;
    worked.lines = {{"R_m = R R_leak/(R + R_leak)",
                     fmt::format("{0} × {1}/({0} + {1}) Ω", shown(sound), shown(leak_ohm)), "found_ohm", *found},
                    {"deviation = 100 (R_m/R − 1)", fmt::format("100 ({}/{} − 1)", shown(*found), shown(sound)),
                     "deviation_pct", 100 * (*found / sound - 1)}};
    worked.limits = {"work.limit.one-leak", "work.limit.loop-disconnected"};
    worked.sources = {"work.source.ohm"};
    return worked;
}

Result<Worked> hidden(const Given& given)
{
    const double sound = given.number("sound_ohm"), below = given.number("below_pct");
    auto least = measure::leastHiddenLeakage_ohm(sound, below);
    if (!least) return passOn(least);
    Worked worked;
    worked.lines = {{"R_leak = R (100 − w)/w",
                     fmt::format("{} × (100 − {})/{} Ω", shown(sound), shown(below), shown(below)), "leak_ohm",
                     *least}};
    worked.limits = {"work.limit.one-leak"};
    worked.sources = {"work.source.ohm"};
    return worked;
}

Result<Worked> shorted(const Given& given)
{
    const measure::ShortSeen seen{.found_ohm = given.number("found_ohm"),
                                  .leads_ohm = given.number("leads_ohm"),
                                  .ohm_per_km = given.number("wire_ohm_per_km"),
                                  .temperature_c = given.number("known_c"),
                                  .cable_c = given.number("cable_c")};
    auto metres = measure::distanceToShort_m(seen);
    if (!metres) return passOn(metres);
    Worked worked;
    worked.lines = {{"r = r_known (1 + 0.00393 (T − 20))/(1 + 0.00393 (T_known − 20))",
                     fmt::format("from {} °C to {} °C", shown(seen.temperature_c), shown(seen.cable_c)), "r_ohm_per_km",
                     *metres > 0 ? (seen.found_ohm - seen.leads_ohm) / (2 * *metres / 1000) : seen.ohm_per_km},
                    {"L = (R_m − R_leads)/(2 r)",
                     fmt::format("({} − {})/(2 r) Ω", shown(seen.found_ohm), shown(seen.leads_ohm)), "distance_m",
                     *metres},
                    {"the same in feet", fmt::format("{}/0.3048", shown(*metres)), "distance_ft",
                     *metres / measure::metresPerFoot}};
    worked.limits = {"work.limit.short-of-none", "work.limit.loop-disconnected"};
    worked.sources = {"work.source.ohm", "work.source.iec-60028"};
    return worked;
}

Result<Worked> terminals(const Given& given)
{
    const measure::Divider divider{given.number("source_v"), given.number("pull_up_ohm")};
    auto volts = measure::terminal_v(divider, given.number("loop_ohm"));
    if (!volts) return passOn(volts);
    Worked worked;
    worked.lines = {{"v = V R/(R + Rp)",
                     fmt::format("{0} × {1}/({1} + {2}) V", shown(divider.source_v), shown(given.number("loop_ohm")),
                                 shown(divider.pullUp_ohm)),
                     "terminal_v", *volts}};
    worked.sources = {"work.source.ohm"};
    return worked;
}

Result<Worked> fromVoltage(const Given& given)
{
    const measure::Divider divider{given.number("source_v"), given.number("pull_up_ohm")};
    const double volts = given.number("terminal_v");
    auto loop = measure::loopFromVoltage_ohm(divider, volts);
    if (!loop) return passOn(loop);
    auto slope = measure::ohmsPerVolt(divider, volts);
    if (!slope) return passOn(slope);
    Worked worked;
    worked.lines = {
        {"R = Rp v/(V − v)",
         fmt::format("{0} × {1}/({2} − {1}) Ω", shown(divider.pullUp_ohm), shown(volts), shown(divider.source_v)),
         "loop_ohm", *loop},
        {"dR/dv = Rp V/(V − v)²: ohms for a volt of error",
         fmt::format("{0} × {1}/({1} − {2})²", shown(divider.pullUp_ohm), shown(divider.source_v), shown(volts)),
         "ohm_per_volt", *slope}};
    worked.sources = {"work.source.ohm"};
    return worked;
}

Result<Worked> earth(const Given& given)
{
    const measure::EarthReadings readings{given.number("supply_v"), given.number("plus_v"), given.number("minus_v"),
                                          given.number("meter_ohm")};
    auto found = measure::earthLeakage(readings);
    if (!found) return passOn(found);
    Worked worked;
    const std::string rest = fmt::format("{} × ({} − {} − {})", shown(readings.meter_ohm), shown(readings.supply_v),
                                         shown(readings.plus_v), shown(readings.minus_v));
    const auto add = [&](const char* formula, const char* name, double ohm, double divisor, const char* none) {
        if (std::isinf(ohm)) worked.remarks.push_back({none, {}});
        else worked.lines.push_back({formula, fmt::format("{}/{} Ω", rest, shown(divisor)), name, ohm});
    };
    add("R+ = Rm (V − v+ − v−)/v−", "plus_ohm", found->plus_ohm, readings.minus_v, "work.loop.plus-sound");
    add("R− = Rm (V − v+ − v−)/v+", "minus_ohm", found->minus_ohm, readings.plus_v, "work.loop.minus-sound");
    worked.limits = {"work.limit.floating-supply"};
    worked.sources = {"work.source.kirchhoff"};
    return worked;
}

Result<Worked> apart(const Given& given)
{
    const double eol = given.number("eol_ohm"), alarm = given.number("alarm_ohm");
    auto greatest = measure::greatestTolerance_pct(eol, alarm);
    if (!greatest) return passOn(greatest);
    Worked worked;
    worked.lines = {{"R1 (1 + t) = (R1 + R2)(1 − t): t = R2/(2 R1 + R2)",
                     fmt::format("100 × {1}/(2 × {0} + {1}) %", shown(eol), shown(alarm)), "tolerance_pct", *greatest}};
    worked.limits = {"work.limit.no-cable-no-meter"};
    worked.sources = {"work.source.ohm"};
    return worked;
}

Result<Worked> resistorWindow(const Given& given)
{
    const double nominal = given.number("nominal_ohm"), tolerance = given.number("tolerance_pct");
    const double drift = given.number("coefficient_ppm_per_k"), change = given.number("change_k");
    auto window = measure::resistorWindow(nominal, tolerance, drift, change);
    if (!window) return passOn(window);
    const std::string numbers =
        fmt::format("{} Ω, {} %, {} ppm/K, {} K", shown(nominal), shown(tolerance), shown(drift), shown(change));
    Worked worked;
    worked.lines = {{"least R = R (1 − t)(1 − c ΔT)", numbers, "from_ohm", window->least_ohm},
                    {"greatest R = R (1 + t)(1 + c ΔT)", numbers, "to_ohm", window->most_ohm},
                    {"half-width = greatest − R", "", "half_width_ohm", window->most_ohm - nominal}};
    worked.limits = {"work.limit.worst-case"};
    worked.sources = {"work.source.iec-60115"};
    return worked;
}

Result<Worked> nearest(const Given& given)
{
    auto ohm = base::fromDouble(given.number("resistance_ohm"), -3);
    if (!ohm) return passOn(ohm);
    auto tolerance = base::fromDouble(given.number("tolerance_pct"), -2);
    if (!tolerance) return passOn(tolerance);
    Worked worked;
    const auto add = [&](measure::Series series, const std::string& name) -> Result<base::Decimal> {
        auto value = measure::nearestPreferredValue(*ohm, series);
        if (!value) return value;
        worked.lines.push_back(
            {"the value of " + name + " with the least difference", shown(given.number("resistance_ohm")) + " Ω",
             "nearest_" + base::toText(base::Decimal{series == measure::Series::E96 ? 96 : 24, 0}) + "_ohm",
             base::toDouble(*value)});
        return value;
    };
    auto e24 = add(measure::Series::E24, "E24");
    if (!e24) return passOn(e24);
    auto e96 = add(measure::Series::E96, "E96");
    if (!e96) return passOn(e96);
    const auto rings = measure::ringsOf(*e24, *tolerance);
    if (rings)
        worked.lines.push_back({"its rings", shown("tolerance_pct", given.number("tolerance_pct")), "rings", *rings});
    else worked.remarks.push_back({"work.loop.no-rings", {}});
    worked.sources = {"work.source.iec-60063", "work.source.iec-60062"};
    return worked;
}

Result<Worked> rings(const Given& given)
{
    auto coded = measure::readRings(base::split(given.word("rings"), ','));
    if (!coded) return std::unexpected(std::move(coded.error()).within("rings=" + given.word("rings")));
    const double ohm = base::toDouble(coded->ohm), tolerance = base::toDouble(coded->tolerance_pct);
    Worked worked;
    worked.lines = {{"digits × 10^power", given.word("rings"), "resistance_ohm", ohm},
                    {"the last ring", "", "tolerance_pct", tolerance},
                    {"R (1 − t)", fmt::format("{} × (1 − {}/100) Ω", shown(ohm), shown(tolerance)), "from_ohm",
                     ohm * (1 - tolerance / 100)},
                    {"R (1 + t)", fmt::format("{} × (1 + {}/100) Ω", shown(ohm), shown(tolerance)), "to_ohm",
                     ohm * (1 + tolerance / 100)}};
    worked.limits = {"work.limit.rings-direction"};
    worked.sources = {"work.source.iec-60062"};
    return worked;
}

std::vector<Computation> partComputations()
{
    return {{"leak",
             {needed("sound_ohm", resistance), needed("found_ohm", resistance)},
             leak,
             "sound_ohm=4700 found_ohm=3872.66"},
            {"leaking",
             {needed("sound_ohm", resistance), needed("leak_ohm", resistance)},
             leaking,
             "sound_ohm=4700 leak_ohm=22000"},
            {"hidden-leak",
             {needed("sound_ohm", resistance), needed("below_pct", {0, 99.99, true})},
             hidden,
             "sound_ohm=4700 below_pct=5"},
            {"short",
             {needed("found_ohm", {0, 1e6}), usual("leads_ohm", "0", {0, 1e6}), needed("wire_ohm_per_km", {1e-3, 1e6}),
              usual("known_c", "20", {-40, 90}), usual("cable_c", "20", {-40, 90})},
             shorted,
             "found_ohm=3.20 leads_ohm=0.15 wire_ohm_per_km=84.2151"},
            {"terminals",
             {needed("source_v", {1e-3, 1e3}), needed("pull_up_ohm", resistance), needed("loop_ohm", resistance)},
             terminals,
             "source_v=5 pull_up_ohm=2200 loop_ohm=4716.84"},
            {"from-voltage",
             {needed("source_v", {1e-3, 1e3}), needed("pull_up_ohm", resistance), needed("terminal_v", {0, 1e3})},
             fromVoltage,
             "source_v=5 pull_up_ohm=2200 terminal_v=3.41"},
            {"earth",
             {needed("supply_v", {1e-3, 1e3}), needed("plus_v", {0, 1e3}), needed("minus_v", {0, 1e3}),
              needed("meter_ohm", {1, 1e12})},
             earth,
             "supply_v=27.3 plus_v=12 minus_v=3 meter_megohm=10"},
            {"apart",
             {needed("eol_ohm", resistance), needed("alarm_ohm", resistance)},
             apart,
             "what=apart eol_ohm=10000 alarm_ohm=1000"},
            {"resistor",
             {needed("nominal_ohm", resistance), usual("tolerance_pct", "1", {0, 99}),
              usual("coefficient_ppm_per_k", "100", {0, 1e4}), usual("change_k", "40", {0, 90})},
             resistorWindow,
             "nominal_ohm=5600 tolerance_pct=1 coefficient_ppm_per_k=100 change_k=40"},
            {"nearest",
             {needed("resistance_ohm", {0.01, 1e8}), usual("tolerance_pct", "1", {0.01, 20})},
             nearest,
             "resistance_ohm=4850"},
            {"rings", {word("rings", {})}, rings, "rings=yellow,violet,black,brown,brown"}};
}

} // namespace

Topic loopTopic()
{
    auto computations = stateComputations();
    computations.push_back(diagnosisComputation());
    for (Computation& each : partComputations()) computations.push_back(std::move(each));
    return {"loop", std::move(computations)};
}

} // namespace proofwalk::command::work
