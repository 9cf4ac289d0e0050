// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/chart.h"

#include "core/report/book.h"
#include "core/report/marks.h"

#include <QtCharts/QChart>
#include <QtCharts/QLineSeries>
#include <QtCharts/QScatterSeries>
#include <QtCharts/QValueAxis>

#include <QGraphicsLayout>
#include <QGraphicsScene>

#include <algorithm>
#include <cmath>

namespace proofwalk::report {

namespace {

/// The three ways words stand on a chart.
struct Lettering {
    Style label, faint;
    explicit Lettering(const Palette& inks) : label{Face::figure, 13, inks.ink}, faint{Face::text, 13, inks.ink2} {}
};
constexpr double leastPitch = 24; ///< marks closer than that would touch
constexpr double leftMargin = 64; ///< room for the figures of the limits
constexpr double rightMargin = 15;

struct Extent {
    double low = 0;
    double high = 1;
};

/// Whether the nominal line lies in every doorway of these points; elsewhere it would cross masonry and mean nothing.
bool nominalShown(const RangeChart& chart, std::span<const ChartPoint> points)
{
    return chart.nominal && std::ranges::all_of(points, [&](const ChartPoint& point) {
               return point.lower.value_or(*chart.nominal) <= *chart.nominal
                   && point.upper.value_or(*chart.nominal) >= *chart.nominal;
           });
}

/// All values, whiskers and limits, with some masonry to see beyond the outermost limit.
Extent extentOf(const RangeChart& chart, std::span<const ChartPoint> points)
{
    Extent extent{1e300, -1e300};
    const auto take = [&](double number) {
        if (std::isfinite(number)) {
            extent.low = std::min(extent.low, number);
            extent.high = std::max(extent.high, number);
        }
    };
    bool lower = false;
    bool upper = false;
    for (const ChartPoint& point : points) {
        take(point.value - point.uncertainty);
        take(point.value + point.uncertainty);
        take(point.lower.value_or(point.value));
        take(point.upper.value_or(point.value));
        lower = lower || point.lower;
        upper = upper || point.upper;
    }
    if (nominalShown(chart, points)) {
        take(*chart.nominal);
    }
    if (extent.low > extent.high) {
        return {0, 1};
    }
    const double height = std::max({extent.high - extent.low, std::abs(extent.high) * 0.05, 1e-9});
    extent.low -= (lower ? 0.38 : 0.15) * height;
    extent.high += (upper ? 0.38 : 0.15) * height;
    return extent;
}

/// One whisker with its caps, as a line of its own.
QLineSeries* whiskerOf(double x, const ChartPoint& point, const QPen& pen, double cap)
{
    auto* series = new QLineSeries;
    const double low = point.value - point.uncertainty;
    const double high = point.value + point.uncertainty;
    for (const QPointF corner : {QPointF(x - cap, high), QPointF(x + cap, high), QPointF(x, high), QPointF(x, low),
                                 QPointF(x - cap, low), QPointF(x + cap, low)}) {
        series->append(corner);
    }
    series->setPen(pen);
    return series;
}

/// The QChart of the points in a scene of its own, in coordinates `typeFactor` times the grid's.
class PointChart {
public:
    PointChart(const QSizeF& size, const RangeChart& chart, std::span<const ChartPoint> points, const Palette& inks)
        : m_size(size * typeFactor), m_chart(new QChart)
    {
        m_scene.addItem(m_chart);
        m_chart->legend()->hide();
        m_chart->setBackgroundVisible(false);
        m_chart->setPlotAreaBackgroundVisible(false);
        m_chart->setMargins(QMargins(0, 0, 0, 0));
        m_chart->layout()->setContentsMargins(0, 0, 0, 0);
        addSeries(chart, points, inks);
        addAxes(extentOf(chart, points), points.size());
        m_chart->resize(m_size);
        m_chart->setPlotArea(QRectF(QPointF(0, 0), m_size));
        m_chart->layout()->activate();
    }

    /// A value at a place along the chart, in grid units from the plot's corner.
    QPointF at(double place, double value) const
    {
        return m_chart->mapToPosition(QPointF(place, value), m_points) / typeFactor;
    }

