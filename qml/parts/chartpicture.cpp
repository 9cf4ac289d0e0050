// SPDX-License-Identifier: GPL-3.0-or-later
#include "qml/parts/chartpicture.h"

#include "core/report/chart.h"

#include <algorithm>

namespace proofwalk::parts {
namespace {

std::optional<double> present(double number)
{
    if (std::isnan(number)) return {};
    return number;
}

} // namespace

void ChartPicture::setPoints(QAbstractItemModel* points)
{
    if (setSource(points)) Q_EMIT pointsChanged();
}

void ChartPicture::setUnit(const QString& unit)
{
    if (take(m_unit, unit)) Q_EMIT unitChanged();
}

void ChartPicture::setAxis(const QString& axis)
{
    if (take(m_axis, axis)) Q_EMIT axisChanged();
}

void ChartPicture::setNominal(double nominal)
{
    if (take(m_nominal, nominal)) Q_EMIT nominalChanged();
}

void ChartPicture::reread()
{
    m_chart.points.clear();
    for (int row = 0; row < rows(); ++row) {
        report::ChartPoint point;
        point.label = at(row, "label").toString().toStdString();
        point.value = at(row, "value").toDouble();
        point.uncertainty = at(row, "uncertainty").toDouble();
        point.lower = present(at(row, "lower").toDouble());
        point.upper = present(at(row, "upper").toDouble());
        point.verdict = verdictOf(at(row, "verdict").toInt()).value_or(report::Verdict::toDo);
        point.figure = at(row, "figure").toString().toStdString();
        point.named = at(row, "named").toBool();
        m_chart.points.push_back(std::move(point));
    }
    update();
}

void ChartPicture::draw(report::Drawing& drawing)
{
    if (m_chart.points.empty()) return;
    m_chart.unit = m_unit.toStdString();
    m_chart.axis = m_axis.toStdString();
    m_chart.nominal = present(m_nominal);
    // One below the other where not all fit side by side; the last row may be shorter, so its points keep their distance.
    const std::size_t across = std::min(report::pointsAcross(m_chart, width()), m_chart.points.size());
    const std::size_t lines = (m_chart.points.size() + across - 1) / across;
    const double high = height() / static_cast<double>(lines);
    const std::span<const report::ChartPoint> points(m_chart.points);
    for (std::size_t line = 0; line < lines; ++line) {
        const auto some = points.subspan(line * across, std::min(across, points.size() - line * across));
        const QRectF box(0, static_cast<double>(line) * high, width(), high);
        report::drawChart(drawing, box, m_chart, some);
    }
}

} // namespace proofwalk::parts
