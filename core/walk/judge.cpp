// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/walk/judge.h"

#include "core/measure/conformity.h"

#include <algorithm>

namespace proofwalk::walk {
namespace {

/// Judged in the base unit of the quantity, exactly; nothing if a number is out of bounds (walk refuses those on
/// entry).
std::optional<measure::Conformity> judgeReading(const AnswerBody& answer, const JointLimit& limit)
{
    const auto value = base::inBaseUnit(*answer.reading);
    std::optional<base::Decimal> expanded;
    if (answer.uncertainty) {
        const auto inBase = base::inBaseUnit({*answer.uncertainty, answer.reading->unit});
        if (!inBase) return {};
        expanded = *inBase;
    }
    if (!value) return {};
    const auto conformity = measure::judge(*value, expanded, {limit.lower, limit.upper});
    if (!conformity) return {};
    return *conformity;
}

Verdict verdictOfReading(const AnswerBody& answer, const ScopeStep& step)
{
    if (step.confirmed.empty()) return Verdict::pass;
    const auto conformity = judgeReading(answer, step.confirmed);
    if (!conformity || *conformity == measure::Conformity::undecided) return Verdict::tooClose;
    if (*conformity == measure::Conformity::fail) return Verdict::fail;
    const bool lifeOrLaw = step.confirmed.strict;
    return lifeOrLaw && !answer.uncertainty ? Verdict::tooClose : Verdict::pass;
}

Verdict verdictOfValue(const AnswerBody& answer, const ScopeStep& step)
{
    if (answer.reading) return verdictOfReading(answer, step);
    if (!answer.hits || !answer.tries || *answer.hits > *answer.tries) return Verdict::fail;
    const bool enough = *answer.tries >= step.step.trialsWanted
                     && *answer.tries - *answer.hits <= step.step.trialsWanted - step.step.trialsNeeded;
    return enough ? Verdict::pass : Verdict::fail;
}

} // namespace

void judgeAttempt(Attempt& attempt, const ScopeStep& step)
{
    const AnswerBody& answer = attempt.answer;
    attempt.counts = attempt.blanket || std::ranges::find(step.step.states, answer.state) != step.step.states.end();
    switch (answer.outcome) {
    case Outcome::asPlanned: attempt.verdict = Verdict::pass; break;
    case Outcome::notAsPlanned: attempt.verdict = Verdict::fail; break;
    case Outcome::notApplicable: attempt.verdict = Verdict::notApplicable; break;
    case Outcome::noAccess: attempt.verdict = Verdict::noAccess; break;
    case Outcome::started: attempt.verdict = Verdict::running; break;
    case Outcome::value: attempt.verdict = verdictOfValue(answer, step); break;
    }
    attempt.outsideAdvice = answer.reading && !step.unconfirmed.empty()
                         && judgeReading(answer, step.unconfirmed) != measure::Conformity::pass;
}

} // namespace proofwalk::walk
