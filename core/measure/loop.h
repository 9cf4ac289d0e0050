// SPDX-License-Identifier: GPL-3.0-or-later
// A supervised loop: which resistance each of its states may show, seen from the panel's terminals with the loop
// disconnected from the panel. Ohm's law on the wirings an installer meets; the arrangement is common practice.
#pragma once

#include "core/base/result.h"

#include <optional>
#include <utility>
#include <vector>

namespace proofwalk::measure {

/// What the loop is doing.
enum class LoopState {
    closed,  ///< normal: at rest
    alarm,   ///< one alarm contact has acted
    open,    ///< cut, or a tamper contact in series
    shorted, ///< the pair is bridged somewhere
};

/// How a loop is wired. These and no others are known:
///   resistors 0                  the bare pair, a contact in series (restClosed) or across it
///   resistors 1, restClosed      eol at the end, a normally closed contact in series
///   resistors 1, not restClosed  eol at the end, a normally open contact across it
///   resistors 2, restClosed      eol at the end in series, alarm_ohm across the normally closed alarm contact
///   resistors 2, fireStyle       eol at the end, a normally open contact with alarm_ohm in series across the pair
struct LoopWiring {
    int resistors = 0;        ///< 0 to 2
    bool fireStyle = false;   ///< with two resistors, not restClosed
    bool restClosed = true;   ///< the alarm contact's rest
    double eol_ohm = 0;       ///< above 0 where there is one resistor or more
    double alarm_ohm = 0;     ///< above 0 where there are two
    double tolerance_pct = 0; ///< of each resistor, 0 to below 100
    double cable_ohm_max = 0; ///< out and back and contacts, the most it may be
};

/// The readings a state may give. A side is missing where nothing bounds it.
/// A reading outside is not that state; a reading inside proves it only where no other state's window reaches.
struct Window {
    std::optional<double> lower_ohm;
    std::optional<double> upper_ohm;
};

/// The worst-case window of the state: every resistor anywhere in its tolerance, cable from 0 to its most. Worst
/// case and not root sum of squares, since two resistors off one reel err together.
/// An open circuit has no resistance: its window has only a lower end, which is the highest reading a whole loop can
/// give. Between that and the meter's over-range stand bad joints and wet cable, not a clean cut.
/// Left out: leakage across the pair (it lowers every reading), two contacts in alarm at once, the resistors'
/// temperature.
/// Errors: measure.out-of-range {input, found, wanted} (besides what stands above, resistances over 10^9 ohm);
/// measure.loop-wiring {resistors, found}.
Result<Window> loopWindow(const LoopWiring& wiring, LoopState state);

/// The pairs of states that no meter of that expanded uncertainty can tell apart: upper(A) + U >= lower(B) - U.
/// On a closed loop without resistors a short reads as normal and a cut as alarm: such pairs are listed here.
/// Errors: those of loopWindow.
Result<std::vector<std::pair<LoopState, LoopState>>> statesNotToldApart(const LoopWiring& wiring,
                                                                        double expandedUncertainty_ohm);

} // namespace proofwalk::measure
