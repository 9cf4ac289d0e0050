// SPDX-License-Identifier: GPL-3.0-or-later
// What k of n proves.
//   [1] Clopper and Pearson, 1934: exact binomial limits by the beta distribution.
//   [2] Wilson, 1927: score limits; right on average, not guaranteed.
//   [3] Success run: (1 - C)^(1/n) from n trials without a miss. A form with a uniform prior has n + 1 in its place.
// Trials are taken as independent and of one chance. Walks past one detector are neither (one walker, one path, one
// temperature): the figures are then optimistic, and what is proved is proved of this path.
// Confidence from 0.5 to below 1; tries from 1 to 1000000 (our limit).
#pragma once

#include "core/base/result.h"

namespace proofwalk::measure {

struct TrialCount {
    int hits = 0;
    int tries = 0;
};

struct ChanceInterval {
    double lower = 0;
    double upper = 1;
};

/// Two-sided, after [1]: lower 0 without a hit, upper 1 without a miss. For 5 of 5 at 95 % from 0.478.
/// Errors: measure.out-of-range {input, found, wanted}.
Result<ChanceInterval> clopperPearson(const TrialCount& count, double confidence);

/// Two-sided, after [2]: always inside 0 to 1. Errors: measure.out-of-range.
Result<ChanceInterval> wilson(const TrialCount& count, double confidence);

/// "At least": the one-sided lower limit after [1]. For 5 of 5 at 95 % 0.549. Errors: measure.out-of-range.
Result<double> provedAtLeast(const TrialCount& count, double confidence);

/// "At most": the one-sided upper limit of the chance of a hit, after [1]; with misses for hits the greatest chance of
/// a miss. Errors: measure.out-of-range.
Result<double> provedAtMost(const TrialCount& count, double confidence);

/// The fewest trials without a miss that prove `reliability`: the least n with reliability^n <= 1 - C, after [3]: 29
/// for 0.90 and 59 for 0.95 at 95 %. Reliability above 0 to 0.99999; at most 1000000 trials. Errors:
/// measure.out-of-range.
Result<int> successRun(double reliability, double confidence);

/// What n trials without a miss prove, with a uniform prior: (1 - C)^(1/(n + 1)). Not used here for a verdict: it
/// claims one trial that was not made. Errors: measure.out-of-range.
Result<double> provedWithUniformPrior(int tries, double confidence);

/// The chance that a rule "`needed` of `tries`" is kept by something that succeeds with `chance`: how good the rule is
/// at telling a bad detector from a good one. Errors: measure.out-of-range.
Result<double> chanceToKeepRule(int needed, int tries, double chance);

} // namespace proofwalk::measure
