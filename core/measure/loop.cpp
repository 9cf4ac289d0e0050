// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/measure/loop.h"

#include "core/measure/inputs.h"

#include <algorithm>
#include <array>
#include <limits>
#include <string>

namespace proofwalk::measure {
namespace {

constexpr double infinity = std::numeric_limits<double>::infinity();
constexpr std::array everyState{LoopState::closed, LoopState::alarm, LoopState::open, LoopState::shorted};

/// Least and greatest resistance of a network; an open circuit is infinite at both ends.
struct Span {
    double least;
    double most;
};

constexpr Span openCircuit{infinity, infinity};

Span inSeries(Span a, Span b) { return {a.least + b.least, a.most + b.most}; }

double parallelOf(double a, double b) { return a * b / (a + b); }

/// Each end grows with each part, so the ends of the whole are made of the ends of the parts.
Span inParallel(Span a, Span b) { return {parallelOf(a.least, b.least), parallelOf(a.most, b.most)}; }

constexpr double greatest_ohm = 1e9; // our choice: beyond it lies insulation, not a part

Result<void> checkResistor(const char* input, double found)
{
    if (auto sound = checkAbove(input, found, 0); !sound) return sound;
    return checkWithin(input, found, 0, greatest_ohm);
}

Result<void> check(const LoopWiring& w)
{
    const auto unknown = [&](const char* found) {
        return failure("measure.loop-wiring", "",
                       {{"resistors", std::int64_t{w.resistors}}, {"found", std::string(found)}});
    };
    if (auto sound = checkWithin("resistors", w.resistors, 0, 2); !sound) return sound;
    if (w.fireStyle && w.resistors != 2) return unknown("fire style");
    if (w.fireStyle && w.restClosed) return unknown("fire style, resting closed");
    if (w.resistors == 2 && !w.fireStyle && !w.restClosed) return unknown("resting open");
    if (w.resistors >= 1) {
        if (auto sound = checkResistor("eol_ohm", w.eol_ohm); !sound) return sound;
    }
    if (w.resistors == 2) {
        if (auto sound = checkResistor("alarm_ohm", w.alarm_ohm); !sound) return sound;
    }
    if (!(w.tolerance_pct >= 0 && w.tolerance_pct < 100))
        return outOfRange("tolerance_pct", w.tolerance_pct, "0 to below 100");
    if (auto sound = checkNotNegative("cable_ohm_max", w.cable_ohm_max); !sound) return sound;
    return checkWithin("cable_ohm_max", w.cable_ohm_max, 0, greatest_ohm);
}

Span resistor(const LoopWiring& w, double nominal_ohm)
{
    return {nominal_ohm * (1 - w.tolerance_pct / 100), nominal_ohm * (1 + w.tolerance_pct / 100)};
}

Span spanOf(const LoopWiring& w, LoopState state)
{
    const Span cable{0, w.cable_ohm_max};
    if (state == LoopState::open) return openCircuit;
    if (state == LoopState::shorted) return cable;
    const bool alarm = state == LoopState::alarm;
    if (w.resistors == 0) return w.restClosed != alarm ? cable : openCircuit;
    const Span eol = resistor(w, w.eol_ohm);
    if (!alarm) return inSeries(eol, cable);
    if (w.resistors == 1) return w.restClosed ? openCircuit : cable;
    const Span other = resistor(w, w.alarm_ohm);
    return inSeries(w.fireStyle ? inParallel(eol, other) : inSeries(eol, other), cable);
}

/// The highest reading any state with a resistance gives.
double highestReading(const LoopWiring& w)
{
    double highest = 0;
    for (const LoopState state : everyState)
        if (const double most = spanOf(w, state).most; most < infinity) highest = std::max(highest, most);
    return highest;
}

bool toldApart(Span a, Span b, double expanded_ohm)
{
    if (a.least > b.least) std::swap(a, b);
    if (b.least == infinity) return a.most < infinity;
    return a.most + expanded_ohm < b.least - expanded_ohm;
}

} // namespace

Result<Window> loopWindow(const LoopWiring& wiring, LoopState state)
{
    if (auto sound = check(wiring); !sound) return passOn(sound);
    const Span span = spanOf(wiring, state);
    if (span.least == infinity) return Window{highestReading(wiring), std::nullopt};
    return Window{span.least, span.most};
}

Result<std::vector<std::pair<LoopState, LoopState>>> statesNotToldApart(const LoopWiring& wiring,
                                                                        double expandedUncertainty_ohm)
{
    if (auto sound = check(wiring); !sound) return passOn(sound);
    if (auto sound = checkNotNegative("expanded uncertainty", expandedUncertainty_ohm); !sound) return passOn(sound);
    std::vector<std::pair<LoopState, LoopState>> pairs;
    for (auto a = everyState.begin(); a != everyState.end(); ++a)
        for (auto b = a + 1; b != everyState.end(); ++b)
            if (!toldApart(spanOf(wiring, *a), spanOf(wiring, *b), expandedUncertainty_ohm)) pairs.emplace_back(*a, *b);
    return pairs;
}

} // namespace proofwalk::measure
