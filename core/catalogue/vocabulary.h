// SPDX-License-Identifier: GPL-3.0-or-later
// The closed lists of words: of the enumerators, and of the plan's columns that a condition may look at.
#pragma once

#include "core/catalogue/sheet.h"

#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace proofwalk::catalogue {

/// All words of an enumeration, in its order.
const std::vector<std::string>& stepKindWords();
const std::vector<std::string>& proofWords();
const std::vector<std::string>& stateWords();
const std::vector<std::string>& subjectWords();
const std::vector<std::string>& planLimitWords();
const std::vector<std::string>& bindingWords();

/// The enumerator of a word that was checked against the list before; the first one for any other text.
StepKind stepKindOf(std::string_view word);
Proof proofOf(std::string_view word);
SystemState stateOf(std::string_view word);
Subject subjectOf(std::string_view word);
PlanLimit planLimitOf(std::string_view word);
Binding bindingOf(std::string_view word);

/// The columns a condition may name.
const std::vector<std::string>& conditionColumns();
/// The words of such a column; empty for kind and signals, which are open.
const std::vector<std::string>& columnWords(std::string_view column);

/// The timers of a plan (timers.csv).
const std::vector<std::string>& timerWords();
/// How a figure is known (Source::basis) and its clause.
const std::vector<std::string>& basisWords();
const std::vector<std::string>& clauseBasisWords();
/// The groups kinds are listed in.
const std::vector<std::string>& groupWords();

} // namespace proofwalk::catalogue
