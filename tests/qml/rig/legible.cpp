// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/qml/rig/legible.h"

#include "tests/qml/rig/written.h"

#include <cmath>

namespace proofwalk::rig {
namespace {

/// Layouts end on fractions of a unit; half of one is not seen.
constexpr double slack = 1.0;

QString figures(const QRectF& rect)
{
    return QStringLiteral("%1,%2 %3x%4")
        .arg(rect.x(), 0, 'f', 1)
        .arg(rect.y(), 0, 'f', 1)
        .arg(rect.width(), 0, 'f', 1)
        .arg(rect.height(), 0, 'f', 1);
}

/// What of `drawn` must be inside `bounds`: along an axis that scrolls nothing is asked.
bool within(const QRectF& drawn, const QRectF& bounds, bool scrollsX, bool scrollsY)
{
    const bool x = scrollsX || (drawn.left() >= bounds.left() - slack && drawn.right() <= bounds.right() + slack);
    const bool y = scrollsY || (drawn.top() >= bounds.top() - slack && drawn.bottom() <= bounds.bottom() + slack);
    return x && y;
}

/// The words from the inside out: each ancestor that clips, then the window, must hold them. A Flickable lets go of the
/// axis it scrolls, if they lie on its content.
void clipped(const QQuickWindow& window, const Written& words, Findings& findings)
{
    bool x = words.typed, y = words.typed;
    for (auto* at = words.shown.item->parentItem(); at != nullptr; at = at->parentItem()) {
        const QRectF box = at->mapRectToScene({0, 0, at->width(), at->height()});
        if (at->inherits("QQuickFlickable")) {
            x = x || at->property("contentWidth").toReal() > at->width() + slack;
            y = y || at->property("contentHeight").toReal() > at->height() + slack;
        }
        if (at->clip() && !within(words.drawn, box, x, y)) {
            findings.push_back({QStringLiteral("clipped"), describe(*words.shown.item),
                                figures(words.drawn) + QStringLiteral(" is cut by ") + describe(*at)});
            return;
        }
    }
    if (!within(words.drawn, {0, 0, double(window.width()), double(window.height())}, x, y))
        findings.push_back({QStringLiteral("clipped"), describe(*words.shown.item),
                            figures(words.drawn) + QStringLiteral(" leaves the window")});
}

void alone(const QQuickWindow& window, const Written& words, Findings& findings)
{
    const auto& item = *words.shown.item;
    const QString name = describe(item);
    if (words.truncated) findings.push_back({QStringLiteral("truncated"), name, words.text});
    if (words.pixels < leastType_px - 0.01)
        findings.push_back({QStringLiteral("small-type"), name, QStringLiteral("%1 px").arg(words.pixels)});
    if (!words.typed && !words.truncated
        && (words.drawn.width() > words.shown.rect.width() + slack
            || words.drawn.height() > words.shown.rect.height() + slack))
        findings.push_back({QStringLiteral("overflow"), name,
                            QStringLiteral("%1 in %2").arg(figures(words.drawn), figures(words.shown.rect))});
    clipped(window, words, findings);
}

bool drawsSolid(const QQuickItem& item)
{
    return item.inherits("QQuickRectangle") && item.property("color").value<QColor>().alpha() > 200;
}

/// Something solid drawn later over a part of the words. A bar over content that scrolls beneath it is how bars are.
void halfCovered(const std::vector<Shown>& shown, const Written& words, Findings& findings)
{
    bool after = false;
    const auto* scrolls = scrollsAround(*words.shown.item);
    for (const auto& other : shown) {
        if (other.item == words.shown.item) {
            after = true;
            continue;
        }
        if (!after || !drawsSolid(*other.item) || other.opacity < 0.8) continue;
        if (scrolls != nullptr && !holds(*scrolls, *other.item)) continue;
        const QRectF both = other.seen.intersected(words.drawn);
        if (both.width() > 2 && both.height() > 2) {
            findings.push_back({QStringLiteral("half-covered"), describe(*words.shown.item),
                                figures(both) + QStringLiteral(" lies under ") + describe(*other.item)});
            return;
        }
    }
}

} // namespace

Findings legible(const QQuickWindow& window)
{
    Findings findings;
    const auto shown = shownItems(window);
    std::vector<Written> open;
    for (auto& words : writtenItems(window))
        if (!words.shown.covered) open.push_back(std::move(words));
    for (std::size_t one = 0; one < open.size(); ++one) {
        alone(window, open[one], findings);
        const QRectF mine = open[one].drawn.intersected(open[one].shown.seen);
        if (mine.isEmpty()) continue;
        halfCovered(shown, open[one], findings);
        for (std::size_t other = one + 1; other < open.size(); ++other) {
            const QRectF both = mine.intersected(open[other].drawn.intersected(open[other].shown.seen));
            // A line's box has room above and below its letters: a pixel or two of it may be shared.
            if (both.width() > 2 && both.height() > 3)
                findings.push_back(
                    {QStringLiteral("overlap"), describe(*open[one].shown.item),
                     figures(both) + QStringLiteral(" shared with ") + describe(*open[other].shown.item)});
        }
    }
    return findings;
}

} // namespace proofwalk::rig
