// SPDX-License-Identifier: GPL-3.0-or-later
// Is a reading inside its limits, outside, or too near to say?
//   [1] ILAC-G8:09/2019, 4.2: guard band w = U (k = 2), as quoted on a public page.
//   [2] JCGM 106:2012, 7.2 to 7.4 (conformance probability) and 8.3 (acceptance limits); clause numbers from the
//       contents of a public guide, not from the page itself.
#pragma once

#include "core/base/decimal.h"
#include "core/base/result.h"

#include <optional>

namespace proofwalk::measure {

/// What a reading with its uncertainty says about its limits.
enum class Conformity { pass, fail, undecided };

/// A limit on one quantity: at least one side. In the unit of the reading (the caller converts, exactly).
struct Tolerance {
    std::optional<base::Decimal> lower;
    std::optional<base::Decimal> upper;
};

/// The guard band of [1] on both sides, in exact decimal arithmetic:
///   pass       lower + U <= value <= upper - U
///   fail       value < lower - U, or value > upper + U
///   undecided  otherwise
/// `expanded` is U (k = 2) in the unit of the reading; without one the reading is judged as it stands (U = 0).
/// A pass is wrong at most 2.3 times in 100 for one limit, if the errors are normal and U is honest; for one
/// dominant rectangular part that figure does not hold (the verdict is then the more cautious).
/// Errors: measure.tolerance-missing (no side); measure.tolerance-empty {lower, upper} (lower > upper);
/// measure.uncertainty-negative {found}; base.decimal-range (limit and U further apart than 15 digits reach).
Result<Conformity> judge(const base::Decimal& value, const std::optional<base::Decimal>& expanded,
                         const Tolerance& tolerance);

/// The probability that the true value lies inside the limits, value and limits in one unit, after [2]:
///   Phi((upper - value) / u) - Phi((lower - value) / u), a missing side counting as infinitely far.
/// For the report, never for a verdict. True for normal errors; for a single rectangular part it is wrong in the
/// tails (0.85 instead of 0.80 at three fifths of the half-width from the limit).
/// Errors: measure.tolerance-missing; measure.tolerance-empty {lower, upper}; measure.out-of-range {input, found,
/// wanted}: an uncertainty that is not above zero, or anything not finite.
Result<double> conformanceProbability(double value, double standardUncertainty, std::optional<double> lower,
                                      std::optional<double> upper);

/// The same where one rectangular part of half-width `halfWidth` rules the uncertainty: the share of value -+ halfWidth
/// that lies inside the limits, after [2] with that density. What the normal formula gets wrong in the tails.
/// Errors: measure.tolerance-missing; measure.tolerance-empty {lower, upper}; measure.out-of-range.
Result<double> conformanceProbabilityRectangular(double value, double halfWidth, std::optional<double> lower,
                                                 std::optional<double> upper);

} // namespace proofwalk::measure
