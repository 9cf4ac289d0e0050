// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/measure/probe.h"

#include "core/measure/inputs.h"
#include "core/measure/uncertainty.h"

#include <array>
#include <cmath>

namespace proofwalk::measure {
namespace {

constexpr double absoluteZero_c = -273.15;
constexpr double hottest_c = 3000;

Result<void> checkTemperature(const char* input, double found)
{
    return checkWithin(input, found, absoluteZero_c, hottest_c);
}

Result<void> check(const Lag& lag)
{
    if (!(lag.timeConstant_s > 0 && lag.timeConstant_s <= 1e6))
        return outOfRange("time_constant_s", lag.timeConstant_s, "above 0 to 1000000");
    if (auto sound = checkTemperature("from_c", lag.from_c); !sound) return sound;
    return checkTemperature("into_c", lag.into_c);
}

} // namespace

Result<ProbeCorrection> icePointCheck(std::span<const double> readings_c, double bath_c)
{
    if (!(bath_c > 0 && bath_c <= 1)) return outOfRange("bath_c", bath_c, "above 0 to 1");
    for (const double each : readings_c)
        if (auto sound = checkWithin("readings_c", each, -10, 10); !sound) return passOn(sound);
    auto spread = repeated(readings_c);
    if (!spread) return passOn(spread);
    auto bath = standardOfHalfWidth(bath_c, Shape::rectangular);
    if (!bath) return passOn(bath);
    const std::array parts{UncertaintyPart{spread->ofMean, static_cast<double>(readings_c.size()) - 1},
                           UncertaintyPart{*bath}};
    auto all = combine(parts);
    if (!all) return passOn(all);
    return ProbeCorrection{spread->mean == 0 ? 0 : -spread->mean, all->expanded};
}

Result<Temperature> correctedTemperature(const ProbeReading& reading)
{
    if (auto sound = checkTemperature("shown_c", reading.shown_c); !sound) return passOn(sound);
    if (auto sound = checkWithin("correction_c", reading.correction_c, -100, 100); !sound) return passOn(sound);
    if (auto sound = checkWithin("correction_expanded_c", reading.correctionExpanded_c, 0, 100); !sound)
        return passOn(sound);
    if (auto sound = checkWithin("half_width_c", reading.halfWidth_c, 0, 100); !sound) return passOn(sound);
    auto specification = standardOfHalfWidth(reading.halfWidth_c, Shape::rectangular);
    if (!specification) return passOn(specification);
    return Temperature{reading.shown_c + reading.correction_c,
                       std::hypot(*specification, reading.correctionExpanded_c / 2)};
}

Result<double> boilingPoint_c(double pressure_bar)
{
    // Antoine constants of water, bar and kelvin: NIST Chemistry WebBook, from memory.
    constexpr double a = 5.08354;
    constexpr double b = 1663.125;
    constexpr double c = -45.622;
    if (auto sound = checkWithin("pressure_bar", pressure_bar, 0.324, 1.02); !sound) return passOn(sound);
    return b / (a - std::log10(pressure_bar)) - c + absoluteZero_c;
}

Result<double> probeAfter_c(const Lag& lag, double seconds)
{
    if (auto sound = check(lag); !sound) return passOn(sound);
    if (auto sound = checkWithin("after_s", seconds, 0, 1e9); !sound) return passOn(sound);
    return lag.into_c + (lag.from_c - lag.into_c) * std::exp(-seconds / lag.timeConstant_s);
}

Result<double> timeToThreshold_s(const Lag& lag, double threshold_c)
{
    if (auto sound = check(lag); !sound) return passOn(sound);
    if (auto sound = checkTemperature("threshold_c", threshold_c); !sound) return passOn(sound);
    const double share = (lag.into_c - threshold_c) / (lag.into_c - lag.from_c); // of the way still to go
    if (!(share > 0 && share <= 1))
        return failure(
            "measure.never-reached", "",
            {{"found", written(threshold_c)}, {"wanted", fmt::format("{:g} to {:g}", lag.from_c, lag.into_c)}});
    return -lag.timeConstant_s * std::log(share) + 0.0; // plus nothing: no minus zero
}

Result<double> celsiusOfFahrenheit(double temperature_f)
{
    if (auto sound = checkWithin("temperature_f", temperature_f, -459.67, 5432); !sound) return passOn(sound);
    return (temperature_f - 32) * 5 / 9;
}

} // namespace proofwalk::measure
