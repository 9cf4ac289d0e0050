// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/walk/nextdevice.h"

#include "core/walk/order.h"
#include "core/walk/stages.h"

#include <algorithm>

namespace proofwalk::walk {
namespace {

bool waits(const State& state, const ScopeDevice& device)
{
    return std::ranges::any_of(stagesOf(state, device, false), [&](const Stage& stage) {
        // What a round answers at the panel is no reason to go to the device.
        const bool own =
            std::ranges::any_of(stage.steps, [&](const StepKey& key) { return key.subject == device.device->id; });
        return own && stage.possible && !stage.answered;
    });
}

} // namespace

const ScopeDevice* nextDevice(const State& state, const std::string& afterTag)
{
    const auto order = walkingOrder(*state.scope);
    const auto& devices = state.scope->devices;
    const auto after =
        std::ranges::find(order, afterTag, [&](std::size_t index) { return devices[index].device->tag; });
    const std::size_t begin = after == order.end() ? 0 : static_cast<std::size_t>(after - order.begin()) + 1;
    for (std::size_t i = 0; i < order.size(); ++i) {
        const ScopeDevice& device = devices[order[(begin + i) % order.size()]];
        if (waits(state, device)) return &device;
    }
    return nullptr;
}

} // namespace proofwalk::walk
