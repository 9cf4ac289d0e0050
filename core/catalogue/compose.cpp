// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/catalogue/compose.h"

#include "core/base/unit.h"
#include "core/catalogue/convert.h"

#include <algorithm>

namespace proofwalk::catalogue {
namespace {

std::string_view valueOf(std::string_view column, const Traits& traits)
{
    if (column == "purpose") return traits.purpose;
    if (column == "delay") return traits.delay;
    if (column == "feed") return traits.feed;
    return traits.resistors;
}

std::vector<const PartFile*> partsOf(const Parts& parts, const Traits& traits)
{
    std::vector<const PartFile*> applying;
    for (const std::string_view column : partColumns) {
        const auto found = parts.find(std::string(column) + "-" + std::string(valueOf(column, traits)));
        if (found != parts.end()) applying.push_back(&found->second);
    }
    return applying;
}

bool applies(const StepEntry& entry, const Traits& traits)
{
    const std::string& signal = entry.step.signal;
    const bool has = signal == "-" || std::ranges::find(traits.signals, signal) != traits.signals.end();
    return has && holds(entry.when, traits);
}

/// A sheet while it grows; the texts are copied once, at the end.
using Draft = std::vector<const Step*>;

Result<void> append(Draft& sheet, const std::vector<StepEntry>& entries, const std::vector<std::string>& forbidden,
                    const Traits& traits)
{
    for (const StepEntry& entry : entries) {
        if (!applies(entry, traits) || std::ranges::find(forbidden, entry.step.name) != forbidden.end()) continue;
        const auto same = std::ranges::find_if(sheet, [&](const Step* earlier) {
            return earlier->name == entry.step.name && earlier->signal == entry.step.signal;
        });
        if (entry.replaces) {
            if (same != sheet.end()) *same = &entry.step;
        } else if (same != sheet.end()) {
            return failure("catalogue.step-twice", place(entry.step.part, entry.line), {{"found", entry.step.name}});
        } else {
            sheet.push_back(&entry.step);
        }
    }
    return {};
}

bool convertSide(std::optional<base::Decimal>& side, const base::Unit& from, const base::Unit& to)
{
    if (!side) return true;
    const auto value = converted(*side, from, to);
    if (value) side = *value;
    return value.has_value();
}

/// The limit in the step's unit.
Result<Limit> fitted(Limit limit, const Step& step)
{
    const base::Unit* from = base::findUnit(limit.unit);
    const base::Unit* to = base::findUnit(step.unit);
    if (from == nullptr || to == nullptr || from->quantity != to->quantity || !convertSide(limit.lower, *from, *to)
        || !convertSide(limit.upper, *from, *to))
        return failure("catalogue.unit-mismatch", "rules/" + limit.rules + ".toml",
                       {{"found", limit.unit}, {"wanted", step.unit}, {"step", step.name}});
    limit.unit = step.unit;
    return limit;
}

} // namespace

Result<std::vector<Step>> composeSteps(const KindFile& kind, const Parts& parts, const Traits& traits)
{
    const auto applying = partsOf(parts, traits);
    // Whoever forbids a step keeps it off the sheet wherever it stands, so that the order of files does not matter.
    std::vector<std::string> forbidden = kind.forbid;
    for (const PartFile* part : applying) forbidden.insert(forbidden.end(), part->forbid.begin(), part->forbid.end());

    Draft sheet;
    if (auto done = append(sheet, kind.before, forbidden, traits); !done) return passOn(done);
    for (const PartFile* part : applying)
        if (auto done = append(sheet, part->steps, forbidden, traits); !done) return passOn(done);
    if (auto done = append(sheet, kind.after, forbidden, traits); !done) return passOn(done);

    std::vector<Step> steps;
    steps.reserve(sheet.size());
    for (const Step* step : sheet) steps.push_back(*step);
    return steps;
}

Result<void> addLimits(std::vector<Step>& steps, std::span<const RulesFile* const> rules, const Traits& traits)
{
    for (Step& step : steps) {
        if (step.quantity.empty()) continue;
        for (const RulesFile* set : rules)
            for (const Figure& figure : set->figures) {
                if (figure.limit.quantity != step.quantity || !holds(figure.when, traits)) continue;
                auto limit = fitted(figure.limit, step);
                if (!limit) return passOn(limit);
                step.limits.push_back(std::move(*limit));
            }
    }
    return {};
}

} // namespace proofwalk::catalogue
