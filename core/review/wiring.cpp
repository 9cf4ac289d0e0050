// SPDX-License-Identifier: GPL-3.0-or-later
// Resistors that are made, and cable that is short enough.
//   [1] IEC 60063:2015, preferred values E24 and E96 (core/measure/eseries.h).
//   [2] 100 ohm of cable and contacts: the most a panel's input commonly allows; common practice, no clause behind it.
#include "core/review/checks.h"

#include "core/measure/cable.h"
#include "core/measure/eseries.h"

#include <fmt/format.h>

#include <array>

namespace proofwalk::review {
namespace {

constexpr double cableLimit_ohm = 100; // [2]

struct Resistor {
    const char* column;
    std::optional<base::Decimal> plan::Zone::* value;
};

constexpr std::array resistors{Resistor{"eol_ohm", &plan::Zone::eol_ohm}, Resistor{"alarm_ohm", &plan::Zone::alarm_ohm},
                               Resistor{"tamper_ohm", &plan::Zone::tamper_ohm},
                               Resistor{"fault_ohm", &plan::Zone::fault_ohm}};

std::string nearestPreferred(const base::Decimal& ohm)
{
    const auto nearest = measure::nearestPreferredValue(ohm, measure::Series::E24);
    return nearest ? base::toText(*nearest) : std::string();
}

} // namespace

void checkResistorsStated(const Context& context, Remarks& remarks)
{
    for (const plan::Zone& zone : context.plan.zones) {
        const int count = zone.resistors.value_or(0);
        const std::string where = placeOf(zone, "zones.csv", zone.zone);
        const auto missing = [&](const char* column) {
            remarks.add("review.resistor-missing", where,
                        {{"wanted", std::string(column)}, {"count", std::int64_t{count}}});
        };
        if (count >= 1 && !zone.eol_ohm) missing("eol_ohm");
        if (count >= 2 && !zone.alarm_ohm) missing("alarm_ohm");
        if (count >= 3 && !zone.fault_ohm) missing("fault_ohm");
    }
}

void checkResistorValues(const Context& context, Remarks& remarks)
{
    for (const plan::Zone& zone : context.plan.zones) {
        for (const Resistor& resistor : resistors) {
            const auto& ohm = zone.*resistor.value;
            if (!ohm || measure::isPreferredValue(*ohm, measure::Series::E24)
                || measure::isPreferredValue(*ohm, measure::Series::E96))
                continue;
            remarks.add("review.resistor-value", placeOf(zone, "zones.csv", zone.zone),
                        {{"column", std::string(resistor.column)},
                         {"found", base::toText(*ohm)},
                         {"nearest", nearestPreferred(*ohm)}});
        }
    }
}

void checkLoopCable(const Context& context, Remarks& remarks)
{
    for (const plan::Zone& zone : context.plan.zones) {
        if (zone.conductor.empty()) continue;
        const std::string where = placeOf(zone, "zones.csv", zone.zone);
        const auto conductor = measure::conductorByName(zone.conductor);
        if (!conductor) {
            remarks.add(conductor.error().code, where + ", column conductor", conductor.error().arguments);
            continue;
        }
        if (!zone.cable_m || zone.cable_m->mantissa == 0) continue;
        const auto ohm = measure::pairResistance_ohm(
            measure::ConductorRun{.conductor = *conductor, .length_m = base::toDouble(*zone.cable_m)});
        if (!ohm) {
            remarks.add(ohm.error().code, where, ohm.error().arguments);
        } else if (*ohm > cableLimit_ohm) {
            remarks.add("review.cable-resistance", where,
                        {{"found", fmt::format("{:.0f}", *ohm)},
                         {"metres", base::toText(*zone.cable_m)},
                         {"limit", fmt::format("{:.0f}", cableLimit_ohm)}});
        }
    }
}

} // namespace proofwalk::review
