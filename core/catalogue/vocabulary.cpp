// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/catalogue/vocabulary.h"

#include <algorithm>
#include <array>
#include <cassert>
#include <map>

namespace proofwalk::catalogue {
namespace {

using Words = std::vector<std::string>;

// Each list stands in the order of its enumerators, so that a word's index is its value.
const Words stepKindList{"do", "see", "read", "time", "trial", "listen", "photograph", "inspect", "confirm"};
const Words proofList{"none", "input", "response", "output", "received"};
const Words stateList{"unpowered", "unset", "walk-test", "set"};
const Words subjectList{"device", "zone", "area", "timer"};
const Words planLimitList{"none", "loop-normal", "timer", "effect-within", "radio-minimum"};
const Words bindingList{"life-safety", "legal", "performance", "advice"};

template <class E>
std::string_view nameOf(E value, const Words& words)
{
    const auto index = static_cast<std::size_t>(value);
    assert(index < words.size());
    return words[index];
}

template <class E>
E valueOf(std::string_view word, const Words& words)
{
    const auto found = std::ranges::find(words, word);
    return found == words.end() ? E{} : static_cast<E>(found - words.begin());
}

// The columns of core/plan/FORMAT.md, zones.csv.
const std::map<std::string, Words, std::less<>> columns{
    {"kind", {}},
    {"signals", {}},
    {"feed", {"loop", "two-wire", "four-wire", "radio", "addressed"}},
    {"rest", {"closed", "open"}},
    {"resistors", {"0", "1", "2", "3"}},
    {"purpose",
     {"intrusion", "hold-up", "fire", "carbon-monoxide", "gas", "medical", "environment", "tamper", "technical"}},
    {"delay", {"none", "entry", "on-route"}},
    {"sounding", {"loud", "inside", "silent", "notify"}},
    {"reporting", {"yes", "no"}},
};

} // namespace

std::string_view wordOf(StepKind kind) { return nameOf(kind, stepKindList); }
std::string_view wordOf(Proof proof) { return nameOf(proof, proofList); }
std::string_view wordOf(SystemState state) { return nameOf(state, stateList); }
std::string_view wordOf(Subject subject) { return nameOf(subject, subjectList); }
std::string_view wordOf(PlanLimit limit) { return nameOf(limit, planLimitList); }
std::string_view wordOf(Binding binding) { return nameOf(binding, bindingList); }

std::optional<SystemState> stateFrom(std::string_view word)
{
    if (std::ranges::find(stateList, word) == stateList.end()) return std::nullopt;
    return stateOf(word);
}

const Words& stepKindWords() { return stepKindList; }
const Words& proofWords() { return proofList; }
const Words& stateWords() { return stateList; }
const Words& subjectWords() { return subjectList; }
const Words& planLimitWords() { return planLimitList; }
const Words& bindingWords() { return bindingList; }

StepKind stepKindOf(std::string_view word) { return valueOf<StepKind>(word, stepKindList); }
Proof proofOf(std::string_view word) { return valueOf<Proof>(word, proofList); }
SystemState stateOf(std::string_view word) { return valueOf<SystemState>(word, stateList); }
Subject subjectOf(std::string_view word) { return valueOf<Subject>(word, subjectList); }
PlanLimit planLimitOf(std::string_view word) { return valueOf<PlanLimit>(word, planLimitList); }
Binding bindingOf(std::string_view word) { return valueOf<Binding>(word, bindingList); }

const Words& conditionColumns()
{
    static const Words names{"kind",    "signals", "feed",     "rest",     "resistors",
                             "purpose", "delay",   "sounding", "reporting"};
    return names;
}

const Words& columnWords(std::string_view column)
{
    static const Words none;
    const auto found = columns.find(column);
    return found == columns.end() ? none : found->second;
}

const Words& timerWords()
{
    static const Words words{"entry-delay", "exit-delay", "abort-window", "sounder-cutoff"};
    return words;
}

const Words& basisWords()
{
    static const Words words{"read", "from memory", "common practice", "project choice", "computed"};
    return words;
}

const Words& clauseBasisWords()
{
    static const Words words{"read", "not confirmed"};
    return words;
}

const Words& groupWords()
{
    static const Words words{"openings", "interior", "fire", "gas", "people", "environment", "control", "output"};
    return words;
}

} // namespace proofwalk::catalogue
