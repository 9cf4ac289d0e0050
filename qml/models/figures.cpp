// SPDX-License-Identifier: GPL-3.0-or-later
#include "qml/models/figures.h"

#include "qml/parts/words.h"

#include <cmath>

namespace proofwalk::models {

double inUnit(const std::optional<base::Decimal>& inBase, const base::Unit& unit)
{
    return inBase ? base::toDouble(*inBase) / base::toDouble(unit.scale) : absent;
}

QString shortFigure(double value)
{
    if (std::isnan(value)) return {};
    // Four digits before the point are whole: no power of ten is ever shown.
    return std::abs(value) < 10000 ? QString::number(value, 'g', 4) : QString::number(value, 'f', 0);
}

QString written(const base::Quantity& quantity) { return QString::fromStdString(base::toText(quantity)); }

QString uncertaintyText(const std::optional<base::Decimal>& uncertainty)
{
    return uncertainty ? QStringLiteral("± ") + QString::fromStdString(base::toText(*uncertainty)) : QString();
}

QString rangeText(double lower, double upper)
{
    const std::vector<Argument> ends{{"lower", shortFigure(lower).toStdString()},
                                     {"upper", shortFigure(upper).toStdString()}};
    if (std::isnan(lower) && std::isnan(upper)) return {};
    if (std::isnan(lower)) return parts::phrase("window.at-most", ends);
    if (std::isnan(upper)) return parts::phrase("window.at-least", ends);
    return parts::phrase("window.between", ends);
}

} // namespace proofwalk::models
