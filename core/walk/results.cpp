// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/walk/results.h"

#include "core/base/csv.h"
#include "core/base/text.h"
#include "core/walk/deviceview.h"
#include "core/walk/findings.h"
#include "core/walk/readiness.h"

#include <algorithm>
#include <set>

namespace proofwalk::walk {
namespace {

const std::vector<std::string> columns{"row",         "tag",      "signal", "step",     "verdict",
                                       "input",       "response", "output", "received", "reading",
                                       "uncertainty", "unit",     "lower",  "upper",    "at"};

std::string deviceRow(const State& state, const ScopeDevice& device)
{
    const DeviceView view = viewDevice(state, device);
    std::vector<std::string> cells{"device", device.device->tag, "", "", std::string(wordOf(view.verdict))};
    for (const ProofView& proof : view.proofs)
        cells.emplace_back(proof.standIn != nullptr ? std::string_view("by-its-like") : wordOf(proof.state));
    cells.resize(columns.size());
    return base::csvRow(cells);
}

std::string stepRow(const State& state, const StepKey& key)
{
    const StepView view = viewStep(state, key);
    const ScopeStep& step = *state.scope->step(key);
    std::vector<std::string> cells{
        "step", nameOfSubject(*state.scope, key), key.signal, key.name, std::string(wordOf(view.verdict)), "", "", "",
        ""};
    cells.resize(columns.size());
    if (view.newest != nullptr) {
        const AnswerBody& answer = view.newest->answer;
        if (answer.reading) {
            cells[9] = base::toText(answer.reading->value);
            if (answer.uncertainty) cells[10] = base::toText(*answer.uncertainty);
            cells[11] = answer.reading->unit->code;
        } else if (answer.hits && answer.tries) {
            cells[9] = std::to_string(*answer.hits) + " of " + std::to_string(*answer.tries);
        }
        cells[14] = base::toUtcText(view.newest->fact.at.utc_ms);
    }
    if (step.confirmed.lower) cells[12] = base::toText(*step.confirmed.lower);
    if (step.confirmed.upper) cells[13] = base::toText(*step.confirmed.upper);
    return base::csvRow(cells);
}

std::string findingRow(const State& state, const Finding& finding)
{
    std::vector<std::string> cells{"finding", nameOfSubject(*state.scope, finding.step), finding.step.signal,
                                   finding.step.name, std::string(wordOf(finding.status))};
    cells.resize(columns.size());
    return base::csvRow(cells);
}

} // namespace

std::string resultsCsv(const State& state)
{
    std::string rows = base::csvRow(columns);
    std::set<StepKey> told;
    for (const ScopeDevice& device : state.scope->devices) {
        rows += deviceRow(state, device);
        for (const StepKey& key : device.steps)
            if (told.insert(key).second) rows += stepRow(state, key);
    }
    for (const ScopeSequence& sequence : state.scope->sequences)
        for (const StepKey& key : sequence.steps)
            if (told.insert(key).second) rows += stepRow(state, key);
    for (const Finding& finding : allFindings(state)) rows += findingRow(state, finding);
    return rows;
}

std::string firstDifference(const std::string& signedRows, const std::string& computedRows)
{
    const auto theirs = base::split(signedRows, '\n');
    const auto ours = base::split(computedRows, '\n');
    for (std::size_t i = 0; i < std::max(theirs.size(), ours.size()); ++i) {
        const std::string left = i < theirs.size() ? theirs[i] : std::string();
        const std::string right = i < ours.size() ? ours[i] : std::string();
        if (left != right) return std::string(base::trimmed(left)) + " / " + std::string(base::trimmed(right));
    }
    return {};
}

} // namespace proofwalk::walk
