// SPDX-License-Identifier: GPL-3.0-or-later
// What a sample of devices says of the rest: the retest after a change.
//   [1] Hypergeometric distribution: a sample of n out of N meets none of D faults with the chance C(N-D, n) / C(N, n).
//   [2] NFPA 72, 2002 and 2013: after a site-specific software change 10 % of the devices not known to be affected, at
//       most 50; quoted on public pages. All that is known to be affected is tested besides. The adopted edition goes
//       first.
// The sample is drawn at random: one chosen for being near the panel proves nothing.
#pragma once

#include "core/base/result.h"

namespace proofwalk::measure {

/// Devices in question; of them drawn; of them faulty. 1 to 1000000 devices (our limit).
struct Sample {
    int lot = 0;
    int drawn = 0;
    int faulty = 0;
};

/// After [1]; 1 if nothing is drawn or nothing is faulty, 0 if fewer are left out than are faulty.
/// Errors: measure.out-of-range {input, found, wanted}.
Result<double> chanceToMissAll(const Sample& sample);

/// The fewest that must be drawn to meet at least one of `faulty` (1 or more) with that confidence (0.5 to below 1).
/// Errors: measure.out-of-range.
Result<int> sampleToMeetOne(int lot, int faulty, double confidence);

/// What a sample without a fault proves: with that confidence at most this many of the lot are faulty. A sample of
/// everything proves 0. Errors: measure.out-of-range.
Result<int> faultyAtMost(int lot, int drawn, double confidence);

/// The sample of [2]: a tenth of the rest, rounded up, at most 50; at least one, if there is any.
/// Error: measure.out-of-range: fewer than none, more than 1000000.
Result<int> retestSample(int restOfDevices);

} // namespace proofwalk::measure
