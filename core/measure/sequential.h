// SPDX-License-Identifier: GPL-3.0-or-later
// When to stop trying: after each trial, is it enough to call it good, enough to call it bad, or must it go on?
//   [1] Wald's sequential probability ratio test, 1945, with his bounds ln((1 - b) / a) and ln(b / (1 - a)). From
//       memory.
// Wald's bounds keep the chance of a wrong "good" to a / (1 - b) and both together to a + b, whatever the number of
// trials.
#pragma once

#include "core/base/result.h"

#include <vector>

namespace proofwalk::measure {

/// What must be told apart, and how surely.
struct SequentialRule {
    double bad = 0.70; ///< a chance of success so low that calling it good would be a mistake
    double good = 0.95; ///< a chance so high that calling it bad would be one
    double wrongGood = 0.05; ///< a: how often a bad one may be called good
    double wrongBad = 0.05; ///< b: how often a good one may be called bad
};

enum class Enough { goOn, good, bad };

struct SequentialStanding {
    Enough verdict = Enough::goOn;
    int decidedAt = 0; ///< trials when it was decided; 0 while it goes on
    int moreHits = 0; ///< without a miss from here on, this many more are enough for good; 0 once decided
    double evidence = 0; ///< ln of the likelihood ratio, good over bad, at the decision or at the end
    double goodFrom = 0; ///< the evidence that is enough for good
    double badFrom = 0; ///< and, below zero, for bad
};

/// Goes through the trials in their order; what comes after the decision changes nothing. No trial is in order too.
/// 0 < bad, bad + 0.01 <= good < 1; both errors above 0 and below 0.5; at most 1000000 trials.
/// Errors: measure.out-of-range {input, found, wanted}.
Result<SequentialStanding> sequentialStanding(const SequentialRule& rule, const std::vector<bool>& hits);

} // namespace proofwalk::measure
