// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/walk/loopwiring.h"

namespace proofwalk::walk {

Result<std::optional<measure::LoopWiring>> loopWiring(const plan::Zone& zone,
                                                      std::span<const measure::Conductor> conductors)
{
    using Found = std::optional<measure::LoopWiring>;
    const bool pair = zone.feed == "loop" || zone.feed == "four-wire";
    if (!pair || !zone.resistors || *zone.resistors > 2 || !zone.cable_m || zone.conductor.empty()) return Found{};
    if (*zone.resistors == 0 && zone.rest != "closed") return Found{};
    if (*zone.resistors > 0 && (!zone.eol_ohm || !zone.tolerance_pct)) return Found{};
    if (*zone.resistors == 2 && !zone.alarm_ohm) return Found{};

    auto conductor = measure::conductorByName(zone.conductor, conductors);
    if (!conductor) return passOn(conductor);
    auto cable = measure::pairResistance_ohm(measure::ConductorRun{*conductor, base::toDouble(*zone.cable_m), 20.0});
    if (!cable) return passOn(cable);

    measure::LoopWiring wiring;
    wiring.resistors = *zone.resistors;
    wiring.restClosed = zone.rest != "open";
    wiring.fireStyle = wiring.resistors == 2 && !wiring.restClosed;
    wiring.eol_ohm = zone.eol_ohm ? base::toDouble(*zone.eol_ohm) : 0;
    wiring.alarm_ohm = zone.alarm_ohm ? base::toDouble(*zone.alarm_ohm) : 0;
    wiring.tolerance_pct = zone.tolerance_pct ? base::toDouble(*zone.tolerance_pct) : 0;
    wiring.cable_ohm_max = *cable;
    return Found(wiring);
}

} // namespace proofwalk::walk
