// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/measure/drop.h"

#include "core/measure/cable.h"
#include "core/measure/inputs.h"

#include <algorithm>
#include <cmath>

namespace proofwalk::measure {
namespace {

// Far beyond any building, and far from where a double overflows.
constexpr double longest_m = 1e5;
constexpr double greatest_ohm_per_km = 1e6;
constexpr double greatest_a = 1e3;
constexpr double lowest_v = 1e-3;
constexpr double greatest_v = 1e3;
constexpr double least_w = 1e-6;
constexpr double greatest_w = 1e6;
constexpr std::size_t mostAppliances = 1000;
constexpr int mostRounds = 20000; // near the most power the going round converges slowly; beyond it never

Result<void> checkVoltage(const char* input, double found)
{
    if (auto sound = checkAbove(input, found, 0); !sound) return sound;
    return checkWithin(input, found, lowest_v, greatest_v);
}

Result<void> checkConductors(const Supply& supply)
{
    if (auto sound = checkWithin("feed_ohm_per_km", supply.feed_ohm_per_km, 0, greatest_ohm_per_km); !sound)
        return sound;
    return checkWithin("return_ohm_per_km", supply.return_ohm_per_km, 0, greatest_ohm_per_km);
}

Result<void> check(const Supply& supply, std::span<const Appliance> appliances)
{
    if (auto sound = checkVoltage("source_v", supply.source_v); !sound) return sound;
    if (auto sound = checkConductors(supply); !sound) return sound;
    if (appliances.empty() || appliances.size() > mostAppliances)
        return failure("measure.loads", "", {{"found", static_cast<std::int64_t>(appliances.size())}});
    for (const Appliance& each : appliances) {
        if (auto sound = checkWithin("segment_m", each.segment_m, 0, longest_m); !sound) return sound;
        if (auto sound = checkWithin("current_a", each.current_a, 0, greatest_a); !sound) return sound;
        if (auto sound = checkWithin("power_w", each.power_w, 0, greatest_w); !sound) return sound;
    }
    return {};
}

double pairOhm(const Supply& supply, double length_m)
{
    return length_m / 1000 * (supply.feed_ohm_per_km + supply.return_ohm_per_km);
}

std::unexpected<Error> starved(std::size_t appliance)
{
    return failure("measure.no-operating-point", "", {{"at", static_cast<std::int64_t>(appliance + 1)}});
}

/// The drops and voltages that these currents make.
void apply(const Supply& supply, std::span<const Appliance> appliances, std::vector<AtAppliance>& at)
{
    double carried = 0;
    for (std::size_t i = at.size(); i-- > 0;) {
        carried += at[i].current_a;
        at[i].drop_v = pairOhm(supply, appliances[i].segment_m) * carried;
    }
    double voltage = supply.source_v;
    for (AtAppliance& each : at) each.voltage_v = voltage -= each.drop_v;
}

} // namespace

Result<double> runDrop_v(const Supply& supply, double length_m, double current_a)
{
    if (auto sound = checkConductors(supply); !sound) return passOn(sound);
    if (auto sound = checkWithin("length_m", length_m, 0, longest_m); !sound) return passOn(sound);
    if (auto sound = checkWithin("current_a", current_a, 0, greatest_a); !sound) return passOn(sound);
    return pairOhm(supply, length_m) * current_a;
}

Result<std::vector<AtAppliance>> pointToPoint(const Supply& supply, std::span<const Appliance> appliances)
{
    if (auto sound = check(supply, appliances); !sound) return passOn(sound);
    std::vector<AtAppliance> at;
    for (const Appliance& each : appliances)
        at.push_back({0, supply.source_v, each.current_a + each.power_w / supply.source_v});
    // Less voltage, more current, less voltage: from above this falls towards the upper state and never past it.
    for (int round = 0; round < mostRounds; ++round) {
        apply(supply, appliances, at);
        double change = 0;
        for (std::size_t i = 0; i < at.size(); ++i) {
            if (at[i].voltage_v <= 0) return starved(i);
            const double current = appliances[i].current_a + appliances[i].power_w / at[i].voltage_v;
            change = std::max(change, std::fabs(current - at[i].current_a) / std::max(current, 1e-9));
            at[i].current_a = current;
        }
        if (change < 1e-13) return at;
    }
    return starved(at.size() - 1);
}

Result<double> lumpDrop_v(const Supply& supply, std::span<const Appliance> appliances)
{
    if (auto sound = check(supply, appliances); !sound) return passOn(sound);
    double length_m = 0, current_a = 0;
    for (const Appliance& each : appliances) {
        if (each.power_w != 0) return outOfRange("power_w", each.power_w, "0: all loads as currents");
        length_m += each.segment_m;
        current_a += each.current_a;
    }
    return pairOhm(supply, length_m) * current_a;
}

Result<RegulatedState> regulatedState(double source_v, double loop_ohm, double power_w)
{
    if (auto sound = checkVoltage("source_v", source_v); !sound) return passOn(sound);
    if (auto sound = checkAbove("loop_ohm", loop_ohm, 0); !sound) return passOn(sound);
    if (auto sound = checkWithin("loop_ohm", loop_ohm, 1e-9, 1e9); !sound) return passOn(sound);
    if (auto sound = checkAbove("power_w", power_w, 0); !sound) return passOn(sound);
    if (auto sound = checkWithin("power_w", power_w, least_w, greatest_w); !sound) return passOn(sound);
    const double square = source_v * source_v - 4 * loop_ohm * power_w;
    if (square < 0) return starved(0);
    const double voltage = (source_v + std::sqrt(square)) / 2;
    return RegulatedState{voltage, power_w / voltage, source_v * source_v / (4 * loop_ohm)};
}

Result<LongestRun> longestRun(const Supply& supply, double least_v, double current_a)
{
    if (auto sound = checkVoltage("source_v", supply.source_v); !sound) return passOn(sound);
    if (auto sound = checkConductors(supply); !sound) return passOn(sound);
    if (!(least_v > 0 && least_v < supply.source_v))
        return outOfRange("least_v", least_v, fmt::format("above 0 and below {}", supply.source_v));
    if (auto sound = checkAbove("current_a", current_a, 0); !sound) return passOn(sound);
    if (auto sound = checkWithin("current_a", current_a, 1e-6, greatest_a); !sound) return passOn(sound);
    const double both_ohm_per_km = supply.feed_ohm_per_km + supply.return_ohm_per_km;
    if (auto sound = checkAbove("feed_ohm_per_km", both_ohm_per_km, 0); !sound) return passOn(sound);
    if (auto sound = checkWithin("feed_ohm_per_km", both_ohm_per_km, 1e-6, 2 * greatest_ohm_per_km); !sound)
        return passOn(sound);
    const double loop_ohm = (supply.source_v - least_v) / current_a;
    return LongestRun{loop_ohm, 1000 * loop_ohm / both_ohm_per_km};
}

Result<Conductor> smallestConductor(double source_v, double least_v, double temperature_c,
                                    std::span<const Appliance> appliances, std::span<const Conductor> table)
{
    if (!(least_v > 0 && least_v < source_v))
        return outOfRange("least_v", least_v, fmt::format("above 0 and below {}", source_v));
    const Conductor* best = nullptr;
    for (const Conductor& each : table) {
        if (best && best->section_mm2 <= each.section_mm2) continue;
        auto ohm_per_km = resistanceAtTemperature_ohm({each.resistance_ohm_per_km, each.temperature_c, temperature_c});
        if (!ohm_per_km) return passOn(ohm_per_km);
        const auto at = pointToPoint({source_v, *ohm_per_km, *ohm_per_km}, appliances);
        if (!at && at.error().code != "measure.no-operating-point") return std::unexpected(at.error());
        if (at && at->back().voltage_v >= least_v) best = &each;
    }
    if (!best) return failure("measure.no-conductor", "", {{"wanted", written(least_v)}});
    return *best;
}

} // namespace proofwalk::measure
