// SPDX-License-Identifier: GPL-3.0-or-later
// The words a window shows, each with where they are really drawn. Words inside a drawn picture are not seen here.
#pragma once

#include "tests/qml/rig/shown.h"

#include <QColor>
#include <QString>

namespace proofwalk::rig {

struct Written {
    Shown shown;
    QString text;
    QRectF drawn;        ///< the lines themselves, without the room around them, in the window's units
    double pixels = 0;   ///< size of the type
    bool bold = false;
    QColor colour;
    bool truncated = false; ///< cut or elided by the item itself
    bool typed = false;     ///< a field: it scrolls by itself
};

/// All visible items that have words in them.
std::vector<Written> writtenItems(const QQuickWindow& window);

} // namespace proofwalk::rig
