// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/qml/rig/controls.h"

#include <QMetaMethod>

namespace proofwalk::rig {
namespace {

/// QObject::isSignalConnected is for the class itself; a class derived from it may name it.
struct Listening : QObject {
    static bool ask(const QObject& object, const QMetaMethod& method)
    {
        return (object.*&Listening::isSignalConnected)(method);
    }
};

} // namespace

bool isWorked(QAccessible::Role role)
{
    switch (role) {
    case QAccessible::Button:
    case QAccessible::CheckBox:
    case QAccessible::RadioButton:
    case QAccessible::Link:
    case QAccessible::EditableText:
    case QAccessible::Slider:
    case QAccessible::SpinBox:
    case QAccessible::ComboBox:
    case QAccessible::PageTab:
    case QAccessible::MenuItem:
    case QAccessible::ButtonMenu:
    case QAccessible::Dial: return true;
    default: return false;
    }
}

bool listensTo(const QObject& object, const char* signal)
{
    const int at = object.metaObject()->indexOfSignal(signal);
    return at >= 0 && Listening::ask(object, object.metaObject()->method(at));
}

QObject* accessibleOf(const QQuickItem& item)
{
    for (auto* child : item.children())
        if (child->inherits("QQuickAccessibleAttached")) return child;
    return nullptr;
}

namespace {

/// Qt 6.4 tells no name of a field whose letters are hidden, only its description.
QString nameOf(QAccessibleInterface& told)
{
    return told.text(told.state().passwordEdit ? QAccessible::Description : QAccessible::Name).trimmed();
}

} // namespace

std::vector<Control> controlsOf(const QQuickWindow& window)
{
    std::vector<Control> found;
    for (const auto& shown : shownItems(window)) {
        auto* told = QAccessible::queryAccessibleInterface(shown.item);
        if (told == nullptr) continue;
        const auto* attached = accessibleOf(*shown.item);
        if (attached != nullptr && attached->property("ignored").toBool()) continue; // a row that is only read
        const bool pressable =
            attached != nullptr && (listensTo(*attached, "pressAction()") || listensTo(*attached, "toggleAction()"));
        if (!isWorked(told->role()) && !pressable) continue;
        found.push_back({shown, told->role(), nameOf(*told), shown.item->isEnabled(), pressable});
    }
    return found;
}

} // namespace proofwalk::rig
