// SPDX-License-Identifier: GPL-3.0-or-later
// What can be wrong with a loop, and what each mistake does to its network. The list is common practice.
#pragma once

#include "core/measure/network.h"

namespace proofwalk::measure {

enum class Mistake {
    none,                ///< as planned, and the contacts as told
    contactStaysOpen,    ///< or there is nothing to close it: the magnet away, the wire off
    contactStaysClosed,  ///< or a bridge was left across it
    contactReversed,     ///< closed where it should be open and open where it should be closed
    contactsBothActed,   ///< two contacts have acted where they were told to be at rest
    contactResistance,   ///< a contact that closes with a resistance
    resistorBridged,     ///< left out, the wires joined
    resistorMissing,     ///< left out, the wires apart; or broken
    resistorDoubled,     ///< two of them one after the other
    resistorHalved,      ///< two of them side by side
    resistorWrong,       ///< of another value
    resistorsSwapped,    ///< two resistors in each other's place
    resistorAtPanel,     ///< in its circuit, but at the panel's end of the cable, where it supervises nothing
    resistorAcrossPanel, ///< one that belongs in series put across the pair at the panel's terminals
    secondAtPanel,       ///< in its place, and a second one left across the panel's terminals
    joint,               ///< a resistance in the cable: a bad joint, a terminal, more cable than planned
    leakage,             ///< a resistance across the pair: moisture, damaged insulation
    cut,                 ///< the pair is interrupted
    shorted,             ///< the pair is bridged somewhere
    earthFault,          ///< one conductor leaks to earth: invisible across the pair
};

/// A mistake at its place. `size` is used by the mistakes that have one: contactResistance, resistorWrong, joint,
/// leakage.
struct Suspicion {
    Mistake what = Mistake::none;
    std::size_t part = 64; ///< the contact or resistor; 64: none
    std::size_t other = 64; ///< the second one
    Span size = noResistance;
};

/// What is done at the far end of the cable while the meter stands at the panel.
enum class FarEnd { untouched, shorted, opened };

/// How the loop is held while it is measured.
struct Handling {
    Parts acted = 0; ///< the contacts that were made to act; the others rest
    FarEnd end = FarEnd::untouched;

    friend bool operator==(const Handling&, const Handling&) = default;
};

/// What the network is with that mistake when it is handled so; a short along the cable is left to the caller, who
/// knows that it reads from nothing to the cable's most.
Circumstances withMistake(const Network& network, const Suspicion& suspicion, const Handling& handling);

/// Every mistake that the parts of this network allow, without its size.
std::vector<Suspicion> mistakesOf(const Network& network);

/// Whether the mistake has a size that is not known beforehand.
bool hasSize(Mistake what);

/// How likely the mistake is before anything was measured, in comparison with the others. Our choice, without a source:
/// a sound loop far before any mistake, the slips of wiring before defects. It orders what fits equally well; it makes
/// nothing fit.
double weightOf(Mistake what);

} // namespace proofwalk::measure
