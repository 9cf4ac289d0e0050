// SPDX-License-Identifier: GPL-3.0-or-later
// A walk of the corner shop in memory: events on as many chains as a test wants, without a file and without keys.
#pragma once

#include "core/base/digest.h"
#include "core/base/file.h"
#include "core/catalogue/catalogue.h"
#include "core/measure/conductor.h"
#include "core/plan/read.h"
#include "core/plan/rows.h"
#include "core/walk/deviceview.h"
#include "core/walk/findings.h"
#include "core/walk/state.h"

#include <QString>

#include <map>
#include <stdexcept>
#include <string>

namespace proofwalk::walk {

template <class T>
T must(Result<T> result)
{
    if (!result) throw std::runtime_error(result.error().code + " " + result.error().where);
    return std::move(*result);
}

inline catalogue::Catalogue sourceCatalogue()
{
    return must(catalogue::Catalogue::read(must(catalogue::readFolder(PROOFWALK_SOURCE "/core/catalogue"))));
}

inline std::vector<measure::Conductor> sourceConductors()
{
    return must(measure::readConductors(must(base::readFile(PROOFWALK_SOURCE "/core/measure/conductors.csv")),
                                        "conductors.csv"));
}

inline plan::Plan cornerShop()
{
    auto plan = plan::readPlan(PROOFWALK_SOURCE "/fixtures/corner-shop");
    if (!plan) throw std::runtime_error("the corner shop does not read: " + plan.error().front().where);
    plan::giveIds(*plan);
    return std::move(*plan);
}

inline std::shared_ptr<const Scope> scopeOf(plan::Plan plan)
{
    return std::make_shared<const Scope>(must(makeScope(std::move(plan), sourceCatalogue(), sourceConductors())));
}

/// Events in the order of calling; every event of a chain has seen what `look` named before it.
class Bench {
public:
    explicit Bench(std::shared_ptr<const Scope> scope) : state(emptyState(std::move(scope))) {}
    Bench() : Bench(scopeOf(cornerShop())) {}

    State state;

    /// The step of a device's card.
    StepKey step(const std::string& tag, const std::string& name, const std::string& signal = {}) const
    {
        for (const ScopeDevice& device : state.scope->devices)
            if (device.device->tag == tag)
                for (const StepKey& key : device.steps)
                    if (key.name == name && (signal.empty() || key.signal == signal)) return key;
        throw std::runtime_error(tag + " has no step " + name);
    }

    const ScopeDevice& device(const std::string& tag) const
    {
        for (const ScopeDevice& each : state.scope->devices)
            if (each.device->tag == tag) return each;
        throw std::runtime_error("no device " + tag);
    }

    /// Appends to a chain, letting it see the present heads of the chains in `look`. Gives the event's hash.
    std::string tell(const std::string& chain, const Body& body, const std::vector<std::string>& look = {})
    {
        journal::Event event;
        event.job = std::string(32, '0');
        event.chain = chain;
        journal::Head& head = m_heads[chain];
        event.n = head.n + 1;
        event.prev = head.hash;
        for (const std::string& other : look) event.seen.push_back(m_heads.at(other));
        event.stamp = {++m_clock, 0};
        event.at = {m_clock, 0};
        event.kind = kindOf(body);
        event.body = toJson(body, {});
        event.hash = base::sha256Hex(journal::canonicalText(event));
        head = {chain, event.n, event.hash};
        apply(state, event);
        return event.hash;
    }

    /// An answer in a state that the step allows.
    std::string answer(const StepKey& key, Outcome outcome, const std::string& chain = "a",
                       const std::vector<std::string>& look = {}, How how = How::singly)
    {
        AnswerBody body;
        body.step = key;
        body.outcome = outcome;
        body.how = how;
        body.state = state.scope->step(key)->step.states.front();
        return tell(chain, body, look);
    }

    std::string read(const StepKey& key, const std::string& value, const std::string& uncertainty = {},
                     const std::string& chain = "a", const std::vector<std::string>& look = {})
    {
        AnswerBody body;
        body.step = key;
        body.outcome = Outcome::value;
        body.state = state.scope->step(key)->step.states.front();
        body.reading = must(base::parseQuantity(value));
        if (!uncertainty.empty()) body.uncertainty = must(base::parseDecimal(uncertainty));
        return tell(chain, body, look);
    }

    std::string repair(const StepKey& key, const std::string& chain = "a", const std::vector<std::string>& look = {})
    {
        return tell(chain, RepairBody{{key}, {"device"}, {key}, {}}, look);
    }

    Verdict verdict(const StepKey& key) const { return viewStep(state, key).verdict; }

    /// Answers every core step of the device that is still to do, each with what makes it pass.
    void passAll(const std::string& tag, const std::vector<std::string>& except = {})
    {
        for (const StepKey& key : device(tag).steps) {
            const ScopeStep& step = *state.scope->step(key);
            if (!step.step.core || verdict(key) != Verdict::toDo) continue;
            if (std::ranges::find(except, key.name) == except.end()) passOne(key, step);
        }
    }

private:
    void passOne(const StepKey& key, const ScopeStep& step)
    {
        AnswerBody body;
        body.step = key;
        body.state = step.step.states.front();
        const bool measured =
            step.step.kind == catalogue::StepKind::read || step.step.kind == catalogue::StepKind::time;
        if (step.step.kind == catalogue::StepKind::trial) {
            body.outcome = Outcome::value;
            body.hits = body.tries = step.step.trialsWanted;
        } else if (measured) {
            body.outcome = Outcome::value;
            body.reading = inside(step);
            body.uncertainty = base::Decimal{0, 0};
        }
        tell("a", body);
    }

    /// The middle of the confirmed limits, or a limit itself where there is one side.
    static base::Quantity inside(const ScopeStep& step)
    {
        const base::Unit* unit = nullptr;
        for (const base::Unit& each : base::units()) {
            const base::Unit* wanted = base::findUnit(step.step.unit);
            if (each.quantity == wanted->quantity && base::compare(each.scale, {1, 0}) == 0) unit = &each;
        }
        const auto& limit = step.confirmed;
        if (limit.lower && limit.upper) {
            const auto sum = must(base::add(*limit.lower, *limit.upper));
            return {must(base::multiply(sum, {5, -1})), unit};
        }
        return {limit.lower.value_or(limit.upper.value_or(base::Decimal{1, 0})), unit};
    }

    std::map<std::string, journal::Head> m_heads;
    std::int64_t m_clock = 1'800'000'000'000;
};

inline QString text(std::string_view words)
{
    return QString::fromUtf8(words.data(), static_cast<qsizetype>(words.size()));
}

} // namespace proofwalk::walk

/// Compares words of the walk so that a failure prints both.
#define COMPARE_WORD(found, wanted)                                                                                    \
    QCOMPARE(proofwalk::walk::text(proofwalk::walk::wordOf(found)),                                                    \
             proofwalk::walk::text(proofwalk::walk::wordOf(wanted)))
