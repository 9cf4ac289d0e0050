// SPDX-License-Identifier: GPL-3.0-or-later
// The coloured rings of a resistor.
//   [1] IEC 60062:2016, Table 1; from memory. Older editions give no tolerance for orange and yellow and ±0.05 % for
// grey.
#pragma once

#include "core/base/decimal.h"
#include "core/base/result.h"

#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace proofwalk::measure {

/// What the rings say.
struct Coded {
    base::Decimal ohm;
    base::Decimal tolerance_pct;
};

/// Reads rings by their English names ("brown"; "gray" is grey), from the end they are crowded at: two digits, a power
/// of ten and a tolerance (four rings); three digits, a power and a tolerance (five); three rings have ±20 %.
/// Errors: measure.rings {found} (how many); measure.ring {found, wanted} (a colour that may not stand there).
Result<Coded> readRings(std::span<const std::string> rings);

/// The rings of a resistor of that value and tolerance: four for two digits, five for three.
/// Errors: measure.resistance-not-positive {found}; measure.rings-none {found} (more than three digits, or a power of
/// ten that has no colour); measure.ring-tolerance {found, wanted}.
Result<std::vector<std::string>> ringsOf(const base::Decimal& ohm, const base::Decimal& tolerance_pct);

/// What a resistor of that value may have been taken for, or be taken for: with one ring of brown, red and orange read
/// as another of the three, or read from its other end (common practice). Rising, without the value itself; of four
/// rings and of five. Errors: those of ringsOf.
Result<std::vector<base::Decimal>> misreadingsOf(const base::Decimal& ohm, const base::Decimal& tolerance_pct);

} // namespace proofwalk::measure
