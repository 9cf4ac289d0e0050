// SPDX-License-Identifier: GPL-3.0-or-later
// `when`: a table of column = allowed words, all of which must hold.
#pragma once

#include "core/catalogue/keys.h"
#include "core/catalogue/sheet.h"

#include <map>
#include <string>
#include <vector>

namespace proofwalk::catalogue {

/// Empty: always holds.
struct Condition {
    std::map<std::string, std::vector<std::string>> columns;
};

/// Reads the `when` of a table; empty if it has none.
Condition readCondition(const Keys& keys);

/// Whether every column has one of its words. A column the plan leaves blank has none. For `signals`: whether the
/// device has any of them.
bool holds(const Condition& condition, const Traits& traits);

/// Whether no device can fulfil both: one column, which has one value, with no word in common.
bool exclude(const Condition& one, const Condition& other);

} // namespace proofwalk::catalogue
