// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/measure/loopsight.h"

#include <cmath>

namespace proofwalk::measure {

Result<LoopSight> sightOf(const LoopWiring& wiring, double reading_ohm)
{
    if (!std::isfinite(reading_ohm) || reading_ohm < 0)
        return failure("measure.out-of-range", "",
                       {{"input", "reading_ohm"}, {"found", std::to_string(reading_ohm)}, {"wanted", "0 or more"}});
    LoopSight sight;
    std::optional<double> ends, begins;
    for (const LoopState state : {LoopState::shorted, LoopState::closed, LoopState::alarm, LoopState::open}) {
        auto window = loopWindow(wiring, state);
        if (!window) return passOn(window);
        const bool under = window->lower_ohm && reading_ohm < *window->lower_ohm;
        const bool over = window->upper_ohm && reading_ohm > *window->upper_ohm;
        if (!under && !over) sight.fits.push_back(state);
        if (over && (!ends || *window->upper_ohm > *ends)) {
            ends = window->upper_ohm;
            sight.below = state;
        }
        if (under && (!begins || *window->lower_ohm < *begins)) {
            begins = window->lower_ohm;
            sight.above = state;
        }
        if (state != LoopState::closed) continue;
        if (over) sight.fromClosed_ohm = reading_ohm - *window->upper_ohm;
        if (under) sight.fromClosed_ohm = reading_ohm - *window->lower_ohm;
    }
    return sight;
}

} // namespace proofwalk::measure
