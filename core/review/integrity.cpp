// SPDX-License-Identifier: GPL-3.0-or-later
// What the rows of a plan say of each other: every name stands for one thing, and every thing named is there.
#include "core/review/checks.h"

#include "core/base/text.h"

#include <algorithm>
#include <set>

namespace proofwalk::review {
namespace {

template <class R>
void tellTwice(const std::vector<R>& rows, std::string R::* name, const ByName<R>& first, std::string_view file,
               const std::string& code, Remarks& remarks)
{
    for (const R& row : rows) {
        const R* earlier = first.at(row.*name);
        if (earlier != &row)
            remarks.add(code, placeOf(row, file, row.*name),
                        {{"found", row.*name}, {"other", std::int64_t{earlier->line}}});
    }
}

template <class R>
void tellUnknown(std::string_view found, const ByName<R>& known, const std::string& code, const std::string& where,
                 Remarks& remarks)
{
    if (!found.empty() && !known.contains(found))
        remarks.add(code, where, {{"found", std::string(found)}, {"nearest", nearest(found, known)}});
}

} // namespace

void checkTagsUnique(const Context& context, Remarks& remarks)
{
    tellTwice(context.plan.devices, &plan::Device::tag, context.devices, "devices.csv", "review.tag-twice", remarks);
}

void checkNamesUnique(const Context& context, Remarks& remarks)
{
    const plan::Plan& plan = context.plan;
    const std::string code = "review.name-twice";
    tellTwice(plan.zones, &plan::Zone::zone, context.zones, "zones.csv", code, remarks);
    tellTwice(plan.areas, &plan::Area::area, context.areas, "areas.csv", code, remarks);
    tellTwice(plan.modes, &plan::Mode::mode, context.modes, "modes.csv", code, remarks);
    tellTwice(plan.floors, &plan::Floor::floor, context.floors, "floors.csv", code, remarks);
    tellTwice(plan.paths, &plan::Path::path, context.paths, "paths.csv", code, remarks);
    tellTwice(plan.supplies, &plan::Supply::supply, context.supplies, "power.csv", code, remarks);
}

void checkZonesExist(const Context& context, Remarks& remarks)
{
    for (const plan::Device& device : context.plan.devices)
        tellUnknown(device.zone, context.zones, "review.zone-unknown", placeOf(device, "devices.csv", device.tag),
                    remarks);
    for (const plan::Signal& signal : context.plan.signals)
        tellUnknown(signal.zone, context.zones, "review.zone-unknown", placeOf(signal, "signals.csv", signal.tag),
                    remarks);
}

void checkAreasExist(const Context& context, Remarks& remarks)
{
    const std::string code = "review.area-unknown";
    for (const plan::Zone& zone : context.plan.zones) {
        const std::string where = placeOf(zone, "zones.csv", zone.zone);
        if (zone.areas.empty()) remarks.add("review.zone-without-area", where);
        for (const std::string& area : zone.areas) tellUnknown(area, context.areas, code, where, remarks);
    }
    for (const plan::Mode& mode : context.plan.modes) {
        for (const std::string& area : mode.areas)
            tellUnknown(area, context.areas, code, placeOf(mode, "modes.csv", mode.mode), remarks);
    }
    for (const plan::Timer& timer : context.plan.timers)
        tellUnknown(timer.area, context.areas, code, placeOf(timer, "timers.csv", timer.timer), remarks);
}

void checkModesExist(const Context& context, Remarks& remarks)
{
    for (const plan::Zone& zone : context.plan.zones) {
        const std::string where = placeOf(zone, "zones.csv", zone.zone);
        const bool always = std::ranges::find(zone.liveIn, "always") != zone.liveIn.end();
        if (always && zone.liveIn.size() > 1) remarks.add("review.always-and-modes", where);
        for (const std::string& mode : zone.liveIn) {
            if (mode != "always") tellUnknown(mode, context.modes, "review.mode-unknown", where, remarks);
        }
    }
    for (const plan::Effect& effect : context.plan.effects) {
        for (const std::string& mode : base::split(effect.inMode, ';')) {
            if (mode != "always" && mode != "unset")
                tellUnknown(mode, context.modes, "review.mode-unknown", placeOf(effect, "effects.csv", effect.cause),
                            remarks);
        }
    }
}

void checkFloorsExist(const Context& context, Remarks& remarks)
{
    for (const plan::Device& device : context.plan.devices)
        tellUnknown(device.floor, context.floors, "review.floor-unknown", placeOf(device, "devices.csv", device.tag),
                    remarks);
    for (const plan::Opening& opening : context.plan.openings)
        tellUnknown(opening.floor, context.floors, "review.floor-unknown",
                    placeOf(opening, "openings.csv", opening.opening), remarks);
}

void checkSignals(const Context& context, Remarks& remarks)
{
    std::set<std::pair<std::string_view, std::string_view>> seen;
    for (const plan::Signal& signal : context.plan.signals) {
        const std::string where = placeOf(signal, "signals.csv", signal.tag);
        tellUnknown(signal.tag, context.devices, "review.signal-device-unknown", where, remarks);
        if (!seen.emplace(signal.tag, signal.signal).second)
            remarks.add("review.signal-twice", where, {{"found", signal.signal}});
        const auto device = context.devices.find(signal.tag);
        // The alarm's zone is the device's own; a second one beside it would be believed by nobody knows whom.
        if (signal.signal == "alarm" && device != context.devices.end() && signal.zone != device->second->zone)
            remarks.add("review.alarm-zone-twice", where, {{"found", signal.zone}, {"other", device->second->zone}});
    }
}

void checkSuppliesExist(const Context& context, Remarks& remarks)
{
    if (context.plan.supplies.empty()) return;
    for (const plan::Device& device : context.plan.devices)
        tellUnknown(device.supply, context.supplies, "review.supply-unknown",
                    placeOf(device, "devices.csv", device.tag), remarks);
    tellUnknown(context.plan.panelFact("supply"), context.supplies, "review.supply-unknown", "panel.csv, field supply",
                remarks);
}

} // namespace proofwalk::review
