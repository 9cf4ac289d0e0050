// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/screens/acting.h"

#include "qml/models/desk.h"
#include "qml/models/whereabouts.h"
#include "tests/qml/rig/accessible.h"
#include "tests/qml/rig/controls.h"
#include "tests/qml/rig/finding.h"
#include "tests/qml/rig/stage.h"
#include "tests/qml/rig/taps.h"

#include <QElapsedTimer>
#include <QMetaEnum>

namespace proofwalk::screens {
namespace {

using models::Whereabouts;

QString go(const QString& rest)
{
    const auto names = QMetaEnum::fromType<Whereabouts::Place>();
    QString name = rest.section(u' ', 0, 0);
    name[0] = name[0].toUpper();
    bool known = false;
    const int place = names.keyToValue(name.toLatin1().constData(), &known);
    if (!known) return QStringLiteral("no such place");
    Whereabouts::instance().go(Whereabouts::Place(place), rest.section(u' ', 1, 1), rest.section(u' ', 2));
    return {};
}

QQuickItem* visible(const QQuickWindow& window, const QString& name)
{
    for (const auto& shown : rig::shownItems(window))
        if (!shown.covered && !shown.seen.isEmpty()) {
            if (shown.item->objectName() == name) return shown.item;
            auto* told = QAccessible::queryAccessibleInterface(shown.item);
            if (told != nullptr && told->text(QAccessible::Name) == name) return shown.item;
        }
    return nullptr;
}

QQuickItem* any(QQuickItem& item, const QString& objectName)
{
    if (item.objectName() == objectName) return &item;
    for (auto* child : item.childItems())
        if (auto* found = any(*child, objectName); found != nullptr) return found;
    return nullptr;
}

QString waitFor(QQuickWindow& window, const QString& name)
{
    QElapsedTimer timer;
    timer.start();
    while (visible(window, name) == nullptr) {
        if (timer.elapsed() > 5000) return QStringLiteral("is not to be seen after 5 s");
        QTest::qWait(5);
    }
    return {};
}

QString press(QQuickWindow& window, const QString& name)
{
    for (const auto& control : rig::controlsOf(window))
        if (control.shown.item->objectName() == name || control.name == name)
            return rig::pressAccessibly(*control.shown.item) ? QString() : QStringLiteral("cannot be pressed");
    return QStringLiteral("no such control");
}

QString set(QQuickWindow& window, const QString& rest)
{
    const QString path = rest.section(u' ', 0, 0);
    auto* item = any(*window.contentItem(), path.section(u'.', 0, 0));
    if (item == nullptr) return QStringLiteral("no such object");
    const QByteArray property = path.section(u'.', 1).toLatin1();
    QVariant value = rest.section(u' ', 1);
    const int at = item->metaObject()->indexOfProperty(property.constData());
    if (at < 0) return QStringLiteral("no such property");
    if (!value.convert(item->metaObject()->property(at).metaType())) return QStringLiteral("is not of that type");
    item->setProperty(property.constData(), value);
    return {};
}

} // namespace

void rest(QQuickWindow& window)
{
    QElapsedTimer timer;
    timer.start();
    while (models::Desk::instance().busy() && timer.elapsed() < 10000) QTest::qWait(2);
    rig::settle(window);
    QTest::qWait(10);
    rig::settle(window);
}

QString act(QQuickWindow& window, const QString& action)
{
    const QString verb = action.section(u' ', 0, 0), rest = action.section(u' ', 1);
    QString problem = QStringLiteral("no such action");
    if (verb == u"go") problem = go(rest);
    else if (verb == u"wider" || verb == u"narrower") problem.clear();
    else if (verb == u"wait") problem = waitFor(window, rest);
    else if (verb == u"press") problem = press(window, rest);
    else if (verb == u"set") problem = set(window, rest);
    else if (verb == u"tap") {
        rig::Taps taps(window, rig::By::touch);
        problem = taps.tap(rest) ? QString() : taps.problem();
    } else if (verb == u"type") {
        rig::Taps(window, rig::By::keys).type(rest);
        problem.clear();
    } else if (verb == u"key") {
        bool known = false;
        const int key = QMetaEnum::fromType<Qt::Key>().keyToValue(("Key_" + rest.toLatin1()).constData(), &known);
        problem = known ? QString() : QStringLiteral("no such key");
        if (known) QTest::keyClick(&window, Qt::Key(key));
    }
    screens::rest(window);
    return problem;
}

bool isForWidth(const QStringList& actions, int width)
{
    for (const auto& action : actions) {
        const int limit = action.section(u' ', 1).toInt();
        if (action.startsWith(QStringLiteral("wider ")) && width < limit) return false;
        if (action.startsWith(QStringLiteral("narrower ")) && width >= limit) return false;
    }
    return true;
}

} // namespace proofwalk::screens
