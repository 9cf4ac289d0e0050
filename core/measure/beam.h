// SPDX-License-Identifier: GPL-3.0-or-later
// Light beams: how they spread and miss, and what smoke or a filter takes.
//   [1] Geometry, and the law of reflection: a mirror tilted by d turns the ray by 2 d.
//   [2] Inverse square once the spot is larger than the lens; definition of optical density.
//   [3] Obscuration per length, the form of UL 268 and EN 54-7: 1 - (1 - O)^(1 / L).
// Decibels here are of light, 10 log10 of power; the voltage after a photodiode falls by twice as many.
// Lengths above 0 to 10000 m, angles as stated (our limits).
#pragma once

#include "core/base/result.h"

namespace proofwalk::measure {

/// Diameter of the spot after [1]: D0 + 2 L tan(q / 2), q the full divergence, 0 to 90 degrees; D0 of the lens, 0 to 10
/// m.
/// Errors: measure.out-of-range {input, found, wanted}.
Result<double> spotDiameter_m(double length_m, double divergence_deg, double lens_m = 0);

/// How far beside its aim a beam lands: L tan d, d from 0 to 45 degrees. Errors: measure.out-of-range.
Result<double> aimOffset_m(double length_m, double misalignment_deg);

/// The same for a reflected beam, back at the receiver: L tan 2 d, L one way, d the tilt of a flat mirror, 0 to 22.5
/// degrees. A retroreflector forgives its tilt. Errors: measure.out-of-range.
Result<double> mirrorOffset_m(double length_m, double tilt_deg);

/// What a longer way costs, below zero: 20 log10(L1 / L2), after [2]. Errors: measure.out-of-range.
Result<double> spreadLoss_db(double from_m, double to_m);

/// What a filter or smoke of that obscuration leaves, below zero: 10 log10(1 - O); 0 to below 100 %, as [2].
/// Error: measure.out-of-range.
Result<double> filterLoss_db(double obscuration_pct);

/// Smoke evenly along a beam.
struct Obscuration {
    double perMetre_pct = 0;
    double perFoot_pct = 0;
    double density_per_m = 0; ///< optical density: log10(1 / (1 - O)) / L
    double loss_db_per_m = 0; ///< ten times that
};
/// From the whole over a length, after [3]. Errors: measure.out-of-range.
Result<Obscuration> obscurationPerLength(double total_pct, double length_m);

} // namespace proofwalk::measure
