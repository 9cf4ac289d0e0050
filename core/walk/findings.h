// SPDX-License-Identifier: GPL-3.0-or-later
// What was found, put right, retested, accepted: the history of each step that ever failed (EVENTS.md, "Findings").
#pragma once

#include "core/walk/stepview.h"

#include <optional>
#include <vector>

namespace proofwalk::walk {

enum class FindingStatus { open, putRight, cleared, intermittent, noted };
std::string_view wordOf(FindingStatus status); ///< "open", "put-right", "cleared", "intermittent", "noted"

struct Finding {
    StepKey step;
    FindingStatus status = FindingStatus::open;
    bool accepted = false;
    bool lifeSafety = false; ///< of a life-safety kind or step: acceptance does not make the result complete
    const Attempt* lastFail = nullptr;               ///< nullptr if nothing failed
    std::vector<const Attempt*> attempts;            ///< standing, oldest first
    std::vector<const Told<FindingBody>*> described; ///< standing, oldest first
    std::vector<const Told<RepairBody>*> repairs;
    std::vector<const Told<AcceptBody>*> accepts;
    std::vector<const Told<PhotographBody>*> photographs;

    Grade grade() const; ///< of the last description; a deficiency if there is none and something failed
    /// Whether it still stands between here and the signature.
    bool pending() const { return status != FindingStatus::cleared && status != FindingStatus::noted; }
};

std::optional<Finding> findingOf(const State& state, const StepKey& key);

/// All of them, by first failure or description.
std::vector<Finding> allFindings(const State& state);

} // namespace proofwalk::walk
