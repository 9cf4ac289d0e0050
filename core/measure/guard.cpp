// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/measure/guard.h"

#include "core/measure/distribution.h"
#include "core/measure/inputs.h"

namespace proofwalk::measure {
namespace {

/// The reading between `inside`, which has the confidence, and `outside`, which has not, where it is just reached.
double crossing(double inside, double outside, double u, double lower, double upper, double confidence)
{
    for (int i = 0; i < 200; ++i) { // halved until the two are neighbours
        const double middle = inside + (outside - inside) / 2;
        if (middle == inside || middle == outside) break;
        const double p = normalBelow((upper - middle) / u) - normalBelow((lower - middle) / u);
        (p >= confidence ? inside : outside) = middle;
    }
    return inside;
}

} // namespace

Result<AcceptanceLimits> acceptanceLimits(double guard, std::optional<double> lower, std::optional<double> upper)
{
    if (auto sound = checkNotNegative("guard", guard); !sound) return passOn(sound);
    if (auto sound = checkLimits(lower, upper); !sound) return passOn(sound);
    AcceptanceLimits limits;
    if (lower) {
        limits.passFrom = *lower + guard;
        limits.failBelow = *lower - guard;
    }
    if (upper) {
        limits.passTo = *upper - guard;
        limits.failAbove = *upper + guard;
    }
    limits.nothingPasses = lower && upper && *limits.passFrom > *limits.passTo;
    return limits;
}

Result<Conformity> judgeComputed(double value, double guard, std::optional<double> lower, std::optional<double> upper)
{
    if (auto sound = checkFinite("value", value); !sound) return passOn(sound);
    auto limits = acceptanceLimits(guard, lower, upper);
    if (!limits) return passOn(limits);
    if ((lower && value < *limits->failBelow) || (upper && value > *limits->failAbove)) return Conformity::fail;
    const bool inside = (!lower || value >= *limits->passFrom) && (!upper || value <= *limits->passTo);
    return inside ? Conformity::pass : Conformity::undecided;
}

Result<double> guardForRisk(double standardUncertainty, double risk)
{
    if (auto sound = checkAbove("standard", standardUncertainty, 0); !sound) return passOn(sound);
    if (!(risk > 0 && risk <= 0.5)) return outOfRange("risk", risk, "above 0 to 0.5");
    // The quantile of the risk itself: 1 - risk would lose the digits of a small one.
    auto z = normalQuantile(risk);
    if (!z) return passOn(z);
    return *z == 0 ? 0 : -*z * standardUncertainty;
}

Result<double> riskOfGuard(double guard, double standardUncertainty)
{
    if (auto sound = checkNotNegative("guard", guard); !sound) return passOn(sound);
    if (auto sound = checkAbove("standard", standardUncertainty, 0); !sound) return passOn(sound);
    return normalBelow(-guard / standardUncertainty);
}

Result<AcceptanceInterval> acceptanceByProbability(double standardUncertainty, double lower, double upper,
                                                   double confidence)
{
    if (auto sound = checkAbove("standard", standardUncertainty, 0); !sound) return passOn(sound);
    if (auto sound = checkLimits(lower, upper); !sound) return passOn(sound);
    if (!(confidence >= 0.5 && confidence < 1)) return outOfRange("confidence", confidence, "0.5 to below 1");
    const double middle = lower + (upper - lower) / 2;
    auto best = conformanceProbability(middle, standardUncertainty, lower, upper);
    if (!best) return passOn(best);
    if (*best < confidence)
        return failure("measure.tolerance-too-narrow", "", {{"found", fmt::format("{:.3g}", *best)}});
    const auto edge = [&](double limit) {
        return crossing(middle, limit, standardUncertainty, lower, upper, confidence);
    };
    return AcceptanceInterval{edge(lower), edge(upper)};
}

Result<double> leastReadingToExceed(double limit, double relativeUncertainty, double assurance)
{
    if (auto sound = checkAbove("limit", limit, 0); !sound) return passOn(sound);
    if (auto sound = checkAbove("relative", relativeUncertainty, 0); !sound) return passOn(sound);
    if (!(assurance >= 0.5 && assurance < 1)) return outOfRange("assurance", assurance, "0.5 to below 1");
    auto z = normalQuantile(assurance);
    if (!z) return passOn(z);
    if (*z * relativeUncertainty >= 1)
        return outOfRange("relative", relativeUncertainty, fmt::format("below {:.4g}, 1 / z", 1 / *z));
    return limit / (1 - *z * relativeUncertainty);
}

Result<double> capabilityIndex(double standardUncertainty, double lower, double upper)
{
    if (auto sound = checkAbove("standard", standardUncertainty, 0); !sound) return passOn(sound);
    if (auto sound = checkLimits(lower, upper); !sound) return passOn(sound);
    return (upper - lower) / (4 * standardUncertainty);
}

Result<FourWords> judgeInFourWords(const base::Decimal& value, const std::optional<base::Decimal>& expanded,
                                   const Tolerance& tolerance)
{
    auto guarded = judge(value, expanded, tolerance);
    if (!guarded) return passOn(guarded);
    if (*guarded == Conformity::pass) return FourWords::pass;
    if (*guarded == Conformity::fail) return FourWords::fail;
    auto plain = judge(value, {}, tolerance);
    if (!plain) return passOn(plain);
    return *plain == Conformity::pass ? FourWords::conditionalPass : FourWords::conditionalFail;
}

} // namespace proofwalk::measure
