// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/walk/words.h"

#include <algorithm>
#include <array>

namespace proofwalk::walk {
namespace {

constexpr std::array<std::string_view, 8> verdictWords{"fail",    "retest", "too-close", "no-access",
                                                       "running", "to-do",  "pass",      "n/a"};
constexpr std::array<std::string_view, 6> outcomeWords{"as-planned",     "not-as-planned", "value",
                                                       "not-applicable", "no-access",      "started"};
constexpr std::array<std::string_view, 4> howWords{"singly", "bulk", "ear", "partner"};
constexpr std::array<std::string_view, 2> gradeWords{"deficiency", "recommendation"};

template <class Enum, std::size_t count>
std::optional<Enum> from(const std::array<std::string_view, count>& words, std::string_view word)
{
    const auto found = std::ranges::find(words, word);
    if (found == words.end()) return {};
    return static_cast<Enum>(found - words.begin());
}

} // namespace

std::string_view wordOf(Verdict verdict) { return verdictWords[static_cast<std::size_t>(verdict)]; }
std::string_view wordOf(Outcome outcome) { return outcomeWords[static_cast<std::size_t>(outcome)]; }
std::string_view wordOf(How how) { return howWords[static_cast<std::size_t>(how)]; }
std::string_view wordOf(Grade grade) { return gradeWords[static_cast<std::size_t>(grade)]; }

std::optional<Outcome> outcomeFrom(std::string_view word) { return from<Outcome>(outcomeWords, word); }
std::optional<How> howFrom(std::string_view word) { return from<How>(howWords, word); }
std::optional<Grade> gradeFrom(std::string_view word) { return from<Grade>(gradeWords, word); }

} // namespace proofwalk::walk
