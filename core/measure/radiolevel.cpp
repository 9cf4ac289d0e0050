// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/measure/radiolevel.h"

#include "core/measure/distribution.h"
#include "core/measure/inputs.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace proofwalk::measure {
namespace {

constexpr double light_m_per_s = 299792458.0; // exact, SI
constexpr double dipoleGain = 1.64;           // of a half-wave dipole over an isotropic one
const double dbuvOver50Ohm = 90 + 10 * std::log10(50.0);

Result<void> checkLevel(const char* input, double level) { return checkWithin(input, level, -250, 100); }

Result<void> checkDistance(double distance_m)
{
    if (distance_m > 0 && distance_m <= 1e6) return {};
    return outOfRange("distance_m", distance_m, "above 0 to 1000000");
}

} // namespace

Result<double> dbuvOfDbm(double level_dbm)
{
    if (auto sound = checkLevel("level_dbm", level_dbm); !sound) return passOn(sound);
    return level_dbm + dbuvOver50Ohm;
}

Result<double> dbmOfDbuv(double level_dbuv)
{
    if (auto sound = checkWithin("level_dbuv", level_dbuv, -150, 220); !sound) return passOn(sound);
    return level_dbuv - dbuvOver50Ohm;
}

Result<double> microvoltsOfDbuv(double level_dbuv)
{
    if (auto sound = checkWithin("level_dbuv", level_dbuv, -150, 220); !sound) return passOn(sound);
    return std::pow(10, level_dbuv / 20);
}

Result<double> dbuvOfMicrovolts(double level_uv)
{
    if (!(level_uv >= 1e-7 && level_uv <= 1e9)) return outOfRange("level_uv", level_uv, "1e-7 to 1e9");
    return 20 * std::log10(level_uv);
}

Result<double> eirpOfErp_dbm(double erp_dbm)
{
    if (auto sound = checkLevel("erp_dbm", erp_dbm); !sound) return passOn(sound);
    return erp_dbm + 10 * std::log10(dipoleGain);
}

Result<double> freeSpaceField_dbuv(double eirp_dbm, double distance_m)
{
    if (auto sound = checkLevel("eirp_dbm", eirp_dbm); !sound) return passOn(sound);
    if (auto sound = checkDistance(distance_m); !sound) return passOn(sound);
    const double power_w = std::pow(10, (eirp_dbm - 30) / 10);
    return 20 * std::log10(std::sqrt(30 * power_w) / distance_m) + 120;
}

Result<double> freeSpaceLoss_db(double frequency_mhz, double distance_m)
{
    if (auto sound = checkWithin("frequency_mhz", frequency_mhz, 1, 1e5); !sound) return passOn(sound);
    if (auto sound = checkDistance(distance_m); !sound) return passOn(sound);
    const double wavelength_m = light_m_per_s / (frequency_mhz * 1e6);
    if (distance_m < wavelength_m)
        return outOfRange("distance_m", distance_m, fmt::format("a wavelength, {:.3g} m, or more", wavelength_m));
    return 20 * std::log10(4 * std::numbers::pi * distance_m / wavelength_m);
}

Result<LinkMargin> linkMargin(const Link& link)
{
    if (auto sound = checkLevel("eirp_dbm", link.eirp_dbm); !sound) return passOn(sound);
    if (auto sound = checkWithin("receive_gain_dbi", link.receiveGain_dbi, -50, 50); !sound) return passOn(sound);
    if (auto sound = checkWithin("loss_db", link.loss_db, 0, 300); !sound) return passOn(sound);
    if (auto sound = checkLevel("sensitivity_dbm", link.sensitivity_dbm); !sound) return passOn(sound);
    if (auto sound = checkWithin("demanded_db", link.demanded_db, 0, 100); !sound) return passOn(sound);
    LinkMargin found;
    found.received_dbm = link.eirp_dbm + link.receiveGain_dbi - link.loss_db;
    found.margin_db = found.received_dbm - link.sensitivity_dbm;
    found.spare_db = found.margin_db - link.demanded_db;
    return found;
}

Result<MeasuredMargin> measuredMargin(const MeasuredLink& link)
{
    if (auto sound = checkLevel("received_dbm", link.received_dbm); !sound) return passOn(sound);
    if (auto sound = checkLevel("sensitivity_dbm", link.sensitivity_dbm); !sound) return passOn(sound);
    if (auto sound = checkLevel("noise_dbm", link.noise_dbm); !sound) return passOn(sound);
    if (auto sound = checkWithin("noise_ratio_db", link.noiseRatio_db, 0, 60); !sound) return passOn(sound);
    MeasuredMargin found;
    found.overSensitivity_db = link.received_dbm - link.sensitivity_dbm;
    found.overNoise_db = link.received_dbm - link.noise_dbm - link.noiseRatio_db;
    found.margin_db = std::min(found.overSensitivity_db, found.overNoise_db);
    found.noiseLimits = found.overNoise_db < found.overSensitivity_db;
    return found;
}

Result<double> rayleighMargin_db(double availability)
{
    if (!(availability > 0.5 && availability < 1))
        return outOfRange("availability", availability, "above 0.5 and below 1");
    return -10 * std::log10(-std::log(availability));
}

Result<double> shadowingMargin_db(double share, double deviation_db)
{
    if (auto sound = checkWithin("deviation_db", deviation_db, 0, 30); !sound) return passOn(sound);
    if (!(share >= 0.5 && share < 1)) return outOfRange("share", share, "0.5 to below 1");
    auto z = normalQuantile(share);
    if (!z) return passOn(z);
    return *z * deviation_db;
}

Result<double> meanPower_dbm(std::span<const double> levels_dbm)
{
    if (levels_dbm.empty() || levels_dbm.size() > 100000) return failure("measure.levels-missing", "");
    double power = 0;
    for (const double level_dbm : levels_dbm) {
        if (auto sound = checkLevel("levels_dbm", level_dbm); !sound) return passOn(sound);
        power += std::pow(10, level_dbm / 10);
    }
    return 10 * std::log10(power / static_cast<double>(levels_dbm.size()));
}

Result<double> rangeFactor(double less_db, double decadeLoss_db)
{
    if (auto sound = checkWithin("less_db", less_db, 0, 100); !sound) return passOn(sound);
    if (auto sound = checkWithin("decade_loss_db", decadeLoss_db, 10, 80); !sound) return passOn(sound);
    return std::pow(10, -less_db / decadeLoss_db);
}

} // namespace proofwalk::measure
