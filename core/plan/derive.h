// SPDX-License-Identifier: GPL-3.0-or-later
// What a plan leaves blank and common practice fills in. Nothing is filled in silently: each derived cell is named in
// its row, and listed with the place where it can be contradicted.
#pragma once

#include "core/plan/plan.h"

namespace proofwalk::plan {

/// Fills in what can be derived and lists the assumptions. What is not clear stays blank.
void derive(Plan& plan);

} // namespace proofwalk::plan
