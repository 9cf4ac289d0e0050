// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/measure/sequential.h"

#include "core/measure/inputs.h"

#include <cmath>

namespace proofwalk::measure {
namespace {

constexpr double nearest = 0.01; // nearer chances take tens of thousands of trials to tell apart

Result<void> check(const SequentialRule& rule)
{
    if (!(rule.bad > 0 && rule.bad < 1)) return outOfRange("bad", rule.bad, "above 0 and below 1");
    if (!(rule.good >= rule.bad + nearest && rule.good < 1))
        return outOfRange("good", rule.good, fmt::format("{:g} or more, and below 1", rule.bad + nearest));
    if (!(rule.wrongGood > 0 && rule.wrongGood < 0.5))
        return outOfRange("wrong_good", rule.wrongGood, "above 0 and below 0.5");
    if (!(rule.wrongBad > 0 && rule.wrongBad < 0.5))
        return outOfRange("wrong_bad", rule.wrongBad, "above 0 and below 0.5");
    return {};
}

} // namespace

Result<SequentialStanding> sequentialStanding(const SequentialRule& rule, const std::vector<bool>& hits)
{
    if (auto sound = check(rule); !sound) return passOn(sound);
    if (auto sound = checkWithin("trials", static_cast<double>(hits.size()), 0, 1e6); !sound) return passOn(sound);
    const double ofHit = std::log(rule.good / rule.bad);
    const double ofMiss = std::log((1 - rule.good) / (1 - rule.bad));
    SequentialStanding now;
    now.goodFrom = std::log((1 - rule.wrongBad) / rule.wrongGood);
    now.badFrom = std::log(rule.wrongBad / (1 - rule.wrongGood));
    int tried = 0;
    int successes = 0;
    for (const bool hit : hits) {
        ++tried;
        successes += hit ? 1 : 0;
        now.evidence = successes * ofHit + (tried - successes) * ofMiss; // not summed up: no rounding gathers
        if (now.evidence >= now.goodFrom) now.verdict = Enough::good;
        if (now.evidence <= now.badFrom) now.verdict = Enough::bad;
        if (now.verdict == Enough::goOn) continue;
        now.decidedAt = tried;
        return now;
    }
    now.moreHits = static_cast<int>(std::ceil((now.goodFrom - now.evidence) / ofHit));
    return now;
}

} // namespace proofwalk::measure
