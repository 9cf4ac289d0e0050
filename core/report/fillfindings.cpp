// SPDX-License-Identifier: GPL-3.0-or-later
// The sheets of findings: nothing is taken out, what was withdrawn is shown as withdrawn.
#include "core/report/filling.h"

#include "core/base/text.h"

#include <algorithm>

namespace proofwalk::report {
namespace {

/// A line of history with the stamp it is sorted by.
struct Dated {
    journal::Stamp stamp;
    HistoryLine line;
};

std::string attemptDetail(const Filling& filling, const walk::Attempt& attempt)
{
    std::vector<std::string> parts;
    if (std::string reading = readingText(attempt.answer); !reading.empty()) parts.push_back(std::move(reading));
    if (std::string seen = filling.reveal(attempt.answer.seen); !seen.empty()) parts.push_back(std::move(seen));
    if (std::string reason = filling.reveal(attempt.answer.reason); !reason.empty()) parts.push_back(std::move(reason));
    return base::join(parts, "; ");
}

void addAttempts(const Filling& filling, const walk::Finding& finding, std::vector<Dated>& history)
{
    const auto attempts = filling.state.attempts.find(finding.step);
    if (attempts == filling.state.attempts.end()) return;
    bool failedBefore = false;
    for (const walk::Attempt& attempt : attempts->second) {
        const bool stands = filling.state.stands(attempt.fact);
        const char* code = !stands ? "report.history.withdrawn"
                         : attempt.verdict == walk::Verdict::fail
                             ? (failedBefore ? "report.history.again" : "report.history.found")
                         : failedBefore ? "report.history.retested"
                                        : "report.history.answered";
        history.push_back(
            {attempt.fact.stamp,
             {base::localTime(attempt.fact.at), stands ? std::optional(markOf(attempt.verdict)) : std::nullopt,
              filling.phrase(code, {{"step", finding.step.name}, {"verdict", filling.verdictWord(attempt.verdict)}}),
              attemptDetail(filling, attempt)}});
        failedBefore = failedBefore || (stands && attempt.verdict == walk::Verdict::fail);
    }
}

void addActs(const Filling& filling, const walk::Finding& finding, std::vector<Dated>& history)
{
    for (const auto* repair : finding.repairs)
        history.push_back(
            {repair->fact.stamp,
             {base::localTime(repair->fact.at), std::nullopt,
              filling.phrase("report.history.put-right", {{"touched", base::join(repair->body.touched, ", ")}}),
              filling.reveal(repair->body.words)}});
    for (const auto* accept : finding.accepts)
        history.push_back({accept->fact.stamp,
                           {base::localTime(accept->fact.at), std::nullopt,
                            filling.phrase("report.history.accepted", {{"name", filling.reveal(accept->body.name)}}),
                            filling.reveal(accept->body.words)}});
}

std::vector<HistoryLine> historyOf(const Filling& filling, const walk::Finding& finding)
{
    std::vector<Dated> dated;
    addAttempts(filling, finding, dated);
    addActs(filling, finding, dated);
    std::ranges::stable_sort(dated, {}, &Dated::stamp);
    std::vector<HistoryLine> lines;
    for (Dated& each : dated) lines.push_back(std::move(each.line));
    return lines;
}

/// What must be, or was, tested again because of the last repair.
void fillRetests(const Filling& filling, const walk::Finding& finding, Finding& shown)
{
    if (finding.repairs.empty()) return;
    const auto* repair = finding.repairs.back();
    bool all = true;
    for (const walk::StepKey& key : repair->body.retest) {
        const walk::Verdict verdict = walk::viewStep(filling.state, key).verdict;
        all = all && verdict != walk::Verdict::retest;
        shown.retests.push_back({markOf(verdict), walk::nameOfSubject(filling.scope, key), key.name});
    }
    shown.retestHead = filling.phrase(all ? "report.retested-because" : "report.to-retest");
}

walk::Verdict bandVerdict(const Filling& filling, const walk::Finding& finding)
{
    switch (finding.status) {
    case walk::FindingStatus::open:
    case walk::FindingStatus::intermittent: return walk::Verdict::fail;
    case walk::FindingStatus::putRight: return walk::Verdict::retest;
    case walk::FindingStatus::cleared: return walk::Verdict::pass;
    case walk::FindingStatus::noted: return walk::viewStep(filling.state, finding.step).verdict;
    }
    return walk::Verdict::fail;
}

std::string dueWords(const Filling& filling, const walk::Finding& finding)
{
    if (finding.status == walk::FindingStatus::cleared && !finding.attempts.empty())
        return filling.phrase("report.cleared-at", {{"time", base::localTime(finding.attempts.back()->fact.at)}});
    const std::string due = finding.described.empty() ? std::string() : finding.described.back()->body.due;
    if (!due.empty()) return filling.phrase("report.due", {{"day", shortDay(due)}});
    return finding.status == walk::FindingStatus::noted ? filling.phrase("report.recommended") : std::string();
}

Finding shownFinding(const Filling& filling, const walk::Finding& finding)
{
    Finding shown;
    const walk::Verdict verdict = bandVerdict(filling, finding);
    shown.verdict = markOf(verdict);
    shown.tag = walk::nameOfSubject(filling.scope, finding.step);
    shown.word = finding.status == walk::FindingStatus::intermittent ? filling.phrase("report.comes-and-goes")
                                                                     : filling.verdictWord(verdict);
    shown.line = filling.lineOf(finding);
    shown.due = dueWords(filling, finding);
    if (const walk::ScopeDevice* owner = filling.scope.ownerOf(finding.step)) {
        const auto row = std::ranges::find(filling.plan.floors, owner->device->floor, &plan::Floor::floor);
        shown.floor = row == filling.plan.floors.end() || row->name.empty() ? owner->device->floor : row->name;
        shown.room = owner->device->room;
    }
    shown.history = historyOf(filling, finding);
    fillRetests(filling, finding, shown);
    if (!finding.photographs.empty()) {
        const auto* told = finding.photographs.back();
        const auto bytes = filling.ground.record.photographs.find(filling.reveal(told->body.photograph));
        if (bytes != filling.ground.record.photographs.end())
            shown.photograph =
                Photograph{bytes->second, base::localTime(told->fact.at) + ", " + filling.reveal(told->body.words)};
    }
    return shown;
}

ClearedFinding clearedRow(const Filling& filling, const walk::Finding& finding)
{
    ClearedFinding row;
    row.tag = walk::nameOfSubject(filling.scope, finding.step);
    const walk::ScopeDevice* owner = filling.scope.ownerOf(finding.step);
    row.what = owner != nullptr && owner->kind != nullptr ? owner->kind->title : finding.step.name;
    row.detail = filling.lineOf(finding);
    row.done = finding.repairs.empty() ? std::string() : filling.reveal(finding.repairs.back()->body.words);
    std::vector<std::string> steps;
    if (!finding.repairs.empty())
        for (const walk::StepKey& key : finding.repairs.back()->body.retest)
            if (steps.size() < 4) steps.push_back(key.name);
    row.retested = filling.phrase("report.retested", {{"steps", base::join(steps, ", ")}});
    row.time = finding.attempts.empty() ? std::string() : base::localTime(finding.attempts.back()->fact.at);
    return row;
}

} // namespace

void fillFindings(const Filling& filling, Contents& contents)
{
    std::int64_t pending = 0, cleared = 0, noted = 0;
    bool intermittent = false;
    for (const walk::Finding& finding : filling.findings) {
        const bool isCleared = finding.status == walk::FindingStatus::cleared;
        cleared += isCleared ? 1 : 0;
        pending += finding.pending() ? 1 : 0;
        noted += finding.status == walk::FindingStatus::noted ? 1 : 0;
        intermittent = intermittent || finding.status == walk::FindingStatus::intermittent;
        // One with a photograph is worth its room even when it is cleared.
        if (isCleared && finding.photographs.empty()) contents.cleared.push_back(clearedRow(filling, finding));
        else contents.findings.push_back(shownFinding(filling, finding));
    }
    contents.findingsLine =
        filling.phrase("report.findings-line",
                       {{"found", pending + cleared}, {"pending", pending}, {"cleared", cleared}, {"noted", noted}});
    contents.clearedLine = filling.phrase("report.cleared-line");
    contents.findingsClosing =
        filling.phrase(intermittent ? "report.comes-and-goes.some" : "report.comes-and-goes.none");
}

} // namespace proofwalk::report
