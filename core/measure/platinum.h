// SPDX-License-Identifier: GPL-3.0-or-later
// A platinum resistance thermometer.
//   [1] IEC 60751 (Callendar-Van Dusen): R = R0 (1 + A t + B t^2 + C (t - 100) t^3 below 0 °C), A 3.9083e-3, B
//       -5.775e-7, C -4.183e-12; class A +-(0.15 + 0.002 |t|), class B +-(0.30 + 0.005 |t|) °C. From memory.
// From -200 to 850 °C, as the standard's formula goes. Leads come on top unless the wiring takes them off.
#pragma once

#include "core/base/result.h"

namespace proofwalk::measure {

/// After [1]; R0 above 0 to 10000 ohm: 100 for Pt100. Errors: measure.out-of-range {input, found, wanted}.
Result<double> platinumResistance_ohm(double atZero_ohm, double temperature_c);

/// The inverse: exact above 0 °C, found by halving below. Errors: measure.out-of-range.
Result<double> platinumTemperature_c(double atZero_ohm, double resistance_ohm);

enum class PlatinumClass { a, b };

/// Half-width of the class at a temperature, after [1]. Class A to 650 °C, class B to 850 °C. Errors:
/// measure.out-of-range.
Result<double> platinumTolerance_c(PlatinumClass grade, double temperature_c);

} // namespace proofwalk::measure
