// SPDX-License-Identifier: GPL-3.0-or-later
// Every column of every file of a plan: what may stand in it, in which unit, and what a blank cell means. This one
// description serves the reading, the rows of a job and FORMAT.md, whose tables a test compares with it. The bounds of
// numbers are ours: wide enough for any building, narrow enough to catch a slipped decimal point or a mistaken unit.
#pragma once

#include "core/plan/plan.h"

#include <span>
#include <string>
#include <string_view>
#include <variant>
#include <vector>

namespace proofwalk::plan {

/// What may stand in a cell.
enum class Form {
    name,   ///< one line of at most 64 characters without ;
    tag,    ///< a name without :
    names,  ///< several names joined by ;
    line,   ///< free words on one line, at most 200 characters
    text,   ///< free words, at most 4000 characters
    word,   ///< one of a closed list
    words,  ///< several of a closed list, joined by ;
    truth,  ///< yes or no
    number, ///< a decimal number with a full stop
    whole,  ///< a whole number
    date,   ///< 2026, 2026-11 or 2026-11-25
    code,   ///< a reporting code: three digits or two capitals
    cause,  ///< a tag, zone:N, purpose:NAME or mode:NAME
    effect, ///< a tag or path:NAME
};

struct Column {
    std::string_view name;
    Form form = Form::name;
    std::string_view blank;   ///< what a blank cell means
    std::string_view example; ///< a cell that is right
    std::string_view unit = {};
    std::string_view lower = {}, upper = {}; ///< for numbers, both inclusive
    std::string_view list = {};              ///< for words: joined by ;
    bool required = false;                   ///< the column must be there and the cell must not be blank
    bool isPrivate = false;                  ///< stands in a job as a commitment
};

/// Where a column's cells are kept in a row.
template <class R>
using Member = std::variant<std::string R::*, std::vector<std::string> R::*, std::optional<int> R::*,
                            std::optional<base::Decimal> R::*, bool R::*>;

template <class R>
struct Field {
    Column column;
    Member<R> member;
};

/// The columns of the file that holds rows of this type, in the order of FORMAT.md.
template <class R>
std::span<const Field<R>> fields();
template <>
std::span<const Field<Fact>> fields<Fact>();
template <>
std::span<const Field<Area>> fields<Area>();
template <>
std::span<const Field<Mode>> fields<Mode>();
template <>
std::span<const Field<Zone>> fields<Zone>();
template <>
std::span<const Field<Device>> fields<Device>();
template <>
std::span<const Field<Signal>> fields<Signal>();
template <>
std::span<const Field<Effect>> fields<Effect>();
template <>
std::span<const Field<Path>> fields<Path>();
template <>
std::span<const Field<Floor>> fields<Floor>();
template <>
std::span<const Field<Timer>> fields<Timer>();
template <>
std::span<const Field<Supply>> fields<Supply>();
template <>
std::span<const Field<Opening>> fields<Opening>();

/// The facts that may stand in site.csv and panel.csv, each described as the column its value would be.
std::span<const Column> siteFacts();
std::span<const Column> panelFacts();

/// The description of a fact of "site" or "panel"; nullptr if there is no such fact. "loop_normal_alarm_ohm" is
/// described by loop_LOWER_UPPER_ohm.
const Column* factColumn(std::string_view table, std::string_view field);

/// The domain in words, as FORMAT.md prints it: "a number from 0 to 50", "one of closed, open".
std::string domainOf(const Column& column);

/// Calls `each(table, rows)` for every table of the plan, in the order of FORMAT.md; the table's file is TABLE.csv.
template <class P, class F>
void forEachTable(P& plan, F each)
{
    each("site", plan.site);
    each("areas", plan.areas);
    each("modes", plan.modes);
    each("zones", plan.zones);
    each("devices", plan.devices);
    each("signals", plan.signals);
    each("effects", plan.effects);
    each("paths", plan.paths);
    each("panel", plan.panel);
    each("floors", plan.floors);
    each("timers", plan.timers);
    each("power", plan.supplies);
    each("openings", plan.openings);
}

} // namespace proofwalk::plan
