// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/walk/readiness.h"

#include "core/base/text.h"
#include "core/walk/upkeep.h"

#include <algorithm>
#include <map>

namespace proofwalk::walk {
namespace {

class Ladder {
public:
    Ladder(const State& state, const base::WallClock& asOf) : m_state(state), m_asOf(asOf) {}

    Readiness climb()
    {
        unjudged();
        devices();
        sequences();
        findings();
        areas();
        onTest();
        putBack();
        kit();
        customer();
        std::ranges::stable_partition(m_readiness.rungs, &Rung::blocking);
        const bool blocked = std::ranges::any_of(m_readiness.rungs, &Rung::blocking);
        m_readiness.standing = blocked          ? Standing::notReady
                             : m_lifeSafetyLeft ? Standing::notCompleteInformed
                             : m_exceptions     ? Standing::completeWithExceptions
                                                : Standing::complete;
        return std::move(m_readiness);
    }

private:
    void rung(std::string code, std::string subject, bool blocking, std::vector<Argument> arguments = {})
    {
        m_readiness.rungs.push_back({std::move(code), std::move(subject), std::move(arguments), blocking});
    }

    void unjudged()
    {
        for (const Unjudged& each : m_state.unjudged) rung("ready.unjudged", each.fact.event.substr(0, 12), true);
    }

    void devices()
    {
        for (const ScopeDevice& device : m_state.scope->devices) {
            const std::string& tag = device.device->tag;
            const DeviceView view = viewDevice(m_state, device);
            std::vector<std::string> open;
            for (const ProofKind kind : view.openProofs()) open.emplace_back(wordOf(kind));
            const std::vector<Argument> how{{"answered", std::int64_t{view.answered}},
                                            {"steps", std::int64_t{view.steps}},
                                            {"open", base::join(open, ", ")}};
            if (device.kind == nullptr) rung("ready.no-sheet", tag, true, {{"kind", device.device->kind}});
            else if (view.verdict == Verdict::toDo) rung("ready.untested", tag, true, how);
            else if (view.verdict == Verdict::running) rung("ready.running", tag, true);
            else if (view.verdict == Verdict::retest) rung("ready.retest", tag, true);
            else if (view.verdict == Verdict::noAccess) exception("ready.no-access", tag);
            else if (view.verdict == Verdict::tooClose) tooClose(device);
            for (const StepKey& key : device.steps)
                if (key.subject == device.device->id && viewStep(m_state, key).disagreement)
                    rung("ready.disagreement", tag, true, {{"step", key.name}});
        }
    }

    void exception(std::string code, std::string subject, std::vector<Argument> arguments = {})
    {
        m_exceptions = true;
        rung(std::move(code), std::move(subject), false, std::move(arguments));
    }

    /// Too close blocks until it is kept as a recommendation that the customer has accepted.
    void tooClose(const ScopeDevice& device)
    {
        for (const StepKey& key : device.steps) {
            if (viewStep(m_state, key).verdict != Verdict::tooClose) continue;
            const auto finding = findingOf(m_state, key);
            if (finding && finding->accepted)
                exception("ready.too-close-accepted", device.device->tag, {{"step", key.name}});
            else rung("ready.too-close", device.device->tag, true, {{"step", key.name}});
        }
    }

    void sequences()
    {
        for (const ScopeSequence& sequence : m_state.scope->sequences) {
            for (const StepKey& key : sequence.steps) {
                const Verdict verdict = viewStep(m_state, key).verdict;
                if (!m_state.scope->step(key)->step.core && verdict == Verdict::toDo) continue;
                if (verdict == Verdict::toDo || verdict == Verdict::running || verdict == Verdict::retest
                    || verdict == Verdict::tooClose)
                    rung("ready.sequence", nameOfSubject(*m_state.scope, key), true,
                         {{"step", key.name}, {"sequence", sequence.title}});
            }
        }
    }

    void findings()
    {
        for (const Finding& finding : allFindings(m_state)) {
            const std::string subject = nameOfSubject(*m_state.scope, finding.step);
            const std::vector<Argument> what{{"step", finding.step.name},
                                             {"status", std::string(wordOf(finding.status))}};
            if (finding.status == FindingStatus::noted) {
                rung("ready.recommendation", subject, false, what);
            } else if (finding.pending() && !finding.accepted) {
                rung("ready.finding", subject, true, what);
            } else if (finding.pending()) {
                exception("ready.finding-accepted", subject, what);
                m_lifeSafetyLeft = m_lifeSafetyLeft || finding.lifeSafety;
            }
        }
    }

    void areas()
    {
        for (const plan::Area& area : m_state.scope->plan->areas) {
            const auto state = areaState(m_state, area.id);
            if (state == catalogue::SystemState::walkTest || state == catalogue::SystemState::unpowered)
                rung("ready.state", area.area, true, {{"state", std::string(catalogue::wordOf(state))}});
        }
    }

    void onTest()
    {
        for (const auto* told : accountsOnTest(m_state)) rung("ready.on-test", told->body.account, true);
    }

    void putBack()
    {
        for (const auto* temporary : notPutBack(m_state)) rung("ready.put-back", temporary->body.name, true);
    }

    void kit()
    {
        constexpr std::int64_t year_ms = 366LL * 24 * 3600 * 1000;
        for (const auto& told : m_state.kit) {
            const auto calibrated = base::parseTime(told.body.calibrated + "T00:00:00Z");
            if (calibrated && m_state.stands(told.fact) && m_asOf.utc_ms - calibrated->utc_ms > year_ms)
                rung("ready.calibration", told.body.name, false, {{"calibrated", told.body.calibrated}});
        }
    }

    void customer()
    {
        const auto stands = [&](const auto& told) { return m_state.stands(told.fact); };
        if (std::ranges::none_of(m_state.shown, stands)) rung("ready.shown", "", true);
        if (std::ranges::none_of(m_state.acceptances, stands)) rung("ready.acceptance", "", true);
    }

    const State& m_state;
    base::WallClock m_asOf;
    Readiness m_readiness;
    bool m_exceptions = false;
    bool m_lifeSafetyLeft = false;
};

} // namespace

std::string_view wordOf(Standing standing)
{
    constexpr std::array<std::string_view, 4> words{"not-ready", "not-complete-customer-informed",
                                                    "complete-with-exceptions", "complete"};
    return words[static_cast<std::size_t>(standing)];
}

Readiness readinessOf(const State& state, const base::WallClock& asOf) { return Ladder(state, asOf).climb(); }

std::array<int, 8> countVerdicts(const State& state)
{
    std::array<int, 8> counts{};
    for (const ScopeDevice& device : state.scope->devices)
        ++counts[static_cast<std::size_t>(viewDevice(state, device).verdict)];
    return counts;
}

std::string nameOfSubject(const Scope& scope, const StepKey& key)
{
    if (const ScopeDevice* device = scope.deviceOf(key.subject)) return device->device->tag;
    const plan::Plan& plan = *scope.plan;
    for (const plan::Zone& zone : plan.zones)
        if (zone.id == key.subject) return "zone " + zone.zone;
    for (const plan::Area& area : plan.areas)
        if (area.id == key.subject) return "area " + area.area;
    for (const plan::Timer& timer : plan.timers)
        if (timer.id == key.subject) return timer.timer + ", " + timer.area;
    return key.subject;
}

} // namespace proofwalk::walk
