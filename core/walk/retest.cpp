// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/walk/retest.h"

#include "core/walk/stepview.h"

#include <algorithm>
#include <set>

namespace proofwalk::walk {
namespace {

bool wasAnswered(const State& state, const StepKey& key)
{
    const Verdict verdict = viewStep(state, key).verdict;
    return verdict != Verdict::toDo && verdict != Verdict::notApplicable && verdict != Verdict::noAccess;
}

/// What one kind of touch puts in doubt on a device of the zone.
bool concerns(const std::string& touched, const ScopeStep& step, bool ownDevice)
{
    if (touched == "cable" || touched == "terminals")
        return ownDevice || step.step.subject == catalogue::Subject::zone
            || step.step.proves == catalogue::Proof::input;
    if (touched == "supply" || touched == "program") return ownDevice || step.step.proves != catalogue::Proof::none;
    return ownDevice;
}

} // namespace

std::vector<std::string> touchableWords()
{
    return {"device", "cable", "terminals", "supply", "radio-path", "program", "structure"};
}

std::vector<StepKey> stepsToRetest(const State& state, const std::vector<StepKey>& findings,
                                   const std::vector<std::string>& touched)
{
    const Scope& scope = *state.scope;
    std::set<StepKey> doubtful(findings.begin(), findings.end());
    for (const StepKey& finding : findings) {
        const ScopeDevice* owner = scope.ownerOf(finding);
        if (owner == nullptr) continue;
        const bool ofDevice = finding.subject == owner->device->id;
        for (const ScopeDevice& device : scope.devices) {
            const bool own = ofDevice && &device == owner;
            if (!own && (device.zone == nullptr || device.zone != owner->zone)) continue;
            for (const StepKey& key : device.steps) {
                const ScopeStep& step = *scope.step(key);
                if (!wasAnswered(state, key)) continue;
                if (std::ranges::any_of(touched, [&](const std::string& word) {
                        return concerns(word, step, own && key.subject == device.device->id);
                    }))
                    doubtful.insert(key);
            }
        }
    }
    return {doubtful.begin(), doubtful.end()};
}

} // namespace proofwalk::walk
