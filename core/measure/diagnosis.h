// SPDX-License-Identifier: GPL-3.0-or-later
// From one or several measured resistances of a loop to what it is: the state it is in, or the mistake in it. Measured
// at the panel with the loop disconnected. Advice to whoever looks for the cause; never a verdict.
#pragma once

#include "core/measure/loop.h"
#include "core/measure/mistake.h"

#include <optional>
#include <span>

namespace proofwalk::measure {

/// One reading and how the loop was held for it.
struct LoopReading {
    Handling handling;
    double ohm = 0;          ///< infinite: the meter showed over-range
    double expanded_ohm = 0; ///< U (k = 2) of the reading, ohms
};

struct LoopQuestion {
    std::vector<LoopReading> readings;
    double range_ohm = 1e7;               ///< the highest a reading can be; over it the meter shows over-range
    std::optional<double> toEarth_ohm;    ///< from the loop to earth, if it was measured (infinite: over-range)
    double leastToEarth_ohm = 1e6;        ///< wanted there; common practice: a megohm (local rules come first)
};

/// One explanation of all readings.
struct Finding {
    Suspicion suspicion;
    std::optional<Window> size;        ///< of a mistake that has one: what the readings leave possible
    std::optional<double> preferred_ohm; ///< the value of E24 nearest to the middle of `size`, for a wrong resistor, if
        ///< one lies within it
    double share = 0; ///< of the findings' likelihoods together
};

/// Everything that explains all readings, the likeliest first. More than one: they cannot be told apart by these
/// readings, and `share` only says which to look for first. Empty: two mistakes at once, or a part that is not in the
/// network.
///
/// A mistake explains a reading R +- U if its worst-case window reaches into [R - U, R + U]; one of unknown size if a
/// size does so for all readings at once. The size is solved exactly: the resistance of a network is a fractional
/// linear function of one part's. Sizes are looked for only where no mistake without one makes the readings as planned;
/// what a tolerance can hide stays hidden. likelihood = weightOf(mistake) x for each reading the part of its window
/// that the reading leaves; for a size its share of the decades of usual sizes, and for a resistor its share of the E24
/// values from 100 ohm to 1 Mohm (a value that is in no series is ten times less likely). These weights are our choice,
/// without a source.
/// What has less than a thousandth of all likelihood is left out.
/// Two mistakes at once are not looked for, except two contacts that both acted.
/// Errors: measure.readings {found} (none, or more than 16); measure.far-end {found} (shorted or opened beyond a cable
/// that nothing follows); measure.out-of-range {input, found, wanted}: ohm below 0 or no number, or above range_ohm;
/// expanded_ohm below 0; range_ohm, toEarth_ohm, leastToEarth_ohm not above 0 (toEarth_ohm may be 0).
Result<std::vector<Finding>> diagnose(const Network& network, const LoopQuestion& question);

/// The readings that this explanation would give when the loop is handled so; open at the lower end: over-range.
Window expectedReading(const Network& network, const Finding& finding, const Handling& handling);

/// How to hold the loop so that the two explanations read differently by more than twice the uncertainty `relative` x
/// reading + 1 ohm: the first of at rest, each contact acted alone, shorted and opened at the far end. Nothing: no
/// reading across the pair will tell.
std::optional<Handling> handlingThatTells(const Network& network, const Finding& a, const Finding& b,
                                          double relativeUncertainty);

} // namespace proofwalk::measure
