// SPDX-License-Identifier: GPL-3.0-or-later
// Figures as they are shown. Never judged by: core keeps the exact ones.
#pragma once

#include "core/base/unit.h"
#include "core/walk/bodies.h"

#include <QString>

#include <limits>
#include <optional>

namespace proofwalk::models {

inline constexpr double absent = std::numeric_limits<double>::quiet_NaN();

/// A value in the base unit of its quantity, in `unit`; NaN if there is none.
double inUnit(const std::optional<base::Decimal>& inBase, const base::Unit& unit);
/// At most four digits, without zeros at the end.
QString shortFigure(double value);
/// "3.40 kΩ" as typed, with the unit as people write it.
QString written(const base::Quantity& quantity);
/// "± 0.05", in the reading's unit; empty if none is stated.
QString uncertaintyText(const std::optional<base::Decimal>& uncertainty);
/// "3.0 to 3.7", "at least 10", "at most 40"; empty without limits.
QString rangeText(double lower, double upper);

} // namespace proofwalk::models
