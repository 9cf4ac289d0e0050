// SPDX-License-Identifier: GPL-3.0-or-later
// The closed lists of words that events hold (EVENTS.md), as enumerators and back.
#pragma once

#include <optional>
#include <string_view>

namespace proofwalk::walk {

/// Worst first: of several the least enumerator holds.
enum class Verdict { fail, retest, tooClose, noAccess, running, toDo, pass, notApplicable };

enum class Outcome { asPlanned, notAsPlanned, value, notApplicable, noAccess, started };
enum class How { singly, bulk, ear, partner };
enum class Grade { deficiency, recommendation };

std::string_view
wordOf(Verdict verdict); ///< "fail", "retest", "too-close", "no-access", "running", "to-do", "pass", "n/a"
std::string_view wordOf(Outcome outcome);
std::string_view wordOf(How how);
std::string_view wordOf(Grade grade);

std::optional<Outcome> outcomeFrom(std::string_view word);
std::optional<How> howFrom(std::string_view word);
std::optional<Grade> gradeFrom(std::string_view word);

} // namespace proofwalk::walk
