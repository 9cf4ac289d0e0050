// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/catalogue/condition.h"

#include "core/catalogue/vocabulary.h"

#include <algorithm>

namespace proofwalk::catalogue {
namespace {

bool isAmong(std::string_view word, const std::vector<std::string>& words)
{
    return std::ranges::find(words, word) != words.end();
}

bool haveOneInCommon(const std::vector<std::string>& one, const std::vector<std::string>& other)
{
    return std::ranges::any_of(one, [&](const std::string& word) { return isAmong(word, other); });
}

/// The word the zone has in that column; any column but signals.
std::string_view valueOf(std::string_view column, const Traits& traits)
{
    if (column == "kind") return traits.kind;
    if (column == "feed") return traits.feed;
    if (column == "rest") return traits.rest;
    if (column == "resistors") return traits.resistors;
    if (column == "purpose") return traits.purpose;
    if (column == "delay") return traits.delay;
    if (column == "sounding") return traits.sounding;
    return traits.reporting;
}

} // namespace

Condition readCondition(const Keys& keys)
{
    Condition condition;
    const Node* when = keys.find("when");
    if (when == nullptr) return condition;
    const Keys columns(*when, keys.reading(),
                       {"kind", "signals", "feed", "rest", "resistors", "purpose", "delay", "sounding", "reporting"});
    for (const std::string& column : conditionColumns())
        if (columns.has(column)) condition.columns.emplace(column, columns.words(column, columnWords(column)));
    if (condition.columns.empty())
        keys.refuse("when", "catalogue.value", {{"key", "when"}, {"found", "{}"}, {"wanted", "column"}});
    return condition;
}

bool holds(const Condition& condition, const Traits& traits)
{
    return std::ranges::all_of(condition.columns, [&](const auto& column) {
        if (column.first == "signals") return haveOneInCommon(column.second, traits.signals);
        return isAmong(valueOf(column.first, traits), column.second);
    });
}

bool exclude(const Condition& one, const Condition& other)
{
    return std::ranges::any_of(one.columns, [&](const auto& column) {
        const auto found = other.columns.find(column.first);
        return column.first != "signals" && found != other.columns.end()
            && !haveOneInCommon(column.second, found->second);
    });
}

} // namespace proofwalk::catalogue
