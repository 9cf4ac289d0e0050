// SPDX-License-Identifier: GPL-3.0-or-later
// What of a window's items a person can see: by visibility, by clipping, by what lies over them.
#pragma once

#include <QQuickItem>
#include <QQuickWindow>
#include <QRectF>

#include <vector>

namespace proofwalk::rig {

struct Shown {
    QQuickItem* item = nullptr;
    QRectF rect;          ///< the whole item, in the window's units
    QRectF seen;          ///< what clipping ancestors and the window leave of it
    double opacity = 1;   ///< with all ancestors'
    bool covered =
        false; ///< something drawn later hides all that is left of it, or half hides it (a page behind a sheet)
};

/// All visible items in the order they are drawn. Items without a size, and those that are clear, are left out.
std::vector<Shown> shownItems(const QQuickWindow& window);

/// The nearest Flickable around the item that scrolls along x or y; nullptr if there is none.
QQuickItem* scrollsAround(const QQuickItem& item);

/// Whether `ancestor` is `item` or one of its parents.
bool holds(const QQuickItem& ancestor, const QQuickItem& item);

} // namespace proofwalk::rig
