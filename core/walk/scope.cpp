// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/walk/scope.h"

#include "core/walk/limits.h"
#include "core/walk/promises.h"

#include <algorithm>

namespace proofwalk::walk {
namespace {

/// Signals of the device: alarm, and what signals.csv adds, with the zones they answer in.
void fillSignals(ScopeDevice& device, const plan::Plan& plan, std::vector<std::string>& names)
{
    names = {"alarm"};
    device.zone = plan.findZone(device.device->zone);
    if (device.zone != nullptr) device.signalZones["alarm"] = device.zone;
    for (const plan::Signal& signal : plan.signals) {
        if (signal.tag != device.device->tag) continue;
        if (std::ranges::find(names, signal.signal) == names.end()) names.push_back(signal.signal);
        if (const plan::Zone* zone = plan.findZone(signal.zone)) device.signalZones[signal.signal] = zone;
    }
}

catalogue::Traits traitsOf(const ScopeDevice& device, const plan::Plan& plan, std::vector<std::string> signalNames)
{
    catalogue::Traits traits;
    traits.kind = device.device->kind;
    traits.signals = std::move(signalNames);
    traits.rules = plan.rules();
    if (const plan::Zone* zone = device.zone) {
        traits.feed = zone->feed;
        traits.rest = zone->rest;
        traits.resistors = zone->resistors ? std::to_string(*zone->resistors) : std::string();
        traits.purpose = zone->purpose;
        traits.delay = zone->delay;
        traits.sounding = zone->sounding;
        traits.reporting = zone->reporting ? "yes" : "no";
    }
    return traits;
}

class Builder {
public:
    Builder(Scope& scope, const std::vector<measure::Conductor>& conductors)
        : m_scope(scope), m_ground{*scope.plan, conductors}
    {
    }

    Result<void> addDevice(const plan::Device& row)
    {
        ScopeDevice device;
        device.device = &row;
        device.kind = m_scope.catalogue->kind(row.kind);
        std::vector<std::string> names;
        fillSignals(device, *m_scope.plan, names);
        fillPromises(device, *m_scope.plan);
        if (device.kind != nullptr) {
            auto sheet = m_scope.catalogue->compose(traitsOf(device, *m_scope.plan, std::move(names)));
            if (!sheet) return passOn(sheet);
            for (const catalogue::Step& step : sheet->steps) {
                auto added = addDeviceStep(device, step);
                if (!added) return added;
            }
        }
        const std::size_t index = m_scope.devices.size();
        m_scope.deviceById[row.id] = index;
        if (device.zone != nullptr) m_scope.devicesOfZone[device.zone->id].push_back(index);
        m_scope.devices.push_back(std::move(device));
        return {};
    }

    Result<void> addSequence(const std::string& name)
    {
        auto composed = m_scope.catalogue->composeSequence(name, m_scope.plan->rules());
        if (!composed) return passOn(composed);
        const catalogue::Sequence& sequence = *composed;
        ScopeSequence site{sequence.name, sequence.title, {}};
        for (const plan::Area& area : m_scope.plan->areas) {
            for (const catalogue::Step& step : sequence.steps) {
                const plan::Timer* timer = nullptr;
                if (step.subject == catalogue::Subject::timer) {
                    timer = m_scope.plan->findTimer(step.quantity, area.area);
                    if (timer == nullptr) continue; // only what the site can do
                }
                const StepKey key{timer != nullptr ? timer->id : area.id, "-", step.name};
                auto added = addStep(key, step, nullptr, nullptr, timer);
                if (!added) return added;
                site.steps.push_back(key);
            }
        }
        if (!site.steps.empty()) m_scope.sequences.push_back(std::move(site));
        return {};
    }

private:
    Result<void> addDeviceStep(ScopeDevice& device, const catalogue::Step& step)
    {
        if (!isPromised(device, step)) return {};
        const bool ofZone = step.subject == catalogue::Subject::zone;
        if (ofZone && device.zone == nullptr) return {};
        const StepKey key =
            ofZone ? StepKey{device.zone->id, "-", step.name} : StepKey{device.device->id, step.signal, step.name};
        if (!ofZone || !m_scope.steps.contains(key)) {
            auto added = addStep(key, step, device.device, device.zone, nullptr);
            if (!added) return added;
        }
        device.steps.push_back(key);
        return {};
    }

    Result<void> addStep(const StepKey& key, const catalogue::Step& step, const plan::Device* device,
                         const plan::Zone* zone, const plan::Timer* timer)
    {
        ScopeStep entry{key, step, {}, {}};
        auto ofPlan = limitOfPlan(m_ground, step, device, zone, timer);
        if (!ofPlan) return passOn(ofPlan);
        std::vector<catalogue::Limit> limits = step.limits;
        if (*ofPlan) limits.push_back(**ofPlan);
        auto joined = joinLimits(entry, limits);
        if (!joined) return joined;
        m_scope.steps.emplace(key, std::move(entry));
        return {};
    }

    Scope& m_scope;
    LimitGround m_ground;
};

} // namespace

std::string_view wordOf(ProofKind proof)
{
    constexpr std::array<std::string_view, 4> words{"input", "response", "output", "received"};
    return words[static_cast<std::size_t>(proof)];
}

const ScopeStep* Scope::step(const StepKey& key) const
{
    const auto found = steps.find(key);
    return found == steps.end() ? nullptr : &found->second;
}

const ScopeDevice* Scope::deviceOf(const std::string& id) const
{
    const auto found = deviceById.find(id);
    return found == deviceById.end() ? nullptr : &devices[found->second];
}

const ScopeDevice* Scope::ownerOf(const StepKey& key) const
{
    if (const ScopeDevice* device = deviceOf(key.subject)) return device;
    const auto zone = devicesOfZone.find(key.subject);
    return zone == devicesOfZone.end() ? nullptr : &devices[zone->second.front()];
}

Result<Scope> makeScope(plan::Plan plan, catalogue::Catalogue catalogue,
                        const std::vector<measure::Conductor>& conductors)
{
    Scope scope;
    scope.plan = std::make_shared<const plan::Plan>(std::move(plan));
    scope.catalogue = std::make_shared<const catalogue::Catalogue>(std::move(catalogue));
    Builder builder(scope, conductors);
    for (const plan::Device& device : scope.plan->devices) {
        auto added = builder.addDevice(device);
        if (!added) return std::unexpected(std::move(added.error()).within(device.tag));
    }
    for (const catalogue::Sequence& sequence : scope.catalogue->sequences()) {
        auto added = builder.addSequence(sequence.name);
        if (!added) return std::unexpected(std::move(added.error()).within(sequence.name));
    }
    return scope;
}

} // namespace proofwalk::walk
