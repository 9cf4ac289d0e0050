// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/sketch.h"

#include "core/report/marks.h"
#include "core/report/section.h"

#include <QBuffer>
#include <QImageReader>

#include <algorithm>

namespace proofwalk::report {

namespace {

constexpr double printDots = 300.0 / 110; ///< picture dots for a unit: 300 to the inch
constexpr int mostSide = 20000;           ///< of a photograph, in dots; beyond, it is taken for damage

QPolygonF polygonOf(const SketchRoom& room)
{
    QPolygonF polygon;
    for (const InkPoint& point : room.outline) {
        polygon << QPointF(point.x, point.y);
    }
    return polygon;
}

void drawSketch(Drawing& drawing, const QRectF& box, const Finding& finding)
{
    QRectF bounds;
    for (const SketchRoom& room : finding.sketch.rooms) {
        bounds = bounds.united(polygonOf(room).boundingRect());
    }
    if (bounds.isEmpty()) {
        return;
    }
    const double factor = std::min(box.width() / bounds.width(), box.height() / bounds.height());
    QTransform toBox;
    toBox.translate(box.left(), box.top());
    toBox.scale(factor, factor);
    toBox.translate(-bounds.left(), -bounds.top());
    QPainterPath outside;
    QPointF mark;
    bool marked = false;
    for (const SketchRoom& room : finding.sketch.rooms) {
        QPainterPath path;
        path.addPolygon(toBox.map(polygonOf(room)));
        path.closeSubpath();
        drawing.fill(path, room.here ? tintOf(finding.verdict) : paper);
        if (room.here) {
            mark = path.boundingRect().center();
            marked = true;
        }
        outside = outside.united(path);
    }
    for (const SketchRoom& room : finding.sketch.rooms) {
        QPainterPath path;
        path.addPolygon(toBox.map(polygonOf(room)));
        path.closeSubpath();
        drawing.stroke(path, ink2, 1.1);
    }
    drawing.stroke(outside.simplified(), ink, 2.6);
    if (finding.sketch.mark) {
        mark = toBox.map(QPointF(finding.sketch.mark->x, finding.sketch.mark->y));
        marked = true;
    }
    if (marked) {
        drawVerdict(drawing, mark, 9, finding.verdict);
    }
}

QImage decoded(const std::string& bytes, QSizeF most)
{
    QByteArray data = QByteArray::fromRawData(bytes.data(), static_cast<qsizetype>(bytes.size()));
    QBuffer buffer(&data);
    buffer.open(QIODevice::ReadOnly);
    QImageReader reader(&buffer);
    const QSize size = reader.size();
    if (!size.isValid() || size.width() > mostSide || size.height() > mostSide) {
        return {};
    }
    QImage image = reader.read();
    if (image.isNull()) {
        return {};
    }
    const QSize wanted = size.scaled((most * printDots).toSize(), Qt::KeepAspectRatio);
    if (wanted.width() < image.width()) {
        image = image.scaled(wanted, Qt::IgnoreAspectRatio, Qt::SmoothTransformation);
    }
    // The file may hold no transparency: what is see-through is laid on paper.
    QImage opaque(image.size(), QImage::Format_RGB32);
    opaque.fill(paper);
    QPainter painter(&opaque);
    painter.drawImage(0, 0, image);
    return opaque;
}

} // namespace

void drawPlace(Drawing& drawing, const QRectF& box, const Finding& finding, const std::vector<Floor>& floors)
{
    if (!finding.sketch.rooms.empty()) {
        drawSketch(drawing, box, finding);
        return;
    }
    if (floors.empty()) {
        return;
    }
    // The room shows the finding's verdict here, not the worst of all that is in it.
    std::vector<Floor> marked = floors;
    for (Floor& floor : marked) {
        for (Room& room : floor.rooms) {
            room.verdict = floor.name == finding.floor && room.name == finding.room ? finding.verdict : room.verdict;
        }
    }
    drawKeySection(drawing, box, marked, {{finding.floor, finding.room}}, 7);
}

void drawPhotograph(Drawing& drawing, const QRectF& box, const Photograph& photograph, const QString& unreadable)
{
    const QImage image = decoded(photograph.bytes, box.size());
    drawing.fill(box, film);
    if (image.isNull()) {
        const Style style{Face::text, 13, ink2};
        drawing.lines(box.left() + 10, box.top() + 24, wrapped(unreadable, style, box.width() - 20, 5), style, 17);
    } else {
        const QSizeF size = QSizeF(image.size()).scaled(box.size(), Qt::KeepAspectRatio);
        const QRectF place(box.center() - QPointF(size.width() / 2, size.height() / 2), size);
        drawing.painter().drawImage(place, image);
    }
    drawing.frame(box, ink, 1);
}

} // namespace proofwalk::report
