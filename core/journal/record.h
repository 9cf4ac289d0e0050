// SPDX-License-Identifier: GPL-3.0-or-later
// The whole record in memory, from a job file or from the attachment of a report, and whether it is sound.
#pragma once

#include "core/journal/event.h"

#include <map>
#include <optional>
#include <string>
#include <vector>

namespace proofwalk::journal {

/// A private value with its salt; its commitment is SHA-256 over the RFC 8785 array
/// ["proofwalk/private/1", salt, value].
struct Private {
    std::string commitment;
    std::string salt;  ///< 32 hex digits
    std::string value; ///< text; for a photograph or ink, the SHA-256 of the bytes in hex
};

/// A fresh salt and the commitment for a value.
Private sealPrivate(std::string value);
/// The commitment for a salt and a value.
std::string commitmentOf(const std::string& salt, const std::string& value);

/// A signature over a chain's head: over "proofwalk/head/1\n" and job, chain, n, hash, each ended by a newline.
struct HeadSignature {
    Head head;
    std::string signature; ///< DER, in hex
};

/// Text that is signed for a head.
std::string headText(const std::string& job, const Head& head);

struct Record {
    std::string job;
    std::map<std::string, std::string> contents;    ///< SHA-256 -> bytes: plan, sheets, rules, words
    std::map<std::string, Private> privates;        ///< commitment -> value with salt; some may be left out
    std::map<std::string, std::string> photographs; ///< SHA-256 -> JPEG or PNG bytes; some may be left out
    std::vector<Event> events; ///< by chain and n; two with one number both stand here
    std::vector<HeadSignature> heads;
    /// Rows of a job file that could not be read as what they should be: where they stood and why. Empty if all is
    /// well; record.jsonl is refused instead.
    std::vector<Error> unreadable;
};

/// The lines of record.jsonl (exact.md: format and job; contents by hash; private values; events by chain and number;
/// head signatures). Photographs are attachments of their own.
std::string toLines(const Record& record);
/// Reads them back. Errors, with `where` = "record.jsonl:LINE": json.*, event.*, record.line {detail},
/// record.format {found}.
Result<Record> fromLines(std::string_view lines);

/// What can be said of a record's bytes, chain by chain. Nothing is changed by looking.
struct Soundness {
    /// The first bad thing and all others, in the order found: a hash that does not match (contents, private value,
    /// photograph), a gap, two events with one number, a prev that does not name the one before, a seen head that
    /// is not
    /// there, a stamp that went back, a head signature that does not verify or names another event than the chain's
    /// last, a chain without a key or head signature.
    std::vector<Error> problems;
    /// chain -> how many events of it are sound by their hashes (nothing from a fork or after a gap or break on, nor an
    /// event that its follower or the signed head names otherwise). That a signature covers them is not said by this.
    std::map<std::string, std::int64_t> soundEvents;
    bool sound() const { return problems.empty(); }
};
Soundness checkRecord(const Record& record);

} // namespace proofwalk::journal
