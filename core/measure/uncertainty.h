// SPDX-License-Identifier: GPL-3.0-or-later
// Standard uncertainties and how they combine.
//   [1] JCGM 100:2008 (the GUM): half-widths and their divisors; repeated readings; combination; effective degrees of
//       freedom after Welch and Satterthwaite and the factor of Student's distribution.
#pragma once

#include "core/base/result.h"

#include <limits>
#include <span>

namespace proofwalk::measure {

/// How likely the values between -a and +a are, of which only the half-width a is known.
enum class Shape {
    rectangular, ///< all alike: a / sqrt 3. The one to take when nothing more is known
    triangular,  ///< the middle likelier, as for a sum of two alike: a / sqrt 6
    arcsine,     ///< the ends likelier, as for a swinging disturbance: a / sqrt 2
    normal95     ///< a is the 95 % interval of a normal one: a / 1.96
};

/// After [1]. Error: measure.out-of-range {input, found, wanted}: a half-width below zero.
Result<double> standardOfHalfWidth(double halfWidth, Shape shape);

/// One part of an uncertainty.
struct UncertaintyPart {
    double standard = 0;                                              ///< u, zero or more
    double degreesOfFreedom = std::numeric_limits<double>::infinity(); ///< from 1; infinite for a bound that is sure
};

struct CombinedUncertainty {
    double standard = 0;         ///< u = sqrt(sum u_i^2)
    double degreesOfFreedom = 0; ///< u^4 / sum(u_i^4 / nu_i); infinite if no part has few
    double coverage = 0;         ///< k, of Student's distribution at the degrees of freedom rounded down
    double expanded = 0;         ///< U = k u
};

/// After [1], for independent parts. `coverageProbability` 0.9545 gives k = 2.00 where no part has few degrees of
/// freedom, and more where one has. From 0.5 to below 1.
/// Errors: measure.out-of-range; measure.nothing-to-combine: no part, or all are zero.
Result<CombinedUncertainty> combine(std::span<const UncertaintyPart> parts, double coverageProbability = 0.9545);

/// Readings of one thing, repeated.
struct Repeated {
    double mean = 0;
    double deviation = 0; ///< s of one reading, with n - 1
    double ofMean = 0;    ///< s / sqrt n, with n - 1 degrees of freedom
};

/// After [1]. From 2 to 100000 readings; independent ones: a drift is not seen in the figure.
/// Errors: measure.too-few-readings {found}; measure.out-of-range: one that is not finite or beyond +-1e100.
Result<Repeated> repeated(std::span<const double> readings);

} // namespace proofwalk::measure
