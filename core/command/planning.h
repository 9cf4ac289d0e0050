// SPDX-License-Identifier: GPL-3.0-or-later
// What check and start both do: read a plan and say what is wrong with it.
#pragma once

#include "core/command/face.h"
#include "core/command/options.h"
#include "core/walk/starting.h"

#include <expected>

namespace proofwalk::command {

using walk::ReviewedPlan;

/// Reads the folder (--plan, or the command's first word) and reviews it with the catalogue. What cannot be read is
/// told, every cell of it, and ends the run.
std::expected<ReviewedPlan, Exit> readAndReview(Face& face, const Options& options);

/// "zones.csv:4, column purpose: …" for each remark, errors first.
void sayRemarks(Face& face, const ReviewedPlan& reviewed);

base::Json remarkJson(const Face& face, const review::Remark& remark);

} // namespace proofwalk::command
