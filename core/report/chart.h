// SPDX-License-Identifier: GPL-3.0-or-later
// A chart that answers one question: readings as marks with whiskers, between walls. Axes, whiskers and the nominal
// line are a QChart; the masonry lies under it and the verdict marks upon it, in the chart's own coordinates.
#pragma once

#include "core/report/contents.h"
#include "core/report/drawing.h"

#include <span>

namespace proofwalk::report {

/// How many points stand side by side in `width` without their labels touching; at least 1.
std::size_t pointsAcross(const RangeChart& chart, double width);

/// Draws `points` of the chart into the box, film from edge to edge. The labels stand under it within the box.
/// Limits may differ from point to point: a wall then has steps.
void drawChart(Drawing& drawing, const QRectF& box, const RangeChart& chart, std::span<const ChartPoint> points);

} // namespace proofwalk::report
