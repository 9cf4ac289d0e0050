// SPDX-License-Identifier: GPL-3.0-or-later
// A thermistor's temperature from its resistance, and back.
//   [1] Beta equation R = R25 exp(B (1/T - 1/298.15)), T in kelvin. B belongs to a named pair of temperatures (25/50,
//       25/85); some tenths of a kelvin off at 0 °C.
//   [2] Steinhart and Hart, 1968: 1/T = A + B ln R + C (ln R)^3, R in ohms; 0.01 to 0.02 K over 200 K when fitted at
//       three points. From memory.
// Resistances above 0 to 1e9 ohm; results from -100 to 300 °C, where such parts end (our limits): beyond is refused.
#pragma once

#include "core/base/result.h"

namespace proofwalk::measure {

struct BetaCurve {
    double at25c_ohm = 0; ///< R25
    double beta_k = 0; ///< B, 500 to 10000 K
};

/// After [1]. Errors: measure.out-of-range {input, found, wanted}.
Result<double> thermistorResistance_ohm(const BetaCurve& curve, double temperature_c);

/// The inverse. Errors: measure.out-of-range: also of a resistance that would be beyond -100 to 300 °C.
Result<double> thermistorTemperature_c(const BetaCurve& curve, double resistance_ohm);

struct SteinhartHart {
    double a = 0;
    double b = 0;
    double c = 0;
};

/// After [2]. Errors: measure.out-of-range: coefficients that are not finite, or that lead beyond -100 to 300 °C.
Result<double> thermistorTemperature_c(const SteinhartHart& curve, double resistance_ohm);

} // namespace proofwalk::measure