    void render(QPainter& painter, const QRectF& target)
    {
        m_scene.render(&painter, target, QRectF(QPointF(0, 0), m_size), Qt::IgnoreAspectRatio);
    }

private:
    void addSeries(const RangeChart& chart, std::span<const ChartPoint> points, const Palette& inks)
    {
        if (nominalShown(chart, points)) {
            auto* line = new QLineSeries;
            line->append(-0.5, *chart.nominal);
            line->append(static_cast<double>(points.size()) - 0.5, *chart.nominal);
            QPen pen = penOf(inks.ink2, 1.3 * typeFactor);
            pen.setDashPattern({4, 3});
            line->setPen(pen);
            m_chart->addSeries(line);
        }
        m_points = new QScatterSeries;
        const double cap = std::min(0.25, 5.0 * typeFactor * static_cast<double>(points.size()) / m_size.width());
        for (std::size_t i = 0; i < points.size(); ++i) {
            m_points->append(static_cast<double>(i), points[i].value);
            if (points[i].uncertainty > 0) {
                m_chart->addSeries(whiskerOf(static_cast<double>(i), points[i], penOf(inks.ink, 2 * typeFactor), cap));
            }
        }
        m_points->setMarkerSize(6 * typeFactor);
        m_points->setColor(inks.ink);
        m_points->setBorderColor(inks.ink);
        m_chart->addSeries(m_points);
    }

    void addAxes(const Extent& extent, std::size_t count)
    {
        auto* along = new QValueAxis;
        along->setRange(-0.5, static_cast<double>(count) - 0.5);
        auto* up = new QValueAxis;
        up->setRange(extent.low, extent.high);
        along->setVisible(false);
        up->setVisible(false);
        m_chart->addAxis(along, Qt::AlignBottom);
        m_chart->addAxis(up, Qt::AlignLeft);
        for (QAbstractSeries* series : m_chart->series()) {
            series->attachAxis(along);
            series->attachAxis(up);
        }
    }

    QSizeF m_size;
    QGraphicsScene m_scene; ///< owns the chart, which owns series and axes
    QChart* m_chart;
    QScatterSeries* m_points = nullptr;
};

/// Neighbours with one limit share one stretch of wall.
struct Stretch {
    std::size_t first = 0;
    std::size_t last = 0;
    double limit = 0;
};

std::vector<Stretch> stretchesOf(std::span<const ChartPoint> points, std::optional<double> ChartPoint::* limit)
{
    std::vector<Stretch> stretches;
    for (std::size_t i = 0; i < points.size(); ++i) {
        const std::optional<double>& here = points[i].*limit;
        if (!here) {
            continue;
        }
        if (!stretches.empty() && stretches.back().last + 1 == i && stretches.back().limit == *here) {
            stretches.back().last = i;
        } else {
            stretches.push_back({i, i, *here});
        }
    }
    return stretches;
}

/// The figures at the left of one chart, all with as many decimals as the finest of them needs.
class Figures {
public:
    Figures(const RangeChart& chart, std::span<const ChartPoint> points)
    {
        take(chart.nominal);
        for (const ChartPoint& point : points) {
            take(point.lower);
            take(point.upper);
        }
    }

    QString of(double number) const { return QString::number(number, 'f', m_decimals); }

private:
    void take(const std::optional<double>& number)
    {
        if (number) {
            const QString text = QString::number(*number, 'g', 6);
            const auto point = text.indexOf(QLatin1Char('.'));
            m_decimals =
                std::max(m_decimals,
                         point < 0 || text.contains(QLatin1Char('e')) ? 0 : static_cast<int>(text.size() - point - 1));
        }
    }

