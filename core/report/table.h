// SPDX-License-Identifier: GPL-3.0-or-later
// A table of words: columns take what their words need, cells wrap, rows become rows of a block.
#pragma once

#include "core/report/blocks.h"

namespace proofwalk::report {

/// The table as rows that stand at `blockText`, `width` wide; its heads come first.
std::vector<Row> tableRows(const Table& table, double width = textRight - blockText);

} // namespace proofwalk::report
