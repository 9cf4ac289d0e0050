// SPDX-License-Identifier: GPL-3.0-or-later
// What where and verify both tell: rungs in words, and what the program's own sheets would change.
#pragma once

#include "core/command/face.h"
#include "core/command/options.h"
#include "core/journal/record.h"
#include "core/walk/judgement.h"
#include "core/walk/readiness.h"

#include <string>
#include <vector>

namespace proofwalk::command {

std::string sentenceOf(const Face& face, const walk::Rung& rung);

/// Where the sheets of this program are not those the job is judged by.
struct SheetChange {
    std::vector<std::string> files;       ///< that differ, by path
    std::vector<std::string> differences; ///< devices whose verdict would be another, "GR-01: pass, would be fail"
};

/// The job's verdicts stand as they were judged; this only says what a newer sheet would make of the same record.
Result<SheetChange> changedBySheets(const journal::Record& record, const walk::Judged& judged, const Options& options);

void sayChanged(Face& face, const SheetChange& change);

} // namespace proofwalk::command
