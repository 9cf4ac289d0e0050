// SPDX-License-Identifier: GPL-3.0-or-later
// A thermocouple of type K.
//   [1] NIST ITS-90 thermocouple database (SRD 60): reference functions of type K, in mV with the reference at 0 °C,
//       -270 to 1372 °C. Above 0 °C an exponential belongs to it (0.119 mV at 127 °C).
// Class 2 wire is +-2.5 °C to 333 °C: by itself too coarse for a freezer's limit.
#pragma once

#include "core/base/result.h"

namespace proofwalk::measure {

/// After [1]. Error: measure.out-of-range {input, found, wanted}.
Result<double> typeKVoltage_mv(double temperature_c);

/// The inverse, found by halving to below a millionth of a degree. -6.458 to 54.886 mV. Error: measure.out-of-range.
Result<double> typeKTemperature_c(double voltage_mv);

/// The temperature at the junction, from the voltage at the meter and the temperature there. Millivolts are added,
/// never degrees: adding 22 °C to the temperature of 3.000 mV is 0.8 °C wrong. Cold junction from -20 to 70 °C (our
/// limit).
/// Errors: measure.out-of-range.
Result<double> typeKJunction_c(double atMeter_mv, double coldJunction_c);

} // namespace proofwalk::measure
