// SPDX-License-Identifier: GPL-3.0-or-later
// What is there and watches nothing, and what nothing watches.
#include "core/review/checks.h"

#include <algorithm>
#include <set>

namespace proofwalk::review {
namespace {

/// Whether the kind has a tamper contact to be wired: by its sheet, else by the list of kinds.
bool hasTamper(const Context& context, const std::string& name)
{
    if (const catalogue::Kind* kind = context.catalogue.kind(name))
        return std::ranges::find(kind->signals, "tamper") != kind->signals.end();
    const auto known = context.knowledge.kinds.find(name);
    return known != context.knowledge.kinds.end() && known->second.hasTamper;
}

} // namespace

void checkZonesUsed(const Context& context, Remarks& remarks)
{
    std::set<std::string_view> used;
    for (const plan::Device& device : context.plan.devices) used.insert(device.zone);
    for (const plan::Signal& signal : context.plan.signals) used.insert(signal.zone);
    for (const plan::Zone& zone : context.plan.zones) {
        if (!used.contains(zone.zone)) remarks.add("review.zone-unused", placeOf(zone, "zones.csv", zone.zone));
    }
}

void checkDevicesZoned(const Context& context, Remarks& remarks)
{
    std::set<std::string_view> signalled;
    for (const plan::Signal& signal : context.plan.signals) {
        if (!signal.zone.empty()) signalled.insert(signal.tag);
    }
    for (const plan::Device& device : context.plan.devices) {
        const auto kind = context.knowledge.kinds.find(device.kind);
        const bool needsZone = kind != context.knowledge.kinds.end() && kind->second.needsZone;
        if (needsZone && device.zone.empty() && !signalled.contains(device.tag))
            remarks.add("review.device-unzoned", placeOf(device, "devices.csv", device.tag), {{"kind", device.kind}});
    }
}

void checkTamperWherePublic(const Context& context, Remarks& remarks)
{
    std::set<std::string_view> guarded;
    for (const plan::Signal& signal : context.plan.signals) {
        if (signal.signal == "tamper" && !signal.zone.empty()) guarded.insert(signal.tag);
    }
    for (const plan::Device& device : context.plan.devices) {
        if (!device.publicAccess || guarded.contains(device.tag) || !hasTamper(context, device.kind)) continue;
        remarks.add("review.tamper-missing", placeOf(device, "devices.csv", device.tag), {{"kind", device.kind}});
    }
}

void checkOpenings(const Context& context, Remarks& remarks)
{
    for (const plan::Opening& opening : context.plan.openings) {
        if (opening.protectedBy.empty())
            remarks.add("review.opening-unprotected", placeOf(opening, "openings.csv", opening.opening));
    }
}

void checkOpeningDevices(const Context& context, Remarks& remarks)
{
    for (const plan::Opening& opening : context.plan.openings) {
        for (const std::string& tag : opening.protectedBy) {
            if (context.devices.contains(tag)) continue;
            remarks.add("review.opening-device-unknown", placeOf(opening, "openings.csv", opening.opening),
                        {{"found", tag}, {"nearest", nearest(tag, context.devices)}});
        }
    }
}

} // namespace proofwalk::review
