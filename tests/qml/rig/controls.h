// SPDX-License-Identifier: GPL-3.0-or-later
// What of a window can be worked: every visible item whose role is that of a control, or that answers to being pressed.
#pragma once

#include "tests/qml/rig/shown.h"

#include <QAccessible>
#include <QString>

namespace proofwalk::rig {

struct Control {
    Shown shown;
    QAccessible::Role role = QAccessible::NoRole;
    QString name;
    bool enabled = true;
    bool pressable = false; ///< a press action of its own is connected, not only offered
};

/// In the order they are drawn; those behind a sheet have shown.covered.
std::vector<Control> controlsOf(const QQuickWindow& window);

/// Whether a signal of that object has a listener, QML's handlers counted. False if it has no such signal.
bool listensTo(const QObject& object, const char* signal);

/// The object that holds the item's Accessible properties; nullptr if QML gives it none.
QObject* accessibleOf(const QQuickItem& item);

/// Roles that are worked by a person.
bool isWorked(QAccessible::Role role);

} // namespace proofwalk::rig
