// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/blocks.h"

#include <algorithm>

namespace proofwalk::report {

namespace {

constexpr double above = 9; ///< from the rule to the top of a block's words
constexpr double below = 4; ///< rows end some way under their last baseline
const Style headStyle{Face::strong, 15, ink};
constexpr double headLeading = 20;

QStringList headLines(const RowBlock& block) { return wrapped(block.head, headStyle, blockText - textLeft - 12); }

} // namespace

double heightOf(const RowBlock& block, std::size_t rows)
{
    double height = 0;
    for (std::size_t i = 0; i < std::min(rows, block.rows.size()); ++i) {
        height += block.rows[i].height;
    }
    const double head = headLeading * static_cast<double>(headLines(block).size()) + 2;
    return above + std::max(height, head) + below;
}

double drawBlock(Drawing& drawing, const RowBlock& block, std::size_t first, std::size_t rows, double top)
{
    drawing.lines(textLeft, top + above + 15, headLines(block), headStyle, headLeading);
    double y = top + above;
    for (std::size_t i = first; i < std::min(first + rows, block.rows.size()); ++i) {
        block.rows[i].draw(drawing, y);
        y += block.rows[i].height;
    }
    const double head = headLeading * static_cast<double>(headLines(block).size()) + 2;
    return std::max(y, top + above + head) + below;
}

Row paragraphRow(const QString& text, const Style& style, double leading, double width)
{
    const QStringList lines = wrapped(text, style, width);
    return {leading * static_cast<double>(lines.size()) + 2, [lines, style, leading](Drawing& drawing, double top) {
                drawing.lines(blockText, top + style.size, lines, style, leading);
            }};
}

void flowBlocks(Book& book, Flow& flow, const std::vector<RowBlock>& blocks)
{
    Drawing& drawing = book.drawing();
    for (const RowBlock& block : blocks) {
        std::size_t first = 0;
        bool fresh = false;
        while (first < block.rows.size()) {
            // As many rows as fit below the last block; a block never begins with less than its first row.
            std::size_t rows = 0;
            const RowBlock rest{
                block.head, {block.rows.begin() + static_cast<std::ptrdiff_t>(first), block.rows.end()}, false};
            while (rows < rest.rows.size() && flow.fits(heightOf(rest, rows + 1))) {
                ++rows;
            }
            if (rows == 0 && !fresh) {
                flow.freshSheet();
                fresh = true;
                continue;
            }
            rows = std::max<std::size_t>(rows, 1); // a row higher than a sheet gets one of its own
            fresh = false;
            const double top = flow.y();
            const double end = drawBlock(drawing, rest, 0, rows, top);
            flow.skip(end - top);
            if (flow.y() < flowBottom - 2) {
                drawing.rule(flow.y(), frameLeft, frameRight);
            }
            first += rows;
        }
    }
}

} // namespace proofwalk::report
