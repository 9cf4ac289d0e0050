// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/qml/rig/written.h"

#include <QFontInfo>

namespace proofwalk::rig {
namespace {

double number(const QQuickItem& item, const char* name) { return item.property(name).toDouble(); }

/// Where the lines stand inside the item, by its paddings and alignments (Qt::Alignment's values).
QRectF drawnIn(const QQuickItem& item)
{
    const double left = number(item, "leftPadding"), top = number(item, "topPadding");
    const double width = item.width() - left - number(item, "rightPadding");
    const double height = item.height() - top - number(item, "bottomPadding");
    const double wide = number(item, "contentWidth"), high = number(item, "contentHeight");
    const int across = item.property("effectiveHorizontalAlignment").toInt();
    const int down = item.property("verticalAlignment").toInt();
    const double x = (across & Qt::AlignRight) != 0   ? width - wide
                   : (across & Qt::AlignHCenter) != 0 ? (width - wide) / 2
                                                      : 0;
    const double y = (down & Qt::AlignBottom) != 0  ? height - high
                   : (down & Qt::AlignVCenter) != 0 ? (height - high) / 2
                                                    : 0;
    return {left + x, top + y, wide, high};
}

} // namespace

std::vector<Written> writtenItems(const QQuickWindow& window)
{
    std::vector<Written> found;
    for (const auto& shown : shownItems(window)) {
        const auto& item = *shown.item;
        const bool typed = item.inherits("QQuickTextInput") || item.inherits("QQuickTextEdit");
        if (!typed && !item.inherits("QQuickText")) continue;
        const QString text =
            item.property(typed && item.inherits("QQuickTextInput") ? "displayText" : "text").toString();
        if (text.trimmed().isEmpty()) continue;
        const auto font = item.property("font").value<QFont>();
        const QRectF drawn = item.mapRectToScene(drawnIn(item));
        const double scale = item.height() > 0 ? shown.rect.height() / item.height() : 1;
        found.push_back({shown, text, drawn, QFontInfo(font).pixelSize() * scale, font.bold(),
                         item.property("color").value<QColor>(), item.property("truncated").toBool(), typed});
    }
    return found;
}

} // namespace proofwalk::rig
