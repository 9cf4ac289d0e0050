// SPDX-License-Identifier: GPL-3.0-or-later
// Which loops stand near their limit: the one chart that sheet and screen both show.
#pragma once

#include "core/report/contents.h"
#include "core/walk/state.h"
#include "core/words/words.h"

namespace proofwalk::report {

/// Every loop that was read, in the order of the plan's zones; no points if none was.
RangeChart loopChart(const walk::State& state, const words::Book& book);

} // namespace proofwalk::report
