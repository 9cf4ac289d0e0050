// SPDX-License-Identifier: GPL-3.0-or-later
// The sheet that says what it was measured with and judged by: every reading, instruments, limits with their sources,
// the decision rule, assumptions, what the customer was shown.
#include "core/report/filling.h"

#include "core/base/text.h"

#include <algorithm>
#include <set>

namespace proofwalk::report {
namespace {

/// "EN 50131-1:2006, 8.3.1" with the clause only where it was itself read; "from memory" and the like said.
std::string sourceText(const Filling& filling, const catalogue::Limit& limit)
{
    const catalogue::Source& source = limit.source;
    if (source.basis == "plan") return filling.phrase("report.limit." + source.note);
    std::string text = source.standard;
    if (!source.edition.empty()) text += ":" + source.edition;
    if (!source.clause.empty() && source.clauseBasis == "read") text += ", " + source.clause;
    if (text.empty()) return source.basis;
    return limit.confirmed ? text : filling.phrase("report.not-confirmed", {{"source", text}});
}

void addStepReadings(const Filling& filling, const walk::StepKey& key, std::set<walk::StepKey>& told, Table& table)
{
    if (!told.insert(key).second) return;
    const walk::StepView view = walk::viewStep(filling.state, key);
    if (view.newest == nullptr) return;
    const std::string reading = readingText(view.newest->answer);
    if (reading.empty()) return;
    table.rows.push_back({walk::nameOfSubject(filling.scope, key), key.name, reading,
                          limitText(*filling.scope.step(key)), filling.verdictWord(view.verdict),
                          base::localTime(view.newest->fact.at)});
}

Block readingsBlock(const Filling& filling)
{
    Block block;
    block.head = filling.phrase("report.every-reading");
    Table table;
    table.heads = {filling.phrase("report.head.what"),    filling.phrase("report.head.step"),
                   filling.phrase("report.head.reading"), filling.phrase("report.head.limit"),
                   filling.phrase("report.head.result"),  filling.phrase("report.head.time")};
    table.figures = {false, false, true, true, false, true};
    std::set<walk::StepKey> told;
    for (const walk::ScopeDevice& device : filling.scope.devices)
        for (const walk::StepKey& key : device.steps) addStepReadings(filling, key, told, table);
    for (const walk::ScopeSequence& sequence : filling.scope.sequences)
        for (const walk::StepKey& key : sequence.steps) addStepReadings(filling, key, told, table);
    if (table.rows.empty()) block.paragraphs.push_back(filling.phrase("report.no-reading"));
    else block.table = std::move(table);
    return block;
}

std::string accuracyText(const walk::Measure& measure)
{
    std::vector<std::string> parts;
    if (measure.accuracy.percentOfReading.mantissa != 0)
        parts.push_back(base::toText(measure.accuracy.percentOfReading) + " %");
    if (measure.accuracy.digits > 0) parts.push_back(std::to_string(measure.accuracy.digits) + " digits");
    if (measure.accuracy.fixed) parts.push_back(base::toText(*measure.accuracy.fixed));
    return measure.quantity + " ± " + base::join(parts, " + ");
}

Block kitBlock(const Filling& filling)
{
    Block block;
    block.head = filling.phrase("report.instruments");
    Table table;
    table.heads = {filling.phrase("report.head.instrument"), filling.phrase("report.head.accuracy"),
                   filling.phrase("report.head.calibrated")};
    for (const auto& told : filling.state.kit) {
        if (!filling.state.stands(told.fact)) continue;
        std::vector<std::string> measures;
        for (const walk::Measure& measure : told.body.measures) measures.push_back(accuracyText(measure));
        const std::string serial = filling.reveal(told.body.serial);
        table.rows.push_back(
            {told.body.name + (serial.empty() ? "" : ", " + serial), base::join(measures, "; "),
             told.body.calibrated.empty() ? filling.phrase("report.not-stated") : told.body.calibrated});
    }
    if (table.rows.empty()) block.paragraphs.push_back(filling.phrase("report.no-instrument"));
    else block.table = std::move(table);
    for (const auto& told : filling.state.clocks)
        if (filling.state.stands(told.fact))
            block.notes.push_back(filling.phrase(
                "report.clock", {{"of", told.body.of},
                                 {"offset", base::toText(base::Decimal{told.body.offset_ms, -3})},
                                 {"uncertainty", base::toText(base::Decimal{told.body.uncertainty_ms, -3})}}));
    return block;
}

/// Each figure of a rule set or sheet that a reading was held against, once.
Block limitsBlock(const Filling& filling)
{
    Block block;
    block.head = filling.phrase("report.limits");
    block.paragraphs.push_back(filling.phrase("report.decision-rule"));
    Table table;
    table.heads = {filling.phrase("report.head.quantity"), filling.phrase("report.head.limit"),
                   filling.phrase("report.head.source")};
    std::set<std::vector<std::string>> told;
    for (const auto& [key, attempts] : filling.state.attempts) {
        const walk::ScopeStep* step = filling.scope.step(key);
        if (std::ranges::none_of(attempts, [](const walk::Attempt& each) { return each.answer.reading.has_value(); }))
            continue;
        for (const auto* joint : {&step->confirmed, &step->unconfirmed}) {
            for (const catalogue::Limit& limit : joint->from) {
                const base::Unit* unit = base::findUnit(limit.unit);
                const std::string ending = unit == nullptr ? std::string() : " " + std::string(unit->written);
                const bool ofPlan = limit.source.basis == "plan";
                std::string sides = limit.lower && limit.upper
                                      ? base::toText(*limit.lower) + " to " + base::toText(*limit.upper)
                                  : limit.lower ? "≥ " + base::toText(*limit.lower)
                                                : "≤ " + base::toText(*limit.upper);
                if (ofPlan && limit.source.note == "plan.loop") sides = filling.phrase("report.limit.per-loop");
                else sides += ending;
                std::vector<std::string> row{limit.quantity, sides, sourceText(filling, limit)};
                if (told.insert(row).second) table.rows.push_back(std::move(row));
            }
        }
    }
    if (!table.rows.empty()) block.table = std::move(table);
    return block;
}

Block planBlock(const Filling& filling)
{
    Block block;
    block.head = filling.phrase("report.plan");
    std::int64_t assumed = 0;
    const auto count = [&](const auto& rows) {
        for (const auto& row : rows) assumed += static_cast<std::int64_t>(row.assumed.size());
    };
    count(filling.plan.zones);
    count(filling.plan.devices);
    block.paragraphs.push_back(filling.phrase(assumed == 0 ? "report.plan.no-assumptions" : "report.plan.assumptions",
                                              {{"count", assumed},
                                               {"zones", static_cast<std::int64_t>(filling.plan.zones.size())},
                                               {"devices", static_cast<std::int64_t>(filling.views.size())},
                                               {"rules", base::join(filling.plan.rules(), ", ")}}));
    for (const auto& told : filling.state.asFound)
        if (filling.state.stands(told.fact))
            block.notes.push_back(filling.phrase("report.as-found", {{"words", filling.reveal(told.body.words)}}));
    return block;
}

Block shownBlock(const Filling& filling)
{
    Block block;
    block.head = filling.phrase("report.shown");
    for (const auto& told : filling.state.shown) {
        if (!filling.state.stands(told.fact)) continue;
        const std::string words = filling.reveal(told.body.words);
        block.paragraphs.push_back(told.body.topic + (words.empty() ? "." : ": " + words + "."));
    }
    if (block.paragraphs.empty()) block.paragraphs.push_back(filling.phrase("report.shown.nothing"));
    return block;
}

Block notesBlock(const Filling& filling)
{
    Block block;
    block.head = filling.phrase("report.notes");
    for (const auto& told : filling.state.notes) {
        if (!filling.state.stands(told.fact)) continue;
        const std::string about =
            told.body.subject.empty() ? std::string() : walk::nameOfSubject(filling.scope, {told.body.subject, "", ""});
        block.paragraphs.push_back((about.empty() ? "" : about + ": ") + filling.reveal(told.body.words));
    }
    if (block.paragraphs.empty()) block.paragraphs.push_back(filling.phrase("report.notes.none"));
    return block;
}

} // namespace

void fillGrounds(const Filling& filling, Contents& contents)
{
    contents.groundsLine = filling.phrase("report.grounds-line");
    contents.grounds = {planBlock(filling),  kitBlock(filling),   limitsBlock(filling),
                        shownBlock(filling), notesBlock(filling), readingsBlock(filling)};
}

} // namespace proofwalk::report
