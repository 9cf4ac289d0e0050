// SPDX-License-Identifier: GPL-3.0-or-later
// What each event has seen: its own chain before it, and every head it or an earlier event of its chain names, with
// all that those had seen. Clocks play no part.
#pragma once

#include "core/journal/event.h"

#include <map>
#include <string>
#include <vector>

namespace proofwalk::walk {

/// Where an event stands.
struct Place {
    std::string chain;
    std::int64_t n = 0;

    friend auto operator<=>(const Place&, const Place&) = default;
};

class Sight {
public:
    /// Must be called in an order in which whatever an event has seen comes before it.
    void add(const journal::Event& event);

    /// Whether `later` has seen `earlier`. An event has not seen itself.
    bool hasSeen(const Place& later, const Place& earlier) const;

private:
    /// Highest number seen of each other chain; a new one begins only where an event names heads.
    using Horizon = std::map<std::string, std::int64_t>;
    struct Since {
        std::int64_t n;
        Horizon horizon;
    };
    const Horizon* horizonAt(const Place& place) const;

    std::map<std::string, std::vector<Since>> m_chains;
};

/// The events of each chain from 1 on without a gap, in an order in which whatever an event has seen comes before
/// it, if it is among them; otherwise by stamp, then chain. What stands behind a gap of its own chain is left out.
std::vector<journal::Event> inOrderSeen(std::vector<journal::Event> events);

} // namespace proofwalk::walk
