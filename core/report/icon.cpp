// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/icon.h"

#include <QFile>
#include <QSvgRenderer>

#include <algorithm>
#include <mutex>

// The resource is compiled into a static library, which the linker would leave out unasked. The macro must stand
// outside every namespace.
static void takeIcons() { Q_INIT_RESOURCE(proofwalk_icons); }

namespace proofwalk::report {

namespace {

/// Kinds are file names of our catalogue: lower-case letters, digits and dashes. Nothing else reaches a path.
bool isKind(const std::string& kind)
{
    return !kind.empty() && std::ranges::all_of(kind, [](char letter) {
        return (letter >= 'a' && letter <= 'z') || (letter >= '0' && letter <= '9') || letter == '-';
    });
}

QString pathOf(const std::string& kind)
{
    static std::once_flag once;
    std::call_once(once, takeIcons);
    return QStringLiteral(":/proofwalk/icons/%1.svg").arg(QString::fromStdString(kind));
}

QByteArray svgOf(const std::string& kind, const QColor& colour)
{
    QFile file(pathOf(hasIcon(kind) ? kind : "unknown"));
    if (!file.open(QIODevice::ReadOnly)) {
        qFatal("the drawing `unknown` is missing from the program");
    }
    return file.readAll().replace("#12202A", colour.name().toLatin1());
}

} // namespace

bool hasIcon(const std::string& kind) { return isKind(kind) && QFile::exists(pathOf(kind)); }

void drawIcon(Drawing& drawing, QPointF topLeft, double side, const std::string& kind, const QColor& colour)
{
    QSvgRenderer renderer(svgOf(kind, colour));
    renderer.render(&drawing.painter(), QRectF(topLeft, QSizeF(side, side)));
}

} // namespace proofwalk::report
