// SPDX-License-Identifier: GPL-3.0-or-later
// The columns of areas.csv, modes.csv and zones.csv.
#include "core/plan/columns.h"

#include <array>

namespace proofwalk::plan {
namespace {

constexpr Column resistor(std::string_view name, std::string_view example)
{
    return {.name = name,
            .form = Form::number,
            .blank = "not stated",
            .example = example,
            .unit = "Ohm",
            .lower = "1",
            .upper = "1000000"};
}

} // namespace

template <>
std::span<const Field<Area>> fields<Area>()
{
    static const std::array table{
        Field<Area>{{.name = "area", .form = Form::tag, .blank = "not allowed", .example = "mill", .required = true},
                    &Area::area},
        Field<Area>{{.name = "name", .form = Form::line, .blank = "no name", .example = "Mill and shop"}, &Area::name},
        Field<Area>{{.name = "account", .form = Form::name, .blank = "the only account of site.csv", .example = "4711"},
                    &Area::account},
    };
    return table;
}

template <>
std::span<const Field<Mode>> fields<Mode>()
{
    static const std::array table{
        Field<Mode>{{.name = "mode", .form = Form::tag, .blank = "not allowed", .example = "night", .required = true},
                    &Mode::mode},
        Field<Mode>{{.name = "name", .form = Form::line, .blank = "no name", .example = "Night, flat in use"},
                    &Mode::name},
        Field<Mode>{{.name = "areas", .form = Form::names, .blank = "every area", .example = "mill;flat"},
                    &Mode::areas},
        Field<Mode>{{.name = "by",
                     .form = Form::words,
                     .blank = "not stated",
                     .example = "keypad;fob",
                     .list = "keypad;fob;key switch;remote"},
                    &Mode::by},
    };
    return table;
}

template <>
std::span<const Field<Zone>> fields<Zone>()
{
    static const std::array table{
        Field<Zone>{{.name = "zone", .form = Form::tag, .blank = "not allowed", .example = "07", .required = true},
                    &Zone::zone},
        Field<Zone>{{.name = "label", .form = Form::line, .blank = "no label", .example = "Shop door"}, &Zone::label},
        Field<Zone>{{.name = "areas", .form = Form::names, .blank = "the only area there is", .example = "mill"},
                    &Zone::areas},
        Field<Zone>{{.name = "purpose",
                     .form = Form::word,
                     .blank = "by the kinds of its devices, where all agree",
                     .example = "intrusion",
                     .list = "intrusion;hold-up;fire;carbon-monoxide;gas;medical;environment;tamper;technical"},
                    &Zone::purpose},
        Field<Zone>{
            {.name = "delay", .form = Form::word, .blank = "none", .example = "entry", .list = "none;entry;on-route"},
            &Zone::delay},
        Field<Zone>{{.name = "live_in",
                     .form = Form::names,
                     .blank = "by its purpose: always, or the modes that set all its areas",
                     .example = "away;night"},
                    &Zone::liveIn},
        Field<Zone>{{.name = "sounding",
                     .form = Form::word,
                     .blank = "by its purpose",
                     .example = "loud",
                     .list = "loud;inside;silent;notify"},
                    &Zone::sounding},
        Field<Zone>{{.name = "reporting",
                     .form = Form::truth,
                     .blank = "yes if it has a report_code or a path leads to anyone, else no",
                     .example = "yes"},
                    &Zone::reporting},
        Field<Zone>{{.name = "report_code", .form = Form::code, .blank = "not planned", .example = "130"},
                    &Zone::reportCode},
        Field<Zone>{{.name = "feed",
                     .form = Form::word,
                     .blank = "by the kinds of its devices; loop where another column of its wiring is filled in",
                     .example = "loop",
                     .list = "loop;two-wire;four-wire;radio;addressed"},
                    &Zone::feed},
        Field<Zone>{{.name = "rest",
                     .form = Form::word,
                     .blank = "on a wired zone by its purpose",
                     .example = "closed",
                     .list = "closed;open"},
                    &Zone::rest},
        Field<Zone>{{.name = "resistors",
                     .form = Form::whole,
                     .blank = "wired otherwise; its readings are not judged",
                     .example = "2",
                     .lower = "0",
                     .upper = "3"},
                    &Zone::resistors},
        Field<Zone>{resistor("eol_ohm", "4700"), &Zone::eol_ohm},
        Field<Zone>{resistor("alarm_ohm", "4700"), &Zone::alarm_ohm},
        Field<Zone>{resistor("tamper_ohm", "2200"), &Zone::tamper_ohm},
        Field<Zone>{resistor("fault_ohm", "1000"), &Zone::fault_ohm},
        Field<Zone>{{.name = "tolerance_pct",
                     .form = Form::number,
                     .blank = "not stated",
                     .example = "1",
                     .unit = "%",
                     .lower = "0",
                     .upper = "50"},
                    &Zone::tolerance_pct},
        Field<Zone>{{.name = "pair", .form = Form::name, .blank = "not stated", .example = "cable 3 blue"},
                    &Zone::pair},
        Field<Zone>{{.name = "conductor", .form = Form::name, .blank = "not stated", .example = "7/0.2 mm"},
                    &Zone::conductor},
        Field<Zone>{{.name = "cable_m",
                     .form = Form::number,
                     .blank = "not stated",
                     .example = "42.5",
                     .unit = "m",
                     .lower = "0",
                     .upper = "10000"},
                    &Zone::cable_m},
    };
    return table;
}

} // namespace proofwalk::plan
