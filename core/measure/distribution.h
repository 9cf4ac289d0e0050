// SPDX-License-Identifier: GPL-3.0-or-later
// The distributions that verdicts and trials rest on. The functions themselves are Boost.Math's; here their inputs are
// checked and their failures become values.
//   Held against R 4.2.2 and SciPy 1.10.1 by the figures of tests/reference, and against a second, slow way there.
#pragma once

#include "core/base/result.h"

namespace proofwalk::measure {

/// Phi(z), the chance that a standard normal variable is at most z; right also in its tails. Not-a-number stays one.
double normalBelow(double z);

/// z with Phi(z) = probability. Error: measure.out-of-range, unless 0 < probability < 1.
Result<double> normalQuantile(double probability);

/// The quantile of Student's distribution; degreesOfFreedom from 1 up, infinity included (then the normal one).
/// Errors: measure.out-of-range {input, found, wanted}.
Result<double> studentQuantile(double probability, double degreesOfFreedom);

/// The quantile of the beta distribution with shapes a and b, both above 0 and at most 1e7 (our limit).
/// Errors: measure.out-of-range.
Result<double> betaQuantile(double probability, double a, double b);

/// The chance of at most `hits` successes in `tries` independent trials of one chance each.
/// 0 <= hits <= tries, tries from 1 to 1e6 (our limit). Errors: measure.out-of-range.
Result<double> binomialAtMost(int hits, int tries, double chance);

} // namespace proofwalk::measure
