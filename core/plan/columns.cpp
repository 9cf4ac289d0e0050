// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/plan/columns.h"

#include "core/base/text.h"

#include <fmt/format.h>

#include <algorithm>
#include <array>

namespace proofwalk::plan {
namespace {

/// "loop_normal_alarm_ohm": two different states of a loop, the one of lower resistance first.
bool isLoopThreshold(std::string_view field)
{
    constexpr std::array<std::string_view, 6> states{"short", "normal", "alarm", "tamper", "fault", "cut"};
    const auto isState = [&](const std::string& word) { return std::ranges::find(states, word) != states.end(); };
    const auto pieces = base::split(field, '_');
    return pieces.size() == 4 && pieces[0] == "loop" && isState(pieces[1]) && isState(pieces[2])
        && pieces[1] != pieces[2] && pieces[3] == "ohm";
}

} // namespace

const Column* factColumn(std::string_view table, std::string_view field)
{
    const auto facts = table == "site" ? siteFacts() : panelFacts();
    const std::string_view name = table == "panel" && isLoopThreshold(field) ? "loop_LOWER_UPPER_ohm" : field;
    if (name == field && name == "loop_LOWER_UPPER_ohm") return nullptr;
    const auto found = std::ranges::find(facts, name, &Column::name);
    return found == facts.end() ? nullptr : &*found;
}

std::string domainOf(const Column& column)
{
    const auto list = [&] { return base::join(base::split(column.list, ';'), ", "); };
    switch (column.form) {
    case Form::name: return "a name";
    case Form::tag: return "a tag";
    case Form::names: return "names joined by ;";
    case Form::line: return "free words, one line";
    case Form::text: return "free words";
    case Form::word: return "one of " + list();
    case Form::words: return "any of " + list() + ", joined by ;";
    case Form::truth: return "yes or no";
    case Form::number: return fmt::format("a number from {} to {}", column.lower, column.upper);
    case Form::whole: return fmt::format("a whole number from {} to {}", column.lower, column.upper);
    case Form::date: return "a year, a month or a day: 2026, 2026-11, 2026-11-25";
    case Form::code: return "a DC-05 code (three digits) or a DC-04 code (two capitals)";
    case Form::cause: return "a tag, zone:N, purpose:NAME or mode:NAME";
    case Form::effect: return "a tag or path:NAME";
    }
    return {};
}

} // namespace proofwalk::plan
