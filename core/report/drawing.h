// SPDX-License-Identifier: GPL-3.0-or-later
// What every sheet is drawn with: words on a baseline, rules, fills and masonry. All in grid units.
#pragma once

#include "core/report/palette.h"
#include "core/report/type.h"

#include <QPainter>
#include <QPainterPath>
#include <QRectF>

#include <utility>

namespace proofwalk::report {

/// A painter on the grid, with the inks to use. The painter must outlive it and be scaled to grid units.
class Drawing {
public:
    explicit Drawing(QPainter& painter, const Palette& inks = {}) : m_painter(painter), m_inks(inks) {}

    QPainter& painter() { return m_painter; }
    const Palette& inks() const { return m_inks; }

    /// One line of words; `y` is the baseline, `x` the left end, the right end or the middle.
    void text(double x, double y, const QString& text, const Style& style);
    void textRight(double x, double y, const QString& text, const Style& style);
    void textCentre(double x, double y, const QString& text, const Style& style);

    /// Lines below each other, `leading` apart. Returns the baseline that the next line would have.
    double lines(double x, double y, const QStringList& lines, const Style& style, double leading);

    void line(double x1, double y1, double x2, double y2, const QColor& colour, double width);
    void rule(double y, double left, double right, const QColor& colour = ink, double width = 1);
    void fill(const QRectF& box, const QColor& colour);
    void frame(const QRectF& box, const QColor& colour, double width);
    void fill(const QPainterPath& path, const QColor& colour);
    void stroke(const QPainterPath& path, const QColor& colour, double width);

    /// Masonry: slanted lines `apart` units from each other, cut at the box by computation and not by a clip.
    void hatch(const QRectF& box, const QColor& colour, double apart, double width);

private:
    QPainter& m_painter;
    Palette m_inks;
};

/// A pen with butt ends and mitred corners.
QPen penOf(const QColor& colour, double width);

} // namespace proofwalk::report
