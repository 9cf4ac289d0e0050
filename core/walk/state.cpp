// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/walk/state.h"

#include "core/walk/judge.h"

#include <algorithm>

namespace proofwalk::walk {
namespace {

template <class>
inline constexpr bool unhandled = false;

void addAttempt(State& state, Attempt attempt)
{
    const ScopeStep* step = state.scope->step(attempt.answer.step);
    if (step == nullptr) {
        state.unjudged.push_back({attempt.fact, Error{"walk.step-unknown", "", {{"found", attempt.answer.step.name}}}});
        return;
    }
    judgeAttempt(attempt, *step);
    state.attempts[attempt.answer.step].push_back(std::move(attempt));
}

/// A whole device out of reach: an attempt at each of its own core steps.
void addNoAccess(State& state, const Fact& fact, const NoAccessBody& body)
{
    const ScopeDevice* device = state.scope->deviceOf(body.subject);
    if (device == nullptr) {
        state.unjudged.push_back({fact, Error{"walk.subject-unknown", "", {{"found", body.subject}}}});
        return;
    }
    for (const StepKey& key : device->steps) {
        const ScopeStep* step = state.scope->step(key);
        if (key.subject != body.subject || !step->step.core) continue;
        Attempt attempt{fact, {}, Verdict::noAccess, true, true, false};
        attempt.answer.step = key;
        attempt.answer.outcome = Outcome::noAccess;
        attempt.answer.reason = body.reason;
        attempt.answer.state = step->step.states.front();
        addAttempt(state, std::move(attempt));
    }
}

void addWithdrawal(State& state, const Fact& fact, const WithdrawBody& body)
{
    state.withdrawals.push_back({fact, body});
    const auto kind = state.kindOfEvent.find(body.event);
    // A withdrawal cannot itself be withdrawn, nor what a job is judged by.
    if (kind == state.kindOfEvent.end() || kind->second == "withdraw" || kind->second == "start"
        || kind->second == "open")
        return;
    state.withdrawn.insert(body.event);
}

} // namespace

State emptyState(std::shared_ptr<const Scope> scope)
{
    State state;
    state.scope = std::move(scope);
    return state;
}

void apply(State& state, const journal::Event& event)
{
    state.sight.add(event);
    ++state.eventCount;
    state.kindOfEvent[event.hash] = event.kind;
    const Fact fact{event.hash, {event.chain, event.n}, event.stamp, observedAt(event.body).value_or(event.at)};
    auto body = bodyFrom(event.kind, event.v, event.body);
    if (!body) {
        state.unjudged.push_back({fact, std::move(body.error())});
        return;
    }
    std::visit(
        [&](auto& told) {
            using B = std::remove_reference_t<decltype(told)>;
            if constexpr (std::is_same_v<B, StartBody> || std::is_same_v<B, OpenBody>) return;
            else if constexpr (std::is_same_v<B, AnswerBody>) addAttempt(state, {fact, std::move(told)});
            else if constexpr (std::is_same_v<B, NoAccessBody>) addNoAccess(state, fact, told);
            else if constexpr (std::is_same_v<B, WithdrawBody>) addWithdrawal(state, fact, told);
            else if constexpr (std::is_same_v<B, StateBody>) {
                auto& newest = state.areaStates[told.area];
                if (newest.fact.event.empty() || newest.fact.stamp < fact.stamp) newest = {fact, told};
            } else if constexpr (std::is_same_v<B, FindingBody>) state.findings.push_back({fact, told});
            else if constexpr (std::is_same_v<B, PhotographBody>) state.photographs.push_back({fact, told});
            else if constexpr (std::is_same_v<B, RepairBody>) state.repairs.push_back({fact, told});
            else if constexpr (std::is_same_v<B, AcceptBody>) state.accepts.push_back({fact, told});
            else if constexpr (std::is_same_v<B, KitBody>) state.kit.push_back({fact, told});
            else if constexpr (std::is_same_v<B, ClockBody>) state.clocks.push_back({fact, told});
            else if constexpr (std::is_same_v<B, OnTestBody>) state.onTests.push_back({fact, told});
            else if constexpr (std::is_same_v<B, OffTestBody>) state.offTests.push_back({fact, told});
            else if constexpr (std::is_same_v<B, AsFoundBody>) state.asFound.push_back({fact, told});
            else if constexpr (std::is_same_v<B, TemporaryBody>) state.temporaries.push_back({fact, told});
            else if constexpr (std::is_same_v<B, PutBackBody>) state.putBacks.push_back({fact, told});
            else if constexpr (std::is_same_v<B, ShownBody>) state.shown.push_back({fact, told});
            else if constexpr (std::is_same_v<B, NoteBody>) state.notes.push_back({fact, told});
            else if constexpr (std::is_same_v<B, AcceptanceBody>) state.acceptances.push_back({fact, told});
            else if constexpr (std::is_same_v<B, VouchBody>) state.vouches.push_back({fact, told});
            else if constexpr (std::is_same_v<B, HandedOverBody>) state.handovers.push_back({fact, told});
            else static_assert(unhandled<B>);
        },
        *body);
}

catalogue::SystemState areaState(const State& state, const std::string& areaId)
{
    const auto found = state.areaStates.find(areaId);
    return found == state.areaStates.end() ? catalogue::SystemState::unset : found->second.body.state;
}

namespace {

/// The areas a subject lies in, as rows of the plan.
std::vector<const plan::Area*> areasOf(const Scope& scope, const StepKey& step, const plan::Zone*& zone)
{
    const plan::Plan& plan = *scope.plan;
    std::vector<const plan::Area*> areas;
    if (const ScopeDevice* device = scope.ownerOf(step)) {
        zone = device->zone;
        if (step.subject == device->device->id) {
            const auto ofSignal = device->signalZones.find(step.signal);
            if (ofSignal != device->signalZones.end()) zone = ofSignal->second;
        }
        if (zone != nullptr)
            for (const std::string& name : zone->areas)
                if (const plan::Area* area = plan.findArea(name)) areas.push_back(area);
        return areas;
    }
    for (const plan::Area& area : plan.areas)
        if (area.id == step.subject) areas.push_back(&area);
    for (const plan::Timer& timer : plan.timers)
        if (timer.id == step.subject)
            if (const plan::Area* area = plan.findArea(timer.area)) areas.push_back(area);
    return areas;
}

} // namespace

catalogue::SystemState stateFor(const State& state, const StepKey& step)
{
    using catalogue::SystemState;
    const plan::Zone* zone = nullptr;
    auto areas = areasOf(*state.scope, step, zone);
    // A device without a zone (a sounder) belongs to the whole site.
    if (areas.empty())
        for (const plan::Area& area : state.scope->plan->areas) areas.push_back(&area);
    if (areas.empty()) return SystemState::unset;

    const SystemState first = areaState(state, areas.front()->id);
    const bool agree =
        std::ranges::all_of(areas, [&](const plan::Area* area) { return areaState(state, area->id) == first; });
    const bool tested = std::ranges::any_of(
        areas, [&](const plan::Area* area) { return areaState(state, area->id) == SystemState::walkTest; });
    if (!agree) return tested ? SystemState::walkTest : SystemState::unset;
    if (first != SystemState::set || zone == nullptr) return first;
    if (zone->liveIn.empty() || std::ranges::find(zone->liveIn, "always") != zone->liveIn.end()) return first;

    const std::string& modeId = state.areaStates.at(areas.front()->id).body.mode;
    const auto mode = std::ranges::find(state.scope->plan->modes, modeId, &plan::Mode::id);
    const bool live =
        mode == state.scope->plan->modes.end() || std::ranges::find(zone->liveIn, mode->mode) != zone->liveIn.end();
    return live ? SystemState::set : SystemState::unset;
}

} // namespace proofwalk::walk
