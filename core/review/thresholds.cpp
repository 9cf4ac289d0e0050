// SPDX-License-Identifier: GPL-3.0-or-later
// Whether the states of a loop, with its resistors' tolerance and its cable, can be told apart by the panel.
#include "core/review/checks.h"

#include "core/measure/cable.h"
#include "core/measure/loop.h"

#include <fmt/format.h>

#include <optional>

namespace proofwalk::review {
namespace {

struct State {
    const char* name; ///< in panel.csv: "normal" of loop_normal_alarm_ohm
    measure::LoopState state;
};

/// The loop of a zone as core/measure knows it; nothing for one that is wired otherwise or not fully described.
std::optional<measure::LoopWiring> wiringOf(const plan::Zone& zone)
{
    if (!zone.resistors || *zone.resistors < 1 || *zone.resistors > 2 || zone.rest.empty() || !zone.eol_ohm)
        return std::nullopt;
    if (*zone.resistors == 2 && !zone.alarm_ohm) return std::nullopt;
    measure::LoopWiring wiring;
    wiring.resistors = *zone.resistors;
    wiring.restClosed = zone.rest == "closed";
    wiring.fireStyle = wiring.resistors == 2 && !wiring.restClosed;
    wiring.eol_ohm = base::toDouble(*zone.eol_ohm);
    if (zone.alarm_ohm) wiring.alarm_ohm = base::toDouble(*zone.alarm_ohm);
    if (zone.tolerance_pct) wiring.tolerance_pct = base::toDouble(*zone.tolerance_pct);
    if (zone.cable_m && zone.cable_m->mantissa > 0) {
        const auto conductor = measure::conductorByName(zone.conductor);
        if (!conductor) return std::nullopt;
        const auto ohm = measure::pairResistance_ohm(
            measure::ConductorRun{.conductor = *conductor, .length_m = base::toDouble(*zone.cable_m)});
        if (!ohm) return std::nullopt;
        wiring.cable_ohm_max = *ohm;
    }
    return wiring;
}

/// The states of the wiring from the lowest resistance to the highest.
std::vector<State> statesInOrder(const measure::LoopWiring& wiring)
{
    using measure::LoopState;
    const State shorted{"short", LoopState::shorted}, normal{"normal", LoopState::closed},
        alarm{"alarm", LoopState::alarm}, cut{"cut", LoopState::open};
    if (wiring.resistors == 1) return {shorted, normal, cut};
    if (wiring.fireStyle) return {shorted, alarm, normal, cut};
    return {shorted, normal, alarm, cut};
}

std::string ohms(double value) { return fmt::format("{:.0f}", value); }

/// The panel's threshold between two neighbours must lie above all of the lower and below all of the upper.
void checkPair(const Context& context, const std::string& where, const measure::LoopWiring& wiring, const State& low,
               const State& high, Remarks& remarks)
{
    const auto lower = measure::loopWindow(wiring, low.state);
    const auto upper = measure::loopWindow(wiring, high.state);
    if (!lower || !upper || !lower->upper_ohm || !upper->lower_ohm) return;
    // An open loop's window begins where a whole loop's ends: that is no overlap.
    if (high.state != measure::LoopState::open && *lower->upper_ohm >= *upper->lower_ohm) {
        remarks.add("review.loop-states-alike", where,
                    {{"lower", std::string(low.name)},
                     {"upper", std::string(high.name)},
                     {"found", ohms(*lower->upper_ohm)},
                     {"wanted", ohms(*upper->lower_ohm)}});
        return;
    }
    const std::string fact = fmt::format("loop_{}_{}_ohm", low.name, high.name);
    const auto threshold = base::parseDecimal(context.plan.panelFact(fact));
    if (!threshold) return; // not stated
    const double at = base::toDouble(*threshold);
    const bool tooLow = at <= *lower->upper_ohm;
    const bool tooHigh = high.state != measure::LoopState::open && at >= *upper->lower_ohm;
    if (tooLow || tooHigh)
        remarks.add("review.loop-threshold", where,
                    {{"field", fact},
                     {"found", ohms(at)},
                     {"state", std::string(tooLow ? low.name : high.name)},
                     {"reaches", ohms(tooLow ? *lower->upper_ohm : *upper->lower_ohm)}});
}

} // namespace

void checkLoopStates(const Context& context, Remarks& remarks)
{
    for (const plan::Zone& zone : context.plan.zones) {
        const auto wiring = wiringOf(zone);
        if (!wiring) continue;
        const auto states = statesInOrder(*wiring);
        for (std::size_t i = 0; i + 1 < states.size(); ++i)
            checkPair(context, placeOf(zone, "zones.csv", zone.zone), *wiring, states[i], states[i + 1], remarks);
    }
}

} // namespace proofwalk::review
