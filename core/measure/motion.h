// SPDX-License-Identifier: GPL-3.0-or-later
// A person before a passive infrared detector: what its fan of zones sees.
//   [1] Geometry. Walking straight at the detector gives almost no signal: walk across the zones.
// Ranges above 0 to 100 m, speeds 0 to 10 m/s, heights 0 to 20 m (our limits).
#pragma once

#include "core/base/result.h"

namespace proofwalk::measure {

/// Distance between neighbouring zones at a range: r p, p in radians, after [1]; pitch above 0 to 90 degrees.
/// Errors: measure.out-of-range {input, found, wanted}.
Result<double> zonePitch_m(double range_m, double pitch_deg);

/// A walk, by its angle to the line of sight: 0 straight at the detector or away, 90 across.
struct Walk {
    double speed_m_per_s = 0;
    double range_m = 0;
    double angle_deg = 90;
};
struct Crossing {
    double across_m_per_s = 0;  ///< v sin b: what the zones see
    double along_m_per_s = 0;   ///< v cos b
    double angular_deg_per_s = 0; ///< across over range
};
/// After [1]; angle 0 to 90 degrees. Errors: measure.out-of-range.
Result<Crossing> crossing(const Walk& walk);

/// How often a second zones are entered: across / spacing. Detectors pass some 0.1 to 10 Hz (common practice).
/// Errors: measure.out-of-range.
Result<double> crossingFrequency_hz(const Walk& walk, double pitch_deg);

/// Where a zone tilted down by that angle from that height meets what is `target_m` tall: (h - z) / tan t. Nearer than
/// that it passes over, further out it meets the body. Tilt above 0 to below 90 degrees; the target lower than the
/// detector.
/// Errors: measure.out-of-range.
Result<double> zoneReach_m(double height_m, double tilt_deg, double target_m = 0);

} // namespace proofwalk::measure
