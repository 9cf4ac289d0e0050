// SPDX-License-Identifier: GPL-3.0-or-later
// From a plan's folder to a job: the plan read and reviewed, and the ground it will be judged by, out of the program's
// own data.
#pragma once

#include "core/review/review.h"
#include "core/walk/job.h"

#include <expected>
#include <filesystem>
#include <vector>

namespace proofwalk::walk {

struct ReviewedPlan {
    plan::Plan plan;
    std::vector<review::Remark> remarks; ///< errors first
    int errors = 0, warnings = 0;
};

/// Reads the folder and reviews it with that catalogue. Errors: every cell of the plan that cannot be read, so that a
/// sheet is mended in one go; or the one reason why nothing could be reviewed (catalogue.*, review.*, file.*).
std::expected<ReviewedPlan, std::vector<Error>> readAndReview(const std::filesystem::path& folder,
                                                              const catalogue::Files& catalogue);

/// The plan with that catalogue and with the program's own tables and sentences.
/// Errors: file.unreadable {detail}; those of base::readFile.
Result<StartGround> groundFor(plan::Plan plan, catalogue::Files catalogue);

} // namespace proofwalk::walk
