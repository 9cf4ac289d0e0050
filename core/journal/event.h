// SPDX-License-Identifier: GPL-3.0-or-later
// One event of the record, its canonical form and its hash. FORMAT.md beside this file is the reader's page.
#pragma once

#include "core/base/instant.h"
#include "core/base/json.h"

#include <string>
#include <string_view>
#include <vector>

namespace proofwalk::journal {

/// The newest event of a chain, as another chain or a signature names it.
struct Head {
    std::string chain;  ///< 32 hex digits
    std::int64_t n = 0; ///< from 1
    std::string hash;   ///< 64 hex digits

    friend bool operator==(const Head&, const Head&) = default;
};

/// Hybrid stamp: wall clock in ms, but later than anything seen; the count breaks ties within one millisecond.
struct Stamp {
    std::int64_t ms = 0;
    std::int64_t count = 0;

    friend auto operator<=>(const Stamp&, const Stamp&) = default;
};

/// An event as it is stored. `hash` is SHA-256 of canonicalText(), and not part of it.
struct Event {
    std::string alg = "sha256";
    std::int64_t v = 1; ///< version of the event's form and of its kind's body
    std::string job, chain;
    std::int64_t n = 0;
    std::string prev;       ///< "" for n = 1
    std::vector<Head> seen; ///< sorted by chain: heads new since the chain's previous event
    Stamp stamp;
    base::WallClock at; ///< the machine's clock: members utc (RFC 3339, ms) and offset_min
    std::string kind;
    base::Json body;
    std::string hash;
};

/// The canonical JSON (RFC 8785) over which the hash is taken.
std::string canonicalText(const Event& event);

/// Reads one event from its canonical text and computes its hash. Unknown kinds and body versions are read; an unknown
/// `alg`, a missing or unknown member, or a malformed one is an error.
/// Errors: json.*; event.member {found}; event.missing {wanted}; event.value {member, found}; event.alg {found}.
Result<Event> readEvent(std::string_view text);

} // namespace proofwalk::journal