    int m_decimals = 0;
};

/// Draws one wall: masonry behind, its face towards the doorway 5 thick, its figure at the left where it is one.
void drawWall(Drawing& drawing, const QRectF& plot, const PointChart& chart, const std::vector<Stretch>& stretches,
              bool upper, const Figures& figures)
{
    const Palette& inks = drawing.inks();
    const Style limitStyle = Lettering(inks).label;
    for (const Stretch& stretch : stretches) {
        const double left = plot.left() + chart.at(static_cast<double>(stretch.first) - 0.5, stretch.limit).x();
        const double right = plot.left() + chart.at(static_cast<double>(stretch.last) + 0.5, stretch.limit).x();
        const double face = plot.top() + chart.at(0, stretch.limit).y();
        const QRectF masonry = upper ? QRectF(QPointF(left, plot.top()), QPointF(right, face))
                                     : QRectF(QPointF(left, face), QPointF(right, plot.bottom()));
        drawing.fill(masonry, inks.paper);
        drawing.hatch(masonry, inks.ink, 6.4, 0.8);
        drawing.frame(masonry, inks.ink, 1.4);
        const bool one = stretches.size() == 1;
        drawing.line(left - (one ? 6 : 0), face, right, face, inks.ink, 5.5);
        const QString figure = figures.of(stretch.limit);
        if (one) {
            drawing.textRight(plot.left() - 11, face + 4.5, figure, limitStyle);
        } else if (widthOf(figure, limitStyle) + 14 < right - left && masonry.height() > 26) {
            const QRectF plate(left + 5, upper ? face - 22 : face + 5, widthOf(figure, limitStyle) + 8, 17);
            drawing.fill(plate, inks.paper);
            drawing.text(plate.left() + 4, plate.top() + 13, figure, limitStyle);
        }
    }
}

/// Paper around what lies in the masonry, or the hatching would run through mark and whisker.
void drawHalos(Drawing& drawing, const QRectF& plot, const PointChart& chart, std::span<const ChartPoint> points)
{
    for (std::size_t i = 0; i < points.size(); ++i) {
        const double place = static_cast<double>(i);
        const double high = std::min(plot.top() + chart.at(place, points[i].value + points[i].uncertainty).y(),
                                     plot.top() + chart.at(place, points[i].value).y() - 8);
        const double low = std::max(plot.top() + chart.at(place, points[i].value - points[i].uncertainty).y(),
                                    plot.top() + chart.at(place, points[i].value).y() + 8);
        const double x = plot.left() + chart.at(place, points[i].value).x();
        const auto paperBetween = [&](double from, double to) {
            if (to - from > 4) {
                drawing.fill(QRectF(x - 10, from, 20, to - from), drawing.inks().paper);
            }
        };
        if (points[i].upper) {
            paperBetween(high - 3, std::min(low + 3, plot.top() + chart.at(place, *points[i].upper).y() - 2.75));
        }
        if (points[i].lower) {
            paperBetween(std::max(high - 3, plot.top() + chart.at(place, *points[i].lower).y() + 2.75), low + 3);
        }
    }
}

void drawPoints(Drawing& drawing, const QRectF& plot, const PointChart& chart, std::span<const ChartPoint> points)
{
    const Style labelStyle = Lettering(drawing.inks()).label;
    for (std::size_t i = 0; i < points.size(); ++i) {
        const QPointF mark = plot.topLeft() + chart.at(static_cast<double>(i), points[i].value);
        drawVerdict(drawing, mark, 6.8, points[i].verdict);
        if (points[i].named) {
            const QString figure = words(points[i].figure);
            const double width = widthOf(figure, labelStyle);
            const bool right = mark.x() + 13 + width < plot.right();
            const double x = right ? mark.x() + 12 : mark.x() - 12 - width;
            drawing.fill(QRectF(x - 2, mark.y() - 7, width + 4, 14), drawing.inks().done);
            drawing.text(x, mark.y() + 4.5, figure, labelStyle);
        }
    }
}

} // namespace

std::size_t pointsAcross(const RangeChart& chart, double width)
{
    const Style labelStyle = Lettering({}).label;
    double pitch = leastPitch;
    for (const ChartPoint& point : chart.points) {
        pitch = std::max(pitch, widthOf(words(point.label), labelStyle) + 8);
    }
    return std::max<std::size_t>(1, static_cast<std::size_t>((width - leftMargin - rightMargin) / pitch));
}

void drawChart(Drawing& drawing, const QRectF& box, const RangeChart& chart, std::span<const ChartPoint> points)
{
    const Palette& inks = drawing.inks();
    const auto [labelStyle, faint] = Lettering(inks);
    drawing.fill(box, inks.film);
    const QRectF plot = box.adjusted(leftMargin, 16, -rightMargin, -42);
    PointChart pointChart(plot.size(), chart, points, inks);
    drawing.fill(plot, inks.done);
    const auto upper = stretchesOf(points, &ChartPoint::upper);
    const auto lower = stretchesOf(points, &ChartPoint::lower);
    const Figures figures(chart, points);
    drawWall(drawing, plot, pointChart, upper, true, figures);
    drawWall(drawing, plot, pointChart, lower, false, figures);
    drawHalos(drawing, plot, pointChart, points);
    pointChart.render(drawing.painter(), plot);
    drawPoints(drawing, plot, pointChart, points);
    drawing.textRight(plot.left() - 11, plot.top() + 18, words(chart.unit), faint);
    if (nominalShown(chart, points)) {
        const double y = plot.top() + pointChart.at(0, *chart.nominal).y();
        drawing.textRight(plot.left() - 11, y + 4.5, figures.of(*chart.nominal), faint);
    }
    for (std::size_t i = 0; i < points.size(); ++i) {
        const double x = plot.left() + pointChart.at(static_cast<double>(i), points[i].value).x();
        drawing.textCentre(x, plot.bottom() + 18, words(points[i].label), labelStyle);
    }
    drawing.text(plot.left(), plot.bottom() + 37, elided(words(chart.axis), faint, plot.width()), faint);
}

} // namespace proofwalk::report
