// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/qml/rig/contrast.h"

#include "tests/qml/rig/written.h"

#include <algorithm>
#include <cmath>
#include <unordered_map>

namespace proofwalk::rig {
namespace {

double linear(double channel)
{
    return channel <= 0.04045 ? channel / 12.92 : std::pow((channel + 0.055) / 1.055, 2.4);
}

double ratio(double one, double other) { return (std::max(one, other) + 0.05) / (std::min(one, other) + 0.05); }

QColor over(const QColor& fore, double opacity, const QColor& ground)
{
    const double a = fore.alphaF() * opacity;
    const auto mix = [a](double f, double g) { return float(f * a + g * (1 - a)); };
    return QColor::fromRgbF(mix(fore.redF(), ground.redF()), mix(fore.greenF(), ground.greenF()),
                            mix(fore.blueF(), ground.blueF()));
}

double wanted(const Written& words) { return words.pixels >= 24 || (words.bold && words.pixels >= 18.66) ? 3.0 : 4.5; }

} // namespace

double luminance(const QColor& colour)
{
    return 0.2126 * linear(colour.redF()) + 0.7152 * linear(colour.greenF()) + 0.0722 * linear(colour.blueF());
}

double contrast(const QColor& one, const QColor& other) { return ratio(luminance(one), luminance(other)); }

double contrastIn(const QImage& grab, const QRect& part)
{
    const QRect inside = part.intersected(grab.rect());
    double least = 1, most = 0;
    std::unordered_map<QRgb, double> known;
    for (int y = inside.top(); y <= inside.bottom(); ++y)
        for (int x = inside.left(); x <= inside.right(); ++x) {
            const QRgb pixel = grab.pixel(x, y);
            auto [at, fresh] = known.try_emplace(pixel, 0.0);
            if (fresh) at->second = luminance(QColor(pixel));
            least = std::min(least, at->second);
            most = std::max(most, at->second);
        }
    return inside.isEmpty() ? 1 : ratio(least, most);
}

QColor groundOf(const QImage& grab, const QRect& part)
{
    const QRect inside = part.intersected(grab.rect());
    std::unordered_map<QRgb, int> count;
    for (int y = inside.top(); y <= inside.bottom(); ++y)
        for (int x = inside.left(); x <= inside.right(); ++x) ++count[grab.pixel(x, y)];
    if (count.empty()) return {};
    return QColor(std::ranges::max_element(count, {}, [](const auto& one) { return one.second; })->first);
}

Findings contrasts(const QQuickWindow& window, const QImage& grab)
{
    Findings findings;
    const double scale = window.width() > 0 ? double(grab.width()) / window.width() : 1;
    for (const auto& words : writtenItems(window)) {
        const QRectF seen = words.drawn.intersected(words.shown.seen);
        if (words.shown.covered || seen.width() < 3 || seen.height() < words.drawn.height() * 0.8) continue;
        const QRect part = QRectF(seen.topLeft() * scale, seen.size() * scale).toAlignedRect();
        const QColor ground = groundOf(grab, part);
        const double named = contrast(over(words.colour, words.shown.opacity, ground), ground);
        if (named < wanted(words) - 0.05)
            findings.push_back({QStringLiteral("contrast"), describe(*words.shown.item),
                                QStringLiteral("%1 on %2 is %3, wanted %4")
                                    .arg(words.colour.name(), ground.name())
                                    .arg(named, 0, 'f', 1)
                                    .arg(wanted(words))});
        else if (const double drawn = contrastIn(grab, part); drawn < 3)
            findings.push_back({QStringLiteral("faint"), describe(*words.shown.item),
                                QStringLiteral("drawn at %1").arg(drawn, 0, 'f', 1)});
    }
    return findings;
}

} // namespace proofwalk::rig
