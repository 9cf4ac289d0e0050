// SPDX-License-Identifier: GPL-3.0-or-later
// The two pictures beside a finding: where it is, and its photograph.
#pragma once

#include "core/report/contents.h"
#include "core/report/drawing.h"

namespace proofwalk::report {

/// The floor plan with its one room tinted and marked; the building section where there is no plan.
void drawPlace(Drawing& drawing, const QRectF& box, const Finding& finding, const std::vector<Floor>& floors);

/// The photograph, as large as the box allows; scaled down to what print can show. One that cannot be read gives an
/// empty frame with `unreadable` in it, so that its absence is seen.
void drawPhotograph(Drawing& drawing, const QRectF& box, const Photograph& photograph, const QString& unreadable);

} // namespace proofwalk::report
