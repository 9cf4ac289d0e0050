// SPDX-License-Identifier: GPL-3.0-or-later
// Whether each battery carries its load for the planned time:
//   needed_ah = (I_standby T_standby + I_alarm T_alarm) / derating
// the form NFPA 72, 10.6.7, and the annex of BS 5839-1 share, their factor of 1.25 being a derating of 0.8; everything
// fed by the supply is taken to be in alarm at once. The annex's factor D for a battery emptied fast is not in it.
#include "core/review/checks.h"

#include <fmt/format.h>

namespace proofwalk::review {
namespace {

struct Load {
    double standby_ma = 0, alarm_ma = 0;
    std::int64_t unstated = 0; ///< devices whose current nobody wrote down
    bool any = false;
};

Load loadOf(const plan::Plan& plan, const std::string& supply)
{
    Load load;
    const auto add = [&](const std::optional<base::Decimal>& standby, const std::optional<base::Decimal>& alarm) {
        const double rest_ma = standby ? base::toDouble(*standby) : 0;
        load.standby_ma += rest_ma;
        load.alarm_ma += alarm ? base::toDouble(*alarm) : rest_ma;
        load.any = true;
    };
    for (const plan::Device& device : plan.devices) {
        if (device.supply != supply) continue;
        if (device.standby_ma || device.alarm_ma) add(device.standby_ma, device.alarm_ma);
        else ++load.unstated;
    }
    if (plan.panelFact("supply") == supply) {
        const auto fact = [&](const char* field) -> std::optional<base::Decimal> {
            const auto value = base::parseDecimal(plan.panelFact(field));
            return value ? std::optional(*value) : std::nullopt;
        };
        if (fact("standby_ma") || fact("alarm_ma")) add(fact("standby_ma"), fact("alarm_ma"));
    }
    return load;
}

} // namespace

void checkBatteries(const Context& context, Remarks& remarks)
{
    for (const plan::Supply& supply : context.plan.supplies) {
        if (!supply.battery_ah || !supply.standby_h || !supply.derating) continue;
        const Load load = loadOf(context.plan, supply.supply);
        if (!load.any) continue;
        const double alarm_h = supply.alarm_min ? base::toDouble(*supply.alarm_min) / 60 : 0;
        const double needed_ah = (load.standby_ma * base::toDouble(*supply.standby_h) + load.alarm_ma * alarm_h) / 1000
                               / base::toDouble(*supply.derating);
        if (needed_ah > base::toDouble(*supply.battery_ah))
            remarks.add("review.battery-small", placeOf(supply, "power.csv", supply.supply),
                        {{"found", base::toText(*supply.battery_ah)},
                         {"wanted", fmt::format("{:.1f}", needed_ah)},
                         {"standby", fmt::format("{:.0f}", load.standby_ma)},
                         {"alarm", fmt::format("{:.0f}", load.alarm_ma)},
                         {"unstated", load.unstated}});
    }
}

} // namespace proofwalk::review
