// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/measure/thermocouple.h"

#include "core/measure/inputs.h"

#include <array>
#include <cmath>

namespace proofwalk::measure {
namespace {

// NIST SRD 60, type K. A public copy was met with the sign of the fifth power lost below 0 °C; -200 °C tells.
constexpr std::array below{0.0,
                           0.394501280250e-01,
                           0.236223735980e-04,
                           -0.328589067840e-06,
                           -0.499048287770e-08,
                           -0.675090591730e-10,
                           -0.574103274280e-12,
                           -0.310888728940e-14,
                           -0.104516093650e-16,
                           -0.198892668780e-19,
                           -0.163226974860e-22};
constexpr std::array above{-0.176004136860e-01, 0.389212049750e-01,  0.185587700320e-04, -0.994575928740e-07,
                           0.318409457190e-09,  -0.560728448890e-12, 0.560750590590e-15, -0.320207200030e-18,
                           0.971511471520e-22,  -0.121047212750e-25};
constexpr double bump_mv = 0.118597600000e+00;
constexpr double bumpWidth = -0.118343200000e-03;
constexpr double bumpAt_c = 0.126968600000e+03;

constexpr double coldest_c = -270;
constexpr double hottest_c = 1372;

template <std::size_t Count>
double polynomial(const std::array<double, Count>& coefficients, double t)
{
    double sum = 0;
    for (std::size_t i = Count; i-- > 0;) sum = sum * t + coefficients[i];
    return sum;
}

double voltageAt(double t)
{
    if (t < 0) return polynomial(below, t);
    return polynomial(above, t) + bump_mv * std::exp(bumpWidth * (t - bumpAt_c) * (t - bumpAt_c));
}

} // namespace

Result<double> typeKVoltage_mv(double temperature_c)
{
    if (auto sound = checkWithin("temperature_c", temperature_c, coldest_c, hottest_c); !sound) return passOn(sound);
    return voltageAt(temperature_c);
}

Result<double> typeKTemperature_c(double voltage_mv)
{
    if (auto sound = checkFinite("voltage_mv", voltage_mv); !sound) return passOn(sound);
    if (!(voltage_mv >= voltageAt(coldest_c) && voltage_mv <= voltageAt(hottest_c)))
        return outOfRange("voltage_mv", voltage_mv,
                          fmt::format("{:.4g} to {:.5g}", voltageAt(coldest_c), voltageAt(hottest_c)));
    double low = coldest_c;
    double high = hottest_c;
    for (int i = 0; i < 60; ++i) {
        const double middle = (low + high) / 2;
        (voltageAt(middle) < voltage_mv ? low : high) = middle;
    }
    return (low + high) / 2;
}

Result<double> typeKJunction_c(double atMeter_mv, double coldJunction_c)
{
    if (auto sound = checkWithin("cold_junction_c", coldJunction_c, -20, 70); !sound) return passOn(sound);
    if (auto sound = checkFinite("voltage_mv", atMeter_mv); !sound) return passOn(sound);
    return typeKTemperature_c(atMeter_mv + voltageAt(coldJunction_c));
}

} // namespace proofwalk::measure
