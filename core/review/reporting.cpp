// SPDX-License-Identifier: GPL-3.0-or-later
// Whether what is reported says the right thing and reaches anyone.
#include "core/review/checks.h"

#include <algorithm>

namespace proofwalk::review {
namespace {

bool leadsToAnyone(const plan::Path& path) { return path.to == "station" || path.to == "owner"; }

bool carries(const plan::Path& path, const std::string& account)
{
    return path.accounts.empty() || account.empty() || std::ranges::find(path.accounts, account) != path.accounts.end();
}

} // namespace

void checkReportCodes(const Context& context, Remarks& remarks)
{
    for (const plan::Zone& zone : context.plan.zones) {
        if (zone.reportCode.empty()) continue;
        const std::string where = placeOf(zone, "zones.csv", zone.zone);
        const auto code = context.knowledge.codes.find(zone.reportCode);
        if (!code) remarks.add("review.code-unknown", where, {{"found", zone.reportCode}});
        else if (!zone.purpose.empty() && !signals::fitsPurpose(*code, zone.purpose))
            remarks.add("review.code-unfit", where,
                        {{"found", zone.reportCode},
                         {"event", code->event},
                         {"system", code->system},
                         {"purpose", zone.purpose}});
    }
}

void checkPathsReceived(const Context& context, Remarks& remarks)
{
    for (const plan::Path& path : context.plan.paths) {
        if (!leadsToAnyone(path)) remarks.add("review.path-nobody", placeOf(path, "paths.csv", path.path));
    }
}

void checkZonesHeard(const Context& context, Remarks& remarks)
{
    for (const plan::Zone& zone : context.plan.zones) {
        if (!zone.reporting) continue;
        for (const std::string& name : zone.areas) {
            const auto area = context.areas.find(name);
            const std::string account = area == context.areas.end() ? std::string() : area->second->account;
            const bool heard = std::ranges::any_of(context.plan.paths, [&](const plan::Path& path) {
                return leadsToAnyone(path) && carries(path, account);
            });
            if (!heard)
                remarks.add("review.zone-unheard", placeOf(zone, "zones.csv", zone.zone),
                            {{"area", name}, {"account", account}});
        }
    }
}

void checkBackups(const Context& context, Remarks& remarks)
{
    for (const plan::Path& path : context.plan.paths) {
        if (path.backupOf.empty() || (path.backupOf != path.path && context.paths.contains(path.backupOf))) continue;
        remarks.add("review.backup-unknown", placeOf(path, "paths.csv", path.path), {{"found", path.backupOf}});
    }
}

} // namespace proofwalk::review
