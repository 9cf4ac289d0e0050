// SPDX-License-Identifier: GPL-3.0-or-later
// The commands answer, round and no-access: what was seen, read or could not be reached.
#include "core/walk/drafting.h"

#include "core/base/text.h"
#include "core/measure/instrument.h"

#include <fmt/format.h>

#include <algorithm>

namespace proofwalk::walk {
namespace {

using catalogue::StepKind;

bool isReading(const catalogue::Step& step) { return step.kind == StepKind::read || step.kind == StepKind::time; }

/// The kit event of that name: the last that stands.
Result<const Told<KitBody>*> instrumentNamed(const State& state, const std::string& name)
{
    const Told<KitBody>* found = nullptr;
    std::vector<std::string> known;
    for (const auto& told : state.kit) {
        if (!state.stands(told.fact)) continue;
        known.push_back(told.body.name);
        if (told.body.name == name) found = &told;
    }
    if (found != nullptr) return found;
    return failure("walk.instrument-unknown", "", {{"found", name}, {"nearest", base::nearestWord(name, known)}});
}

/// Fills in what the instrument's data sheet says of this reading.
Result<void> useInstrument(const State& state, const std::string& name, AnswerBody& answer)
{
    auto instrument = instrumentNamed(state, name);
    if (!instrument) return passOn(instrument);
    answer.instrument = (*instrument)->fact.event;
    if (answer.uncertainty) return {};
    for (const Measure& measure : (*instrument)->body.measures) {
        if (measure.quantity != answer.reading->unit->quantity) continue;
        auto expanded = measure::expandedUncertainty(*answer.reading, measure.accuracy);
        if (!expanded) return passOn(expanded);
        answer.uncertainty = *expanded;
        return {};
    }
    return failure("walk.instrument-wrong", "",
                   {{"instrument", name}, {"quantity", std::string(answer.reading->unit->quantity)}});
}

Result<void> takeReading(const State& state, Line& line, const std::string& value, const ScopeStep& step,
                         AnswerBody& answer)
{
    auto reading = base::parseQuantity(value);
    if (!reading) return passOn(reading);
    const base::Unit* wanted = base::findUnit(step.step.unit);
    if (wanted == nullptr || reading->unit->quantity != wanted->quantity)
        return failure("walk.unit-mismatch", step.key.name,
                       {{"found", std::string(reading->unit->code)}, {"wanted", step.step.unit}});
    answer.reading = *reading;

    auto uncertainty = line.maybeText("uncertainty");
    auto instrument = line.maybeText("instrument");
    if (!uncertainty) return passOn(uncertainty);
    if (!instrument) return passOn(instrument);
    if (!uncertainty->empty()) {
        auto given = base::parseQuantity(*uncertainty);
        if (!given) return passOn(given);
        if (given->unit != reading->unit || given->value.mantissa < 0)
            return failure("walk.uncertainty-form", step.key.name,
                           {{"found", *uncertainty}, {"wanted", std::string(reading->unit->code)}});
        answer.uncertainty = given->value;
    }
    if (instrument->empty()) return {};
    return useInstrument(state, *instrument, answer);
}

Result<void> takeTrials(Line& line, const ScopeStep& step, AnswerBody& answer)
{
    auto hits = line.maybeWhole("hits"), tries = line.maybeWhole("tries");
    if (!hits) return passOn(hits);
    if (!tries) return passOn(tries);
    if (!*hits || !*tries || **hits < 0 || **hits > **tries || **tries > 1000)
        return failure("walk.trials-form", step.key.name, {{"wanted", std::int64_t{step.step.trialsWanted}}});
    answer.hits = *hits;
    answer.tries = *tries;
    return {};
}

/// Which results mean something for this kind of step.
Result<void> checkOutcome(const ScopeStep& step, const AnswerBody& answer)
{
    const bool measured = isReading(step.step) || step.step.kind == StepKind::trial;
    if (answer.outcome == Outcome::asPlanned && measured)
        return failure("walk.reading-missing", step.key.name,
                       {{"kind", std::string(catalogue::wordOf(step.step.kind))}});
    if (answer.outcome == Outcome::value && !measured)
        return failure("walk.value-not-wanted", step.key.name,
                       {{"kind", std::string(catalogue::wordOf(step.step.kind))}});
    if (answer.outcome == Outcome::started && !isReading(step.step)) return failure("walk.not-long", step.key.name);
    const bool skipped = answer.outcome == Outcome::notApplicable || answer.outcome == Outcome::noAccess;
    if (skipped && !answer.reason.there()) return failure("walk.reason-missing", step.key.name);
    if (answer.outcome == Outcome::notAsPlanned && !answer.seen.there())
        return failure("walk.seen-missing", step.key.name);
    return {};
}

/// Nothing of life safety, no reading, cover or restore goes green in bulk.
Result<void> checkHow(const ScopeStep& step, const AnswerBody& answer)
{
    if (answer.how == How::singly || answer.how == How::partner || answer.outcome == Outcome::noAccess) return {};
    const bool seenOnly =
        step.step.kind == StepKind::act || step.step.kind == StepKind::see || step.step.kind == StepKind::confirm;
    if (step.step.lifeSafety || !seenOnly)
        return failure("walk.bulk-refused", step.key.name, {{"how", std::string(wordOf(answer.how))}});
    return {};
}

Result<void> checkState(const ScopeStep& step, const AnswerBody& answer)
{
    if (answer.outcome == Outcome::notApplicable || answer.outcome == Outcome::noAccess) return {};
    if (std::ranges::find(step.step.states, answer.state) != step.step.states.end()) return {};
    std::vector<std::string> wanted;
    for (const auto state : step.step.states) wanted.emplace_back(catalogue::wordOf(state));
    return failure("walk.state-wrong", step.key.name,
                   {{"found", std::string(catalogue::wordOf(answer.state))}, {"wanted", base::join(wanted, " or ")}});
}

/// Where n/a or no access is said of a step that has no meaning in the present state, the record names one in which
/// it has.
catalogue::SystemState recordedState(const State& state, const ScopeStep& step, Outcome outcome)
{
    const auto present = stateFor(state, step.key);
    const bool skipped = outcome == Outcome::notApplicable || outcome == Outcome::noAccess;
    const bool allowed = std::ranges::find(step.step.states, present) != step.step.states.end();
    return skipped && !allowed ? step.step.states.front() : present;
}

/// The result as given, or "value" where there is one to read.
Result<Outcome> outcomeOf(Line& line, bool hasValue)
{
    if (hasValue && !line.has("result")) return Outcome::value;
    auto word = line.text("result");
    if (!word) return passOn(word);
    if (const auto outcome = outcomeFrom(*word)) return *outcome;
    const std::vector<std::string> known{"as-planned",     "not-as-planned", "value",
                                         "not-applicable", "no-access",      "started"};
    return failure("command.value", "",
                   {{"key", "result"}, {"found", *word}, {"wanted", base::nearestWord(*word, known)}});
}

Result<How> howOf(Line& line)
{
    auto word = line.maybeText("how");
    if (!word) return passOn(word);
    if (word->empty()) return How::singly;
    if (const auto how = howFrom(*word)) return *how;
    return failure("command.value", "", {{"key", "how"}, {"found", *word}, {"wanted", "singly, bulk, ear or partner"}});
}

/// One answer of a line to one step; `value` is the reading as text, empty if none.
Drafts answerTo(const CommandGround& ground, Line& line, const ScopeStep& step, const std::string& value)
{
    Sealing sealing;
    AnswerBody answer;
    answer.step = step.key;
    const bool trials = line.has("hits") || line.has("tries");
    auto outcome = outcomeOf(line, !value.empty() || trials);
    auto how = howOf(line);
    auto reason = sealing.seal(line, "reason");
    auto seen = sealing.seal(line, "seen");
    if (!outcome) return passOn(outcome);
    if (!how) return passOn(how);
    if (!reason) return passOn(reason);
    if (!seen) return passOn(seen);
    answer.outcome = *outcome;
    answer.how = *how;
    answer.reason = *reason;
    answer.seen = *seen;
    answer.state = recordedState(ground.state, step, answer.outcome);

    for (const auto& check : {checkOutcome(step, answer), checkHow(step, answer), checkState(step, answer)})
        if (!check) return std::unexpected(check.error());
    if (answer.outcome == Outcome::value) {
        auto taken = isReading(step.step) ? takeReading(ground.state, line, value, step, answer)
                                          : takeTrials(line, step, answer);
        if (!taken) return passOn(taken);
    }
    return sealing.draft(line, answer);
}

/// The key of a round's row: a zone by its number, a device by its tag.
Result<StepKey> roundKey(const Scope& scope, const catalogue::Round& round, const std::string& name)
{
    base::Json::Object object{{"step", round.step}};
    object[round.subject == catalogue::Subject::zone ? "zone" : "device"] = name;
    Line line{base::Json(std::move(object))};
    return stepOf(scope, line);
}

} // namespace

Drafts answerCommand(const CommandGround& ground, Line& line)
{
    auto key = stepOf(*ground.state.scope, line);
    if (!key) return passOn(key);
    auto value = line.maybeText("value");
    if (!value) return passOn(value);
    return answerTo(ground, line, *ground.state.scope->step(*key), *value);
}

Drafts roundCommand(const CommandGround& ground, Line& line)
{
    auto name = line.text("round");
    if (!name) return passOn(name);
    const auto& rounds = ground.state.scope->catalogue->rounds();
    const auto round = std::ranges::find(rounds, *name, &catalogue::Round::name);
    if (round == rounds.end()) {
        std::vector<std::string> known;
        for (const auto& each : rounds) known.push_back(each.name);
        return failure("walk.round-unknown", "", {{"found", *name}, {"nearest", base::nearestWord(*name, known)}});
    }
    const base::Json* values = line.raw("values");
    if (values == nullptr || values->object() == nullptr || values->object()->empty())
        return failure("command.key-missing", "", {{"wanted", "values"}});

    std::vector<journal::Draft> drafts;
    for (const auto& [subject, value] : *values->object()) {
        if (value.string() == nullptr)
            return failure("command.value", "",
                           {{"key", subject}, {"found", base::canonical(value)}, {"wanted", "a text"}});
        auto key = roundKey(*ground.state.scope, *round, subject);
        if (!key) return std::unexpected(std::move(key.error()).within(subject));
        auto answer = answerTo(ground, line, *ground.state.scope->step(*key), *value.string());
        if (!answer) return std::unexpected(std::move(answer.error()).within(subject));
        drafts.push_back(std::move(answer->front()));
    }
    return drafts;
}

Drafts noAccessCommand(const CommandGround& ground, Line& line)
{
    Sealing sealing;
    auto subject = subjectOf(*ground.state.scope, line);
    if (!subject) return passOn(subject);
    const ScopeDevice* device = ground.state.scope->deviceOf(*subject);
    if (device == nullptr) return failure("command.key-missing", "", {{"wanted", "device"}});
    if (device->kind == nullptr) return failure("walk.no-sheet", device->device->tag, {{"kind", device->device->kind}});
    auto reason = sealing.seal(line, "reason", true);
    if (!reason) return passOn(reason);
    return sealing.draft(line, NoAccessBody{*subject, *reason});
}

} // namespace proofwalk::walk
