// SPDX-License-Identifier: GPL-3.0-or-later
// The completion report from a record to signed bytes: contents, pages, PDF/A-3 with the record inside, signature.
#pragma once

#include "core/journal/identity.h"
#include "core/journal/record.h"
#include "core/walk/readiness.h"
#include "core/words/words.h"

#include <string>

namespace proofwalk::report {

struct Issue {
    base::WallClock asOf; ///< the moment of signing, by the machine's clock
    bool interim = false;
};

struct Issued {
    std::string pdf;
    std::string recordFingerprint; ///< SHA-256 of the attached record.jsonl
    walk::Readiness readiness;
};

/// There must be a QApplication (DrawingApplication). Nothing is written.
/// Errors: report.refused {count} while a blocking rung stands and it is not interim; report.unjudged {count};
/// report.record-unsound; those of judgeRecord, drawPages, buildPdfA and signReport.
Result<Issued> issueReport(const journal::Record& record, const words::Book& book, const journal::Identity& identity,
                           const Issue& issue);

} // namespace proofwalk::report
