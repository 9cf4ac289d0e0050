// SPDX-License-Identifier: GPL-3.0-or-later
// The facts of site.csv and panel.csv.
#include "core/plan/columns.h"

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

std::span<const Column> siteFacts()
{
    static const std::array table{
        Column{.name = "name", .form = Form::line, .blank = "not stated", .example = "Lantern Mill", .isPrivate = true},
        Column{
            .name = "address", .form = Form::text, .blank = "not stated", .example = "Mill Lane 1", .isPrivate = true},
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

} // namespace proofwalk::plan
