// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/measure/motion.h"

#include "core/measure/inputs.h"

#include <cmath>
#include <numbers>

namespace proofwalk::measure {
namespace {

constexpr double perRadian_deg = 180 / std::numbers::pi;

Result<void> checkRange(double range_m)
{
    if (range_m > 0 && range_m <= 100) return {};
    return outOfRange("range_m", range_m, "above 0 to 100");
}

} // namespace

Result<double> zonePitch_m(double range_m, double pitch_deg)
{
    if (auto sound = checkRange(range_m); !sound) return passOn(sound);
    if (!(pitch_deg > 0 && pitch_deg <= 90)) return outOfRange("pitch_deg", pitch_deg, "above 0 to 90");
    return range_m * pitch_deg / perRadian_deg;
}

Result<Crossing> crossing(const Walk& walk)
{
    if (auto sound = checkWithin("speed_m_per_s", walk.speed_m_per_s, 0, 10); !sound) return passOn(sound);
    if (auto sound = checkRange(walk.range_m); !sound) return passOn(sound);
    if (auto sound = checkWithin("angle_deg", walk.angle_deg, 0, 90); !sound) return passOn(sound);
    const double angle = walk.angle_deg / perRadian_deg;
    // 90 degrees across is across and nothing along, but for rounding.
    const double along = walk.angle_deg == 90 ? 0 : walk.speed_m_per_s * std::cos(angle);
    const double across = walk.speed_m_per_s * std::sin(angle);
    return Crossing{across, along, across / walk.range_m * perRadian_deg};
}

Result<double> crossingFrequency_hz(const Walk& walk, double pitch_deg)
{
    auto found = crossing(walk);
    if (!found) return passOn(found);
    auto pitch_m = zonePitch_m(walk.range_m, pitch_deg);
    if (!pitch_m) return passOn(pitch_m);
    return found->across_m_per_s / *pitch_m;
}

Result<double> zoneReach_m(double height_m, double tilt_deg, double target_m)
{
    if (!(height_m > 0 && height_m <= 20)) return outOfRange("height_m", height_m, "above 0 to 20");
    if (!(tilt_deg > 0 && tilt_deg < 90)) return outOfRange("tilt_deg", tilt_deg, "above 0 and below 90");
    if (!(target_m >= 0 && target_m < height_m))
        return outOfRange("target_m", target_m, fmt::format("0 to below {:g}", height_m));
    return (height_m - target_m) / std::tan(tilt_deg / perRadian_deg);
}

} // namespace proofwalk::measure
