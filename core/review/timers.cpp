// SPDX-License-Identifier: GPL-3.0-or-later
// Whether the planned times lie in the range of the rule sets the site names.
#include "core/review/checks.h"

#include "core/base/unit.h"

namespace proofwalk::review {
namespace {

/// A figure's side in seconds; nothing if it is not there or no time.
std::optional<base::Decimal> seconds(const std::optional<base::Decimal>& side, const std::string& unit)
{
    const base::Unit* known = base::findUnit(unit);
    if (!side || !known || known->quantity != base::findUnit("s")->quantity) return std::nullopt;
    const auto value = base::inBaseUnit({*side, known});
    if (!value) return std::nullopt;
    return *value;
}

void tellOutside(const plan::Timer& timer, const catalogue::Limit& limit, const std::string& rules, Remarks& remarks)
{
    const auto lower = seconds(limit.lower, limit.unit);
    const auto upper = seconds(limit.upper, limit.unit);
    const bool below = lower && base::compare(*timer.planned_s, *lower) < 0;
    const bool above = upper && base::compare(*timer.planned_s, *upper) > 0;
    if (!below && !above) return;
    std::string source = limit.source.standard;
    if (!limit.source.edition.empty()) source += ":" + limit.source.edition;
    remarks.add(limit.confirmed ? (below ? "review.timer-short" : "review.timer-long") : "review.timer-unconfirmed",
                placeOf(timer, "timers.csv", timer.timer),
                {{"found", base::toText(*timer.planned_s)},
                 {"limit", base::toText(below ? *lower : *upper)},
                 {"rules", rules},
                 {"source", source},
                 {"basis", limit.source.basis}});
}

} // namespace

void checkRulesKnown(const Context& context, Remarks& remarks)
{
    for (const std::string& name : context.plan.rules()) {
        if (context.catalogue.rules(name)) continue;
        remarks.add("review.rules-unknown", "site.csv, field rules",
                    {{"found", name}, {"nearest", nearestOf(name, context.catalogue.ruleNames())}});
    }
}

void checkTimers(const Context& context, Remarks& remarks)
{
    for (const plan::Timer& timer : context.plan.timers) {
        if (!timer.planned_s) continue;
        for (const std::string& name : context.plan.rules()) {
            const catalogue::RuleSet* rules = context.catalogue.rules(name);
            if (!rules) continue;
            for (const catalogue::Limit& limit : rules->limits) {
                if (limit.quantity == timer.timer) tellOutside(timer, limit, name, remarks);
            }
        }
    }
}

} // namespace proofwalk::review
