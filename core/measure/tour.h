// SPDX-License-Identifier: GPL-3.0-or-later
// A good order of many stops, better the longer it is sought. From the nearest allowed stop to the next, then turning
// and
// moving stretches until none helps, then again and again from a small disturbance of the best [1].
// Exact up to 12 stops. The same seed and effort give the same order on every machine with IEEE 754 doubles.
//   [1] H. R. Lourenço, O. C. Martin and T. Stützle, Iterated local search (2003); moves after G. A. Croes (1958) and
//       I. Or (1976). From memory.
#pragma once

#include "core/measure/order.h"

#include <functional>

namespace proofwalk::measure {

struct Effort {
    std::uint64_t seed = 1;
    std::size_t rounds = 0; ///< disturbances tried; 0: usualRounds
    /// Told each better order as it is found; ends the search by returning false. May be empty.
    std::function<bool(const Route&)> better{};
};

/// How many disturbances a search takes if nobody says: 60 for each stop, 6000 at least; with rules, where each takes
/// longer and does more, 30 and 4000 (our choice, from runs four and ten times as long).
std::size_t usualRounds(std::size_t stops, bool rules);

/// The best order found. Errors: those of checkErrand; measure.route-none: no order obeys every rule (up to 12 stops);
/// measure.route-not-found: none was found that does (more than 12), which does not prove that there is none.
Result<Route> goodOrder(const Errand& errand, const Effort& effort = {});

} // namespace proofwalk::measure
