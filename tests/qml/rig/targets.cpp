// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/qml/rig/targets.h"

#include "tests/qml/rig/controls.h"

namespace proofwalk::rig {
namespace {

constexpr double slack = 0.5;

bool isVerdict(const QQuickItem& item)
{
    return QByteArray(item.metaObject()->className()).startsWith("VerdictButton");
}

void alone(const Control& control, Findings& findings)
{
    const auto& item = *control.shown.item;
    const double high = isVerdict(item) ? leastVerdict : leastTarget;
    const QRectF& rect = control.shown.rect;
    if (rect.width() < leastTarget - slack || rect.height() < high - slack)
        findings.push_back({QStringLiteral("small-target"), describe(item),
                            QStringLiteral("wanted %1x%2").arg(leastTarget).arg(high)});
    const QRectF& seen = control.shown.seen;
    const bool cut = seen.width() * seen.height() < rect.width() * rect.height() / 2;
    if (cut && scrollsAround(item) == nullptr)
        findings.push_back({QStringLiteral("out-of-reach"), describe(item),
                            QStringLiteral("only %1x%2 of it is seen").arg(seen.width()).arg(seen.height())});
}

} // namespace

Findings targets(const QQuickWindow& window)
{
    Findings findings;
    std::vector<Control> open;
    for (auto& control : controlsOf(window))
        if (!control.shown.covered) open.push_back(std::move(control));
    for (std::size_t one = 0; one < open.size(); ++one) {
        alone(open[one], findings);
        for (std::size_t other = one + 1; other < open.size(); ++other) {
            const QRectF both = open[one].shown.seen.intersected(open[other].shown.seen);
            if (both.width() <= 1 || both.height() <= 1) continue;
            if (holds(*open[one].shown.item, *open[other].shown.item)
                || holds(*open[other].shown.item, *open[one].shown.item))
                continue;
            findings.push_back({QStringLiteral("targets-overlap"), describe(*open[one].shown.item),
                                QStringLiteral("%1x%2 shared with ").arg(both.width()).arg(both.height())
                                    + describe(*open[other].shown.item)});
        }
    }
    return findings;
}

} // namespace proofwalk::rig
