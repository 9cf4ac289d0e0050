// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/measure/cable.h"

#include "core/measure/inputs.h"

#include <cmath>
#include <numbers>

namespace proofwalk::measure {
namespace {

constexpr double conductivity_m_per_ohm_mm2 = 58; // IEC 60028:1925
constexpr double coefficientAt20_per_k = 0.00393; // IEC 60028:1925, at 20 °C
constexpr double coldest_c = -40;
constexpr double hottest_c = 90;

// Far beyond any building and any wire of an alarm system: what lies beyond is a slip, not a cable (our choice).
constexpr double longest_m = 1e5;
constexpr double thinnest_mm2 = 1e-4;
constexpr double thickest_mm2 = 1e4;
constexpr double greatest_ohm = 1e9;

Result<void> checkResistance(const char* input, double found)
{
    if (auto sound = checkAbove(input, found, 0); !sound) return sound;
    return checkWithin(input, found, 1e-9, greatest_ohm);
}

double factorAt(double temperature_c) { return 1 + coefficientAt20_per_k * (temperature_c - 20); }

} // namespace

Result<double> pairResistance_ohm(const CableRun& run)
{
    if (auto sound = checkAbove("length_m", run.length_m, 0); !sound) return passOn(sound);
    if (auto sound = checkWithin("length_m", run.length_m, 0, longest_m); !sound) return passOn(sound);
    if (auto sound = checkAbove("section_mm2", run.section_mm2, 0); !sound) return passOn(sound);
    if (auto sound = checkWithin("section_mm2", run.section_mm2, thinnest_mm2, thickest_mm2); !sound)
        return passOn(sound);
    if (auto sound = checkWithin("temperature_c", run.temperature_c, coldest_c, hottest_c); !sound)
        return passOn(sound);
    return 2 * run.length_m / (conductivity_m_per_ohm_mm2 * run.section_mm2) * factorAt(run.temperature_c);
}

Result<double> resistanceAtTemperature_ohm(const ResistanceAt& known)
{
    if (auto sound = checkResistance("resistance_ohm", known.resistance_ohm); !sound) return passOn(sound);
    if (auto sound = checkWithin("known_c", known.known_c, coldest_c, hottest_c); !sound) return passOn(sound);
    if (auto sound = checkWithin("wanted_c", known.wanted_c, coldest_c, hottest_c); !sound) return passOn(sound);
    return known.resistance_ohm * factorAt(known.wanted_c) / factorAt(known.known_c);
}

Result<double> resistanceByCoefficient_ohm(const ResistanceAt& known, double coefficient_per_k)
{
    if (auto sound = checkResistance("resistance_ohm", known.resistance_ohm); !sound) return passOn(sound);
    if (auto sound = checkWithin("known_c", known.known_c, coldest_c, hottest_c); !sound) return passOn(sound);
    if (auto sound = checkWithin("wanted_c", known.wanted_c, coldest_c, hottest_c); !sound) return passOn(sound);
    if (auto sound = checkAbove("coefficient_per_k", coefficient_per_k, 0); !sound) return passOn(sound);
    // Up to twice any metal's, and over no range of 130 K does the line then reach zero.
    if (auto sound = checkWithin("coefficient_per_k", coefficient_per_k, 0, 0.0075); !sound) return passOn(sound);
    return known.resistance_ohm * (1 + coefficient_per_k * (known.wanted_c - known.known_c));
}

Result<double> temperatureFromResistance_c(double resistance_ohm, double known_c, double found_ohm)
{
    if (auto sound = checkResistance("resistance_ohm", resistance_ohm); !sound) return passOn(sound);
    if (auto sound = checkWithin("known_c", known_c, coldest_c, hottest_c); !sound) return passOn(sound);
    if (auto sound = checkResistance("found_ohm", found_ohm); !sound) return passOn(sound);
    const double found_c = 20 + (found_ohm / resistance_ohm * factorAt(known_c) - 1) / coefficientAt20_per_k;
    if (auto sound = checkWithin("temperature_c", found_c, coldest_c, hottest_c); !sound) return passOn(sound);
    return found_c;
}

Result<double> gaugeDiameter_mm(int gauge)
{
    if (auto sound = checkWithin("gauge", gauge, 10, 30); !sound) return passOn(sound);
    return 0.127 * std::pow(92.0, (36 - gauge) / 39.0);
}

Result<double> gaugeSection_mm2(int gauge)
{
    auto diameter = gaugeDiameter_mm(gauge);
    if (!diameter) return passOn(diameter);
    return strandedSection_mm2(1, *diameter);
}

Result<double> strandedSection_mm2(int count, double diameter_mm)
{
    if (auto sound = checkAbove("count", count, 0); !sound) return passOn(sound);
    if (auto sound = checkAbove("diameter_mm", diameter_mm, 0); !sound) return passOn(sound);
    if (auto sound = checkWithin("diameter_mm", diameter_mm, 1e-3, 1e3); !sound) return passOn(sound);
    return count * std::numbers::pi / 4 * diameter_mm * diameter_mm;
}

} // namespace proofwalk::measure
