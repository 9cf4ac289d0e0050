// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/walk/stages.h"

#include <algorithm>

namespace proofwalk::walk {
namespace {

using catalogue::StepKind;

constexpr std::size_t mostTogether = 3;

/// Seen and done with hand and eye; what is read, timed, counted, listened to or photographed stands alone.
bool isPlain(const catalogue::Step& step)
{
    return (step.kind == StepKind::act || step.kind == StepKind::see || step.kind == StepKind::inspect)
        && !step.lifeSafety;
}

bool ofOneSignal(const std::string& signal, const std::string& other)
{
    return signal == other || signal == "-" || other == "-";
}

bool isPossible(const State& state, const ScopeStep& step)
{
    return std::ranges::find(step.step.states, stateFor(state, step.key)) != step.step.states.end();
}

bool isAnswered(const StepView& view) { return view.answered() && view.verdict != Verdict::retest; }

/// Whether the step is done in one go with those of the stage.
bool joins(const State& state, const Stage& stage, const ScopeStep& next)
{
    if (stage.steps.size() >= mostTogether || !next.step.caution.empty() || !isPlain(next.step)) return false;
    if (!isPlain(state.scope->step(stage.steps.back())->step) || isPossible(state, next) != stage.possible)
        return false;
    if (isAnswered(viewStep(state, next.key)) != stage.answered) return false;
    return std::ranges::all_of(stage.steps, [&](const StepKey& key) {
        const ScopeStep* step = state.scope->step(key);
        return ofOneSignal(step->step.signal, next.step.signal) && step->step.subject == next.step.subject;
    });
}

} // namespace

std::vector<Stage> stagesOf(const State& state, const ScopeDevice& device, bool extended)
{
    // First what can be done at the device now, then what waits for another state; the zone's is done at the panel.
    std::vector<StepKey> keys = device.steps;
    std::ranges::stable_sort(keys, {}, [&](const StepKey& key) {
        const bool own = key.subject == device.device->id;
        return std::pair(!own, !isPossible(state, *state.scope->step(key)));
    });
    std::vector<Stage> stages;
    for (const StepKey& key : keys) {
        const ScopeStep& step = *state.scope->step(key);
        const StepView view = viewStep(state, key);
        if (!step.step.core && !extended && !view.answered()) continue;
        if (!stages.empty() && joins(state, stages.back(), step)) {
            stages.back().steps.push_back(key);
            continue;
        }
        Stage stage;
        stage.steps.push_back(key);
        stage.answered = isAnswered(view);
        stage.possible = isPossible(state, step);
        stages.push_back(std::move(stage));
    }
    return stages;
}

std::size_t stageInHand(const std::vector<Stage>& stages)
{
    const auto now = std::ranges::find_if(stages, [](const Stage& s) { return s.possible && !s.answered; });
    if (now != stages.end()) return static_cast<std::size_t>(now - stages.begin());
    return static_cast<std::size_t>(std::ranges::find(stages, false, &Stage::answered) - stages.begin());
}

} // namespace proofwalk::walk
