// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/measure/batterytest.h"

#include "core/measure/inputs.h"

#include <cmath>
#include <numbers>

namespace proofwalk::measure {
namespace {

Result<void> checkPositive(const char* input, double found, double most)
{
    if (auto sound = checkAbove(input, found, 0); !sound) return sound;
    return checkWithin(input, found, 0, most);
}

Result<void> check(const DischargeTest& test, std::span<const DischargeReading> readings)
{
    if (auto sound = checkPositive("end_v", test.end_v, 1e3); !sound) return sound;
    if (auto sound = checkPositive("required_min", test.required_min, 1e5); !sound) return sound;
    if (auto sound = checkWithin("expanded_v", test.expanded_v, 0, 1e3); !sound) return sound;
    const auto wrong = [&] {
        return failure("measure.discharge-readings", "", {{"found", static_cast<std::int64_t>(readings.size())}});
    };
    if (readings.size() < 2 || readings.size() > 1000) return wrong();
    for (std::size_t i = 0; i < readings.size(); ++i) {
        if (auto sound = checkWithin("minutes", readings[i].minutes, 0, test.required_min); !sound) return sound;
        if (auto sound = checkPositive("volts", readings[i].volts, 1e3); !sound) return sound;
        if (i > 0 && !(readings[i].minutes > readings[i - 1].minutes)) return wrong();
    }
    return {};
}

Result<void> check(const Recharge& recharge)
{
    if (auto sound = checkPositive("capacity_ah", recharge.capacity_ah, 1e4); !sound) return sound;
    if (auto sound = checkPositive("share", recharge.share, 1); !sound) return sound;
    if (auto sound = checkPositive("efficiency", recharge.efficiency, 1); !sound) return sound;
    if (auto sound = checkWithin("efficiency", recharge.efficiency, 0.1, 1); !sound) return sound;
    return checkWithin("load_a", recharge.load_a, 0, 1e3);
}

} // namespace

Result<LoadLine> loadLine(const TwoLoads& loads)
{
    if (auto sound = checkPositive("light_v", loads.light_v, 1e3); !sound) return passOn(sound);
    if (auto sound = checkPositive("heavy_v", loads.heavy_v, 1e3); !sound) return passOn(sound);
    if (auto sound = checkWithin("light_a", loads.light_a, 0, 1e3); !sound) return passOn(sound);
    if (auto sound = checkWithin("heavy_a", loads.heavy_a, 0, 1e3); !sound) return passOn(sound);
    if (auto sound = checkWithin("resolution_v", loads.resolution_v, 0, 1); !sound) return passOn(sound);
    const double apart_a = loads.heavy_a - loads.light_a;
    if (apart_a < 1e-3) return outOfRange("heavy_a", loads.heavy_a, fmt::format("at least {}", loads.light_a + 1e-3));
    if (loads.heavy_v >= loads.light_v)
        return outOfRange("heavy_v", loads.heavy_v, fmt::format("below {}", loads.light_v));
    const double resistance = (loads.light_v - loads.heavy_v) / apart_a;
    const double ofVoltage = loads.resolution_v / 2 / std::numbers::sqrt3;
    return LoadLine{resistance, loads.light_v + loads.light_a * resistance, std::numbers::sqrt2 * ofVoltage / apart_a};
}

Result<double> terminalVoltage_v(const LoadLine& line, double current_a)
{
    const double left = line.emf_v - current_a * line.resistance_ohm;
    if (current_a >= 0 && left > 0) return left;
    return outOfRange("current_a", current_a, fmt::format("0 to below {}", line.emf_v / line.resistance_ohm));
}

Result<DischargeJudged> judgeDischarge(const DischargeTest& test, std::span<const DischargeReading> readings)
{
    if (auto sound = check(test, readings); !sound) return passOn(sound);
    const DischargeReading& first = readings.front();
    const DischargeReading& last = readings.back();
    // Beyond the last reading the line moves by this many times the difference of the two readings.
    const double onward = (test.required_min - last.minutes) / (last.minutes - first.minutes);
    const double straight = last.volts - onward * (first.volts - last.volts);
    const double vague = test.expanded_v * (1 + 2 * onward); // both readings wrong, each its own way

    DischargeOutlook outlook = DischargeOutlook::nothingAgainst;
    if (straight - vague < test.end_v) outlook = DischargeOutlook::tooClose;
    for (const DischargeReading& each : readings)
        if (each.volts - test.expanded_v < test.end_v) outlook = DischargeOutlook::tooClose;
    if (straight + vague < test.end_v) outlook = DischargeOutlook::fallsShort;
    for (const DischargeReading& each : readings)
        if (each.volts + test.expanded_v < test.end_v) outlook = DischargeOutlook::belowEnd;
    return DischargeJudged{outlook, straight};
}

Result<ChargerCurrent> chargerCurrent(const Recharge& recharge, double hours)
{
    if (auto sound = check(recharge); !sound) return passOn(sound);
    if (auto sound = checkPositive("hours", hours, 1e3); !sound) return passOn(sound);
    if (auto sound = checkWithin("hours", hours, 0.01, 1e3); !sound) return passOn(sound);
    const double battery_a = recharge.capacity_ah * recharge.share / hours / recharge.efficiency;
    return ChargerCurrent{battery_a, battery_a + recharge.load_a};
}

Result<double> rechargeTime_h(const Recharge& recharge, double charger_a)
{
    if (auto sound = check(recharge); !sound) return passOn(sound);
    if (auto sound = checkWithin("charger_a", charger_a, 0, 1e3); !sound) return passOn(sound);
    if (charger_a - recharge.load_a < 1e-3)
        return outOfRange("charger_a", charger_a, fmt::format("at least {}", recharge.load_a + 1e-3));
    return recharge.capacity_ah * recharge.share / recharge.efficiency / (charger_a - recharge.load_a);
}

Result<double> floatVoltage_v(int cells, double cellAt20_v, double change_mv_per_k, double temperature_c)
{
    if (auto sound = checkWithin("cells", cells, 1, 600); !sound) return passOn(sound);
    if (auto sound = checkWithin("cell_at_20_v", cellAt20_v, 2, 2.5); !sound) return passOn(sound);
    if (auto sound = checkWithin("change_mv_per_k", change_mv_per_k, -10, 0); !sound) return passOn(sound);
    if (auto sound = checkWithin("temperature_c", temperature_c, -10, 50); !sound) return passOn(sound);
    return cells * (cellAt20_v + change_mv_per_k / 1000 * (temperature_c - 20));
}

} // namespace proofwalk::measure
