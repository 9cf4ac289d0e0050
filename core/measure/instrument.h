// SPDX-License-Identifier: GPL-3.0-or-later
// What an instrument's data sheet says about the uncertainty of one reading.
//   [1] JCGM 100:2008, 4.3.7 (limits without more knowledge: rectangular) and F.2.2.1 (resolution of a display).
#pragma once

#include "core/base/decimal.h"
#include "core/base/result.h"
#include "core/base/unit.h"

#include <optional>

namespace proofwalk::measure {

/// An instrument's accuracy as its data sheet gives it: +-(percent of reading + digits of the last place + fixed).
struct Accuracy {
    base::Decimal percentOfReading;      ///< 0.5 for "0.5 %"
    int digits = 0;                      ///< counts of the last place shown
    std::optional<base::Quantity> fixed; ///< "+-1.5 dB", "+-0.5 degrees"; convertible to the reading's unit
};

/// Expanded uncertainty U (k = 2) of a reading, in the reading's unit, rounded up to two significant digits:
///   a = |reading| percent / 100 + digits d + fixed, u = sqrt(a^2 / 3 + d^2 / 12), U = 2 u, after [1],
/// with d the last place of the reading as it was typed: 3.40 has d = 0.01. So the reading must be typed with all
/// the digits that were shown. An accuracy of all zeros leaves the resolution alone.
/// Says nothing of temperature outside the data sheet's range, of leads and contacts, nor of a worn battery.
/// Errors: measure.accuracy-negative {input, found}; measure.unit-mismatch {found, wanted}; base.decimal-range
/// (U is beyond what a Decimal holds).
Result<base::Decimal> expandedUncertainty(const base::Quantity& reading, const Accuracy& accuracy);

/// The same in full digits and with its parts, for the working: all in the reading's unit.
struct ReadingAccuracy {
    double reading = 0;
    double percentOfReading = 0; ///< 0.5 for "0.5 %"
    double digits = 0;           ///< counts of the last place
    double lastPlace = 0;        ///< d, the value of one count on the range read
    double fixed = 0;            ///< "+-1.5"
};
struct ReadingUncertainty {
    double halfWidth = 0;     ///< a = |reading| percent / 100 + digits d + fixed
    double specification = 0; ///< a / sqrt 3
    double resolution = 0;    ///< d / sqrt 12
    double standard = 0;      ///< u, both together
    double expanded = 0;      ///< U = 2 u
};

/// After [1]. Where the specification rules, U is 1.155 a: a itself as U would be nearly right, and too little.
/// Errors: measure.out-of-range {input, found, wanted}: a reading that is not finite, anything else below zero.
Result<ReadingUncertainty> readingUncertainty(const ReadingAccuracy& accuracy);

} // namespace proofwalk::measure
