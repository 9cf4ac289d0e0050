// SPDX-License-Identifier: GPL-3.0-or-later
// What a check has to say about a plan.
#pragma once

#include "core/base/result.h"

#include <string>
#include <vector>

namespace proofwalk::review {

enum class Severity {
    error,   ///< the plan contradicts itself, or means nothing here
    warning, ///< very likely wrong, or unwise
    note,    ///< worth knowing
};

/// One result of one check. Its words are those of an Error with the same code, place and arguments.
struct Remark {
    std::string check; ///< the check's id: "zone-exists"
    Severity severity = Severity::warning;
    std::string where; ///< "devices.csv:7, K-01"
    std::string code;  ///< "review.zone-unknown", words in core/words
    std::vector<Argument> arguments;
};

/// "error", "warning", "note".
std::string_view wordOf(Severity severity);

} // namespace proofwalk::review
