// SPDX-License-Identifier: GPL-3.0-or-later
// The page as a screen reader gets it.
#pragma once

#include "tests/qml/rig/finding.h"

#include <QQuickWindow>

namespace proofwalk::rig {

/// Switches the platform's accessibility on, so that names and roles are those a screen reader would get. Once, before
/// any QML is loaded.
void switchAccessibilityOn();

/// Rules: nameless (a control or a picture without a name), no-press (a button, box or link whose press action nobody
/// hears: Qt 6.4 offers it by role alone), no-role (what Tab reaches but no role is given), bare-touch (a MouseArea or
/// TapHandler that is heard and stands in no control), two-names (two controls of one role with one name, both to be
/// seen: they cannot be told apart by ear).
Findings accessible(const QQuickWindow& window);

/// Presses the control by its accessible action, as a screen reader does. False if it has none or is disabled.
bool pressAccessibly(QQuickItem& item);

/// How many nodes the accessible tree of the window has, itself counted.
int nodesOf(QQuickWindow& window);

} // namespace proofwalk::rig
