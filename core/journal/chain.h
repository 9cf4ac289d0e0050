// SPDX-License-Identifier: GPL-3.0-or-later
// The chain that one opening of a job writes: numbers, links, stamps and what was seen. No file is touched here.
#pragma once

#include "core/journal/journal.h"

#include <map>
#include <string>
#include <vector>

namespace proofwalk::journal {

class Chain {
public:
    Chain() = default;
    /// Nothing is begun yet; the public key (hex of its DER) goes into the chain's first event.
    Chain(std::string job, std::string publicKey);

    /// The newest event of each chain in the file: heads to be named as seen, and stamps to be later than.
    void learn(const std::vector<Event>& lastEvents);

    /// Makes events of drafts, with hashes. A chain that is not the job's first begins with an "open" event of its own.
    /// Errors: journal.not-started (the first draft of a job is of another kind than "start"); journal.kind-reserved
    /// {found} ("start" or "open" anywhere else); event.value {member, found} (a clock before 1970 or after 9999).
    Result<std::vector<Event>> extend(const std::vector<Draft>& drafts, const base::WallClock& now);

    const std::string& job() const { return m_job; }
    const Head& head() const { return m_head; }

private:
    Event next(const std::string& kind, std::int64_t v, base::Json body, const base::WallClock& now);

    std::string m_job, m_publicKey;
    Head m_head; ///< of this chain; no chain id before its first event
    std::map<std::string, Head> m_seen; ///< other chains, as far as this chain has named or will name them
    std::map<std::string, Head> m_toBeNamed; ///< those that its next event names
    Stamp m_last; ///< the latest stamp in the file
};

/// The stamp that follows: the wall clock if that is later than anything seen, else the last one counted on.
Stamp stampAfter(const Stamp& last, std::int64_t wall_ms);

} // namespace proofwalk::journal
