// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/scale.h"

#include "core/report/marks.h"

#include <algorithm>
#include <cmath>

namespace proofwalk::report {

namespace {

constexpr double whiskersShown = 8; ///< how many uncertainties a scale reaches beyond a limit
constexpr double spare = 1.3;       ///< how far it reaches past what must be seen

bool finite(const std::optional<double>& number) { return number && std::isfinite(*number); }

/// Beyond one limit, on the allowed side and on the other.
Span aroundOneLimit(double limit, double value, double uncertainty, bool allowedAbove)
{
    const double inside = allowedAbove ? value - limit : limit - value;
    const double reach = std::max(std::abs(inside) + uncertainty, 0.0) * spare;
    // Without a whisker to show, the scale begins at nought, where most quantities do.
    double allowed = uncertainty > 0 ? whiskersShown * uncertainty : std::abs(limit);
    allowed = std::max({allowed, inside > 0 ? reach : 0.0, std::abs(limit) * 1e-9, 1e-12});
    double wall = uncertainty > 0 ? 0.7 * allowed : allowed;
    wall = std::max(wall, inside < 0 ? reach : 0.0);
    return allowedAbove ? Span{limit - wall, limit + allowed} : Span{limit - allowed, limit + wall};
}

Span aroundTwoLimits(double lower, double upper, double value, double uncertainty)
{
    const double beside = std::max(0.6 * (upper - lower), 1e-12);
    return {std::min(lower - beside, value - spare * uncertainty - (value < lower ? beside : 0)),
            std::max(upper + beside, value + spare * uncertainty + (value > upper ? beside : 0))};
}

/// From the numbers to the paper.
struct Ruler {
    Span span;
    QRectF box;

    double at(double number) const { return box.left() + (number - span.low) / (span.high - span.low) * box.width(); }
};

void drawWall(Drawing& drawing, const QRectF& band)
{
    drawing.fill(band, drawing.inks().paper);
    drawing.hatch(band, drawing.inks().ink, 3.4, 0.8);
    drawing.frame(band.adjusted(0.5, 0.5, -0.5, -0.5), drawing.inks().ink, 1);
}

void drawValue(Drawing& drawing, const Ruler& ruler, const Scale& scale)
{
    const double y = ruler.box.center().y();
    const double x = ruler.at(*scale.value);
    const double r = std::max(3.8, 0.21 * ruler.box.height());
    const QColor colour = scale.verdict == Verdict::fail     ? drawing.inks().failInk
                        : scale.verdict == Verdict::tooClose ? drawing.inks().closeInk
                                                             : drawing.inks().ink;
    const double half = scale.uncertainty / (ruler.span.high - ruler.span.low) * ruler.box.width();
    if (half > r) {
        drawing.line(x - half, y, x + half, y, colour, 1.8);
        drawing.line(x - half, y - 3.2, x - half, y + 3.2, colour, 1.6);
        drawing.line(x + half, y - 3.2, x + half, y + 3.2, colour, 1.6);
    }
    QPainterPath shape;
    if (scale.verdict == Verdict::fail) {
        shape.moveTo(x, y - 1.45 * r);
        shape.lineTo(x + 1.45 * r, y);
        shape.lineTo(x, y + 1.45 * r);
        shape.lineTo(x - 1.45 * r, y);
        shape.closeSubpath();
    } else {
        shape.addEllipse(QPointF(x, y), r, r);
    }
    drawing.stroke(shape, drawing.inks().paper, 2.4);
    if (scale.verdict != Verdict::tooClose) {
        drawing.fill(shape, colour);
        return;
    }
    // Too close: the half that may lie behind the jamb stays hollow.
    const bool wallLeft = scale.lower && (!scale.upper || *scale.value - *scale.lower <= *scale.upper - *scale.value);
    drawing.fill(shape, drawing.inks().paper);
    drawing.stroke(shape, colour, 1.4);
    QPainterPath half2;
    half2.moveTo(x, y - r);
    half2.arcTo(QRectF(x - r, y - r, 2 * r, 2 * r), 90, wallLeft ? -180 : 180);
    half2.closeSubpath();
    drawing.fill(half2, drawing.inks().closeFill);
    drawing.stroke(shape, colour, 1.2);
}

} // namespace

Span spanOf(const Scale& scale)
{
    const double value = finite(scale.value) ? *scale.value : 0;
    const bool lower = finite(scale.lower);
    const bool upper = finite(scale.upper);
    if (lower && upper) {
        return aroundTwoLimits(*scale.lower, *scale.upper, finite(scale.value) ? value : *scale.lower,
                               scale.uncertainty);
    }
    if (lower || upper) {
        const double limit = lower ? *scale.lower : *scale.upper;
        return aroundOneLimit(limit, finite(scale.value) ? value : limit, scale.uncertainty, lower);
    }
    const double reach = std::max({std::abs(value), scale.uncertainty * 2, 1e-12});
    return {value - reach, value + reach};
}

void drawScale(Drawing& drawing, const QRectF& box, const Scale& scale)
{
    const bool lower = finite(scale.lower);
    const bool upper = finite(scale.upper);
    if (!lower && !upper && !finite(scale.value)) {
        return;
    }
    const Ruler ruler{spanOf(scale), box};
    const double high = 0.46 * box.height();
    const QRectF band(box.left(), box.center().y() - high / 2, box.width(), high);
    const double left = lower ? ruler.at(*scale.lower) : band.left();
    const double right = upper ? ruler.at(*scale.upper) : band.right();
    drawing.fill(QRectF(left, band.top(), right - left, high), drawing.inks().done);
    if (lower) {
        drawWall(drawing, QRectF(band.left(), band.top(), left - band.left(), high));
        drawing.line(left, box.top(), left, box.bottom(), drawing.inks().ink, 2.6);
    }
    if (upper) {
        drawWall(drawing, QRectF(right, band.top(), band.right() - right, high));
        drawing.line(right, box.top(), right, box.bottom(), drawing.inks().ink, 2.6);
    }
    if (finite(scale.value)) {
        drawValue(drawing, ruler, scale);
    }
}

void drawTrials(Drawing& drawing, const QRectF& box, const Trials& trials)
{
    if (trials.wanted <= 0) {
        return;
    }
    const double high = 0.46 * box.height();
    const QRectF band(box.left(), box.center().y() - high / 2, box.width(), high);
    const double jamb = band.left() + 0.8 * band.width();
    drawing.fill(QRectF(QPointF(jamb, band.top()), band.bottomRight()), drawing.inks().done);
    drawWall(drawing, QRectF(band.topLeft(), QPointF(jamb, band.bottom())));
    drawing.line(jamb, box.top(), jamb, box.bottom(), drawing.inks().ink, 2.6);
    const bool all = trials.seen >= trials.wanted;
    const double reached = std::clamp(static_cast<double>(trials.seen) / trials.wanted, 0.0, 1.0);
    const double x = all ? (jamb + band.right()) / 2 + 1 : band.left() + 6 + reached * (jamb - band.left() - 14);
    QPainterPath dot;
    dot.addEllipse(QPointF(x, band.center().y()), 3.8, 3.8);
    drawing.stroke(dot, drawing.inks().paper, 2.4);
    drawing.fill(dot, drawing.inks().ink);
}

} // namespace proofwalk::report
