// SPDX-License-Identifier: GPL-3.0-or-later
// A figure and where it comes from, as written in a step or in a rule set.
#pragma once

#include "core/catalogue/keys.h"
#include "core/catalogue/sheet.h"

#include <string>

namespace proofwalk::catalogue {

/// Reads the table `source`, which must be there. Errors: catalogue.source {found, wanted}: a basis "read" without the
/// standard, a clause without its basis, a basis without a clause.
Source readSource(const Keys& keys);

/// Reads lower, upper, binding, confirmed and source into a limit on that quantity in that unit.
/// Errors: base.decimal-*; catalogue.limit-empty; catalogue.limit-crossed {found, wanted};
/// catalogue.confirmed-unread {found}: only what was read can be confirmed.
Limit readLimit(const Keys& keys, std::string quantity, std::string unit);

/// A UCUM code of base/unit.h: base.unit-unknown {found, nearest}.
std::string readUnit(const Keys& keys);

} // namespace proofwalk::catalogue
