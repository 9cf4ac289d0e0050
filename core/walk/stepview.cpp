// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/walk/stepview.h"

#include <algorithm>

namespace proofwalk::walk {
namespace {

/// Readings that lie further apart than their uncertainties added; in the base unit, exactly.
bool readingsDiffer(const AnswerBody& a, const AnswerBody& b)
{
    if (!a.reading || !b.reading) return false;
    const base::Decimal zero;
    const auto x = base::inBaseUnit(*a.reading), y = base::inBaseUnit(*b.reading);
    const auto ux = base::inBaseUnit({a.uncertainty.value_or(zero), a.reading->unit});
    const auto uy = base::inBaseUnit({b.uncertainty.value_or(zero), b.reading->unit});
    if (!x || !y || !ux || !uy) return true;
    auto apart = base::subtract(*x, *y);
    const auto allowed = base::add(*ux, *uy);
    if (!apart || !allowed) return true;
    if (apart->mantissa < 0) apart->mantissa = -apart->mantissa;
    return base::compare(*apart, *allowed) > 0;
}

bool differ(const Attempt& a, const Attempt& b) { return a.verdict != b.verdict || readingsDiffer(a.answer, b.answer); }

bool disagree(const std::vector<const Attempt*>& attempts)
{
    return std::ranges::any_of(attempts, [&](const Attempt* each) { return differ(*each, *attempts.front()); });
}

/// Those attempts that nothing later has replaced. A newer answer replaces what it has seen; one given in bulk or
/// by the ear does not settle a disagreement, it only stands beside it.
std::vector<const Attempt*> notReplaced(const State& state, const std::vector<const Attempt*>& standing)
{
    std::vector<const Attempt*> current;
    for (const Attempt* attempt : standing) {
        std::vector<const Attempt*> seen;
        for (const Attempt* each : current)
            if (state.hasSeen(attempt->fact, each->fact)) seen.push_back(each);
        const bool byHand = attempt->answer.how == How::singly || attempt->answer.how == How::partner;
        if (byHand || !disagree(seen))
            std::erase_if(current, [&](const Attempt* each) { return std::ranges::find(seen, each) != seen.end(); });
        current.push_back(attempt);
    }
    return current;
}

const Told<RepairBody>* repairInDoubt(const State& state, const StepKey& key,
                                      const std::vector<const Attempt*>& deciding)
{
    for (const Told<RepairBody>& repair : state.repairs) {
        if (!state.stands(repair.fact) || std::ranges::find(repair.body.retest, key) == repair.body.retest.end())
            continue;
        const bool seen = std::ranges::any_of(
            deciding, [&](const Attempt* attempt) { return state.hasSeen(attempt->fact, repair.fact); });
        if (!seen) return &repair;
    }
    return nullptr;
}

} // namespace

std::vector<const Attempt*> standingAttempts(const State& state, const StepKey& key)
{
    std::vector<const Attempt*> standing;
    const auto attempts = state.attempts.find(key);
    if (attempts == state.attempts.end()) return standing;
    for (const Attempt& attempt : attempts->second)
        if (attempt.counts && state.stands(attempt.fact)) standing.push_back(&attempt);
    const bool ownAnswers = std::ranges::any_of(standing, [](const Attempt* each) { return !each->blanket; });
    if (ownAnswers) std::erase_if(standing, [](const Attempt* each) { return each->blanket; });
    std::ranges::stable_sort(standing, {}, [](const Attempt* each) { return each->fact.stamp; });
    return standing;
}

StepView viewStep(const State& state, const StepKey& key)
{
    StepView view;
    view.deciding = notReplaced(state, standingAttempts(state, key));
    if (view.deciding.empty()) return view;

    view.verdict = (*std::ranges::min_element(view.deciding, {}, &Attempt::verdict))->verdict;
    for (const Attempt* attempt : view.deciding)
        if (attempt->verdict == view.verdict) view.newest = attempt;
    view.disagreement = disagree(view.deciding);
    view.retestFor = repairInDoubt(state, key, view.deciding);
    if (view.retestFor != nullptr) view.verdict = Verdict::retest;
    return view;
}

} // namespace proofwalk::walk
