// SPDX-License-Identifier: GPL-3.0-or-later
// A plan as the canonical rows that are embedded in a job: every cell as text, every private cell as a commitment.
#pragma once

#include "core/base/json.h"
#include "core/plan/plan.h"

#include <functional>
#include <optional>
#include <string>

namespace proofwalk::plan {

/// Gives the commitment (64 hex digits) under which a private value is kept.
using Commit = std::function<std::string(const std::string& value)>;
/// Gives the value behind a commitment; nothing if it was left out or erased.
using Reveal = std::function<std::optional<std::string>(const std::string& commitment)>;

/// Gives each row without one a fresh id.
void giveIds(Plan& plan);

/// {"format":"proofwalk/plan/1","site":[…],"areas":[…],…}: each row an object of its non-empty cells as text under the
/// column names of the CSV files, with "id", "assumed" (array, if any), lists joined by ";" as in the CSV, truth as
/// "yes" or "no"; a private cell is {"private":"COMMITMENT"}.
base::Json toRows(const Plan& plan, const Commit& commit);

/// The reverse. A private value that cannot be revealed is empty. Errors: plan.rows {detail}; those of readPlan.
Result<Plan> fromRows(const base::Json& rows, const Reveal& reveal);

} // namespace proofwalk::plan
