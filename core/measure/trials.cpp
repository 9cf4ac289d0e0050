// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/measure/trials.h"

#include "core/measure/distribution.h"
#include "core/measure/inputs.h"

#include <algorithm>
#include <cmath>

namespace proofwalk::measure {
namespace {

constexpr int mostTries = 1'000'000;

Result<void> checkConfidence(double confidence)
{
    if (confidence >= 0.5 && confidence < 1) return {};
    return outOfRange("confidence", confidence, "0.5 to below 1");
}

Result<void> check(const TrialCount& count, double confidence)
{
    if (auto sound = checkWithin("tries", count.tries, 1, mostTries); !sound) return sound;
    if (auto sound = checkWithin("hits", count.hits, 0, count.tries); !sound) return sound;
    return checkConfidence(confidence);
}

/// The lower limit that a share `tail` of the beta distribution lies below.
Result<double> lowerLimit(const TrialCount& count, double tail)
{
    if (count.hits == 0) return 0;
    return betaQuantile(tail, count.hits, count.tries - count.hits + 1);
}

Result<double> upperLimit(const TrialCount& count, double tail)
{
    // The hits' upper limit is what the misses' lower limit leaves, and keeps its digits near 1.
    auto misses = lowerLimit({count.tries - count.hits, count.tries}, tail);
    if (!misses) return passOn(misses);
    return 1 - *misses;
}

} // namespace

Result<ChanceInterval> clopperPearson(const TrialCount& count, double confidence)
{
    if (auto sound = check(count, confidence); !sound) return passOn(sound);
    const double tail = (1 - confidence) / 2;
    auto lower = lowerLimit(count, tail);
    if (!lower) return passOn(lower);
    auto upper = upperLimit(count, tail);
    if (!upper) return passOn(upper);
    return ChanceInterval{*lower, *upper};
}

Result<ChanceInterval> wilson(const TrialCount& count, double confidence)
{
    if (auto sound = check(count, confidence); !sound) return passOn(sound);
    auto below = normalQuantile((1 - confidence) / 2);
    if (!below) return passOn(below);
    const double z = *below == 0 ? 0 : -*below;
    const double k = count.hits;
    const double n = count.tries;
    const double middle = k + z * z / 2;
    const double half = z * std::sqrt(k * (n - k) / n + z * z / 4);
    // At the ends they are 0 and 1 exactly, but for rounding.
    return ChanceInterval{count.hits == 0 ? 0 : (middle - half) / (n + z * z),
                          count.hits == count.tries ? 1 : (middle + half) / (n + z * z)};
}

Result<double> provedAtLeast(const TrialCount& count, double confidence)
{
    if (auto sound = check(count, confidence); !sound) return passOn(sound);
    return lowerLimit(count, 1 - confidence);
}

Result<double> provedAtMost(const TrialCount& count, double confidence)
{
    if (auto sound = check(count, confidence); !sound) return passOn(sound);
    return upperLimit(count, 1 - confidence);
}

Result<int> successRun(double reliability, double confidence)
{
    if (auto sound = checkConfidence(confidence); !sound) return passOn(sound);
    if (!(reliability > 0 && reliability <= 0.99999))
        return outOfRange("reliability", reliability, "above 0 to 0.99999");
    const double runs = std::log(1 - confidence) / std::log(reliability);
    if (runs > mostTries) return outOfRange("confidence", confidence, "less: over a million trials would be needed");
    // 1 - 0.9^2 is 0.19 but for the last bit: a hair over a whole number is that number.
    return std::max(1, static_cast<int>(std::ceil(runs * (1 - 1e-12))));
}

Result<double> provedWithUniformPrior(int tries, double confidence)
{
    if (auto sound = check({tries, tries}, confidence); !sound) return passOn(sound);
    return std::pow(1 - confidence, 1.0 / (tries + 1));
}

Result<double> chanceToKeepRule(int needed, int tries, double chance)
{
    if (auto sound = checkWithin("tries", tries, 1, mostTries); !sound) return passOn(sound);
    if (auto sound = checkWithin("needed", needed, 1, tries); !sound) return passOn(sound);
    if (auto sound = checkWithin("chance", chance, 0, 1); !sound) return passOn(sound);
    // As misses: at most tries - needed of them, which keeps the digits of a chance near 1.
    return binomialAtMost(tries - needed, tries, 1 - chance);
}

} // namespace proofwalk::measure
