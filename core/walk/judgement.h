// SPDX-License-Identifier: GPL-3.0-or-later
// A record judged by what it names itself: plan, sheets and tables out of the record, never those of the program.
#pragma once

#include "core/journal/record.h"
#include "core/walk/state.h"

#include <optional>

namespace proofwalk::walk {

/// The version of the rules in EVENTS.md that this program applies.
inline constexpr std::int64_t judgementVersion = 1;

struct Judged {
    StartBody start;
    journal::Soundness soundness;
    State state; ///< of the sound events only
};

/// Errors: walk.no-start; walk.judgement-unknown {found, known}; walk.contents-missing {found}; those of fromRows,
/// Catalogue::read and makeScope, grown by what of the record they come from.
Result<Judged> judgeRecord(const journal::Record& record);

/// The same record under another catalogue, to show what a newer sheet would change.
Result<Judged> judgeRecordWith(const journal::Record& record, const catalogue::Catalogue& catalogue);

/// A private value of the record; empty if it was left out or erased.
std::string reveal(const journal::Record& record, const PrivateRef& ref);

} // namespace proofwalk::walk
