// SPDX-License-Identifier: GPL-3.0-or-later
// The bounds of numbers are ours: wide enough for any building, narrow enough to catch a slipped decimal point or a unit
// that was mistaken.
#include "core/plan/columns.h"

#include "core/base/text.h"

#include <fmt/format.h>

#include <algorithm>
#include <array>

namespace proofwalk::plan {

template <>
std::span<const Field<Fact>> fields<Fact>()
{
    static const std::array table{
        Field<Fact>{{.name = "field", .form = Form::name, .blank = "not allowed", .example = "rules", .required = true},
                    &Fact::field},
        Field<Fact>{{.name = "value", .form = Form::text, .blank = "not stated", .example = "intruder-eu;fire-uk"},
                    &Fact::value},
    };
    return table;
}

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
        Field<Zone>{{.name = "delay",
                     .form = Form::word,
                     .blank = "none",
                     .example = "entry",
                     .list = "none;entry;on-route"},
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
        Field<Zone>{{.name = "eol_ohm",
                     .form = Form::number,
                     .blank = "not stated",
                     .example = "4700",
                     .unit = "Ohm",
                     .lower = "1",
                     .upper = "1000000"},
                    &Zone::eol_ohm},
        Field<Zone>{{.name = "alarm_ohm",
                     .form = Form::number,
                     .blank = "not stated",
                     .example = "4700",
                     .unit = "Ohm",
                     .lower = "1",
                     .upper = "1000000"},
                    &Zone::alarm_ohm},
        Field<Zone>{{.name = "tamper_ohm",
                     .form = Form::number,
                     .blank = "not stated",
                     .example = "2200",
                     .unit = "Ohm",
                     .lower = "1",
                     .upper = "1000000"},
                    &Zone::tamper_ohm},
        Field<Zone>{{.name = "fault_ohm",
                     .form = Form::number,
                     .blank = "not stated",
                     .example = "1000",
                     .unit = "Ohm",
                     .lower = "1",
                     .upper = "1000000"},
                    &Zone::fault_ohm},
        Field<Zone>{{.name = "tolerance_pct",
                     .form = Form::number,
                     .blank = "not stated",
                     .example = "1",
                     .unit = "%",
                     .lower = "0",
                     .upper = "50"},
                    &Zone::tolerance_pct},
        Field<Zone>{{.name = "pair", .form = Form::name, .blank = "not stated", .example = "cable 3 blue"}, &Zone::pair},
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

template <>
std::span<const Field<Device>> fields<Device>()
{
    static const std::array table{
        Field<Device>{{.name = "tag",
                       .form = Form::tag,
                       .blank = "D and the row's number: D07",
                       .example = "K-01"},
                      &Device::tag},
        Field<Device>{{.name = "kind",
                       .form = Form::tag,
                       .blank = "not allowed; write unknown",
                       .example = "contact-surface",
                       .required = true},
                      &Device::kind},
        Field<Device>{{.name = "zone", .form = Form::tag, .blank = "no zone of its own", .example = "07"}, &Device::zone},
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
        Field<Device>{{.name = "serial", .form = Form::line, .blank = "not stated", .example = "0A1B2C", .isPrivate = true},
                      &Device::serial},
        Field<Device>{{.name = "x_m",
                       .form = Form::number,
                       .blank = "not placed on the drawing",
                       .example = "3.4",
                       .unit = "m",
                       .lower = "-10000",
                       .upper = "10000",
                       .isPrivate = true},
                      &Device::x_m},
        Field<Device>{{.name = "y_m",
                       .form = Form::number,
                       .blank = "not placed on the drawing",
                       .example = "12.0",
                       .unit = "m",
                       .lower = "-10000",
                       .upper = "10000",
                       .isPrivate = true},
                      &Device::y_m},
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
        Field<Device>{{.name = "note", .form = Form::text, .blank = "no note", .example = "ask for the ladder", .isPrivate = true},
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
        Field<Signal>{{.name = "signal", .form = Form::tag, .blank = "not allowed", .example = "tamper", .required = true},
                      &Signal::signal},
        Field<Signal>{{.name = "zone", .form = Form::tag, .blank = "no zone", .example = "41"}, &Signal::zone},
        Field<Signal>{{.name = "serial", .form = Form::line, .blank = "the device's", .example = "0A1B2C", .isPrivate = true},
                      &Signal::serial},
        Field<Signal>{{.name = "input", .form = Form::name, .blank = "not stated", .example = "2"}, &Signal::input},
    };
    return table;
}

template <>
std::span<const Field<Effect>> fields<Effect>()
{
    static const std::array table{
        Field<Effect>{{.name = "cause",
                       .form = Form::cause,
                       .blank = "not allowed",
                       .example = "purpose:fire",
                       .required = true},
                      &Effect::cause},
        Field<Effect>{{.name = "in_mode", .form = Form::names, .blank = "always", .example = "away;night"},
                      &Effect::inMode},
        Field<Effect>{{.name = "effect", .form = Form::effect, .blank = "not allowed", .example = "S-01", .required = true},
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
        Field<Floor>{{.name = "floor", .form = Form::tag, .blank = "not allowed", .example = "ground", .required = true},
                     &Floor::floor},
        Field<Floor>{{.name = "level",
                      .form = Form::whole,
                      .blank = "not stated",
                      .example = "0",
                      .lower = "-20",
                      .upper = "200"},
                     &Floor::level},
        Field<Floor>{{.name = "name", .form = Form::line, .blank = "no name", .example = "Ground floor"}, &Floor::name},
        Field<Floor>{{.name = "drawing",
                      .form = Form::line,
                      .blank = "no drawing",
                      .example = "ground.png",
                      .isPrivate = true},
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
        Field<Supply>{{.name = "supply", .form = Form::tag, .blank = "not allowed", .example = "main", .required = true},
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

template <>
std::span<const Field<Opening>> fields<Opening>()
{
    static const std::array table{
        Field<Opening>{{.name = "opening", .form = Form::tag, .blank = "not allowed", .example = "W-03", .required = true},
                       &Opening::opening},
        Field<Opening>{{.name = "floor", .form = Form::tag, .blank = "not stated", .example = "ground"}, &Opening::floor},
        Field<Opening>{{.name = "room", .form = Form::name, .blank = "not stated", .example = "office"}, &Opening::room},
        Field<Opening>{{.name = "protected_by",
                        .form = Form::names,
                        .blank = "nothing protects it",
                        .example = "K-01;G-02"},
                       &Opening::protectedBy},
    };
    return table;
}

std::span<const Column> siteFacts()
{
    static const std::array table{
        Column{.name = "name", .form = Form::line, .blank = "not stated", .example = "Lantern Mill", .isPrivate = true},
        Column{.name = "address", .form = Form::text, .blank = "not stated", .example = "Mill Lane 1", .isPrivate = true},
        Column{.name = "account", .form = Form::names, .blank = "not stated", .example = "4711;4712"},
        Column{.name = "rules", .form = Form::names, .blank = "no rule set", .example = "intruder-eu;fire-uk"},
        Column{.name = "language", .form = Form::name, .blank = "not stated", .example = "en"},
        Column{.name = "paper", .form = Form::word, .blank = "not stated", .example = "A4", .list = "A4;Letter"},
        Column{.name = "tester", .form = Form::line, .blank = "not stated", .example = "the installer of the system"},
    };
    return table;
}

std::span<const Column> panelFacts()
{
    static const std::array table{
        Column{.name = "loop_response_ms",
               .form = Form::number,
               .blank = "not stated",
               .example = "300",
               .unit = "ms",
               .lower = "1",
               .upper = "10000"},
        Column{.name = "loop_LOWER_UPPER_ohm",
               .form = Form::number,
               .blank = "not stated",
               .example = "7050",
               .unit = "Ohm",
               .lower = "1",
               .upper = "1000000"},
        Column{.name = "standby_ma",
               .form = Form::number,
               .blank = "not stated",
               .example = "120",
               .unit = "mA",
               .lower = "0",
               .upper = "100000"},
        Column{.name = "alarm_ma",
               .form = Form::number,
               .blank = "not stated",
               .example = "180",
               .unit = "mA",
               .lower = "0",
               .upper = "100000"},
        Column{.name = "output_ma",
               .form = Form::number,
               .blank = "not stated",
               .example = "1000",
               .unit = "mA",
               .lower = "0",
               .upper = "100000"},
        Column{.name = "supply", .form = Form::tag, .blank = "not stated", .example = "main"},
        Column{.name = "two_wire_zones", .form = Form::names, .blank = "not stated", .example = "31;32"},
        Column{.name = "memory_length",
               .form = Form::whole,
               .blank = "not stated",
               .example = "500",
               .lower = "1",
               .upper = "1000000"},
        Column{.name = "test_mode_timeout_min",
               .form = Form::number,
               .blank = "not stated",
               .example = "60",
               .unit = "min",
               .lower = "1",
               .upper = "10080"},
        Column{.name = "trips_before_shutdown",
               .form = Form::whole,
               .blank = "not stated",
               .example = "3",
               .lower = "1",
               .upper = "100"},
        Column{.name = "radio_scale", .form = Form::line, .blank = "not stated", .example = "0 to 10"},
        Column{.name = "radio_minimum",
               .form = Form::number,
               .blank = "not stated",
               .example = "4",
               .lower = "-200",
               .upper = "1000"},
    };
    return table;
}

namespace {

/// "loop_normal_alarm_ohm": two different states of a loop, the one of lower resistance first.
bool isLoopThreshold(std::string_view field)
{
    constexpr std::array<std::string_view, 6> states{"short", "normal", "alarm", "tamper", "fault", "cut"};
    const auto isState = [&](const std::string& word) { return std::ranges::find(states, word) != states.end(); };
    const auto pieces = base::split(field, '_');
    return pieces.size() == 4 && pieces[0] == "loop" && isState(pieces[1]) && isState(pieces[2]) && pieces[1] != pieces[2]
        && pieces[3] == "ohm";
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
