// SPDX-License-Identifier: GPL-3.0-or-later
// The preferred values resistors are made in.
//   [1] IEC 60063:2015, Tables 1 and 2; the lists from memory.
#pragma once

#include "core/base/decimal.h"
#include "core/base/result.h"

#include <span>

namespace proofwalk::measure {

/// 12 values a decade (10 % parts), 24 (5 %), 96 (1 %). E12 lies inside E24; E24 does not lie inside E96.
enum class Series { E12, E24, E96 };

/// The values of a decade, three digits each, rising from 100.
std::span<const int> digitsOf(Series series);

/// Whether the resistance is a value of the series in any decade, exactly; nothing at or below zero is.
bool isPreferredValue(const base::Decimal& ohm, Series series);

/// The value of the series with the smallest difference in ohms; of two equally near the lower.
/// Errors: measure.resistance-not-positive {found}; base.decimal-range (beside the ends of what a Decimal holds).
Result<base::Decimal> nearestPreferredValue(const base::Decimal& ohm, Series series);

} // namespace proofwalk::measure
