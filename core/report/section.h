// SPDX-License-Identifier: GPL-3.0-or-later
// The building cut open, drawn from floors and rooms alone: every indoor floor takes the whole width, floors under 0
// lie below the earth line, what is outside stands as huts at the right.
#pragma once

#include "core/report/contents.h"
#include "core/report/drawing.h"
#include "core/report/house.h"

#include <set>
#include <string>

namespace proofwalk::report {

/// How high the section with words should be for so many floors; 0 if there are none.
double sectionHeight(const std::vector<Floor>& floors);
/// The least at which a room still has two lines of words.
double leastSectionHeight(const std::vector<Floor>& floors);

/// The section with names, verdict words and the tags of what is not pass.
void drawSection(Drawing& drawing, const QRectF& box, const std::vector<Floor>& floors, const Labels& labels);

/// The section as a key plan without words: only the rooms in `shown` have their tint and mark.
void drawKeySection(Drawing& drawing, const QRectF& box, const std::vector<Floor>& floors,
                    const std::set<RoomName>& shown, double markRadius);

} // namespace proofwalk::report
