// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/qml/rig/finding.h"

#include <QAccessible>

#include <algorithm>
#include <iterator>

namespace proofwalk::rig {

QString describe(const QQuickItem& item)
{
    QString type = QString::fromLatin1(item.metaObject()->className());
    type.remove(QStringLiteral("QQuick"));
    if (const auto at = type.indexOf(QStringLiteral("_QML")); at > 0) type.truncate(at);
    QString name = item.objectName();
    if (name.isEmpty())
        if (auto* told = QAccessible::queryAccessibleInterface(const_cast<QQuickItem*>(&item)); told != nullptr)
            name = told->text(QAccessible::Name);
    if (name.isEmpty()) name = item.property("text").toString();
    const QRectF at = item.mapRectToScene({0, 0, item.width(), item.height()});
    return QStringLiteral("%1 \"%2\" at %3,%4 %5x%6")
        .arg(type, name.left(60), QString::number(at.x(), 'f', 0), QString::number(at.y(), 'f', 0),
             QString::number(at.width(), 'f', 0), QString::number(at.height(), 'f', 0));
}

QString toText(const Findings& findings)
{
    QString text;
    for (const auto& finding : findings)
        text += finding.rule + QStringLiteral(": ") + finding.item + QStringLiteral(": ") + finding.says + u'\n';
    return text;
}

bool has(const Findings& findings, const QString& rule)
{
    return std::ranges::any_of(findings, [&](const Finding& finding) { return finding.rule == rule; });
}

void append(Findings& to, Findings&& more)
{
    to.insert(to.end(), std::make_move_iterator(more.begin()), std::make_move_iterator(more.end()));
}

} // namespace proofwalk::rig
