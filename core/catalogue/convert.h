// SPDX-License-Identifier: GPL-3.0-or-later
// A figure in another unit of its quantity, exactly or not at all.
#pragma once

#include "core/base/unit.h"

#include <optional>

namespace proofwalk::catalogue {

/// 1 min is 60 s; 1 s has no exact decimal number of minutes and gives nothing, as do units of two quantities.
std::optional<base::Decimal> converted(const base::Decimal& value, const base::Unit& from, const base::Unit& to);

} // namespace proofwalk::catalogue
