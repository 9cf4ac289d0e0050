// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/measure/platinum.h"

#include "core/measure/inputs.h"

#include <cmath>

namespace proofwalk::measure {
namespace {

// IEC 60751.
constexpr double a = 3.9083e-3;
constexpr double b = -5.775e-7;
constexpr double c = -4.183e-12;
constexpr double coldest_c = -200;
constexpr double hottest_c = 850;

double ratioAt(double t)
{
    const double warm = 1 + a * t + b * t * t;
    return t >= 0 ? warm : warm + c * (t - 100) * t * t * t;
}

Result<void> checkAtZero(double atZero_ohm)
{
    if (atZero_ohm > 0 && atZero_ohm <= 10000) return {};
    return outOfRange("at_zero_ohm", atZero_ohm, "above 0 to 10000");
}

} // namespace

Result<double> platinumResistance_ohm(double atZero_ohm, double temperature_c)
{
    if (auto sound = checkAtZero(atZero_ohm); !sound) return passOn(sound);
    if (auto sound = checkWithin("temperature_c", temperature_c, coldest_c, hottest_c); !sound) return passOn(sound);
    return atZero_ohm * ratioAt(temperature_c);
}

Result<double> platinumTemperature_c(double atZero_ohm, double resistance_ohm)
{
    if (auto sound = checkAtZero(atZero_ohm); !sound) return passOn(sound);
    const double ratio = resistance_ohm / atZero_ohm;
    if (!(ratio >= ratioAt(coldest_c) && ratio <= ratioAt(hottest_c)))
        return outOfRange(
            "resistance_ohm", resistance_ohm,
            fmt::format("{:.5g} to {:.5g}", atZero_ohm * ratioAt(coldest_c), atZero_ohm * ratioAt(hottest_c)));
    if (ratio >= 1) return (-a + std::sqrt(a * a - 4 * b * (1 - ratio))) / (2 * b);
    double low = coldest_c;
    double high = 0;
    for (int i = 0; i < 100; ++i) {
        const double middle = (low + high) / 2;
        (ratioAt(middle) < ratio ? low : high) = middle;
    }
    return (low + high) / 2;
}

Result<double> platinumTolerance_c(PlatinumClass grade, double temperature_c)
{
    const bool isA = grade == PlatinumClass::a;
    if (auto sound = checkWithin("temperature_c", temperature_c, coldest_c, isA ? 650 : hottest_c); !sound)
        return passOn(sound);
    return isA ? 0.15 + 0.002 * std::fabs(temperature_c) : 0.30 + 0.005 * std::fabs(temperature_c);
}

} // namespace proofwalk::measure
