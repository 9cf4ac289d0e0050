// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/walk/deviceview.h"

#include "core/walk/findings.h"

#include <algorithm>

namespace proofwalk::walk {
namespace {

catalogue::Proof servedBy(ProofKind kind)
{
    constexpr std::array served{catalogue::Proof::input, catalogue::Proof::response, catalogue::Proof::output,
                                catalogue::Proof::received};
    return served[static_cast<std::size_t>(kind)];
}

/// In bulk counts as less direct than by the ear, that as less than by a partner, and singly is best.
int directness(How how)
{
    switch (how) {
    case How::bulk: return 0;
    case How::ear: return 1;
    case How::partner: return 2;
    case How::singly: return 3;
    }
    return 0;
}

/// One signal's proof, by its serving core steps.
struct Served {
    bool any = false, all = true, failed = false, begun = false;
    How how = How::singly;
};

Served serve(const State& state, const ScopeDevice& device, ProofKind kind, const std::string& signal)
{
    Served served;
    for (const StepKey& key : device.steps) {
        const ScopeStep& step = *state.scope->step(key);
        const std::string& ofSignal = step.step.signal == "-" ? std::string("alarm") : step.step.signal;
        if (!step.step.core || step.step.proves != servedBy(kind) || ofSignal != signal) continue;
        const StepView view = viewStep(state, key);
        if (view.verdict == Verdict::notApplicable) continue;
        served.any = true;
        served.all = served.all && view.verdict == Verdict::pass;
        served.failed = served.failed || view.verdict == Verdict::fail;
        served.begun = served.begun || view.answered();
        for (const Attempt* attempt : view.deciding)
            if (directness(attempt->answer.how) < directness(served.how)) served.how = attempt->answer.how;
    }
    return served;
}

/// The proof by the device's own steps.
ProofView ownProof(const State& state, const ScopeDevice& device, ProofKind kind)
{
    ProofView proof;
    if (!device.promises(kind)) return proof;
    std::vector<std::string> signals;
    if (kind == ProofKind::input)
        for (const auto& [signal, zone] : device.signalZones) signals.push_back(signal);
    else signals.emplace_back("alarm");

    bool holds = true, failed = false, begun = false;
    for (const std::string& signal : signals) {
        const Served served = serve(state, device, kind, signal);
        holds = holds && served.any && served.all;
        failed = failed || served.failed;
        begun = begun || served.begun;
        if (directness(served.how) < directness(proof.how)) proof.how = served.how;
    }
    proof.state = failed ? ProofState::failed
                : holds  ? ProofState::lit
                : begun  ? ProofState::underWay
                         : ProofState::promised;
    return proof;
}

bool mayBeStoodFor(const plan::Zone& zone)
{
    constexpr std::array<std::string_view, 5> never{"fire", "gas", "carbon-monoxide", "hold-up", "medical"};
    return std::ranges::find(never, zone.purpose) == never.end();
}

bool agree(const plan::Zone& a, const plan::Zone& b)
{
    return a.areas == b.areas && a.purpose == b.purpose && a.delay == b.delay && a.liveIn == b.liveIn
        && a.sounding == b.sounding;
}

const ScopeDevice* standInFor(const State& state, const ScopeDevice& device)
{
    if (device.zone == nullptr || !mayBeStoodFor(*device.zone)) return nullptr;
    for (const ScopeDevice& other : state.scope->devices) {
        if (&other == &device || other.zone == nullptr || !agree(*other.zone, *device.zone)) continue;
        if (ownProof(state, other, ProofKind::response).state == ProofState::lit) return &other;
    }
    return nullptr;
}

void fillProofs(const State& state, DeviceView& view)
{
    for (const ProofKind kind : allProofs)
        view.proofs[static_cast<std::size_t>(kind)] = ownProof(state, *view.device, kind);
    ProofView& response = view.proofs[static_cast<std::size_t>(ProofKind::response)];
    const bool open = response.state == ProofState::promised || response.state == ProofState::underWay;
    if (!open || view.proof(ProofKind::input).state != ProofState::lit) return;
    response.standIn = standInFor(state, *view.device);
    if (response.standIn != nullptr) response.state = ProofState::lit;
}

Verdict verdictOfFinding(const Finding& finding)
{
    switch (finding.status) {
    case FindingStatus::open:
    case FindingStatus::intermittent: return Verdict::fail;
    case FindingStatus::putRight: return Verdict::retest;
    case FindingStatus::cleared:
    case FindingStatus::noted: return Verdict::notApplicable;
    }
    return Verdict::fail;
}

} // namespace

std::string_view wordOf(ProofState state)
{
    constexpr std::array<std::string_view, 5> words{"none", "promised", "under-way", "lit", "failed"};
    return words[static_cast<std::size_t>(state)];
}

std::vector<ProofKind> DeviceView::openProofs() const
{
    std::vector<ProofKind> open;
    for (const ProofKind kind : allProofs) {
        const ProofState state = proof(kind).state;
        if (state != ProofState::none && state != ProofState::lit) open.push_back(kind);
    }
    return open;
}

DeviceView viewDevice(const State& state, const ScopeDevice& device)
{
    DeviceView view;
    view.device = &device;
    fillProofs(state, view);
    if (device.kind == nullptr) return view;

    const bool responseStoodFor = view.proof(ProofKind::response).standIn != nullptr;
    Verdict worst = Verdict::notApplicable;
    bool anything = false;
    for (const StepKey& key : device.steps) {
        const ScopeStep& step = *state.scope->step(key);
        const StepView stepView = viewStep(state, key);
        if (step.step.core) {
            ++view.steps;
            view.answered += stepView.answered() ? 1 : 0;
        }
        if (stepView.newest != nullptr
            && (view.newest == nullptr || view.newest->fact.stamp < stepView.newest->fact.stamp))
            view.newest = stepView.newest;
        if (const auto finding = findingOf(state, key)) worst = std::min(worst, verdictOfFinding(*finding));
        if (!step.step.core && !stepView.answered()) continue;
        const bool spared =
            responseStoodFor && step.step.proves == catalogue::Proof::response && stepView.verdict == Verdict::toDo;
        if (spared) continue;
        anything = true;
        worst = std::min(worst, stepView.verdict);
    }
    if (!anything || !view.openProofs().empty()) worst = std::min(worst, Verdict::toDo);
    view.verdict = worst;
    return view;
}

} // namespace proofwalk::walk
