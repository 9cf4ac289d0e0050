// SPDX-License-Identifier: GPL-3.0-or-later
// How loud an alarm must be where people are, and what to do where it is not.
//   [1] NFPA 72, editions 2002 to 2019: public, private and sleeping areas, and the greatest level; quoted on public
//       pages, but the +5 dB of private mode, which is from memory. Average ambient and the loudest sound of 60 s or
//       more.
//   [2] BS 5839-1: 65 dB(A) or 5 dB over the background, 75 dB(A) at the bedhead, at most 120 dB(A); quoted on public
//       pages. 60 dB(A) in stairs, rooms under 60 m2 and points of limited extent: from memory.
// The adopted edition of the code in force goes first.
#pragma once

#include "core/base/result.h"
#include "core/measure/soundlevel.h"

#include <optional>

namespace proofwalk::measure {

enum class AudibilityRule { nfpaPublic, nfpaPrivate, nfpaSleeping, bsGeneral, bsReduced, bsBedhead };

/// The sound without the alarm, in dB(A).
struct Ambient {
    double average_dba = 0; ///< for [2]: the background
    std::optional<double> loudest60s_dba; ///< the loudest that lasts 60 s or more; [1] only
};

struct AudibilityLimits {
    double least_dba = 0;
    double most_dba = 0;
};

/// nfpaPublic max(average + 15, loudest + 5), nfpaPrivate max(average + 10, loudest + 5), nfpaSleeping as public and at
/// least 75, all to 110 dB(A); bsGeneral max(65, background + 5), bsReduced max(60, background + 5), bsBedhead 75 or
/// background + 5 (that the 5 dB hold at a bedhead too is our reading), all to 120 dB(A). With a background so loud
/// that the least exceeds the most no level will do: visual signals are needed too.
/// Errors: measure.out-of-range {input, found, wanted}; measure.too-loud-to-be-heard {found, wanted}.
Result<AudibilityLimits> audibilityLimits(AudibilityRule rule, const Ambient& ambient);

/// What is lacking at a place, and two ways out of it.
struct SounderAdvice {
    double lacking_dba = 0; ///< wanted less measured; zero or less: nothing is
    double added_dba = 0; ///< what one more source must bring there, on top of what there is
    int moreOfTheSame = 0; ///< sounders as loud there as all that is heard now
    double oneMoreWithin_m =
        0; ///< a sounder as rated, in the free field and beyond the loss, must stand nearer than this
};

/// added = 10 log10(10^(wanted / 10) - 10^(measured / 10)), after the sum of levels; n more of the same bring
/// 10 log10(n + 1); the distance after the inverse square law. To plan with: then it is measured again.
/// `wanted_dba` is the limit with the guard band of the meter on top; `loss_db` what lies between (0 to 80 dB).
/// If nothing is lacking all is zero. Errors: measure.out-of-range: also if more than 1000 of the same were needed.
Result<SounderAdvice> soundersNeeded(double measured_dba, double wanted_dba, const SoundSource& sounder,
                                     double loss_db);

} // namespace proofwalk::measure
