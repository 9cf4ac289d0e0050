// SPDX-License-Identifier: GPL-3.0-or-later
// What the states of a network look like to a meter and to a panel, and which of them cannot be told apart.
//   [1] JCGM 100:2008, 5.1.2: independent contributions add as the root of the sum of their squares.
#pragma once

#include "core/measure/loop.h"
#include "core/measure/network.h"

#include <span>

namespace proofwalk::measure {

/// One thing a network may be doing.
struct NetworkState {
    enum class Pair {
        whole,
        cut,    ///< interrupted
        shorted ///< bridged anywhere along the cable
    };
    Pair pair = Pair::whole;
    Parts acted = 0; ///< of a whole pair: the contacts that are not at rest
};

/// At rest; every set of acted contacts (with more than four contacts every single one and all together); cut; shorted.
std::vector<NetworkState> statesOf(const Network& network);

/// How far apart the parts may be from what is printed on them.
enum class Spread {
    worstCase, ///< every part at the end of its tolerance that is worse
    rootSumSquares, ///< resistors as independent parts after [1]: half-width sqrt(sum of the squares of what each alone
    ///< does); the cable still from its least to its most. Two resistors off one reel are not
    ///< independent: then the worst case holds.
};

/// The readings the state may give, without the meter's own error. Whoever reads an open circuit reads at least the
/// highest resistance a whole pair can have: that is the lower end of its window, without an upper one.
Window windowOf(const Network& network, const NetworkState& state, Spread spread = Spread::worstCase);

/// Two states by number whose windows lie closer than twice the meter's expanded uncertainty: upper(A) + U >= lower(B)
/// - U.
struct Alike {
    std::size_t a;
    std::size_t b;
};
/// Error: measure.out-of-range {expanded_ohm}.
Result<std::vector<Alike>> statesAlike(const Network& network, std::span<const NetworkState> states,
                                       double expanded_ohm, Spread spread = Spread::worstCase);

/// Where a panel changes its mind: what it shows from this resistance up to the next threshold.
struct PanelBand {
    std::string shows; ///< the panel's word: "normal"
    double from_ohm = 0; ///< the first begins at 0
};

/// Which bands the state may fall into, by number: one if the panel always shows the same. The panel's own error is
/// taken as that of the meter.
/// Errors: measure.bands-order {found} (none, the first not from 0, or not rising); measure.out-of-range
/// {expanded_ohm}.
Result<std::vector<std::size_t>> bandsOfState(const Network& network, const NetworkState& state,
                                              std::span<const PanelBand> bands, double expanded_ohm);

/// The middle of the gap between two windows, where a threshold has most room on both sides; nothing if they overlap.
std::optional<double> thresholdBetween_ohm(const Window& lower, const Window& upper);

/// How far the upper window begins above the end of the lower; below 0 if they overlap. Infinite if one has no such
/// side.
double gapBetween_ohm(const Window& lower, const Window& upper);

/// The tolerance at which R1 and R1 + R2, both of it, begin to overlap: R2 / (2 R1 + R2), in percent; no cable, no
/// meter.
/// Errors: measure.out-of-range {input}: not above 0, or above 10^9.
Result<double> greatestTolerance_pct(double eol_ohm, double alarm_ohm);

} // namespace proofwalk::measure
