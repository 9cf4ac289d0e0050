// SPDX-License-Identifier: GPL-3.0-or-later
// From what the walk adds up to, the words and figures that the sheets show. Nothing is judged here: verdicts, proofs
// and readiness come from core/walk.
#pragma once

#include "core/base/instant.h"
#include "core/journal/identity.h"
#include "core/report/contents.h"
#include "core/walk/judgement.h"
#include "core/walk/readiness.h"
#include "core/words/words.h"

#include <string>

namespace proofwalk::report {

/// What a report is filled from.
struct Ground {
    const journal::Record& record;
    const walk::Judged& judged;
    const walk::Readiness& readiness;
    const words::Book& book;
    const journal::IdentityFacts& signer;
    base::WallClock asOf;          ///< when it is made and signed
    std::string recordFingerprint; ///< SHA-256 of record.jsonl, 64 hex digits
    bool interim = false;
};

/// All sheets.
Contents fillContents(const Ground& ground);

} // namespace proofwalk::report
