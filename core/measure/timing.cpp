// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/measure/timing.h"

#include "core/measure/inputs.h"

#include <cmath>
#include <numbers>

namespace proofwalk::measure {
namespace {

constexpr double longest_s = 1e6; // eleven days

int handsOf(HandEnds ends)
{
    switch (ends) {
    case HandEnds::none: return 0;
    case HandEnds::start:
    case HandEnds::stop: return 1;
    case HandEnds::both: return 2;
    }
    return 2;
}

Result<void> checkReaction(const Reaction& reaction)
{
    if (auto sound = checkWithin("reaction_late_s", reaction.late_s, -10, 10); !sound) return sound;
    return checkWithin("reaction_spread_s", reaction.spread_s, 0, 10);
}

double clockPart_s(double shown_s, double ppm) { return shown_s * ppm * 1e-6 / std::numbers::sqrt3; }
double stepPart_s(double step_s) { return step_s / std::sqrt(12.0); }

Timing timingOf(double duration_s, double standard_s) { return {duration_s, standard_s, 2 * standard_s}; }

Result<void> check(const SignalTiming& timing)
{
    if (auto sound = checkWithin("shown_s", timing.shown_s, 0, longest_s); !sound) return sound;
    for (const SignalEnd& end : {timing.start, timing.stop}) {
        if (auto sound = checkWithin("resolution_s", end.resolution_s, 0, 3600); !sound) return sound;
        if (auto sound = checkWithin("distance_m", end.distance_m, 0, 1000); !sound) return sound;
    }
    if (auto sound = checkWithin("clock_ppm", timing.clock_ppm, 0, 1e5); !sound) return sound;
    if (auto sound = checkWithin("clocks_apart_s", timing.clocksApart_s, 0, 3600); !sound) return sound;
    return checkWithin("sound_m_per_s", timing.soundSpeed_m_per_s, 300, 360);
}

} // namespace

Result<Timing> timedByHand(const HandTiming& timing)
{
    if (auto sound = checkWithin("shown_s", timing.shown_s, 0, longest_s); !sound) return passOn(sound);
    if (auto sound = checkReaction(timing.reaction); !sound) return passOn(sound);
    if (auto sound = checkWithin("display_s", timing.display_s, 0, 3600); !sound) return passOn(sound);
    if (auto sound = checkWithin("clock_ppm", timing.clock_ppm, 0, 1e5); !sound) return passOn(sound);
    double duration_s = timing.shown_s;
    if (timing.ends == HandEnds::stop) duration_s -= timing.reaction.late_s;
    if (timing.ends == HandEnds::start) duration_s += timing.reaction.late_s;
    const double hands_s = timing.reaction.spread_s * std::sqrt(handsOf(timing.ends));
    return timingOf(duration_s,
                    std::hypot(hands_s, stepPart_s(timing.display_s), clockPart_s(timing.shown_s, timing.clock_ppm)));
}

Result<Timing> timedBySignals(const SignalTiming& timing)
{
    if (auto sound = check(timing); !sound) return passOn(sound);
    const double way_s = (timing.stop.distance_m - timing.start.distance_m) / timing.soundSpeed_m_per_s;
    const double steps_s = std::hypot(stepPart_s(timing.start.resolution_s), stepPart_s(timing.stop.resolution_s));
    return timingOf(timing.shown_s - way_s,
                    std::hypot(steps_s, clockPart_s(timing.shown_s, timing.clock_ppm), timing.clocksApart_s));
}

Result<double> handMeanUncertainty_s(int timings, HandEnds ends, const Reaction& reaction)
{
    if (auto sound = checkWithin("timings", timings, 1, 100000); !sound) return passOn(sound);
    if (auto sound = checkReaction(reaction); !sound) return passOn(sound);
    return reaction.spread_s * std::sqrt(handsOf(ends)) / std::sqrt(timings);
}

} // namespace proofwalk::measure
