// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/qml/rig/shown.h"

#include <QColor>
#include <QQuickPaintedItem>

#include <algorithm>

namespace proofwalk::rig {
namespace {

/// Below this what lies behind is still to be read; from here on it is a page put aside.
constexpr double hides = 0.3;

double coverOf(const Shown& shown)
{
    if (shown.item->inherits("QQuickRectangle"))
        return shown.opacity * shown.item->property("color").value<QColor>().alphaF();
    if (const auto* painted = qobject_cast<const QQuickPaintedItem*>(shown.item); painted != nullptr)
        return shown.opacity * (painted->opaquePainting() ? 1.0 : painted->fillColor().alphaF());
    return 0;
}

class Walk {
public:
    std::vector<Shown> found;

    /// Children with a z below 0 are drawn beneath their parent, the others above it, each in order of z.
    void into(QQuickItem& item, const QRectF& clip, double opacity)
    {
        if (!item.isVisible() || item.opacity() * opacity <= 0.01) return;
        const double here = item.opacity() * opacity;
        const QRectF rect = item.mapRectToScene({0, 0, item.width(), item.height()});
        const QRectF inside = item.clip() ? clip.intersected(rect) : clip;
        auto children = item.childItems();
        std::ranges::stable_sort(children, {}, [](const QQuickItem* child) { return child->z(); });
        for (auto* child : children)
            if (child->z() < 0) into(*child, inside, here);
        if (rect.width() > 0 && rect.height() > 0) found.push_back({&item, rect, rect.intersected(clip), here, false});
        for (auto* child : children)
            if (child->z() >= 0) into(*child, inside, here);
    }
};

} // namespace

std::vector<Shown> shownItems(const QQuickWindow& window)
{
    Walk walk;
    walk.into(*window.contentItem(), {0, 0, double(window.width()), double(window.height())}, 1);
    auto& all = walk.found;
    for (std::size_t over = 0; over < all.size(); ++over) {
        if (coverOf(all[over]) < hides || all[over].seen.isEmpty()) continue;
        const QRectF cover = all[over].seen.adjusted(-1, -1, 1, 1);
        for (std::size_t under = 0; under < over; ++under)
            if (!all[under].covered && !all[under].seen.isEmpty() && cover.contains(all[under].seen)
                && !holds(*all[under].item, *all[over].item))
                all[under].covered = true;
    }
    return std::move(all);
}

QQuickItem* scrollsAround(const QQuickItem& item)
{
    for (auto* at = item.parentItem(); at != nullptr; at = at->parentItem())
        if (at->inherits("QQuickFlickable")
            && (at->property("contentHeight").toReal() > at->height()
                || at->property("contentWidth").toReal() > at->width()))
            return at;
    return nullptr;
}

bool holds(const QQuickItem& ancestor, const QQuickItem& item)
{
    for (const auto* at = &item; at != nullptr; at = at->parentItem())
        if (at == &ancestor) return true;
    return false;
}

} // namespace proofwalk::rig
