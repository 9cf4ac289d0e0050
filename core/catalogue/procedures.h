// SPDX-License-Identifier: GPL-3.0-or-later
// sequences/NAME.toml and rounds/NAME.toml: what is done across the system, and one step over many subjects.
#pragma once

#include "core/catalogue/catalogue.h"
#include "core/catalogue/stepentry.h"

#include <string>

namespace proofwalk::catalogue {

/// Reads a sequence: title, summary and its steps in order. Errors: those of Keys and stepentry.h.
Sequence readSequence(const Node& document, const std::string& name, Reading& reading);

/// Reads a round: title, summary, the step's name and what it is of. Errors: those of Keys.
Round readRound(const Node& document, const std::string& name, Reading& reading);

} // namespace proofwalk::catalogue
