// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/measure/audibility.h"

#include "core/measure/inputs.h"

#include <algorithm>
#include <cmath>

namespace proofwalk::measure {
namespace {

constexpr double nfpaMost_dba = 110; // NFPA 72, editions 2007 to 2019
constexpr double bsMost_dba = 120;   // BS 5839-1

double leastBy(AudibilityRule rule, double average_dba, double loudest_dba)
{
    switch (rule) {
    case AudibilityRule::nfpaPublic: return std::max(average_dba + 15, loudest_dba + 5);
    case AudibilityRule::nfpaPrivate: return std::max(average_dba + 10, loudest_dba + 5);
    case AudibilityRule::nfpaSleeping: return std::max({average_dba + 15, loudest_dba + 5, 75.0});
    case AudibilityRule::bsGeneral: return std::max(65.0, average_dba + 5);
    case AudibilityRule::bsReduced: return std::max(60.0, average_dba + 5);
    case AudibilityRule::bsBedhead: return std::max(75.0, average_dba + 5);
    }
    return 0;
}

bool isNfpa(AudibilityRule rule)
{
    return rule == AudibilityRule::nfpaPublic || rule == AudibilityRule::nfpaPrivate
        || rule == AudibilityRule::nfpaSleeping;
}

} // namespace

Result<AudibilityLimits> audibilityLimits(AudibilityRule rule, const Ambient& ambient)
{
    if (auto sound = checkWithin("ambient_dba", ambient.average_dba, 0, 140); !sound) return passOn(sound);
    // Without a loud minute of its own the average is the loudest there is.
    const double loudest_dba = ambient.loudest60s_dba.value_or(ambient.average_dba);
    if (auto sound = checkWithin("loudest_dba", loudest_dba, 0, 140); !sound) return passOn(sound);
    const AudibilityLimits limits{leastBy(rule, ambient.average_dba, loudest_dba),
                                  isNfpa(rule) ? nfpaMost_dba : bsMost_dba};
    if (limits.least_dba > limits.most_dba)
        return failure("measure.too-loud-to-be-heard", "",
                       {{"found", written(limits.least_dba)}, {"wanted", written(limits.most_dba)}});
    return limits;
}

Result<SounderAdvice> soundersNeeded(double measured_dba, double wanted_dba, const SoundSource& sounder, double loss_db)
{
    if (auto sound = checkWithin("measured_dba", measured_dba, 0, 140); !sound) return passOn(sound);
    if (auto sound = checkWithin("wanted_dba", wanted_dba, 0, 140); !sound) return passOn(sound);
    if (auto sound = checkWithin("loss_db", loss_db, 0, 80); !sound) return passOn(sound);
    SounderAdvice advice;
    advice.lacking_dba = wanted_dba - measured_dba;
    if (advice.lacking_dba <= 0) return advice;
    advice.added_dba = 10 * std::log10(std::pow(10, wanted_dba / 10) - std::pow(10, measured_dba / 10));
    const double times = std::pow(10, advice.lacking_dba / 10);
    if (times > 1000)
        return outOfRange("measured_dba", measured_dba,
                          fmt::format("{:g} or more: 30 dB below what is wanted", wanted_dba - 30));
    // A hair's breadth over a whole number is rounding, not another sounder.
    advice.moreOfTheSame = static_cast<int>(std::ceil(times - 1 - 1e-9));
    auto distance = distanceForLevel_m({sounder.level_db - loss_db, sounder.at_m}, advice.added_dba);
    if (!distance) return passOn(distance);
    advice.oneMoreWithin_m = *distance;
    return advice;
}

} // namespace proofwalk::measure
