// SPDX-License-Identifier: GPL-3.0-or-later
// Decision rules: how far inside a limit a reading must lie before it proves anything, and what is risked.
//   [1] JCGM 106:2012: guard bands and acceptance limits, as quoted on public pages.
//   [2] ILAC-G8:09/2019: simple acceptance, guard band w = U, and its four words, as quoted on a public page.
//   [3] ISO 14253-1:2017: conformity proved with 95 % for one limit, w = 1.645 u; earlier editions w = U (k = 2). From
//       memory.
#pragma once

#include "core/base/decimal.h"
#include "core/base/result.h"
#include "core/measure/conformity.h"

#include <optional>

namespace proofwalk::measure {

/// Where a reading passes, and where it fails, for a guard band w on both sides of each limit.
struct AcceptanceLimits {
    std::optional<double> passFrom;  ///< lower + w
    std::optional<double> passTo;    ///< upper - w
    std::optional<double> failBelow; ///< lower - w
    std::optional<double> failAbove; ///< upper + w
    bool nothingPasses = false;      ///< the guards of both limits overlap: no reading proves conformity
};

/// After [1], all in one unit. Errors: measure.tolerance-missing; measure.tolerance-empty {lower, upper};
/// measure.out-of-range {input, found, wanted}: a guard below zero, anything not finite.
Result<AcceptanceLimits> acceptanceLimits(double guard, std::optional<double> lower, std::optional<double> upper);

/// judge() for figures that were computed and not typed: pass from passFrom to passTo, both ends included; fail outside
/// failBelow and failAbove; else undecided. Errors: those of acceptanceLimits(); measure.out-of-range for the value.
Result<Conformity> judgeComputed(double value, double guard, std::optional<double> lower, std::optional<double> upper);

/// The guard band w = z u that keeps the chance of a false pass at one limit to `risk`, z the normal quantile of
/// 1 - risk: 1.645 u for 5 %, the rule of [3]; after [1]. Risk above 0, at most 0.5 (then w = 0, simple acceptance).
/// For two limits nearer than some 4 u the risks of both add up: see acceptanceByProbability().
/// Errors: measure.out-of-range: an uncertainty not above zero, a risk out of range.
Result<double> guardForRisk(double standardUncertainty, double risk);

/// The chance that the true value lies beyond the limit when the reading stands exactly on the acceptance limit:
/// 1 - Phi(w / u), after [1]: 2.3 % for w = 2 u, 50 % for w = 0. Errors: measure.out-of-range.
Result<double> riskOfGuard(double guard, double standardUncertainty);

/// The readings whose conformance probability is at least `confidence`, both limits taken together.
struct AcceptanceInterval {
    double from = 0;
    double to = 0;
};

/// After [1], for normal errors: the interval about the middle of the limits. Confidence from 0.5 to below 1.
/// Errors: measure.tolerance-too-narrow {found}: no reading reaches that confidence, and the best one has `found`;
/// measure.tolerance-empty; measure.out-of-range.
Result<AcceptanceInterval> acceptanceByProbability(double standardUncertainty, double lower, double upper,
                                                   double confidence);

/// The least reading that shows a quantity to exceed `limit` with that assurance, if the uncertainty is a fixed
/// fraction of the quantity: limit / (1 - z r), after [1]. Limit above zero; relative uncertainty above 0; assurance
/// from 0.5 to below 1. Errors: measure.out-of-range, also if z r reaches 1: then no reading is enough.
Result<double> leastReadingToExceed(double limit, double relativeUncertainty, double assurance);

/// (upper - lower) / (4 u): how many times the tolerance holds the interval of a reading; after [1]. Below 1 a guard
/// band of U leaves less than nothing. Errors: measure.out-of-range; measure.tolerance-empty.
Result<double> capabilityIndex(double standardUncertainty, double lower, double upper);

/// The four words of [2].
enum class FourWords { pass, conditionalPass, conditionalFail, fail };

/// In exact decimals, w = U: pass as judge(); conditional pass inside the limits but nearer than U; conditional fail
/// outside by no more than U; fail beyond. The worst side decides. Errors: those of judge().
Result<FourWords> judgeInFourWords(const base::Decimal& value, const std::optional<base::Decimal>& expanded,
                                   const Tolerance& tolerance);

} // namespace proofwalk::measure
