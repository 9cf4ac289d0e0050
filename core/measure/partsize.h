// SPDX-License-Identifier: GPL-3.0-or-later
// Which sizes of one part would explain a reading: the network solved for a part of unknown resistance.
#pragma once

#include "core/measure/diagnosis.h"

namespace proofwalk::measure {

/// Sizes from least to most; none if least is above most.
struct Sizes {
    double least_ohm;
    double most_ohm;
};
inline constexpr Sizes anySize{0, std::numeric_limits<double>::infinity()};
inline constexpr Sizes noSize{1, 0};

Sizes within(const Sizes& a, const Sizes& b);

/// The sizes of the mistake (one that has a size) that let the reading lie in the network's worst-case window. The
/// resistance is (a x + b) / (c x + d) in the size x: three values of it, at nothing, at a middle size and at an open
/// circuit, give it everywhere, for the least and for the most of all other parts.
Sizes sizesFor(const Network& network, const Suspicion& suspicion, const LoopReading& reading, double range_ohm);

/// The part of the decades of usual sizes of this mistake that these take up; never nothing.
double usualShare(Mistake what, const Sizes& sizes);

/// The middle of the sizes on a logarithmic scale; the finite end of a range that is open.
double middleOf(const Sizes& sizes);

/// The E24 values whose tolerance reaches into the sizes.
struct PreferredIn {
    int count = 0;
    double share = 0; ///< of all E24 values that are usual
    std::optional<double> nearest_ohm; ///< to the middle
};
PreferredIn preferredIn(const Sizes& sizes, double relativeTolerance);

} // namespace proofwalk::measure
