// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/measure/beam.h"

#include "core/measure/inputs.h"

#include <cmath>
#include <numbers>

namespace proofwalk::measure {
namespace {

constexpr double foot_m = 0.3048; // exact

double radians(double degrees) { return degrees * std::numbers::pi / 180; }

Result<void> checkLength(const char* input, double length_m)
{
    if (length_m > 0 && length_m <= 1e4) return {};
    return outOfRange(input, length_m, "above 0 to 10000");
}

Result<void> checkObscuration(double obscuration_pct)
{
    if (obscuration_pct >= 0 && obscuration_pct < 100) return {};
    return outOfRange("obscuration_pct", obscuration_pct, "0 to below 100");
}

} // namespace

Result<double> spotDiameter_m(double length_m, double divergence_deg, double lens_m)
{
    if (auto sound = checkLength("length_m", length_m); !sound) return passOn(sound);
    if (auto sound = checkWithin("divergence_deg", divergence_deg, 0, 90); !sound) return passOn(sound);
    if (auto sound = checkWithin("lens_m", lens_m, 0, 10); !sound) return passOn(sound);
    return lens_m + 2 * length_m * std::tan(radians(divergence_deg / 2));
}

Result<double> aimOffset_m(double length_m, double misalignment_deg)
{
    if (auto sound = checkLength("length_m", length_m); !sound) return passOn(sound);
    if (auto sound = checkWithin("misalignment_deg", misalignment_deg, 0, 45); !sound) return passOn(sound);
    return length_m * std::tan(radians(misalignment_deg));
}

Result<double> mirrorOffset_m(double length_m, double tilt_deg)
{
    if (auto sound = checkLength("length_m", length_m); !sound) return passOn(sound);
    if (auto sound = checkWithin("tilt_deg", tilt_deg, 0, 22.5); !sound) return passOn(sound);
    return length_m * std::tan(radians(2 * tilt_deg));
}

Result<double> spreadLoss_db(double from_m, double to_m)
{
    if (auto sound = checkLength("from_m", from_m); !sound) return passOn(sound);
    if (auto sound = checkLength("to_m", to_m); !sound) return passOn(sound);
    return 20 * std::log10(from_m / to_m);
}

Result<double> filterLoss_db(double obscuration_pct)
{
    if (auto sound = checkObscuration(obscuration_pct); !sound) return passOn(sound);
    return 10 * std::log10(1 - obscuration_pct / 100);
}

Result<Obscuration> obscurationPerLength(double total_pct, double length_m)
{
    if (auto sound = checkObscuration(total_pct); !sound) return passOn(sound);
    if (auto sound = checkLength("length_m", length_m); !sound) return passOn(sound);
    const double left = 1 - total_pct / 100;
    Obscuration found;
    found.perMetre_pct = 100 * (1 - std::pow(left, 1 / length_m));
    found.perFoot_pct = 100 * (1 - std::pow(left, foot_m / length_m));
    found.density_per_m = left == 1 ? 0 : -std::log10(left) / length_m;
    found.loss_db_per_m = 10 * found.density_per_m;
    return found;
}

} // namespace proofwalk::measure
