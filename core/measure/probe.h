// SPDX-License-Identifier: GPL-3.0-or-later
// Checking a temperature probe, correcting it, and how it follows what it stands in.
//   [1] Ice point 0.00 °C: crushed ice of pure water, a wet slush, stirred and insulated, the probe deep; +-0.01 to 0.1
//       °C in the field (common practice).
//   [2] Antoine constants of the NIST Chemistry WebBook for water, 344 to 373 K: boiling moves 0.28 °C a kPa. From
//       memory.
//   [3] JCGM 100:2008: rectangular half-widths, expanded uncertainties by their k.
//   [4] First-order lag: a probe in air follows doors, one in glycol follows the goods.
#pragma once

#include "core/base/result.h"

#include <span>

namespace proofwalk::measure {

struct ProbeCorrection {
    double correction_c = 0; ///< to be added to what the probe shows
    double expanded_c = 0; ///< its U (k = 2 or, for few readings, more)
};

/// From readings in the ice bath: 0 less their mean, with the spread of the readings and the bath's own uncertainty (a
/// half-width, above 0 to 1 °C), after [1] and [3]. From 2 readings, each -10 to 10 °C: what shows more is no ice bath.
/// Errors: measure.too-few-readings {found}; measure.out-of-range {input, found, wanted}.
Result<ProbeCorrection> icePointCheck(std::span<const double> readings_c, double bath_c);

/// A probe's reading as it is judged.
struct ProbeReading {
    double shown_c = 0;
    double correction_c = 0; ///< as of icePointCheck()
    double correctionExpanded_c = 0; ///< its U (k = 2)
    double halfWidth_c = 0; ///< the data sheet's +- elsewhere in the range, rectangular
};
struct Temperature {
    double value_c = 0;
    double standard_c = 0;
};
/// value = shown + correction; u = sqrt(a^2 / 3 + (U / 2)^2), after [3]. From -273.15 to 3000 °C.
/// Errors: measure.out-of-range.
Result<Temperature> correctedTemperature(const ProbeReading& reading);

/// Where water boils, after [2]: T = B / (A - log10 p) - C in bar and kelvin. From 0.324 bar (344 K) to 1.02 bar (373
/// K, rounded up to hold sea level). Error: measure.out-of-range.
Result<double> boilingPoint_c(double pressure_bar);

/// A first-order probe moved from one temperature into another, after [4].
struct Lag {
    double timeConstant_s = 0; ///< tau, above 0 to 1e6
    double from_c = 0;
    double into_c = 0;
};
/// T(t) = into + (from - into) exp(-t / tau). Errors: measure.out-of-range.
Result<double> probeAfter_c(const Lag& lag, double seconds);
/// t = tau ln((into - from) / (into - threshold)): when an alarm at the threshold is due.
/// Errors: measure.out-of-range; measure.never-reached {found, wanted}: the threshold does not lie between the two.
Result<double> timeToThreshold_s(const Lag& lag, double threshold_c);

/// (F - 32) 5 / 9, from -459.67 to 5432 °F. Error: measure.out-of-range.
Result<double> celsiusOfFahrenheit(double temperature_f);

} // namespace proofwalk::measure
