// SPDX-License-Identifier: GPL-3.0-or-later
#include "qml/parts/corridorbar.h"

#include "core/report/person.h"

#include <algorithm>

namespace proofwalk::parts {
namespace {

constexpr double jamb = 5;

} // namespace

CorridorBar::CorridorBar(QQuickItem* parent) : TimedPicture(QSizeF(292, 30), parent) {}

double CorridorBar::xOf(double seconds) const
{
    return jamb / 2 + share(seconds).value_or(0) * (width() - jamb / 2 - 1);
}

void CorridorBar::draw(report::Drawing& drawing)
{
    const report::Palette& inks = drawing.inks();
    const double high = std::min(height(), 44.0);
    const double top = (height() - high) / 2;
    const QRectF band(jamb / 2, top + 0.18 * high, width() - jamb / 2 - 1, 0.64 * high);
    const bool hasLower = share(lower()).has_value();
    const bool hasUpper = share(upper()).has_value();
    drawing.fill(band, inks.paper);
    const double opens = hasLower ? xOf(lower()) : band.left();
    const double closes = hasUpper ? xOf(upper()) : band.right();
    if (hasLower || hasUpper)
        drawing.fill(QRectF(QPointF(opens, band.top()), QPointF(closes, band.bottom())), inks.done);
    if (hasUpper && closes < band.right()) {
        const QRectF wall(QPointF(closes, band.top()), band.bottomRight());
        drawing.fill(wall, inks.film);
        drawing.hatch(wall, inks.ink2, 6, 1);
    }
    drawing.frame(band, inks.ink, 2);
    const auto at = share(elapsed());
    const double here = xOf(elapsed());
    if (at && elapsed() > 0) {
        const QRectF walked(QPointF(band.left(), band.top() + 0.2 * band.height()),
                            QPointF(here, band.bottom() - 0.2 * band.height()));
        drawing.fill(walked.adjusted(0, -1.5, 0, 1.5), inks.paper);
        drawing.fill(walked, inks.runInk);
    }
    for (const double x : {jamb / 2, hasLower ? opens : jamb / 2, hasUpper ? closes : jamb / 2})
        drawing.line(x, top, x, top + high, inks.ink, jamb);
    if (at && elapsed() > 0) {
        const double shoulders = 0.66 * high;
        drawPerson(drawing, QPointF(std::min(here, width() - shoulders / 2), height() / 2), shoulders, 0, inks.runInk);
    }
}

} // namespace proofwalk::parts
