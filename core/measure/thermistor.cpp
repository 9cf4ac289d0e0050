// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/measure/thermistor.h"

#include "core/measure/inputs.h"

#include <cmath>

namespace proofwalk::measure {
namespace {

constexpr double zero_k = 273.15;   // exact
constexpr double room_k = 298.15;   // 25 °C
constexpr double coldest_c = -100;
constexpr double hottest_c = 300;

Result<void> checkResistance(double resistance_ohm)
{
    if (resistance_ohm > 0 && resistance_ohm <= 1e9) return {};
    return outOfRange("resistance_ohm", resistance_ohm, "above 0 to 1000000000");
}

Result<void> check(const BetaCurve& curve)
{
    if (!(curve.at25c_ohm > 0 && curve.at25c_ohm <= 1e9))
        return outOfRange("at25c_ohm", curve.at25c_ohm, "above 0 to 1000000000");
    return checkWithin("beta_k", curve.beta_k, 500, 10000);
}

Result<double> temperatureOf(double perKelvin, double resistance_ohm)
{
    const double temperature_c = 1 / perKelvin - zero_k;
    if (perKelvin > 0 && temperature_c >= coldest_c && temperature_c <= hottest_c) return temperature_c;
    return outOfRange("resistance_ohm", resistance_ohm, "one that means -100 to 300 °C");
}

} // namespace

Result<double> thermistorResistance_ohm(const BetaCurve& curve, double temperature_c)
{
    if (auto sound = check(curve); !sound) return passOn(sound);
    if (auto sound = checkWithin("temperature_c", temperature_c, coldest_c, hottest_c); !sound) return passOn(sound);
    return curve.at25c_ohm * std::exp(curve.beta_k * (1 / (temperature_c + zero_k) - 1 / room_k));
}

Result<double> thermistorTemperature_c(const BetaCurve& curve, double resistance_ohm)
{
    if (auto sound = check(curve); !sound) return passOn(sound);
    if (auto sound = checkResistance(resistance_ohm); !sound) return passOn(sound);
    return temperatureOf(1 / room_k + std::log(resistance_ohm / curve.at25c_ohm) / curve.beta_k, resistance_ohm);
}

Result<double> thermistorTemperature_c(const SteinhartHart& curve, double resistance_ohm)
{
    if (auto sound = checkWithin("a", curve.a, -1, 1); !sound) return passOn(sound);
    if (auto sound = checkWithin("b", curve.b, -1, 1); !sound) return passOn(sound);
    if (auto sound = checkWithin("c", curve.c, -1, 1); !sound) return passOn(sound);
    if (auto sound = checkResistance(resistance_ohm); !sound) return passOn(sound);
    const double l = std::log(resistance_ohm);
    return temperatureOf(curve.a + curve.b * l + curve.c * l * l * l, resistance_ohm);
}

} // namespace proofwalk::measure
