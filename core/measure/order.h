// SPDX-License-Identifier: GPL-3.0-or-later
// In which order to visit stops: the least time until the last is done, from a fixed beginning, with what must come
// before what, what belongs together, what comes last, and what was agreed for a minute.
//   [1] M. Held and R. M. Karp, A dynamic programming approach to sequencing problems, J. SIAM 10 (1962): exact.
#pragma once

#include "core/base/result.h"

#include <cstdint>
#include <utility>
#include <vector>

namespace proofwalk::measure {

/// A stop at which to be at an agreed time; who comes early waits.
struct Agreed {
    std::size_t stop = 0;
    double at_s = 0; ///< from the beginning of the walk
};

/// What is asked. Stop 0 is where the walk begins, the panel.
struct Errand {
    std::size_t stops = 0;          ///< with the beginning; 1 to 5000
    std::vector<double> leg_s;      ///< from a to b at a * stops + b; finite, zero or more; lengths do as well
    bool back = false;              ///< the walk ends where it began
    std::vector<double> stay_s;     ///< at each stop; empty: none
    std::vector<bool> panelAfter;   ///< back to the panel after this stop, to read there what it did; empty: never
    std::vector<std::pair<std::size_t, std::size_t>> before; ///< first, then second
    std::vector<std::vector<std::size_t>> together;          ///< one right after the other, in any order
    std::vector<std::size_t> last;                           ///< after all others
    std::vector<Agreed> agreed;
};

struct Route {
    std::vector<std::size_t> order; ///< all stops, 0 first
    double time_s = 0;              ///< until all is done, waiting, staying and the way back included
    double waiting_s = 0;           ///< of that
    bool exact = false;             ///< no order takes less
};

/// Whether an errand can be walked at all. Errors: measure.out-of-range {input stops, leg_s, stay_s, panel_after,
/// before, together,
/// last, agreed_s}; measure.route-circle {found}: a stop that would have to come before itself.
Result<void> checkErrand(const Errand& errand);

/// The time of a given order, or that it breaks a rule.
/// Errors: those of checkErrand; measure.route-order {found}: not every stop once, from 0; measure.route-breaks {rule,
/// found}: before, together, last or agreed, and the stop.
Result<Route> timeOf(const Errand& errand, const std::vector<std::size_t>& order);

/// The best order of up to 12 stops besides the beginning, exactly [1]. Errors: those of checkErrand;
/// measure.out-of-range {input stops} for more; measure.route-none: no order obeys every rule.
Result<Route> bestOrder(const Errand& errand);

/// From 0 always to the nearest stop not yet visited, of equally near ones the first; rules are not looked at.
std::vector<std::size_t> nearestNeighbour(const Errand& errand);

} // namespace proofwalk::measure
