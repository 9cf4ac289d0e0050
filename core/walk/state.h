// SPDX-License-Identifier: GPL-3.0-or-later
// What the events add up to: the facts, in the order seen. Verdicts, proofs and findings are views over it, computed
// when asked for (stepview.h, deviceview.h, findings.h, readiness.h), so that there is nothing to fall out of step.
#pragma once

#include "core/journal/event.h"
#include "core/walk/bodies.h"
#include "core/walk/sight.h"

#include <map>
#include <memory>
#include <set>
#include <string>
#include <vector>

namespace proofwalk::walk {

/// Which event told something, and when.
struct Fact {
    std::string event; ///< its hash
    Place place;
    journal::Stamp stamp;
    base::WallClock at; ///< when it was observed: the body's `at`, else the machine's clock
};

template <class B>
struct Told {
    Fact fact;
    B body;
};

/// One try at one step, judged by itself.
struct Attempt {
    Fact fact;
    AnswerBody answer;
    Verdict verdict = Verdict::toDo;
    bool counts = true;         ///< false: in a state that the step does not allow
    bool blanket = false;       ///< from a no-access of the whole device
    bool outsideAdvice = false; ///< the reading lies outside, or too near, an unconfirmed limit
};

/// An event whose kind, version or body this program does not know.
struct Unjudged {
    Fact fact;
    Error why;
};

struct State {
    std::shared_ptr<const Scope> scope;
    Sight sight;
    std::map<StepKey, std::vector<Attempt>> attempts;
    std::set<std::string> withdrawn; ///< hashes of withdrawn events
    std::map<std::string, Told<StateBody>> areaStates; ///< by area id, the newest

    std::vector<Told<FindingBody>> findings;
    std::vector<Told<PhotographBody>> photographs;
    std::vector<Told<RepairBody>> repairs;
    std::vector<Told<AcceptBody>> accepts;
    std::vector<Told<WithdrawBody>> withdrawals;
    std::vector<Told<KitBody>> kit;
    std::vector<Told<ClockBody>> clocks;
    std::vector<Told<OnTestBody>> onTests;
    std::vector<Told<OffTestBody>> offTests;
    std::vector<Told<AsFoundBody>> asFound;
    std::vector<Told<TemporaryBody>> temporaries;
    std::vector<Told<PutBackBody>> putBacks;
    std::vector<Told<ShownBody>> shown;
    std::vector<Told<NoteBody>> notes;
    std::vector<Told<AcceptanceBody>> acceptances;
    std::vector<Told<VouchBody>> vouches;
    std::vector<Told<HandedOverBody>> handovers;
    std::vector<Unjudged> unjudged;
    std::int64_t eventCount = 0;
    std::map<std::string, std::string> kindOfEvent; ///< hash -> kind, so that a withdrawal can be checked

    bool stands(const Fact& fact) const { return !withdrawn.contains(fact.event); }
    bool hasSeen(const Fact& later, const Fact& earlier) const { return sight.hasSeen(later.place, earlier.place); }
};

/// A state with nothing in it yet.
State emptyState(std::shared_ptr<const Scope> scope);

/// Adds one event; whatever it has seen must have been added before. Never fails: what cannot be understood is kept
/// among the unjudged.
void apply(State& state, const journal::Event& event);

/// The state the area is in; unset until something else is said.
catalogue::SystemState areaState(const State& state, const std::string& areaId);

/// The state that counts for a step of this subject: of all its areas if they agree; walk-test if one of them is in it;
/// otherwise unset. A zone that is live only in some modes counts as set only in those.
catalogue::SystemState stateFor(const State& state, const StepKey& step);

} // namespace proofwalk::walk
