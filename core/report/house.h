// SPDX-License-Identifier: GPL-3.0-or-later
// A building made of floors and rooms alone, ready to be cut open: which cells each storey has, and where they lie.
#pragma once

#include "core/report/contents.h"

#include <QRectF>
#include <QString>

#include <optional>
#include <string>
#include <utility>
#include <vector>

namespace proofwalk::report {

/// A room by the names of its floor and itself.
using RoomName = std::pair<std::string, std::string>;

/// More cells than this on a floor, and neighbours merge from the left; more floors, and the highest become one.
inline constexpr std::size_t mostCells = 8;
inline constexpr std::size_t mostFloors = 5;
inline constexpr double leastRoof = 30; ///< so that one storey still looks like a house
inline constexpr double mostRoof = 46;

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

/// One cell for several: the worst verdict wins, the order being that of a device's verdicts. `label` has the
/// place {count}.
Cell merged(const std::vector<Cell>& cells, const std::string& label);

/// The building of these floors. `alone`, if given, is the floor that is never merged with others.
House houseOf(const std::vector<Floor>& floors, const Labels& labels,
              const std::optional<std::string>& alone = std::nullopt);

/// Where the parts of a house lie.
struct Geometry {
    QRectF body;
    double storey = 0;
    double roof = 0;
    double earth = 0; ///< y of the earth line
    QRectF yard; ///< what huts share; its bottom is the earth line
};

/// Fits the house into the box; the eaves reach `overhang` beyond the walls.
Geometry geometryOf(const House& house, const QRectF& box, double overhang);

} // namespace proofwalk::report
