// SPDX-License-Identifier: GPL-3.0-or-later
// The actions of states.txt, done to a window.
#pragma once

#include <QQuickWindow>
#include <QString>

namespace proofwalk::screens {

/// Does one action; empty if it went well, else why not. An action that only asks for a width does nothing.
QString act(QQuickWindow& window, const QString& action);

/// Whether the actions ask for another width than this one.
bool isForWidth(const QStringList& actions, int width);

/// Waits until the desk owes nothing and the window has settled.
void rest(QQuickWindow& window);

} // namespace proofwalk::screens
