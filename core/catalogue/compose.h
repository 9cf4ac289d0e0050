// SPDX-License-Identifier: GPL-3.0-or-later
// One sheet out of the parts that apply, in fixed order: kind before, purpose, delay, feed, resistors, kind after.
#pragma once

#include "core/catalogue/kindfile.h"
#include "core/catalogue/parts.h"
#include "core/catalogue/rulesfile.h"

#include <map>
#include <span>
#include <string>
#include <vector>

namespace proofwalk::catalogue {

/// Parts by name; one that is not there adds nothing.
using Parts = std::map<std::string, PartFile, std::less<>>;

/// The steps of that kind for that zone, without the rule sets' limits. Error, with `where` = the file and line:
/// catalogue.step-twice {found}.
Result<std::vector<Step>> composeSteps(const KindFile& kind, const Parts& parts, const Traits& traits);

/// Adds to every reading and duration the figures on its quantity whose condition holds, in the unit of the step.
/// Error, with `where` = the rule set's file: catalogue.unit-mismatch {found, wanted, step}.
Result<void> addLimits(std::vector<Step>& steps, std::span<const RulesFile* const> rules, const Traits& traits);

} // namespace proofwalk::catalogue
