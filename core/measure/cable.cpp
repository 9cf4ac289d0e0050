// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/measure/cable.h"

#include "core/measure/inputs.h"

#include <cmath>
#include <numbers>

namespace proofwalk::measure {
namespace {

constexpr double conductivity_m_per_ohm_mm2 = 58; // IEC 60028:1925
constexpr double coefficient_per_k = 0.00393;     // IEC 60028:1925, at 20 °C
constexpr double coldest_c = -40;
constexpr double hottest_c = 90;

double factorAt(double temperature_c) { return 1 + coefficient_per_k * (temperature_c - 20); }

} // namespace

Result<double> pairResistance_ohm(const CableRun& run)
{
    if (auto sound = checkAbove("length_m", run.length_m, 0); !sound) return passOn(sound);
    if (auto sound = checkAbove("section_mm2", run.section_mm2, 0); !sound) return passOn(sound);
    if (auto sound = checkWithin("temperature_c", run.temperature_c, coldest_c, hottest_c); !sound)
        return passOn(sound);
    return 2 * run.length_m / (conductivity_m_per_ohm_mm2 * run.section_mm2) * factorAt(run.temperature_c);
}

Result<double> resistanceAtTemperature_ohm(const ResistanceAt& known)
{
    if (auto sound = checkAbove("resistance_ohm", known.resistance_ohm, 0); !sound) return passOn(sound);
    if (auto sound = checkWithin("known_c", known.known_c, coldest_c, hottest_c); !sound) return passOn(sound);
    if (auto sound = checkWithin("wanted_c", known.wanted_c, coldest_c, hottest_c); !sound) return passOn(sound);
    return known.resistance_ohm * factorAt(known.wanted_c) / factorAt(known.known_c);
}

Result<double> gaugeSection_mm2(int gauge)
{
    if (auto sound = checkWithin("gauge", gauge, 10, 30); !sound) return passOn(sound);
    return strandedSection_mm2(1, 0.127 * std::pow(92.0, (36 - gauge) / 39.0));
}

Result<double> strandedSection_mm2(int count, double diameter_mm)
{
    if (auto sound = checkAbove("count", count, 0); !sound) return passOn(sound);
    if (auto sound = checkAbove("diameter_mm", diameter_mm, 0); !sound) return passOn(sound);
    return count * std::numbers::pi / 4 * diameter_mm * diameter_mm;
}

} // namespace proofwalk::measure
