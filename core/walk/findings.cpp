// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/walk/findings.h"

#include <algorithm>
#include <array>
#include <set>

namespace proofwalk::walk {
namespace {

template <class B, class Names>
std::vector<const Told<B>*> naming(const State& state, const std::vector<Told<B>>& all, Names names)
{
    std::vector<const Told<B>*> found;
    for (const Told<B>& each : all)
        if (state.stands(each.fact) && names(each.body)) found.push_back(&each);
    std::ranges::stable_sort(found, {}, [](const Told<B>* each) { return each->fact.stamp; });
    return found;
}

FindingStatus statusOf(const State& state, const Finding& finding, const StepView& view)
{
    if (finding.lastFail == nullptr) return FindingStatus::noted;
    if (view.verdict == Verdict::fail) return FindingStatus::open;
    const auto sawFailure = [&](const Told<RepairBody>* repair) {
        return state.hasSeen(repair->fact, finding.lastFail->fact);
    };
    const bool repaired = std::ranges::any_of(finding.repairs, sawFailure);
    if (view.verdict == Verdict::retest && repaired) return FindingStatus::putRight;
    if (view.verdict != Verdict::pass && view.verdict != Verdict::notApplicable) return FindingStatus::open;
    const bool cleared = std::ranges::any_of(finding.repairs, [&](const Told<RepairBody>* repair) {
        return sawFailure(repair) && std::ranges::any_of(view.deciding, [&](const Attempt* attempt) {
                   return state.hasSeen(attempt->fact, repair->fact);
               });
    });
    if (cleared) return FindingStatus::cleared;
    return view.verdict == Verdict::pass ? FindingStatus::intermittent : FindingStatus::open;
}

bool isLifeSafety(const Scope& scope, const StepKey& key)
{
    const ScopeStep* step = scope.step(key);
    const ScopeDevice* device = scope.ownerOf(key);
    return (step != nullptr && step->step.lifeSafety) || (device != nullptr && device->lifeSafety());
}

const Fact* firstFact(const Finding& finding)
{
    const Fact* first = finding.described.empty() ? nullptr : &finding.described.front()->fact;
    for (const Attempt* attempt : finding.attempts) {
        if (attempt->verdict != Verdict::fail) continue;
        return first == nullptr || attempt->fact.stamp < first->stamp ? &attempt->fact : first;
    }
    return first;
}

} // namespace

std::string_view wordOf(FindingStatus status)
{
    constexpr std::array<std::string_view, 5> words{"open", "put-right", "cleared", "intermittent", "noted"};
    return words[static_cast<std::size_t>(status)];
}

Grade Finding::grade() const
{
    if (lastFail != nullptr) return Grade::deficiency;
    return described.empty() ? Grade::recommendation : described.back()->body.grade;
}

std::optional<Finding> findingOf(const State& state, const StepKey& key)
{
    const auto names = [&](const auto& body) { return std::ranges::find(body.findings, key) != body.findings.end(); };
    Finding finding;
    finding.step = key;
    finding.attempts = standingAttempts(state, key);
    for (const Attempt* attempt : finding.attempts)
        if (attempt->verdict == Verdict::fail) finding.lastFail = attempt;
    finding.described = naming(state, state.findings, [&](const FindingBody& body) { return body.step == key; });
    if (finding.lastFail == nullptr && finding.described.empty()) return {};

    finding.repairs = naming(state, state.repairs, names);
    finding.accepts = naming(state, state.accepts, names);
    finding.photographs =
        naming(state, state.photographs, [&](const PhotographBody& body) { return body.step == key; });
    finding.lifeSafety = isLifeSafety(*state.scope, key);
    finding.status = statusOf(state, finding, viewStep(state, key));
    const Fact& told = finding.lastFail != nullptr ? finding.lastFail->fact : finding.described.back()->fact;
    finding.accepted = std::ranges::any_of(
        finding.accepts, [&](const Told<AcceptBody>* accept) { return state.hasSeen(accept->fact, told); });
    return finding;
}

std::vector<Finding> allFindings(const State& state)
{
    std::set<StepKey> keys;
    for (const auto& [key, attempts] : state.attempts)
        if (std::ranges::any_of(attempts, [](const Attempt& each) { return each.verdict == Verdict::fail; }))
            keys.insert(key);
    for (const Told<FindingBody>& each : state.findings) keys.insert(each.body.step);

    std::vector<Finding> findings;
    for (const StepKey& key : keys)
        if (auto finding = findingOf(state, key)) findings.push_back(std::move(*finding));
    std::ranges::stable_sort(findings, {}, [](const Finding& finding) { return firstFact(finding)->stamp; });
    return findings;
}

} // namespace proofwalk::walk
