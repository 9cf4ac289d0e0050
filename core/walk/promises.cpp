// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/walk/promises.h"

#include <algorithm>

namespace proofwalk::walk {
namespace {

bool sounds(const plan::Zone& zone) { return zone.sounding == "loud" || zone.sounding == "inside"; }

bool isCause(const plan::Plan& plan, const plan::Device& device, const plan::Zone* zone)
{
    return std::ranges::any_of(plan.effects, [&](const plan::Effect& effect) {
        if (effect.cause == device.tag) return true;
        return zone != nullptr && (effect.cause == "zone:" + zone->zone || effect.cause == "purpose:" + zone->purpose);
    });
}

bool isEffect(const plan::Plan& plan, const plan::Device& device)
{
    return std::ranges::any_of(plan.effects, [&](const plan::Effect& each) { return each.effect == device.tag; });
}

/// Whether a path that leads to somebody carries the account of one of the zone's areas.
bool isReceived(const plan::Plan& plan, const plan::Zone& zone)
{
    if (!zone.reporting) return false;
    return std::ranges::any_of(plan.paths, [&](const plan::Path& path) {
        if (path.to != "station" && path.to != "owner") return false;
        if (path.accounts.empty()) return true;
        return std::ranges::any_of(zone.areas, [&](const std::string& name) {
            const plan::Area* area = plan.findArea(name);
            return area != nullptr && std::ranges::find(path.accounts, area->account) != path.accounts.end();
        });
    });
}

} // namespace

void fillPromises(ScopeDevice& device, const plan::Plan& plan)
{
    const auto set = [&](ProofKind proof, bool value) { device.promised[static_cast<std::size_t>(proof)] = value; };
    set(ProofKind::input, !device.signalZones.empty());
    set(ProofKind::response,
        (device.zone != nullptr && sounds(*device.zone)) || isCause(plan, *device.device, device.zone));
    set(ProofKind::output, isEffect(plan, *device.device) || (device.kind != nullptr && device.kind->output));
    set(ProofKind::received, device.zone != nullptr && isReceived(plan, *device.zone));
}

bool isPromised(const ScopeDevice& device, const catalogue::Step& step)
{
    switch (step.proves) {
    case catalogue::Proof::none: return true;
    case catalogue::Proof::input: return device.signalZones.contains(step.signal == "-" ? "alarm" : step.signal);
    case catalogue::Proof::response: return device.promises(ProofKind::response);
    case catalogue::Proof::output: return device.promises(ProofKind::output);
    case catalogue::Proof::received: return device.promises(ProofKind::received);
    }
    return false;
}

} // namespace proofwalk::walk
