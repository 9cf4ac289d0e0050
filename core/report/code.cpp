// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/code.h"

#include <qrencode.h>

#include <algorithm>
#include <limits>
#include <memory>

namespace proofwalk::report {

namespace {

struct FreeCode {
    void operator()(QRcode* code) const { QRcode_free(code); }
};

bool isDark(const QRcode& code, int x, int y) { return (code.data[y * code.width + x] & 1U) != 0; }

/// Where the ink really lies, so that a small signature in a large field is not printed small.
QRectF boundsOf(const Ink& strokes)
{
    double left = std::numeric_limits<double>::max();
    double top = left;
    double right = std::numeric_limits<double>::lowest();
    double bottom = right;
    for (const auto& stroke : strokes.strokes) {
        for (const InkPoint& point : stroke) {
            left = std::min(left, point.x);
            right = std::max(right, point.x);
            top = std::min(top, point.y);
            bottom = std::max(bottom, point.y);
        }
    }
    return right < left ? QRectF() : QRectF(left, top, right - left, bottom - top);
}

/// A line through the points, rounded at each by a curve from middle to middle.
QPainterPath smooth(const std::vector<QPointF>& points)
{
    QPainterPath path(points.front());
    for (std::size_t i = 1; i + 1 < points.size(); ++i) {
        path.quadTo(points[i], (points[i] + points[i + 1]) / 2);
    }
    path.lineTo(points.back());
    return path;
}

} // namespace

Result<void> drawCode(Drawing& drawing, const QRectF& box, const std::string& text)
{
    const std::unique_ptr<QRcode, FreeCode> code(QRcode_encodeData(
        static_cast<int>(text.size()), reinterpret_cast<const unsigned char*>(text.data()), 0, QR_ECLEVEL_M));
    if (!code) {
        return failure("report.code-too-long", {}, {{"found", static_cast<std::int64_t>(text.size())}});
    }
    const double side = box.width() / code->width;
    QPainterPath squares;
    for (int y = 0; y < code->width; ++y) {
        for (int x = 0; x < code->width;) {
            int run = 0;
            while (x + run < code->width && isDark(*code, x + run, y)) {
                ++run;
            }
            if (run > 0) {
                // A hair higher than its row, or some viewers show the paper between two rows.
                squares.addRect(box.left() + x * side, box.top() + y * side, run * side, side + 0.02);
            }
            x += std::max(run, 1);
        }
    }
    squares.setFillRule(Qt::WindingFill);
    drawing.fill(squares, Qt::black);
    return {};
}

void drawInk(Drawing& drawing, const QRectF& box, const Ink& strokes)
{
    const QRectF bounds = boundsOf(strokes);
    if (bounds.isNull() && strokes.strokes.empty()) {
        return;
    }
    const double factor = std::min({bounds.width() > 0 ? box.width() / bounds.width() : 1e9,
                                    bounds.height() > 0 ? box.height() / bounds.height() : 1e9, 4.0});
    const QPointF shift = box.center() - bounds.center() * factor;
    QPainter& painter = drawing.painter();
    for (const auto& stroke : strokes.strokes) {
        std::vector<QPointF> points;
        for (const InkPoint& point : stroke) {
            points.push_back(QPointF(point.x, point.y) * factor + shift);
        }
        if (points.size() == 1) {
            QPainterPath dot;
            dot.addEllipse(points.front(), 1.2, 1.2);
            drawing.fill(dot, penInk);
        } else if (points.size() > 1) {
            painter.strokePath(smooth(points), QPen(penInk, 2, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
        }
    }
}

} // namespace proofwalk::report
