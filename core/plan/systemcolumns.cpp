// SPDX-License-Identifier: GPL-3.0-or-later
// The columns of effects.csv, paths.csv, floors.csv, timers.csv and power.csv.
#include "core/plan/columns.h"

#include <array>

namespace proofwalk::plan {

template <>
std::span<const Field<Effect>> fields<Effect>()
{
    static const std::array table{
        Field<Effect>{
            {.name = "cause", .form = Form::cause, .blank = "not allowed", .example = "purpose:fire", .required = true},
            &Effect::cause},
        Field<Effect>{{.name = "in_mode", .form = Form::names, .blank = "always", .example = "away;night"},
                      &Effect::inMode},
        Field<Effect>{
            {.name = "effect", .form = Form::effect, .blank = "not allowed", .example = "S-01", .required = true},
            &Effect::effect},
        Field<Effect>{{.name = "within_s",
                       .form = Form::number,
                       .blank = "no time is promised",
                       .example = "10",
                       .unit = "s",
                       .lower = "0",
                       .upper = "86400"},
                      &Effect::within_s},
        Field<Effect>{{.name = "for_s",
                       .form = Form::number,
                       .blank = "no time is promised",
                       .example = "900",
                       .unit = "s",
                       .lower = "0",
                       .upper = "604800"},
                      &Effect::for_s},
        Field<Effect>{{.name = "latching", .form = Form::truth, .blank = "no", .example = "yes"}, &Effect::latching},
    };
    return table;
}

template <>
std::span<const Field<Path>> fields<Path>()
{
    static const std::array table{
        Field<Path>{{.name = "path", .form = Form::tag, .blank = "not allowed", .example = "mobile", .required = true},
                    &Path::path},
        Field<Path>{{.name = "medium", .form = Form::line, .blank = "not stated", .example = "mobile network"},
                    &Path::medium},
        Field<Path>{{.name = "account", .form = Form::names, .blank = "every account", .example = "4711;4712"},
                    &Path::accounts},
        Field<Path>{{.name = "to",
                     .form = Form::word,
                     .blank = "not stated",
                     .example = "station",
                     .list = "station;owner;nobody"},
                    &Path::to},
        Field<Path>{{.name = "backup_of", .form = Form::tag, .blank = "backs up no other", .example = "network"},
                    &Path::backupOf},
        Field<Path>{{.name = "supervised_s",
                     .form = Form::number,
                     .blank = "not stated",
                     .example = "180",
                     .unit = "s",
                     .lower = "1",
                     .upper = "2678400"},
                    &Path::supervised_s},
    };
    return table;
}

template <>
std::span<const Field<Floor>> fields<Floor>()
{
    static const std::array table{
        Field<Floor>{
            {.name = "floor", .form = Form::tag, .blank = "not allowed", .example = "ground", .required = true},
            &Floor::floor},
        Field<Floor>{{.name = "level",
                      .form = Form::whole,
                      .blank = "not stated",
                      .example = "0",
                      .lower = "-20",
                      .upper = "200"},
                     &Floor::level},
        Field<Floor>{{.name = "name", .form = Form::line, .blank = "no name", .example = "Ground floor"}, &Floor::name},
        Field<Floor>{
            {.name = "drawing", .form = Form::line, .blank = "no drawing", .example = "ground.png", .isPrivate = true},
            &Floor::drawing},
        Field<Floor>{{.name = "metres_per_pixel",
                      .form = Form::number,
                      .blank = "the drawing has no scale",
                      .example = "0.02",
                      .unit = "m",
                      .lower = "0.0001",
                      .upper = "10"},
                     &Floor::metresPerPixel},
        Field<Floor>{{.name = "stair_x_m",
                      .form = Form::number,
                      .blank = "not stated",
                      .example = "5.5",
                      .unit = "m",
                      .lower = "-10000",
                      .upper = "10000"},
                     &Floor::stairX_m},
        Field<Floor>{{.name = "stair_y_m",
                      .form = Form::number,
                      .blank = "not stated",
                      .example = "2.0",
                      .unit = "m",
                      .lower = "-10000",
                      .upper = "10000"},
                     &Floor::stairY_m},
    };
    return table;
}

template <>
std::span<const Field<Timer>> fields<Timer>()
{
    static const std::array table{
        Field<Timer>{{.name = "timer",
                      .form = Form::word,
                      .blank = "not allowed",
                      .example = "entry-delay",
                      .list = "entry-delay;exit-delay;abort-window;sounder-cutoff",
                      .required = true},
                     &Timer::timer},
        Field<Timer>{{.name = "area", .form = Form::tag, .blank = "every area", .example = "mill"}, &Timer::area},
        Field<Timer>{{.name = "planned_s",
                      .form = Form::number,
                      .blank = "not planned",
                      .example = "30",
                      .unit = "s",
                      .lower = "0",
                      .upper = "86400"},
                     &Timer::planned_s},
        Field<Timer>{{.name = "tolerance_s",
                      .form = Form::number,
                      .blank = "not stated",
                      .example = "2",
                      .unit = "s",
                      .lower = "0",
                      .upper = "3600"},
                     &Timer::tolerance_s},
    };
    return table;
}

template <>
std::span<const Field<Supply>> fields<Supply>()
{
    static const std::array table{
        Field<Supply>{
            {.name = "supply", .form = Form::tag, .blank = "not allowed", .example = "main", .required = true},
            &Supply::supply},
        Field<Supply>{{.name = "battery_ah",
                       .form = Form::number,
                       .blank = "not stated",
                       .example = "17",
                       .unit = "A.h",
                       .lower = "0.1",
                       .upper = "10000"},
                      &Supply::battery_ah},
        Field<Supply>{{.name = "standby_h",
                       .form = Form::number,
                       .blank = "not stated",
                       .example = "12",
                       .unit = "h",
                       .lower = "0",
                       .upper = "720"},
                      &Supply::standby_h},
        Field<Supply>{{.name = "alarm_min",
                       .form = Form::number,
                       .blank = "not stated",
                       .example = "15",
                       .unit = "min",
                       .lower = "0",
                       .upper = "1440"},
                      &Supply::alarm_min},
        Field<Supply>{{.name = "derating",
                       .form = Form::number,
                       .blank = "0.8: a fifth of the rated capacity is kept for ageing",
                       .example = "0.8",
                       .lower = "0.1",
                       .upper = "1"},
                      &Supply::derating},
        Field<Supply>{{.name = "nominal_v",
                       .form = Form::number,
                       .blank = "not stated",
                       .example = "12",
                       .unit = "V",
                       .lower = "1",
                       .upper = "120"},
                      &Supply::nominal_v},
        Field<Supply>{{.name = "charge_a",
                       .form = Form::number,
                       .blank = "not stated",
                       .example = "1.5",
                       .unit = "A",
                       .lower = "0",
                       .upper = "1000"},
                      &Supply::charge_a},
    };
    return table;
}

} // namespace proofwalk::plan
