// SPDX-License-Identifier: GPL-3.0-or-later
// The columns of devices.csv, signals.csv and openings.csv.
#include "core/plan/columns.h"

#include <array>

namespace proofwalk::plan {
namespace {

constexpr Column coordinate(std::string_view name, std::string_view example)
{
    return {.name = name,
            .form = Form::number,
            .blank = "not placed on the drawing",
            .example = example,
            .unit = "m",
            .lower = "-10000",
            .upper = "10000",
            .isPrivate = true};
}

} // namespace

template <>
std::span<const Field<Device>> fields<Device>()
{
    static const std::array table{
        Field<Device>{{.name = "tag", .form = Form::tag, .blank = "D and the row's number: D07", .example = "K-01"},
                      &Device::tag},
        Field<Device>{{.name = "kind",
                       .form = Form::tag,
                       .blank = "not allowed; write unknown",
                       .example = "contact-surface",
                       .required = true},
                      &Device::kind},
        Field<Device>{{.name = "zone", .form = Form::tag, .blank = "no zone of its own", .example = "07"},
                      &Device::zone},
        Field<Device>{{.name = "floor",
                       .form = Form::tag,
                       .blank = "the only floor there is; floor or room must be filled in",
                       .example = "ground"},
                      &Device::floor},
        Field<Device>{{.name = "room",
                       .form = Form::name,
                       .blank = "not stated; floor or room must be filled in",
                       .example = "shop"},
                      &Device::room},
        Field<Device>{{.name = "position",
                       .form = Form::line,
                       .blank = "not stated",
                       .example = "above the door, left",
                       .isPrivate = true},
                      &Device::position},
        Field<Device>{{.name = "protects",
                       .form = Form::line,
                       .blank = "not stated",
                       .example = "street door",
                       .isPrivate = true},
                      &Device::protects},
        Field<Device>{
            {.name = "serial", .form = Form::line, .blank = "not stated", .example = "0A1B2C", .isPrivate = true},
            &Device::serial},
        Field<Device>{coordinate("x_m", "3.4"), &Device::x_m},
        Field<Device>{coordinate("y_m", "12.0"), &Device::y_m},
        Field<Device>{{.name = "driven_by", .form = Form::line, .blank = "not stated", .example = "panel output 1"},
                      &Device::drivenBy},
        Field<Device>{{.name = "supply", .form = Form::tag, .blank = "not stated", .example = "main"}, &Device::supply},
        Field<Device>{{.name = "standby_ma",
                       .form = Form::number,
                       .blank = "not stated",
                       .example = "12",
                       .unit = "mA",
                       .lower = "0",
                       .upper = "100000"},
                      &Device::standby_ma},
        Field<Device>{{.name = "alarm_ma",
                       .form = Form::number,
                       .blank = "as at rest",
                       .example = "350",
                       .unit = "mA",
                       .lower = "0",
                       .upper = "100000"},
                      &Device::alarm_ma},
        Field<Device>{{.name = "public_access", .form = Form::truth, .blank = "no", .example = "yes"},
                      &Device::publicAccess},
        Field<Device>{{.name = "fitted", .form = Form::date, .blank = "not stated", .example = "2026-11"},
                      &Device::fitted},
        Field<Device>{{.name = "replace_by", .form = Form::date, .blank = "not stated", .example = "2036"},
                      &Device::replaceBy},
        Field<Device>{{.name = "note",
                       .form = Form::text,
                       .blank = "no note",
                       .example = "ask for the ladder",
                       .isPrivate = true},
                      &Device::note},
    };
    return table;
}

template <>
std::span<const Field<Signal>> fields<Signal>()
{
    static const std::array table{
        Field<Signal>{{.name = "tag", .form = Form::tag, .blank = "not allowed", .example = "K-01", .required = true},
                      &Signal::tag},
        Field<Signal>{
            {.name = "signal", .form = Form::tag, .blank = "not allowed", .example = "tamper", .required = true},
            &Signal::signal},
        Field<Signal>{{.name = "zone", .form = Form::tag, .blank = "no zone", .example = "41"}, &Signal::zone},
        Field<Signal>{
            {.name = "serial", .form = Form::line, .blank = "the device's", .example = "0A1B2C", .isPrivate = true},
            &Signal::serial},
        Field<Signal>{{.name = "input", .form = Form::name, .blank = "not stated", .example = "2"}, &Signal::input},
    };
    return table;
}

template <>
std::span<const Field<Opening>> fields<Opening>()
{
    static const std::array table{
        Field<Opening>{
            {.name = "opening", .form = Form::tag, .blank = "not allowed", .example = "W-03", .required = true},
            &Opening::opening},
        Field<Opening>{{.name = "floor", .form = Form::tag, .blank = "not stated", .example = "ground"},
                       &Opening::floor},
        Field<Opening>{{.name = "room", .form = Form::name, .blank = "not stated", .example = "office"},
                       &Opening::room},
        Field<Opening>{
            {.name = "protected_by", .form = Form::names, .blank = "nothing protects it", .example = "K-01;G-02"},
            &Opening::protectedBy},
    };
    return table;
}

} // namespace proofwalk::plan
