// SPDX-License-Identifier: GPL-3.0-or-later
// The commands finding, photograph, repair, accept and withdraw: what was not as planned, and what became of it.
#include "core/walk/drafting.h"

#include "core/base/digest.h"
#include "core/base/file.h"
#include "core/base/text.h"
#include "core/walk/findings.h"
#include "core/walk/retest.h"

#include <algorithm>

namespace proofwalk::walk {
namespace {

/// The steps of "findings", or the one step named in the line itself; each must have a finding.
Result<std::vector<StepKey>> findingsOf(const State& state, Line& line)
{
    std::vector<StepKey> keys;
    if (line.has("findings")) {
        auto lines = line.lines("findings");
        if (!lines) return passOn(lines);
        for (Line& each : *lines) {
            auto key = stepOf(*state.scope, each);
            if (!key) return passOn(key);
            if (auto finished = each.finish(); !finished) return passOn(finished);
            keys.push_back(*key);
        }
    } else {
        auto key = stepOf(*state.scope, line);
        if (!key) return passOn(key);
        keys.push_back(*key);
    }
    for (const StepKey& key : keys)
        if (!findingOf(state, key)) return failure("walk.no-finding", key.name);
    return keys;
}

Result<std::string> dueOf(Line& line)
{
    auto due = line.maybeText("due");
    if (!due || due->empty()) return due;
    if (!base::parseTime(*due + "T00:00:00Z"))
        return failure("command.value", "", {{"key", "due"}, {"found", *due}, {"wanted", "a day as 2026-12-02"}});
    return due;
}

/// A plain file name: a command never reaches outside the folder it came from.
bool isPlainName(const std::string& name)
{
    return !name.empty() && name.find('/') == std::string::npos && name.find('\0') == std::string::npos && name != ".."
        && name != ".";
}

/// The hash that is to be withdrawn: given whole or by at least 8 digits, or the newest answer at a step.
Result<std::string> eventToWithdraw(const State& state, Line& line)
{
    if (!line.has("event")) {
        auto key = stepOf(*state.scope, line);
        if (!key) return passOn(key);
        const StepView view = viewStep(state, *key);
        if (view.deciding.empty()) return failure("walk.nothing-to-withdraw", key->name);
        return view.deciding.back()->fact.event;
    }
    auto start = line.text("event");
    if (!start) return passOn(start);
    std::vector<std::string> found;
    for (const auto& [hash, kind] : state.kindOfEvent)
        if (start->size() >= 8 && hash.starts_with(*start)) found.push_back(hash);
    if (found.size() != 1) return failure("walk.event-unknown", "", {{"found", *start}});
    return found.front();
}

} // namespace

Drafts findingCommand(const CommandGround& ground, Line& line)
{
    Sealing sealing;
    auto key = stepOf(*ground.state.scope, line);
    if (!key) return passOn(key);
    auto word = line.text("grade");
    auto due = dueOf(line);
    auto words = sealing.seal(line, "words", true);
    if (!word) return passOn(word);
    if (!due) return passOn(due);
    if (!words) return passOn(words);
    const auto grade = gradeFrom(*word);
    if (!grade)
        return failure("command.value", "",
                       {{"key", "grade"}, {"found", *word}, {"wanted", "deficiency or recommendation"}});
    const auto finding = findingOf(ground.state, *key);
    const bool failed = finding && finding->lastFail != nullptr;
    if (failed && *grade == Grade::recommendation) return failure("walk.failed-is-deficiency", key->name);
    if (!failed && *grade == Grade::deficiency) return failure("walk.deficiency-without-fail", key->name);
    return sealing.draft(line, FindingBody{*key, *grade, *words, *due});
}

Drafts photographCommand(const CommandGround& ground, Line& line)
{
    Sealing sealing;
    auto key = stepOf(*ground.state.scope, line);
    if (!key) return passOn(key);
    auto name = line.text("file");
    auto words = sealing.seal(line, "words");
    if (!name) return passOn(name);
    if (!words) return passOn(words);
    if (!isPlainName(*name))
        return failure("command.value", "",
                       {{"key", "file"}, {"found", *name}, {"wanted", "a file name without a folder"}});
    auto bytes = base::readFile(ground.folder / *name);
    if (!bytes) return passOn(bytes);
    auto picture = journal::preparePhotograph(*bytes);
    if (!picture) return std::unexpected(std::move(picture.error()).within(*name));

    const PrivateRef hash = sealing.seal(base::sha256Hex(*picture));
    auto drafts = sealing.draft(line, PhotographBody{*key, hash, *words});
    if (drafts) drafts->front().photographs.push_back(std::move(*picture));
    return drafts;
}

Drafts repairCommand(const CommandGround& ground, Line& line)
{
    Sealing sealing;
    auto findings = findingsOf(ground.state, line);
    if (!findings) return passOn(findings);
    auto touched = line.texts("touched");
    auto words = sealing.seal(line, "words", true);
    if (!touched) return passOn(touched);
    if (!words) return passOn(words);
    const auto known = touchableWords();
    for (const std::string& word : *touched)
        if (std::ranges::find(known, word) == known.end())
            return failure("command.value", "",
                           {{"key", "touched"}, {"found", word}, {"wanted", base::join(known, ", ")}});
    const auto retest = stepsToRetest(ground.state, *findings, *touched);
    return sealing.draft(line, RepairBody{*findings, *touched, retest, *words});
}

Drafts acceptCommand(const CommandGround& ground, Line& line)
{
    Sealing sealing;
    auto findings = findingsOf(ground.state, line);
    if (!findings) return passOn(findings);
    auto name = sealing.seal(line, "name", true);
    auto words = sealing.seal(line, "words", true);
    if (!name) return passOn(name);
    if (!words) return passOn(words);
    return sealing.draft(line, AcceptBody{*findings, *name, *words});
}

Drafts withdrawCommand(const CommandGround& ground, Line& line)
{
    Sealing sealing;
    auto event = eventToWithdraw(ground.state, line);
    if (!event) return passOn(event);
    auto reason = sealing.seal(line, "reason", true);
    if (!reason) return passOn(reason);
    const std::string& kind = ground.state.kindOfEvent.at(*event);
    if (kind == "withdraw" || kind == "start" || kind == "open" || kind == "vouch" || kind == "handed-over")
        return failure("walk.not-withdrawable", event->substr(0, 12), {{"kind", kind}});
    if (ground.state.withdrawn.contains(*event)) return failure("walk.withdrawn-already", event->substr(0, 12));
    return sealing.draft(line, WithdrawBody{*event, *reason});
}

} // namespace proofwalk::walk
