// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/qml/rig/accessible.h"

#include "tests/qml/rig/controls.h"

#include <QGuiApplication>
#include <private/qguiapplication_p.h>
#include <qpa/qplatformaccessibility.h>
#include <qpa/qplatformintegration.h>

#include <map>

namespace proofwalk::rig {
namespace {

bool inControl(const QQuickItem& item)
{
    for (const auto* at = &item; at != nullptr; at = at->parentItem()) {
        auto* told = QAccessible::queryAccessibleInterface(const_cast<QQuickItem*>(at));
        if (told != nullptr && isWorked(told->role())) return true;
        if (const auto* attached = accessibleOf(*at); attached != nullptr && listensTo(*attached, "pressAction()"))
            return true;
    }
    return false;
}

bool hearsTouch(const QQuickItem& item)
{
    if (!item.isEnabled()) return false;
    if (item.inherits("QQuickMouseArea") && listensTo(item, "clicked(QQuickMouseEvent*)")) return true;
    for (auto* child : item.children())
        if (child->inherits("QQuickTapHandler")
            && (listensTo(*child, "tapped(QEventPoint,Qt::MouseButton)")
                || listensTo(*child, "singleTapped(QEventPoint,Qt::MouseButton)")))
            return true;
    return false;
}

bool wantsPress(QAccessible::Role role)
{
    return role == QAccessible::Button || role == QAccessible::CheckBox || role == QAccessible::RadioButton
        || role == QAccessible::Link || role == QAccessible::PageTab || role == QAccessible::MenuItem;
}

void nodesIn(QAccessibleInterface* node, int& count)
{
    ++count;
    for (int at = 0; at < node->childCount(); ++at)
        if (auto* child = node->child(at); child != nullptr) nodesIn(child, count);
}

} // namespace

void switchAccessibilityOn()
{
    QAccessible::setActive(true); // tells observers only
    QGuiApplicationPrivate::platformIntegration()->accessibility()->setActive(true);
}

Findings accessible(const QQuickWindow& window)
{
    Findings findings;
    std::map<std::pair<QAccessible::Role, QString>, const QQuickItem*> named;
    for (const auto& control : controlsOf(window)) {
        if (control.shown.covered) continue;
        const auto& item = *control.shown.item;
        if (control.name.isEmpty()) findings.push_back({QStringLiteral("nameless"), describe(item), {}});
        if (wantsPress(control.role) && !control.pressable && control.enabled)
            findings.push_back({QStringLiteral("no-press"), describe(item), {}});
        if (control.name.isEmpty() || control.shown.seen.isEmpty()) continue;
        const auto [at, fresh] = named.try_emplace({control.role, control.name}, &item);
        if (!fresh)
            findings.push_back(
                {QStringLiteral("two-names"), describe(item), QStringLiteral("as ") + describe(*at->second)});
    }
    for (const auto& shown : shownItems(window)) {
        if (shown.covered) continue;
        auto* told = QAccessible::queryAccessibleInterface(shown.item);
        const auto role = told == nullptr ? QAccessible::NoRole : told->role();
        if (role == QAccessible::Graphic && told->text(QAccessible::Name).trimmed().isEmpty()
            && accessibleOf(*shown.item) != nullptr)
            findings.push_back({QStringLiteral("nameless"), describe(*shown.item), QStringLiteral("a picture")});
        if (shown.item->activeFocusOnTab() && (accessibleOf(*shown.item) == nullptr || role == QAccessible::NoRole)
            && !shown.item->inherits("QQuickTextInput") && !shown.item->inherits("QQuickTextEdit"))
            findings.push_back({QStringLiteral("no-role"), describe(*shown.item), {}});
        if (hearsTouch(*shown.item) && !inControl(*shown.item))
            findings.push_back({QStringLiteral("bare-touch"), describe(*shown.item), {}});
    }
    return findings;
}

bool pressAccessibly(QQuickItem& item)
{
    auto* told = QAccessible::queryAccessibleInterface(&item);
    if (told == nullptr || told->actionInterface() == nullptr || !item.isEnabled()) return false;
    if (!told->actionInterface()->actionNames().contains(QAccessibleActionInterface::pressAction())) return false;
    told->actionInterface()->doAction(QAccessibleActionInterface::pressAction());
    return true;
}

int nodesOf(QQuickWindow& window)
{
    int count = 0;
    if (auto* root = QAccessible::queryAccessibleInterface(&window); root != nullptr) nodesIn(root, count);
    return count;
}

} // namespace proofwalk::rig
