// SPDX-License-Identifier: GPL-3.0-or-later
// A network written in a line, as a person would say it:
//     cable=12 + tamper:nc + (alarm:nc | zone=4700 1%) + eol=2200 1%
//   a + b          one after the other        a | b   side by side; + binds closer; ( ) as usual
//   NAME=OHM T%    a resistor; without T% it has the tolerance given beside the text
//   NAME:nc :no    a contact that rests closed, open
//   cable          the length of the pair that is given beside the text
//   cableN=MOST    a length of the pair, from 0 to MOST ohm out and back; cableN=LEAST..MOST if it was measured
// A name begins with a letter; letters, digits and hyphens follow. What begins with "cable" is one.
#pragma once

#include "core/measure/network.h"

namespace proofwalk::measure {

/// The cable of a text that names it without a figure, out and back.
struct CableOhm {
    double least_ohm = 0;
    double most_ohm = 0;
};

/// The network that the text describes.
/// Errors: measure.network-text {found, at, wanted}: `at` counts the signs from 1, `found` is the rest of the text from
/// there (also of a cable without a figure when none is given); measure.out-of-range {tolerance_pct}: not from 0 to
/// below 100; those of Network::of.
Result<Network> readNetwork(std::string_view text, double tolerance_pct, std::optional<CableOhm> cable = {});

} // namespace proofwalk::measure
