// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/measure/loopfaults.h"

#include "core/measure/cable.h"
#include "core/measure/inputs.h"

#include <limits>

namespace proofwalk::measure {
namespace {

/// Keeps products and quotients finite; no loop is under a microohm or over a teraohm.
Result<void> checkOhm(const char* input, double found)
{
    if (auto sound = checkAbove(input, found, 0); !sound) return sound;
    return checkWithin(input, found, 1e-6, 1e12);
}

Result<void> check(const Divider& divider)
{
    if (auto sound = checkAbove("source_v", divider.source_v, 0); !sound) return sound;
    if (auto sound = checkWithin("source_v", divider.source_v, 1e-3, 1e3); !sound) return sound;
    return checkOhm("pull_up_ohm", divider.pullUp_ohm);
}

Result<void> check(const Divider& divider, double terminal_v)
{
    if (auto sound = check(divider); !sound) return sound;
    if (terminal_v >= 0 && terminal_v < divider.source_v) return {};
    return outOfRange("terminal_v", terminal_v, fmt::format("0 to below {}", divider.source_v));
}

} // namespace

Result<double> leakage_ohm(double sound_ohm, double found_ohm)
{
    if (auto sound = checkOhm("sound_ohm", sound_ohm); !sound) return passOn(sound);
    if (auto sound = checkOhm("found_ohm", found_ohm); !sound) return passOn(sound);
    if (found_ohm >= sound_ohm) return outOfRange("found_ohm", found_ohm, fmt::format("below {}", sound_ohm));
    return sound_ohm * found_ohm / (sound_ohm - found_ohm);
}

Result<double> withLeakage_ohm(double sound_ohm, double leak_ohm)
{
    if (auto sound = checkOhm("sound_ohm", sound_ohm); !sound) return passOn(sound);
    if (auto sound = checkOhm("leak_ohm", leak_ohm); !sound) return passOn(sound);
    return sound_ohm * leak_ohm / (sound_ohm + leak_ohm);
}

Result<double> leastHiddenLeakage_ohm(double sound_ohm, double below_pct)
{
    if (auto sound = checkOhm("sound_ohm", sound_ohm); !sound) return passOn(sound);
    if (!(below_pct > 0 && below_pct < 100)) return outOfRange("below_pct", below_pct, "above 0 and below 100");
    if (auto sound = checkWithin("below_pct", below_pct, 1e-6, 100); !sound) return passOn(sound);
    return sound_ohm * (100 - below_pct) / below_pct;
}

Result<double> distanceToShort_m(const ShortSeen& seen)
{
    if (auto sound = checkWithin("leads_ohm", seen.leads_ohm, 0, 1e6); !sound) return passOn(sound);
    if (!(seen.found_ohm >= seen.leads_ohm && seen.found_ohm <= 1e6))
        return outOfRange("found_ohm", seen.found_ohm, fmt::format("{} to 1e6", seen.leads_ohm));
    if (auto sound = checkOhm("ohm_per_km", seen.ohm_per_km); !sound) return passOn(sound);
    auto perKm = resistanceAtTemperature_ohm(
        {.resistance_ohm = seen.ohm_per_km, .known_c = seen.temperature_c, .wanted_c = seen.cable_c});
    if (!perKm) return passOn(perKm);
    return (seen.found_ohm - seen.leads_ohm) / (2 * *perKm / 1000);
}

Result<double> terminal_v(const Divider& divider, double loop_ohm)
{
    if (auto sound = check(divider); !sound) return passOn(sound);
    if (auto sound = checkOhm("loop_ohm", loop_ohm); !sound) return passOn(sound);
    return divider.source_v * loop_ohm / (loop_ohm + divider.pullUp_ohm);
}

Result<double> loopFromVoltage_ohm(const Divider& divider, double terminal_v)
{
    if (auto sound = check(divider, terminal_v); !sound) return passOn(sound);
    return divider.pullUp_ohm * terminal_v / (divider.source_v - terminal_v);
}

Result<double> ohmsPerVolt(const Divider& divider, double terminal_v)
{
    if (auto sound = check(divider, terminal_v); !sound) return passOn(sound);
    const double left_v = divider.source_v - terminal_v;
    return divider.pullUp_ohm * divider.source_v / (left_v * left_v);
}

Result<EarthLeakage> earthLeakage(const EarthReadings& readings)
{
    const auto& [supply_v, plus_v, minus_v, meter_ohm] = readings;
    if (auto sound = checkAbove("supply_v", supply_v, 0); !sound) return passOn(sound);
    if (auto sound = checkWithin("supply_v", supply_v, 1e-3, 1e3); !sound) return passOn(sound);
    if (auto sound = checkWithin("plus_v", plus_v, 0, supply_v); !sound) return passOn(sound);
    if (auto sound = checkWithin("minus_v", minus_v, 0, supply_v - plus_v); !sound) return passOn(sound);
    if (auto sound = checkOhm("meter_ohm", meter_ohm); !sound) return passOn(sound);
    if (plus_v == 0 && minus_v == 0) return outOfRange("plus_v", plus_v, "above 0, or minus_v");
    const double left = meter_ohm * (supply_v - plus_v - minus_v);
    constexpr double infinity = std::numeric_limits<double>::infinity();
    return EarthLeakage{minus_v > 0 ? left / minus_v : infinity, plus_v > 0 ? left / plus_v : infinity};
}

Result<ResistorWindow> resistorWindow(double nominal_ohm, double tolerance_pct, double coefficient_ppm_per_k,
                                      double change_k)
{
    if (auto sound = checkOhm("nominal_ohm", nominal_ohm); !sound) return passOn(sound);
    if (!(tolerance_pct >= 0 && tolerance_pct < 100))
        return outOfRange("tolerance_pct", tolerance_pct, "0 to below 100");
    if (auto sound = checkWithin("coefficient_ppm_per_k", coefficient_ppm_per_k, 0, 1e5); !sound) return passOn(sound);
    if (auto sound = checkWithin("change_k", change_k, 0, 200); !sound) return passOn(sound);
    const double drift = coefficient_ppm_per_k * 1e-6 * change_k;
    if (drift >= 1) return outOfRange("change_k", change_k, fmt::format("below {}", 1e6 / coefficient_ppm_per_k));
    return ResistorWindow{nominal_ohm * (1 - tolerance_pct / 100) * (1 - drift),
                          nominal_ohm * (1 + tolerance_pct / 100) * (1 + drift)};
}

} // namespace proofwalk::measure
