// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/table.h"

#include <algorithm>
#include <numeric>

namespace proofwalk::report {

namespace {

constexpr double gap = 16;
const Style cellStyle{Face::text, 13, ink};
const Style figureStyle{Face::figure, 13, ink};
const Style headStyle{Face::strong, 13, ink};

std::size_t columnsOf(const Table& table)
{
    std::size_t columns = table.heads.size();
    for (const auto& row : table.rows) {
        columns = std::max(columns, row.size());
    }
    return columns;
}

bool isFigure(const Table& table, std::size_t column) { return column < table.figures.size() && table.figures[column]; }

/// Each column its natural width; where that is too much, narrow ones keep it and wide ones share the rest.
std::vector<double> widthsOf(const Table& table, double width)
{
    const std::size_t columns = columnsOf(table);
    std::vector<double> natural(columns, 30);
    for (std::size_t c = 0; c < columns; ++c) {
        if (c < table.heads.size()) {
            natural[c] = std::max(natural[c], widthOf(words(table.heads[c]), headStyle));
        }
        for (const auto& row : table.rows) {
            if (c < row.size()) {
                natural[c] = std::max(natural[c], widthOf(words(row[c]), isFigure(table, c) ? figureStyle : cellStyle));
            }
        }
    }
    const double room = width - gap * static_cast<double>(std::max<std::size_t>(columns, 1) - 1);
    double bound = room;
    for (int step = 0; step < 40; ++step) {
        double sum = 0;
        for (const double each : natural) {
            sum += std::min(each, bound);
        }
        if (sum <= room) {
            break;
        }
        bound *= 0.92;
    }
    for (double& each : natural) {
        each = std::min(each, bound);
    }
    const double sum = std::accumulate(natural.begin(), natural.end(), 0.0);
    if (!natural.empty() && sum < room) {
        // What is left over goes between the columns, but not so far that the eye loses the row.
        const double more = std::min((room - sum) / static_cast<double>(natural.size()), 60.0);
        for (std::size_t c = 0; c + 1 < natural.size(); ++c) {
            natural[c] += more;
        }
    }
    return natural;
}

struct Cells {
    std::vector<QStringList> lines;
    std::vector<double> left;
    std::vector<double> right;
    std::vector<bool> figure;
    bool head = false;
    double height = 0;
};

Row rowOf(const Cells& cells)
{
    return {cells.height, [cells](Drawing& drawing, double top) {
                for (std::size_t c = 0; c < cells.lines.size(); ++c) {
                    const Style& style = cells.head ? headStyle : cells.figure[c] ? figureStyle : cellStyle;
                    double y = top + 17;
                    for (const QString& line : cells.lines[c]) {
                        cells.figure[c] ? drawing.textRight(cells.right[c], y, line, style)
                                        : drawing.text(cells.left[c], y, line, style);
                        y += 17;
                    }
                }
                drawing.rule(top + cells.height - 1, cells.left.front(), textRight, cells.head ? ink : hair);
            }};
}

} // namespace

std::vector<Row> tableRows(const Table& table, double width)
{
    std::vector<Row> rows;
    const std::vector<double> widths = widthsOf(table, width);
    if (widths.empty()) {
        return rows;
    }
    const auto make = [&](const std::vector<std::string>& texts, bool head) {
        Cells cells;
        cells.head = head;
        double x = blockText;
        std::size_t most = 1;
        for (std::size_t c = 0; c < widths.size(); ++c) {
            const Style& style = head ? headStyle : isFigure(table, c) ? figureStyle : cellStyle;
            const QString text = c < texts.size() ? words(texts[c]) : QString();
            cells.lines.push_back(wrapped(text, style, widths[c] + 0.5));
            most = std::max(most, static_cast<std::size_t>(cells.lines.back().size()));
            cells.left.push_back(x);
            cells.right.push_back(x + widths[c]);
            cells.figure.push_back(isFigure(table, c));
            x += widths[c] + gap;
        }
        cells.height = 9 + 17.0 * static_cast<double>(most);
        rows.push_back(rowOf(cells));
    };
    if (!table.heads.empty()) {
        make(table.heads, true);
    }
    for (const auto& row : table.rows) {
        make(row, false);
    }
    return rows;
}

} // namespace proofwalk::report
