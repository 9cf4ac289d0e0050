// SPDX-License-Identifier: GPL-3.0-or-later
// Blocks of a sheet: a head at the left, rows at the right, a rule between two blocks. They are measured before they
// are drawn, so that a sheet can decide how many rows it has room for.
#pragma once

#include "core/report/book.h"

#include <functional>
#include <vector>

namespace proofwalk::report {

inline constexpr double blockText = 206; ///< where the rows of a block begin

/// A row: how high it is, and how it is drawn from its top.
struct Row {
    double height = 0;
    std::function<void(Drawing&, double top)> draw;
};

/// A block with its rows. Of one that may be cut short the rest of the rows follows on a later sheet.
struct RowBlock {
    QString head;
    std::vector<Row> rows;
    bool mayBeCut = false;
};

/// The height of a block with its first `rows` rows.
double heightOf(const RowBlock& block, std::size_t rows);

/// Draws the first `rows` rows with the head; returns the y of the block's end, where a rule may stand.
double drawBlock(Drawing& drawing, const RowBlock& block, std::size_t first, std::size_t rows, double top);

/// A paragraph as a row of the block's width.
Row paragraphRow(const QString& text, const Style& style, double leading, double width = textRight - blockText);

/// Blocks on as many sheets as they need, a block cut between two rows where it must be.
void flowBlocks(Book& book, Flow& flow, const std::vector<RowBlock>& blocks);

} // namespace proofwalk::report
