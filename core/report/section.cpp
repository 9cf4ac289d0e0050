// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/section.h"

#include "core/report/book.h"
#include "core/report/marks.h"

#include <algorithm>
#include <ranges>

namespace proofwalk::report {

namespace {

constexpr std::size_t mostCells = 8;
constexpr std::size_t mostFloors = 5;
constexpr double hutShare = 0.24;  ///< of the width, for what stands outside
constexpr double hutHeight = 0.7;  ///< of a storey
constexpr double leastRoof = 30; ///< so that one storey still looks like a house
constexpr double mostRoof = 46;
constexpr double nameCell = 92;    ///< the cell at the left that names its floor

/// A cell of a floor: one room, or several that were merged.
struct Cell {
    QString name;
    QString word;
    Verdict verdict = Verdict::toDo;
    std::vector<Marked> notable;
    std::vector<RoomName> rooms;
    bool markOnly = false; ///< it shows mark and word in place of a name
};

struct Storey {
    QString name;
    QString count;
    int level = 0;
    std::vector<Cell> cells;
};

struct House {
    std::vector<Storey> storeys; ///< highest first
    std::vector<Storey> huts;
};

/// Which of two verdicts a merged cell shows; the order is exact.md's for devices.
int badness(Verdict verdict)
{
    switch (verdict) {
    case Verdict::fail: return 7;
    case Verdict::retest: return 6;
    case Verdict::tooClose: return 5;
    case Verdict::noAccess: return 4;
    case Verdict::running: return 3;
    case Verdict::toDo: return 2;
    case Verdict::pass: return 1;
    case Verdict::notApplicable: return 0;
    }
    return 0;
}

Cell merged(const std::vector<Cell>& cells, const std::string& label)
{
    Cell result;
    result.verdict = Verdict::notApplicable;
    std::size_t rooms = 0;
    for (const Cell& cell : cells) {
        rooms += cell.rooms.size();
        if (badness(cell.verdict) >= badness(result.verdict)) {
            result.verdict = cell.verdict;
            result.word = cell.word;
        }
        result.notable.insert(result.notable.end(), cell.notable.begin(), cell.notable.end());
        result.rooms.insert(result.rooms.end(), cell.rooms.begin(), cell.rooms.end());
    }
    result.name = fill(label, {{"count", std::to_string(rooms)}});
    return result;
}

Storey storeyOf(const Floor& floor, const Labels& labels)
{
    Storey storey{words(floor.name), words(floor.count), floor.level, {}};
    for (const Room& room : floor.rooms) {
        storey.cells.push_back(
            {words(room.name), words(room.word), room.verdict, room.notable, {{floor.name, room.name}}});
    }
    if (storey.cells.size() > mostCells) {
        const auto split = storey.cells.end() - (mostCells - 1);
        std::vector<Cell> rest(split, storey.cells.end());
        rest.insert(rest.begin(), merged({storey.cells.begin(), split}, labels.rooms));
        storey.cells = std::move(rest);
    }
    return storey;
}

House houseOf(const std::vector<Floor>& floors, const Labels& labels)
{
    House house;
    for (const Floor& floor : floors) {
        (floor.outside ? house.huts : house.storeys).push_back(storeyOf(floor, labels));
    }
    std::ranges::stable_sort(house.storeys, [](const Storey& a, const Storey& b) { return a.level > b.level; });
    if (house.storeys.size() > mostFloors) {
        // The highest floors become one cell: the ground and what is under it are where people look first.
        const auto split = house.storeys.end() - (mostFloors - 1);
        std::vector<Cell> cells;
        for (auto storey = house.storeys.begin(); storey != split; ++storey) {
            cells.insert(cells.end(), storey->cells.begin(), storey->cells.end());
        }
        const auto count = static_cast<std::size_t>(split - house.storeys.begin());
        Storey top{fill(labels.floors, {{"count", std::to_string(count)}}), {}, house.storeys.front().level, {}};
        top.cells.push_back(merged(cells, labels.rooms));
        std::vector<Storey> rest(split, house.storeys.end());
        rest.insert(rest.begin(), std::move(top));
        house.storeys = std::move(rest);
    }
    return house;
}

/// Where the parts of a house lie.
struct Geometry {
    QRectF body;
    double storey = 0;
    double roof = 0;
    double earth = 0; ///< y of the earth line
    QRectF yard;      ///< what huts share; its bottom is the earth line
};

Geometry geometryOf(const House& house, const QRectF& box, double overhang)
{
    Geometry g;
    const bool yard = !house.huts.empty();
    const bool indoors = !house.storeys.empty();
    const double width = (yard && indoors ? (1 - hutShare) * box.width() : box.width()) - 2 * overhang;
    const auto count = static_cast<double>(std::max<std::size_t>(house.storeys.size(), 1));
    const double least = std::min(leastRoof, 0.4 * box.height());
    g.roof = std::min({std::max(0.26 * box.height(), least), 0.16 * width, mostRoof});
    g.storey = (box.height() - g.roof) / count;
    g.body = QRectF(box.left() + overhang, box.top() + g.roof, width, box.height() - g.roof);
    const auto above = static_cast<double>(
        std::ranges::count_if(house.storeys, [](const Storey& storey) { return storey.level >= 0; }));
    g.earth = g.body.top() + (indoors ? above : 1) * g.storey;
    const double left = indoors ? g.body.right() + 2.4 * overhang : g.body.left();
    g.yard = QRectF(QPointF(left, g.earth - hutHeight * g.storey), QPointF(box.right() - 4, g.earth));
    return g;
}

/// How much of its words a cell shows: its name alone; the tags of what is not pass; and the verdict's word with them.
enum class Fullness { name, tags, all };

double needOf(const Cell& cell, Fullness fullness)
{
    const double name = widthOf(cell.name, {Face::strong, 13, ink}) + 18;
    double tags = 0;
    for (const Marked& mark : cell.notable) {
        tags += widthOf(words(mark.tag), {Face::figure, 13, ink}) + 26;
    }
    const double word = fullness == Fullness::all ? widthOf(cell.word, {Face::text, 13, ink}) : 0;
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
    const Style style{Face::figure, 13, ink};
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
    const Style name{Face::strong, 13, ink};
    const Style word{Face::text, 13, ink};
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
    drawing.fill(roof, QColor(0xFC, 0xFD, 0xFB));
    drawing.stroke(roof, ink, 0.85 * wall);
    const double lantern = 0.062 * g.body.width();
    const QRectF box(middle - lantern, ridge - 0.32 * g.roof, 2 * lantern, 0.32 * g.roof);
    drawing.fill(box, paper);
    drawing.frame(box, ink, 0.75 * wall);
}

/// The earth line, and the ground beside the house.
void drawEarth(Drawing& drawing, const Geometry& g, const QRectF& box, double wall, bool indoors)
{
    drawing.line(box.left(), g.earth, box.right(), g.earth, ink, 1.35 * wall);
    if (!indoors || wall < 2) {
        return;
    }
    const double depth = std::min(22.0, box.bottom() - g.earth);
    for (double x = g.body.right() + 18; x < box.right() - 4 && depth > 10; x += 25) {
        drawing.line(x, g.earth + 2, x - 17, g.earth + depth, ink, 1);
    }
}

using DrawCell = std::function<void(const QRectF&, const Cell&)>;

void drawStoreys(Drawing& drawing, const House& house, const Geometry& g, double wall, bool withWords,
                 const DrawCell& cellBody)
{
    double y = g.body.top();
    for (const Storey& storey : house.storeys) {
        double x = g.body.left();
        if (withWords) {
            const QRectF named(x, y, nameCell, g.storey);
            drawing.fill(named, paper);
            const bool twoLines = g.storey >= 38;
            drawing.text(x + 8, twoLines ? y + 18 : named.center().y() + 4.5,
                         elided(storey.name, {Face::strong, 13, ink}, nameCell - 14), {Face::strong, 13, ink});
            if (twoLines) {
                drawing.text(x + 8, y + 36, elided(storey.count, {Face::text, 13, ink}, nameCell - 14),
                             {Face::text, 13, ink});
            }
            drawing.frame(named, ink, wall);
            x += nameCell;
        }
        const std::vector<double> widths = widthsOf(storey.cells, g.body.right() - x, withWords);
        for (std::size_t i = 0; i < storey.cells.size(); ++i) {
            const QRectF box(x, y, widths[i], g.storey);
            cellBody(box, storey.cells[i]);
            drawing.frame(box, ink, wall);
            x += widths[i];
        }
        if (storey.cells.empty()) {
            drawing.frame(QRectF(QPointF(x, y), QPointF(g.body.right(), y + g.storey)), ink, wall);
        }
        y += g.storey;
    }
    drawing.frame(g.body, ink, 1.1 * wall);
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
            drawing.frame(box, ink, wall);
            x += width + gap;
        }
        if (withWords) {
            const Style bold{Face::strong, 13, ink};
            const double counted = hut.count.isEmpty() ? 0 : widthOf(hut.count, bold) + 7;
            const QString name = elided(hut.name, bold, share - counted);
            drawing.text(left, g.yard.top() - 7, name, bold);
            drawing.text(left + widthOf(name, bold) + 7, g.yard.top() - 7, hut.count, {Face::text, 13, ink});
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
        drawing.fill(cell, tintOf(content.verdict));
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
        drawing.fill(cell, here ? tintOf(content.verdict) : paper);
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
