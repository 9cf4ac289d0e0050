// SPDX-License-Identifier: GPL-3.0-or-later
#include "qml/parts/scalepicture.h"

#include <QLocale>

#include <algorithm>

namespace proofwalk::parts {
namespace {

using report::Drawing;
using report::Face;
using report::Style;

constexpr double bandHeight = 22;
constexpr double jambHeight = 38;
constexpr double jambWidth = 6;
constexpr double lineHeight = 17;
constexpr double valueHeight = 26;   ///< figure and a bit of leader
constexpr double figuresHeight = 27; ///< ticks and figures below the jambs
constexpr double readingRadius = 8;

void drawWall(Drawing& drawing, const QRectF& wall)
{
    drawing.fill(wall, drawing.inks().film);
    drawing.hatch(wall, drawing.inks().ink2, 6, 1);
    drawing.frame(wall, drawing.inks().ink, 2);
}

/// The finest of 1, 2, 5, 10 … whose ticks stand far enough apart.
double stepOf(double perUnit, double apart)
{
    const double least = apart / perUnit;
    const double decade = std::pow(10, std::floor(std::log10(least)));
    for (const double factor : {1.0, 2.0, 5.0})
        if (factor * decade >= least) return factor * decade;
    return 10 * decade;
}

} // namespace

ScalePicture::ScalePicture(QQuickItem* parent) : ReadingScale(QSizeF(328, jambHeight + figuresHeight), parent) {}

void ScalePicture::keepWords(QString& kept, const QString& text)
{
    if (!take(kept, text)) return;
    fitHeight();
    Q_EMIT wordsChanged();
}

void ScalePicture::geometryChange(const QRectF& now, const QRectF& before)
{
    ReadingScale::geometryChange(now, before);
    fitHeight();
}

void ScalePicture::fitHeight() { setImplicitHeight(layOut().bottom); }

ScalePicture::Layout ScalePicture::layOut() const
{
    const Style plain{Face::text, 13};
    Layout layout;
    layout.lowerLines = report::wrapped(m_lowerWord, plain, std::max(40.0, width() / 2 - 12));
    layout.upperLines = report::wrapped(m_upperWord, plain, std::max(40.0, width() / 2 - 12));
    const auto lines = static_cast<double>(std::max(layout.lowerLines.size(), layout.upperLines.size()));
    // The words stand above the figure, so that its leader crosses none of them wherever the reading lies.
    layout.wordsBase = 12;
    double y = lines * lineHeight;
    if (!m_valueText.isEmpty()) {
        layout.valueBase = y + 15;
        y += valueHeight;
    }
    y += (jambHeight - bandHeight) / 2;
    layout.band = QRectF(0, y, width(), bandHeight);
    layout.bottom = layout.band.bottom() + (jambHeight - bandHeight) / 2 + figuresHeight;
    return layout;
}

double ScalePicture::xOf(double number) const
{
    const report::Span span = report::spanOf(scale());
    return (number - span.low) / (span.high - span.low) * width();
}

void ScalePicture::drawBand(Drawing& drawing, const Layout& layout, const report::Scale& scale) const
{
    const report::Palette& inks = drawing.inks();
    const QRectF& band = layout.band;
    const double left = scale.lower ? xOf(*scale.lower) : 0;
    const double right = scale.upper ? xOf(*scale.upper) : width();
    drawing.fill(QRectF(left, band.top(), right - left, bandHeight), inks.done);
    if (scale.lower) drawWall(drawing, QRectF(QPointF(1, band.top() + 1), QPointF(left, band.bottom() - 1)));
    if (scale.upper) drawWall(drawing, QRectF(QPointF(right, band.top() + 1), QPointF(width() - 1, band.bottom() - 1)));
    const double spare = (jambHeight - bandHeight) / 2;
    if (std::isfinite(m_setPoint)) {
        QPen pen = report::penOf(inks.ink, 2);
        pen.setDashPattern({2, 2});
        drawing.painter().setPen(pen);
        drawing.painter().drawLine(QPointF(xOf(m_setPoint), band.top() - 2),
                                   QPointF(xOf(m_setPoint), band.bottom() + 2));
    }
    if (scale.lower) drawing.line(left, band.top() - spare, left, band.bottom() + spare, inks.ink, jambWidth);
    if (scale.upper) drawing.line(right, band.top() - spare, right, band.bottom() + spare, inks.ink, jambWidth);
}

void ScalePicture::drawReading(Drawing& drawing, const Layout& layout, const report::Scale& scale) const
{
    const report::Palette& inks = drawing.inks();
    const bool failed = scale.verdict == report::Verdict::fail;
    const QColor colour = failed ? inks.failInk : inks.ink;
    const double x = xOf(*scale.value);
    const double y = layout.band.center().y();
    if (layout.valueBase > 0) {
        const Style figure{Face::figure, 18, inks.ink};
        const double half = report::widthOf(m_valueText, figure) / 2;
        drawing.textCentre(std::clamp(x, half, std::max(half, width() - half)), layout.valueBase, m_valueText, figure);
        drawing.line(x, layout.valueBase + 5, x, y, inks.ink, 1);
    }
    const double half = xOf(*scale.value + scale.uncertainty) - x;
    QPainterPath shape;
    if (failed) {
        const double r = 1.35 * readingRadius;
        shape.addPolygon(QPolygonF({{x, y - r}, {x + r, y}, {x, y + r}, {x - r, y}, {x, y - r}}));
    } else {
        shape.addEllipse(QPointF(x, y), readingRadius, readingRadius);
    }
    // The pale edge first, all of it, so that no part of the reading lies under another's edge.
    if (half > readingRadius) {
        drawing.line(x - half, y, x + half, y, inks.paper, 7);
        for (const double end : {x - half, x + half}) drawing.line(end, y - 8, end, y + 8, inks.paper, 6);
    }
    drawing.stroke(shape, inks.paper, 4);
    if (half > readingRadius) {
        drawing.line(x - half, y, x + half, y, colour, 3);
        for (const double end : {x - half, x + half}) drawing.line(end, y - 7, end, y + 7, colour, 2.5);
    }
    drawing.fill(shape, colour);
}

void ScalePicture::drawFigures(Drawing& drawing, const Layout& layout) const
{
    const report::Palette& inks = drawing.inks();
    const Style bold{Face::figure, 15, inks.ink};
    const Style plain{Face::text, 13, inks.ink2};
    const double base = layout.bottom - 5;
    const double tick = layout.band.bottom() + (jambHeight - bandHeight) / 2;
    const report::Span span = report::spanOf(scale());
    const double step = stepOf(width() / (span.high - span.low), 38);
    const int places = std::max(0, -static_cast<int>(std::floor(std::log10(step) + 1e-9)));
    QVector<QRectF> taken;
    for (const auto& [number, text] : {std::pair(lower(), m_lowerText), std::pair(upper(), m_upperText)}) {
        if (!std::isfinite(number) || text.isEmpty()) continue;
        const double half = report::widthOf(text, bold) / 2;
        const double x = std::clamp(xOf(number), half, std::max(half, width() - half));
        drawing.textCentre(x, base, text, bold);
        taken << QRectF(x - half - 6, 0, 2 * half + 12, 1);
    }
    for (double n = std::ceil(span.low / step) * step; n <= span.high; n += step) {
        const QString text = QLocale::c().toString(std::abs(n) < step / 2 ? 0.0 : n, 'f', places);
        const double half = report::widthOf(text, plain) / 2;
        const double x = xOf(n);
        const QRectF place(x - half, 0, 2 * half, 1);
        if (place.left() < 0 || place.right() > width()) continue;
        if (std::ranges::any_of(taken, [&](const QRectF& other) { return other.intersects(place); })) continue;
        drawing.line(x, tick + 2, x, tick + 6, inks.ink2, 2);
        drawing.textCentre(x, base, text, plain);
    }
}

void ScalePicture::draw(Drawing& drawing)
{
    const report::Scale numbers = scale();
    if (!numbers.lower && !numbers.upper && !numbers.value) return;
    const Layout layout = layOut();
    const Style plain{Face::text, 13, drawing.inks().ink2};
    drawing.lines(0, layout.wordsBase, layout.lowerLines, plain, lineHeight);
    double y = layout.wordsBase;
    for (const QString& line : layout.upperLines) {
        drawing.textRight(width(), y, line, plain);
        y += lineHeight;
    }
    drawBand(drawing, layout, numbers);
    drawFigures(drawing, layout);
    if (numbers.value) drawReading(drawing, layout, numbers);
}

} // namespace proofwalk::parts
