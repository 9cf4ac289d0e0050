// SPDX-License-Identifier: GPL-3.0-or-later
// The building cut open as the window shows it: every room with its verdict's pale fill, the one where you stand in
// yellow behind a heavier wall.
#pragma once

#include "core/report/drawing.h"
#include "core/report/house.h"

#include <optional>

namespace proofwalk::report {

/// How much of a section is shown.
struct SectionShow {
    std::optional<RoomName> here; ///< where you stand
    bool words = false;           ///< names of floors and, where they fit, of rooms
    bool marks = false;           ///< the verdict's mark in every cell that is not pass or to do, and the person
};

/// A cell as it lies on the picture: one room, or several that were merged.
struct PlacedCell {
    QRectF box;
    Cell cell;
    bool here = false;
};

/// A section fitted to a box: what is drawn, and what a finger finds.
struct SectionPlan {
    House house;
    Geometry geometry;
    QRectF box;
    double wall = 2;
    double nameWidth = 0; ///< of the cells that name the floors; 0 without
    std::vector<PlacedCell> cells; ///< storeys from the top, then huts from the left
    SectionShow show;
};

/// How heavy the wall of the room in hand is, beside the others.
inline constexpr double hereWall = 1.6;

/// Lays it out. All edges lie on whole units, so that they are sharp on a screen.
SectionPlan planSection(const QRectF& box, const std::vector<Floor>& floors, const Labels& labels,
                        const SectionShow& show);

void drawSectionPicture(Drawing& drawing, const SectionPlan& plan);

} // namespace proofwalk::report
