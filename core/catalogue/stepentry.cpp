// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/catalogue/stepentry.h"

#include "core/base/unit.h"
#include "core/catalogue/figure.h"
#include "core/catalogue/vocabulary.h"

#include <algorithm>

namespace proofwalk::catalogue {
namespace {

constexpr int longestStep_s = 3600;
constexpr int mostTries = 100;

void refuseUnsuited(const Keys& keys, StepKind kind, std::initializer_list<std::string_view> unsuited)
{
    for (const std::string_view key : unsuited)
        if (keys.has(key))
            keys.refuse(key, "catalogue.key-unsuited",
                        {{"found", std::string(key)}, {"kind", std::string(wordOf(kind))}});
}

void readNumber(const Keys& keys, Step& step)
{
    step.quantity = keys.name("quantity");
    step.unit = readUnit(keys);
    step.planLimit = planLimitOf(keys.word("plan-limit", planLimitWords(), "none"));
    const base::Unit* unit = base::findUnit(step.unit);
    if (step.kind == StepKind::time && unit != nullptr && unit->quantity != "time")
        keys.refuse("unit", "catalogue.unit-mismatch", {{"found", step.unit}, {"wanted", "s"}});
    if (step.subject == Subject::timer && !step.quantity.empty()) keys.word("quantity", timerWords());
    for (const Node* each : keys.tables("limits")) {
        const Keys limit(*each, keys.reading(), {"lower", "upper", "binding", "confirmed", "source"});
        step.limits.push_back(readLimit(limit, step.quantity, step.unit));
    }
}

void readTrial(const Keys& keys, Step& step)
{
    step.trialsWanted = keys.wholeNumber("tries", 1, mostTries);
    step.trialsNeeded = keys.wholeNumber("needed", 1, mostTries);
    if (step.trialsNeeded > step.trialsWanted)
        keys.refuse("needed", "catalogue.limit-crossed",
                    {{"found", std::to_string(step.trialsWanted)}, {"wanted", std::to_string(step.trialsNeeded)}});
}

/// The keys that only some kinds of step have.
void readByKind(const Keys& keys, Step& step)
{
    const bool number = step.kind == StepKind::read || step.kind == StepKind::time;
    if (number) readNumber(keys, step);
    else refuseUnsuited(keys, step.kind, {"quantity", "unit", "plan-limit", "limits"});
    if (step.kind == StepKind::trial) readTrial(keys, step);
    else refuseUnsuited(keys, step.kind, {"tries", "needed"});
    if (step.kind == StepKind::listen) step.pattern = keys.has("pattern") ? keys.name("pattern") : std::string();
    else refuseUnsuited(keys, step.kind, {"pattern"});
    if (step.kind == StepKind::act) refuseUnsuited(keys, step.kind, {"expect"});
    else step.expect = keys.text("expect");
}

std::string readSignal(const Keys& keys)
{
    const Node* node = keys.find("signal");
    if (node == nullptr) return "alarm";
    return node->text() != nullptr && *node->text() == "-" ? "-" : keys.name("signal");
}

/// What the step is of and what it proves.
void readBearing(const Keys& keys, Step& step, StepPlace place)
{
    static const std::vector<std::string> ofSheet{"device", "zone"};
    static const std::vector<std::string> ofSequence{"area", "timer"};
    const bool sheet = place == StepPlace::sheet;
    if (!sheet) refuseUnsuited(keys, step.kind, {"signal"});
    step.signal = sheet ? readSignal(keys) : "-";
    step.subject = subjectOf(keys.word("subject", sheet ? ofSheet : ofSequence,
                                       sheet ? std::optional<std::string>("device") : std::nullopt));
    step.proves = proofOf(keys.word("proves", proofWords(), "none"));
    if (step.proves != Proof::none && step.kind == StepKind::act) refuseUnsuited(keys, step.kind, {"proves"});
    if (step.proves != Proof::none && step.proves != Proof::output && step.signal == "-")
        keys.refuse("proves", "catalogue.proof", {{"found", std::string(wordOf(step.proves))}});
}

StepEntry readStep(const Node& node, Reading& reading, StepPlace place)
{
    const Keys keys(node, reading,
                    {"step",   "kind",   "signal",  "subject", "proves",  "states",   "core",    "life-safety",
                     "act",    "expect", "caution", "never",   "seconds", "quantity", "unit",    "plan-limit",
                     "limits", "tries",  "needed",  "pattern", "source",  "when",     "replaces"});
    StepEntry entry;
    entry.line = node.line;
    Step& step = entry.step;
    step.name = keys.name("step");
    step.kind = stepKindOf(keys.word("kind", stepKindWords()));
    readBearing(keys, step, place);
    for (const std::string& word : keys.words("states", stateWords())) step.states.push_back(stateOf(word));
    step.core = keys.truth("core", true);
    step.lifeSafety = keys.truth("life-safety", false);
    step.act = keys.text("act");
    step.caution = keys.optionalText("caution");
    step.never = keys.optionalText("never");
    step.seconds = keys.wholeNumber("seconds", 1, longestStep_s);
    readByKind(keys, step);
    step.source = readSource(keys);
    step.part = reading.file;
    if (place == StepPlace::sequence) refuseUnsuited(keys, step.kind, {"when", "replaces"});
    entry.when = readCondition(keys);
    entry.replaces = keys.truth("replaces", false);
    return entry;
}

} // namespace

std::vector<StepEntry> readSteps(const Keys& keys, std::string_view key, StepPlace place)
{
    std::vector<StepEntry> entries;
    for (const Node* each : keys.tables(key)) entries.push_back(readStep(*each, keys.reading(), place));
    return entries;
}

void refuseTwins(std::span<const StepEntry> steps, Reading& reading)
{
    for (auto later = steps.begin(); later != steps.end(); ++later) {
        if (later->replaces) continue;
        const bool twin = std::any_of(steps.begin(), later, [&](const StepEntry& earlier) {
            return !earlier.replaces && earlier.step.name == later->step.name
                && earlier.step.signal == later->step.signal && !exclude(earlier.when, later->when);
        });
        if (twin) reading.refuse(later->line, "catalogue.step-twice", {{"found", later->step.name}});
    }
}

} // namespace proofwalk::catalogue
