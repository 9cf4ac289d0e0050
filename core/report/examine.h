// SPDX-License-Identifier: GPL-3.0-or-later
// Verifying a report or a job from its bytes upward: every verdict is computed again from what is embedded and compared
// with what was signed. Nothing is changed by looking.
#pragma once

#include "core/report/sealcheck.h"
#include "core/walk/judgement.h"

#include <filesystem>
#include <optional>
#include <string>
#include <vector>

namespace proofwalk::report {

/// A machine's key and the person who answers for it.
struct VouchedChain {
    std::string chain;
    std::string name;
};

struct Examined {
    std::optional<SealFindings> seal; ///< of a report whose seal is sound
    journal::Record record;
    std::optional<walk::Judged> judged; ///< if the record could be judged
    std::string recordFingerprint; ///< of a report's record.jsonl
    std::vector<VouchedChain> vouched;
    std::vector<Error> problems; ///< in the order found; empty: sound

    bool sound() const { return problems.empty(); }
};

/// Tells a report from a job by its first bytes. An Error only if nothing could be examined: verify.foreign; file.*;
/// journal.*; walk.judgement-unknown ("not judged by this version"). All else that is wrong stands in `problems`.
Result<Examined> examine(const std::filesystem::path& file);

} // namespace proofwalk::report
