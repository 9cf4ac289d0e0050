// SPDX-License-Identifier: GPL-3.0-or-later
// The resistance of a copper pair: what a sound loop adds to its end-of-line resistor.
//   [1] IEC 60028:1925, annealed copper at 20 °C: 1/58 ohm mm2/m, coefficient 0.00393 per kelvin; as printed in
//       secondary tables.
//   [2] NFPA 70, Chapter 9, Table 8, note 2: the same straight line from 75 °C, 0.00323 per kelvin.
#pragma once

#include "core/base/result.h"
#include "core/measure/conductor.h" // IWYU pragma: export

namespace proofwalk::measure {

/// A straight run of two-conductor cable, as drawn on the plan.
struct CableRun {
    double length_m = 0;       ///< one way; the current goes out and back
    double section_mm2 = 0;    ///< of one conductor
    double temperature_c = 20; ///< of the conductor, not of the room
};

/// Out and back, in ohms: R20 = 2 L / (58 A), R = R20 (1 + 0.00393 (T - 20)), after [1].
/// Ideal copper of the section named: what is sold as 0.22 mm2 may measure a fifth more (see conductor.h for the
/// permitted most). Not for copper-clad aluminium or steel. Contacts and joints come on top.
/// From -40 °C to 90 °C; the straight line is not claimed beyond (our choice, no source).
/// Errors: measure.out-of-range {input, found, wanted}: a length or section not above zero, or beyond 100 km and 10^4
/// mm2 (our choice), a temperature out of range. Nothing is clamped.
Result<double> pairResistance_ohm(const CableRun& run);

/// A copper resistance known at one temperature and wanted at another.
struct ResistanceAt {
    double resistance_ohm = 0;
    double known_c = 20;
    double wanted_c = 20;
};

/// R (1 + 0.00393 (wanted - 20)) / (1 + 0.00393 (known - 20)), after [1]. Using 0.00393 straight from 75 °C would
/// make the wire 5 % too good; from there the coefficient is [2]. Both temperatures from -40 °C to 90 °C.
/// Errors: measure.out-of-range {input, found, wanted}.
Result<double> resistanceAtTemperature_ohm(const ResistanceAt& known);

/// The same along a straight line from the known temperature, with the coefficient that holds *there*: R (1 + a (wanted
/// - known)). [1] has 0.00393 per kelvin at 20 °C, [2] 0.00323 (copper) and 0.00330 (aluminium) at 75 °C; one taken at
/// the other's temperature makes the wire 5 % too good. Both temperatures from -40 °C to 90 °C.
/// Errors: measure.out-of-range {input, found, wanted}; a coefficient is above 0 and at most 0.0075.
Result<double> resistanceByCoefficient_ohm(const ResistanceAt& known, double coefficient_per_k);

/// The temperature at which a copper resistance known at one temperature reads `found_ohm`, after [1].
/// Errors: measure.out-of-range {input}: known_c, or the temperature found, is not from -40 °C to 90 °C; a resistance
/// is not above 0.
Result<double> temperatureFromResistance_c(double resistance_ohm, double known_c, double found_ohm);

/// Diameter of a wire by its American gauge: 0.127 mm x 92^((36 - gauge) / 39) (ASTM B258). Gauges 10 to 30.
/// Error: measure.out-of-range {input, found, wanted}.
Result<double> gaugeDiameter_mm(int gauge);

/// Section of a wire by its American gauge: pi d^2 / 4, see gaugeDiameter_mm.
/// Gauges 10 to 30, the range of alarm cabling. Error: measure.out-of-range {input, found, wanted}.
Result<double> gaugeSection_mm2(int gauge);

/// Section of `count` wires of one diameter, without allowance for their lay (typically 1 to 3 % more resistance).
/// Errors: measure.out-of-range {input, found, wanted}.
Result<double> strandedSection_mm2(int count, double diameter_mm);

} // namespace proofwalk::measure
