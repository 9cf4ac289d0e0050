// SPDX-License-Identifier: GPL-3.0-or-later
// The derived cells of a plan as a list a person can go through.
#pragma once

#include "core/plan/plan.h"

#include <string_view>

namespace proofwalk::plan {

/// Whether that cell of the row was left blank and derived.
bool isAssumed(const Row& row, std::string_view column);

/// The assumptions the rows name, made anew: "plan.assumed-COLUMN" {value}. A column that is derived to the same value
/// in every row of its file is one assumption, not one a row.
std::vector<Assumption> assumptionsOf(const Plan& plan);

} // namespace proofwalk::plan
