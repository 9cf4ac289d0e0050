// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/section.h"

#include "core/report/book.h"
#include "core/report/marks.h"

#include <algorithm>
#include <ranges>

namespace proofwalk::report {

namespace {

constexpr double nameCell = 92;    ///< the cell at the left that names its floor

/// How much of its words a cell shows: its name alone; the tags of what is not pass; and the verdict's word with them.
enum class Fullness { name, tags, all };

double needOf(const Cell& cell, Fullness fullness)
{
    const double name = widthOf(cell.name, {Face::strong, 13}) + 18;
    double tags = 0;
    for (const Marked& mark : cell.notable) {
        tags += widthOf(words(mark.tag), {Face::figure, 13}) + 26;
    }
    const double word = fullness == Fullness::all ? widthOf(cell.word, {Face::text, 13}) : 0;
    return fullness == Fullness::name ? name : std::max(name, word + 20 + tags);
}

/// Widths of cells: equal where all words fit so, else what they need and an equal share of the rest; where that is
/// too much, in proportion to their names.
std::vector<double> widthsOf(const std::vector<Cell>& cells, double width, bool withWords)
{
    const auto count = static_cast<double>(cells.size());
    std::vector<double> widths(cells.size(), width / count);
    if (!withWords) {
        return widths;
    }
    for (const Fullness fullness : {Fullness::all, Fullness::tags, Fullness::name}) {
        double sum = 0;
        double most = 0;
        for (const Cell& cell : cells) {
            sum += needOf(cell, fullness);
            most = std::max(most, needOf(cell, fullness));
        }
        if (most <= width / count) {
            return widths;
        }
        for (std::size_t i = 0; i < cells.size(); ++i) {
            const double need = needOf(cells[i], fullness);
            widths[i] = sum <= width ? need + (width - sum) / count : std::max(need, 40.0);
        }
        if (sum <= width) {
            return widths;
        }
    }
    double sum = 0;
    for (const double each : widths) {
        sum += each;
    }
    for (double& each : widths) {
        each *= width / sum;
    }
    return widths;
}

/// Marks with their tags from the right inwards, as many as fit; where not one tag fits, the marks alone.
double drawNotable(Drawing& drawing, const std::vector<Marked>& notable, double left, double right, double y)
{
    const Style style{Face::figure, 13, drawing.inks().ink};
    double tagged = 0;
    for (const Marked& mark : notable) {
        tagged += widthOf(words(mark.tag), style) + 26;
    }
    const bool tags = tagged <= right - left;
    double x = right;
    for (const Marked& mark : std::views::reverse(notable)) {
        const QString tag = tags ? words(mark.tag) : QString();
        const double need = widthOf(tag, style) + (tags ? 26 : 20);
        if (x - need < left) {
            break;
        }
        drawing.textRight(x, y + 4.5, tag, style);
        drawVerdict(drawing, QPointF(x - widthOf(tag, style) - (tags ? 14 : 9), y), 7.5, mark.verdict);
        x -= need;
    }
    return x;
}

void drawCellWords(Drawing& drawing, const QRectF& box, const Cell& cell)
{
    const Style name{Face::strong, 13, drawing.inks().ink};
    const Style word{Face::text, 13, drawing.inks().ink};
    const double left = box.left() + 8;
    const double right = box.right() - 7;
    const bool twoLines = box.height() >= 38;
    const double first = twoLines ? box.top() + 18 : box.center().y() + 4.5;
    if (box.height() < 18) {
        return;
    }
    if (cell.markOnly) {
        drawVerdict(drawing, QPointF(left + 12, box.center().y()), 7.5, cell.verdict);
        const double after = left + 28;
        const double end =
            drawNotable(drawing, cell.notable, after + widthOf(cell.word, word) + 4, right, box.center().y());
        drawing.text(after, box.center().y() + 4.5, elided(cell.word, word, end - after), word);
        return;
    }
    if (!twoLines) {
        const double end = drawNotable(drawing, cell.notable, left, right, box.center().y());
        drawing.text(left, first, elided(cell.name, name, end - left - 2), name);
        return;
    }
    drawing.text(left, first, elided(cell.name, name, right - left), name);
    const double second = first + 18;
    const double end = drawNotable(drawing, cell.notable, left, right, second - 4.5);
    if (widthOf(cell.word, word) <= end - left) {
        drawing.text(left, second, cell.word, word);
    }
}

void drawRoof(Drawing& drawing, const Geometry& g, double wall, double overhang)
{
    const double middle = g.body.center().x();
    const double ridge = g.body.top() - 0.68 * g.roof;
    QPainterPath roof(QPointF(g.body.left() - overhang, g.body.top()));
    roof.lineTo(middle - 0.08 * g.body.width(), ridge);
    roof.lineTo(middle + 0.08 * g.body.width(), ridge);
    roof.lineTo(g.body.right() + overhang, g.body.top());
    roof.closeSubpath();
    drawing.fill(roof, drawing.inks().roof);
    drawing.stroke(roof, drawing.inks().ink, 0.85 * wall);
    const double lantern = 0.062 * g.body.width();
    const QRectF box(middle - lantern, ridge - 0.32 * g.roof, 2 * lantern, 0.32 * g.roof);
    drawing.fill(box, drawing.inks().paper);
    drawing.frame(box, drawing.inks().ink, 0.75 * wall);
}

/// The earth line, and the ground beside the house.
void drawEarth(Drawing& drawing, const Geometry& g, const QRectF& box, double wall, bool indoors)
{
    drawing.line(box.left(), g.earth, box.right(), g.earth, drawing.inks().ink, 1.35 * wall);
    if (!indoors || wall < 2) {
        return;
    }
    const double depth = std::min(22.0, box.bottom() - g.earth);
    for (double x = g.body.right() + 18; x < box.right() - 4 && depth > 10; x += 25) {
        drawing.line(x, g.earth + 2, x - 17, g.earth + depth, drawing.inks().ink, 1);
    }
}

using DrawCell = std::function<void(const QRectF&, const Cell&)>;

void drawStoreys(Drawing& drawing, const House& house, const Geometry& g, double wall, bool withWords,
                 const DrawCell& cellBody)
{
    const Style strong{Face::strong, 13, drawing.inks().ink};
    const Style plain{Face::text, 13, drawing.inks().ink};
    double y = g.body.top();
    for (const Storey& storey : house.storeys) {
        double x = g.body.left();
        if (withWords) {
            const QRectF named(x, y, nameCell, g.storey);
            drawing.fill(named, drawing.inks().paper);
            const bool twoLines = g.storey >= 38;
            drawing.text(x + 8, twoLines ? y + 18 : named.center().y() + 4.5,
                         elided(storey.name, strong, nameCell - 14), strong);
            if (twoLines) {
                drawing.text(x + 8, y + 36, elided(storey.count, plain, nameCell - 14), plain);
            }
            drawing.frame(named, drawing.inks().ink, wall);
            x += nameCell;
        }
        const std::vector<double> widths = widthsOf(storey.cells, g.body.right() - x, withWords);
        for (std::size_t i = 0; i < storey.cells.size(); ++i) {
            const QRectF box(x, y, widths[i], g.storey);
            cellBody(box, storey.cells[i]);
            drawing.frame(box, drawing.inks().ink, wall);
            x += widths[i];
        }
        if (storey.cells.empty()) {
            drawing.frame(QRectF(QPointF(x, y), QPointF(g.body.right(), y + g.storey)), drawing.inks().ink, wall);
        }
        y += g.storey;
    }
    drawing.frame(g.body, drawing.inks().ink, 1.1 * wall);
}

/// The huts of one place outside: a cell each where the names fit, else one with the worst verdict.
std::vector<Cell> hutCells(const Storey& hut, double width, bool withWords)
{
    double need = 0;
    for (const Cell& cell : hut.cells) {
        need += needOf(cell, Fullness::name);
    }
    if (!withWords || (need <= width && hut.cells.size() > 1)) {
        return hut.cells;
    }
    Cell one = hut.cells.size() == 1 ? hut.cells.front() : merged(hut.cells, {});
    one.markOnly = true;
    return {one};
}

void drawHuts(Drawing& drawing, const House& house, const Geometry& g, double wall, bool withWords,
              const DrawCell& cellBody)
{
    const double gap = withWords ? 10 : 3;
    const auto count = static_cast<double>(house.huts.size());
    const double share = (g.yard.width() - gap * (count - 1)) / std::max(count, 1.0);
    double left = g.yard.left();
    for (const Storey& hut : house.huts) {
        const std::vector<Cell> cells = hutCells(hut, share - gap * static_cast<double>(hut.cells.size()), withWords);
        const double width =
            (share - gap * (static_cast<double>(cells.size()) - 1)) / static_cast<double>(cells.size());
        double x = left;
        for (const Cell& cell : cells) {
            const QRectF box(x, g.yard.top(), width, g.yard.height());
            cellBody(box, cell);
            drawing.frame(box, drawing.inks().ink, wall);
            x += width + gap;
        }
        if (withWords) {
            const Style bold{Face::strong, 13, drawing.inks().ink};
            const double counted = hut.count.isEmpty() ? 0 : widthOf(hut.count, bold) + 7;
            const QString name = elided(hut.name, bold, share - counted);
            drawing.text(left, g.yard.top() - 7, name, bold);
            drawing.text(left + widthOf(name, bold) + 7, g.yard.top() - 7, hut.count,
                         {Face::text, 13, drawing.inks().ink});
        }
        left += share + gap;
    }
}

/// The roof takes 26 in 100, but never more than its width allows.
double heightFor(const std::vector<Floor>& floors, double storey)
{
    if (floors.empty()) {
        return 0;
    }
    const auto indoors = std::ranges::count_if(floors, [](const Floor& floor) { return !floor.outside; });
    const double body = storey * static_cast<double>(std::clamp<std::ptrdiff_t>(indoors, 1, mostFloors));
    return body + std::clamp(body * 0.26 / 0.74, leastRoof, mostRoof);
}

} // namespace

double sectionHeight(const std::vector<Floor>& floors) { return heightFor(floors, 46); }

double leastSectionHeight(const std::vector<Floor>& floors) { return heightFor(floors, 40); }

void drawSection(Drawing& drawing, const QRectF& box, const std::vector<Floor>& floors, const Labels& labels)
{
    constexpr double wall = 3;
    constexpr double overhang = 16;
    const House house = houseOf(floors, labels);
    const Geometry g = geometryOf(house, box, overhang);
    const DrawCell body = [&](const QRectF& cell, const Cell& content) {
        drawing.fill(cell, tintOf(content.verdict, drawing.inks()));
        drawCellWords(drawing, cell, content);
    };
    drawEarth(drawing, g, box, wall, !house.storeys.empty());
    if (!house.storeys.empty()) {
        drawRoof(drawing, g, wall, overhang);
        drawStoreys(drawing, house, g, wall, true, body);
    }
    drawHuts(drawing, house, g, wall, true, body);
}

void drawKeySection(Drawing& drawing, const QRectF& box, const std::vector<Floor>& floors,
                    const std::set<RoomName>& shown, double markRadius)
{
    constexpr double wall = 1.5;
    constexpr double overhang = 4;
    const House house = houseOf(floors, {});
    const Geometry g = geometryOf(house, box, overhang);
    const DrawCell body = [&](const QRectF& cell, const Cell& content) {
        const bool here =
            std::ranges::any_of(content.rooms, [&](const RoomName& room) { return shown.contains(room); });
        drawing.fill(cell, here ? tintOf(content.verdict, drawing.inks()) : drawing.inks().paper);
        if (here && content.verdict != Verdict::pass && cell.width() > 2.2 * markRadius) {
            drawVerdict(drawing, cell.center(), markRadius, content.verdict);
        }
    };
    drawEarth(drawing, g, box, wall, !house.storeys.empty());
    if (!house.storeys.empty()) {
        drawRoof(drawing, g, wall, overhang);
        drawStoreys(drawing, house, g, wall, false, body);
    }
    drawHuts(drawing, house, g, wall, false, body);
}

} // namespace proofwalk::report
