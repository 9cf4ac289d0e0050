// SPDX-License-Identifier: GPL-3.0-or-later
// kinds/NAME.toml: what the kind is, and its steps before and after those of its zone.
#pragma once

#include "core/catalogue/catalogue.h"
#include "core/catalogue/stepentry.h"

#include <string>
#include <vector>

namespace proofwalk::catalogue {

struct KindFile {
    Kind kind;
    std::vector<StepEntry> before, after;
    std::vector<std::string> forbid; ///< steps of the zone's parts that do not fit this kind
};

/// Reads one kind; its name is the file's. Errors: those of Keys and stepentry.h; catalogue.signal-unlisted {found,
/// wanted}: a step of a signal the kind does not list; catalogue.forbid-own {found}.
KindFile readKindFile(const Node& document, const std::string& name, Reading& reading);

} // namespace proofwalk::catalogue
