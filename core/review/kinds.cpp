// SPDX-License-Identifier: GPL-3.0-or-later
// Whether each device's kind is known, proved by a sheet, on the right sort of zone and in the right sort of room.
#include "core/review/checks.h"

#include <algorithm>
#include <map>

namespace proofwalk::review {
namespace {

bool isKnown(const Context& context, const std::string& kind)
{
    return context.knowledge.kinds.contains(kind) || context.catalogue.kind(kind);
}

std::vector<std::string> knownNames(const Context& context)
{
    std::vector<std::string> names;
    for (const auto& [name, kind] : context.knowledge.kinds) names.push_back(name);
    for (const catalogue::Kind& kind : context.catalogue.kinds()) names.push_back(kind.name);
    return names;
}

} // namespace

void checkKindsKnown(const Context& context, Remarks& remarks)
{
    for (const plan::Device& device : context.plan.devices) {
        if (isKnown(context, device.kind)) continue;
        remarks.add("review.kind-unknown", placeOf(device, "devices.csv", device.tag),
                    {{"found", device.kind}, {"nearest", nearestOf(device.kind, knownNames(context))}});
    }
}

void checkKindsHaveSheets(const Context& context, Remarks& remarks)
{
    std::map<std::string_view, std::vector<const plan::Device*>> without;
    for (const plan::Device& device : context.plan.devices) {
        if (isKnown(context, device.kind) && !context.catalogue.kind(device.kind))
            without[device.kind].push_back(&device);
    }
    for (const auto& [kind, devices] : without)
        remarks.add("review.no-sheet", placeOf(*devices.front(), "devices.csv", devices.front()->tag),
                    {{"found", std::string(kind)}, {"count", static_cast<std::int64_t>(devices.size())}});
}

void checkPurposesFitKinds(const Context& context, Remarks& remarks)
{
    for (const plan::Device& device : context.plan.devices) {
        const catalogue::Kind* kind = context.catalogue.kind(device.kind);
        const auto zone = context.zones.find(device.zone);
        if (!kind || kind->purposes.empty() || zone == context.zones.end()) continue;
        const std::string& purpose = zone->second->purpose;
        if (purpose.empty() || std::ranges::find(kind->purposes, purpose) != kind->purposes.end()) continue;
        remarks.add("review.purpose-unfit", placeOf(device, "devices.csv", device.tag),
                    {{"kind", device.kind}, {"purpose", purpose}, {"zone", device.zone}});
    }
}

void checkPurposesStated(const Context& context, Remarks& remarks)
{
    for (const plan::Zone& zone : context.plan.zones) {
        if (zone.purpose.empty()) remarks.add("review.purpose-missing", placeOf(zone, "zones.csv", zone.zone));
    }
}

void checkRooms(const Context& context, Remarks& remarks)
{
    for (const plan::Device& device : context.plan.devices) {
        const auto kind = context.knowledge.kinds.find(device.kind);
        if (kind == context.knowledge.kinds.end() || kind->second.unsuitedRooms.empty()) continue;
        const auto& unsuited = kind->second.unsuitedRooms;
        for (const std::string& type : context.knowledge.rooms.typesOf(device.room)) {
            if (std::ranges::find(unsuited, type) == unsuited.end()) continue;
            remarks.add("review.room-unsuited", placeOf(device, "devices.csv", device.tag),
                        {{"kind", device.kind}, {"room", device.room}});
            break;
        }
    }
}

} // namespace proofwalk::review
