// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/house.h"

#include "core/report/book.h"
#include "core/report/type.h"

#include <algorithm>

namespace proofwalk::report {

namespace {

constexpr double hutShare = 0.24;  ///< of the width, for what stands outside
constexpr double hutHeight = 0.7;  ///< of a storey

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

/// The highest storeys become one cell: the ground and what is under it are where people look first. The storey that is
/// to stay alone is taken out before and stands again where its level puts it.
void mergeHighest(std::vector<Storey>& storeys, const Labels& labels, const std::optional<QString>& alone)
{
    std::optional<Storey> kept;
    const auto found =
        std::ranges::find_if(storeys, [&](const Storey& storey) { return alone && storey.name == *alone; });
    std::size_t room = mostFloors - 1; // for those that are not merged
    if (found != storeys.end() && static_cast<std::size_t>(storeys.end() - found) > room) {
        kept = std::move(*found);
        storeys.erase(found);
        --room;
    }
    const auto split = storeys.end() - static_cast<std::ptrdiff_t>(room);
    std::vector<Cell> cells;
    for (auto storey = storeys.begin(); storey != split; ++storey) {
        cells.insert(cells.end(), storey->cells.begin(), storey->cells.end());
    }
    const auto count = static_cast<std::size_t>(split - storeys.begin());
    Storey top{fill(labels.floors, {{"count", std::to_string(count)}}), {}, storeys.front().level, {}};
    top.cells.push_back(merged(cells, labels.rooms));
    std::vector<Storey> rest(split, storeys.end());
    rest.insert(rest.begin(), std::move(top));
    if (kept) {
        rest.insert(rest.begin() + (kept->level > rest.front().level ? 0 : 1), std::move(*kept));
    }
    storeys = std::move(rest);
}

} // namespace

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

House houseOf(const std::vector<Floor>& floors, const Labels& labels, const std::optional<std::string>& alone)
{
    House house;
    for (const Floor& floor : floors) {
        (floor.outside ? house.huts : house.storeys).push_back(storeyOf(floor, labels));
    }
    std::ranges::stable_sort(house.storeys, [](const Storey& a, const Storey& b) { return a.level > b.level; });
    if (house.storeys.size() > mostFloors) {
        mergeHighest(house.storeys, labels, alone ? std::optional(words(*alone)) : std::nullopt);
    }
    return house;
}

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

} // namespace proofwalk::report
