// SPDX-License-Identifier: GPL-3.0-or-later
// Handing a report over: made from the job, written where it was asked for, and recorded in the job. The command line
// and the window do it here, so that they cannot do it differently.
#pragma once

#include "core/base/result.h"
#include "core/journal/identity.h"
#include "core/walk/job.h"
#include "core/walk/readiness.h"
#include "core/words/words.h"

#include <filesystem>
#include <string>

namespace proofwalk::report {

struct Handing {
    std::filesystem::path out; ///< the file to be made
    bool interim = false;
};

struct Handed {
    std::string sha256; ///< of the file
    std::string recordFingerprint;
    walk::Standing standing = walk::Standing::notReady;
};

/// What stands against it already before anybody signs. Looks, and changes nothing: it may be asked before the
/// passphrase is. Errors: report.exists; report.no-folder; report.refused {count}; file.unwritable {detail}.
Result<void> mayHandOver(const walk::Job& job, const Handing& handing);

/// Looks as above; then the signer answers for the machine's key (once in a job), the report is made, written, and
/// recorded as handed over. There must be a QApplication. Until the file is there the job says nothing of a report.
/// Errors besides those: key.cannot-sign; those of issueReport, base::writeFile and Job::append.
Result<Handed> handOver(walk::Job& job, const journal::SigningKey& machine, const journal::Identity& identity,
                        const words::Book& book, const Handing& handing);

/// The sheets as they would be signed now, marked as not signed, with nothing attached: to be looked at. A PDF.
/// Where nobody is known to sign yet, `signer` is empty. Errors: report.record-unsound; those of drawPages.
Result<std::string> draftReport(const walk::Job& job, const words::Book& book, const journal::IdentityFacts& signer,
                                bool interim);

} // namespace proofwalk::report
