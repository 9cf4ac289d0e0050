// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/measure/peukert.h"

#include "core/measure/inputs.h"

#include <cmath>

namespace proofwalk::measure {
namespace {

Result<void> checkPositive(const char* input, double found, double most)
{
    if (auto sound = checkAbove(input, found, 0); !sound) return sound;
    return checkWithin(input, found, 1e-6, most);
}

Result<void> check(const PeukertBattery& battery)
{
    if (auto sound = checkPositive("capacity_ah", battery.capacity_ah, 1e4); !sound) return sound;
    if (auto sound = checkPositive("rated_h", battery.rated_h, 1e3); !sound) return sound;
    return checkWithin("exponent", battery.exponent, 1, 1.6);
}

} // namespace

Result<double> lastsFor_h(const PeukertBattery& battery, double current_a)
{
    if (auto sound = check(battery); !sound) return passOn(sound);
    if (auto sound = checkPositive("current_a", current_a, 1e4); !sound) return passOn(sound);
    return battery.rated_h * std::pow(battery.capacity_ah / (current_a * battery.rated_h), battery.exponent);
}

Result<double> lastsForOneAmpereForm_h(double capacityAtOneAmpere_ah, double exponent, double current_a)
{
    if (auto sound = checkPositive("capacity_1a_ah", capacityAtOneAmpere_ah, 1e4); !sound) return passOn(sound);
    if (auto sound = checkWithin("exponent", exponent, 1, 1.6); !sound) return passOn(sound);
    if (auto sound = checkPositive("current_a", current_a, 1e4); !sound) return passOn(sound);
    return capacityAtOneAmpere_ah / std::pow(current_a, exponent);
}

Result<double> equivalentCurrent_a(const PeukertBattery& battery, double current_a)
{
    if (auto sound = check(battery); !sound) return passOn(sound);
    if (auto sound = checkPositive("current_a", current_a, 1e4); !sound) return passOn(sound);
    const double rated_a = battery.capacity_ah / battery.rated_h;
    return rated_a * std::pow(current_a / rated_a, battery.exponent);
}

Result<DutyUse> dutyUse(const PeukertBattery& battery, std::span<const Load> loads)
{
    if (auto sound = check(battery); !sound) return passOn(sound);
    if (loads.empty() || loads.size() > 1000)
        return failure("measure.loads", "", {{"found", static_cast<std::int64_t>(loads.size())}});
    double used = 0;
    for (const Load& each : loads) {
        if (auto sound = checkWithin("hours", each.hours, 0, 1e3); !sound) return passOn(sound);
        auto lasts = lastsFor_h(battery, each.current_a);
        if (!lasts) return passOn(lasts);
        used += each.hours / *lasts;
    }
    return DutyUse{used, battery.capacity_ah * std::pow(used, 1 / battery.exponent)};
}

} // namespace proofwalk::measure
