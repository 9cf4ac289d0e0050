// SPDX-License-Identifier: GPL-3.0-or-later
// Reading a plan: a folder of CSV files, of which only devices.csv is required.
#pragma once

#include "core/plan/plan.h"

#include <filesystem>
#include <string>
#include <vector>

namespace proofwalk::plan {

/// Every bad cell is told, not only the first: a person mends a sheet in one go.
template <class T>
using ResultOrErrors = std::expected<T, std::vector<Error>>;

/// Reads the folder and fills in what is blank and can be derived, listing each assumption. What the rows say of each
/// other (a device in a zone that does not exist) is left to core/review.
/// Errors: plan.no-devices {found}; csv.*; file.*; plan.column-missing {wanted}; plan.cell-empty; plan.cell-word
/// {found, wanted, nearest}; plan.cell-not-a-number {found, example}; plan.cell-range {found, wanted}; plan.cell-code
/// {found}; plan.cell-form {found, wanted}.
ResultOrErrors<Plan> readPlan(const std::filesystem::path& folder);

} // namespace proofwalk::plan
