// SPDX-License-Identifier: GPL-3.0-or-later
// Readings as answers to questions: a chart, the same numbers as a table beneath, and the timers on their scales.
#include "core/report/chart.h"
#include "core/report/marks.h"
#include "core/report/scale.h"
#include "core/report/sheets.h"

#include <algorithm>

namespace proofwalk::report {

namespace {

constexpr double chartHeight = 308;
constexpr double tableRow = 38;
constexpr std::size_t tableAcross = 14;
const Style question{Face::strong, 18, ink};
const Style body{Face::text, 15, ink};
const Style small{Face::text, 13, ink2};
const Style plain{Face::text, 13, ink};
const Style figure{Face::figure, 13, ink};

/// A row of the table under a chart: label above, figure below, in as many cells as the labels leave room for.
void drawTableRow(Drawing& drawing, std::span<const ChartPoint> points, std::size_t across, double top, bool first)
{
    const double pitch = (textRight - textLeft) / static_cast<double>(across);
    if (!first) {
        drawing.rule(top, textLeft, textLeft + pitch * static_cast<double>(points.size()), hair);
    }
    for (std::size_t i = 0; i < points.size(); ++i) {
        const double left = textLeft + pitch * static_cast<double>(i);
        drawing.line(left, top, left, top + tableRow, hair, 1);
        const bool marked = points[i].verdict != Verdict::pass;
        if (marked) {
            drawing.fill(QRectF(left + 1, top + 1, pitch - 2, tableRow - 2), tintOf(points[i].verdict));
            drawVerdict(drawing, QPointF(left + 10, top + 25), 5.5, points[i].verdict);
        }
        const double middle = left + pitch / 2 + (marked ? 7 : 0);
        drawing.textCentre(left + pitch / 2, top + 15, elided(words(points[i].label), plain, pitch - 6), plain);
        drawing.textCentre(middle, top + 31, elided(words(points[i].figure), figure, pitch - 6 - (marked ? 14 : 0)),
                           figure);
    }
}

std::size_t cellsAcross(const RangeChart& chart)
{
    double widest = 0;
    for (const ChartPoint& point : chart.points) {
        widest = std::max({widest, widthOf(words(point.label), plain), widthOf(words(point.figure), figure) + 12});
    }
    const auto fitting = static_cast<std::size_t>((textRight - textLeft) / (widest + 10));
    return std::clamp<std::size_t>(fitting, 1, tableAcross);
}

double drawQuestion(Drawing& drawing, const std::string& asked, const std::string& answered, double top)
{
    const QStringList head = wrapped(words(asked), question, textRight - textLeft);
    const double y = drawing.lines(textLeft, top + 27, head, question, 23);
    const QStringList answer = wrapped(words(answered), body, textRight - textLeft);
    return drawing.lines(textLeft, y + 1, answer, body, 20) - 7;
}

double questionHeight(const RangeChart& chart)
{
    const auto heads = wrapped(words(chart.question), question, textRight - textLeft).size();
    const auto answers = wrapped(words(chart.answer), body, textRight - textLeft).size();
    return 21 + 23.0 * static_cast<double>(heads) + 20.0 * static_cast<double>(answers);
}

void drawRange(Book& book, Flow& flow, const RangeChart& chart)
{
    Drawing& drawing = book.drawing();
    const double width = frameRight - frameLeft - 2;
    const std::size_t all = chart.points.size();
    // Several charts of equal length rather than a full one and a stump.
    const std::size_t across = pointsAcross(chart, width);
    const std::size_t charts = (all + across - 1) / std::max<std::size_t>(across, 1);
    const std::size_t each = charts == 0 ? 0 : (all + charts - 1) / charts;
    const double head = questionHeight(chart);
    const double top = flow.place(head + (all == 0 ? 0 : chartHeight));
    if (top > 130) {
        drawing.rule(top, frameLeft, frameRight, ink, 2);
    }
    double y = drawQuestion(drawing, chart.question, chart.answer, top);
    const std::span<const ChartPoint> points(chart.points);
    for (std::size_t first = 0; first < all; first += each) {
        if (first > 0) {
            y = flow.place(chartHeight);
        }
        drawChart(drawing, QRectF(frameLeft + 1, y, width, chartHeight), chart,
                  points.subspan(first, std::min(each, all - first)));
    }
    flow.skip(8);
    const std::size_t cells = cellsAcross(chart);
    for (std::size_t first = 0; first < all; first += cells) {
        const double row = flow.place(tableRow);
        drawTableRow(drawing, points.subspan(first, std::min(cells, all - first)), cells, row, false);
    }
    const QStringList note = wrapped(words(chart.note), small, textRight - textLeft);
    if (!note.isEmpty()) {
        const double at = flow.place(8 + 18.0 * static_cast<double>(note.size()));
        drawing.lines(textLeft, at + 18, note, small, 18);
    }
    flow.skip(8);
}

void drawTimer(Drawing& drawing, const TimerStrip& timer, double left, double top)
{
    const Style reading{Face::figure, 15, ink};
    drawing.text(left, top + 14, elided(words(timer.name), plain, 236), plain);
    drawing.text(left, top + 33, elided(words(timer.reading), reading, 126), reading);
    const QRectF box(left + 130, top + 18, 106, 20);
    drawScale(drawing, box, timer.scale);
}

void drawTimers(Book& book, Flow& flow)
{
    const Contents& contents = book.contents();
    if (contents.timers.empty() && contents.timersAnswer.empty()) {
        return;
    }
    constexpr std::size_t across = 3;
    constexpr double pitch = 266;
    constexpr double row = 50;
    Drawing& drawing = book.drawing();
    const QString head = words(book.labels().timers);
    const double beside = textLeft + widthOf(head, question) + 30;
    const QStringList answer = wrapped(words(contents.timersAnswer), body, textRight - beside, 0);
    const double headHeight = 40 + 20.0 * static_cast<double>(std::max<qsizetype>(answer.size() - 1, 0));
    const double top = flow.place(headHeight + row);
    flow.skip(-row);
    if (top > 130) {
        drawing.rule(top, frameLeft, frameRight, ink, 1);
    }
    drawing.text(textLeft, top + 27, head, question);
    drawing.lines(beside, top + 27, answer, body, 20);
    for (std::size_t first = 0; first < contents.timers.size(); first += across) {
        const double y = flow.place(row);
        for (std::size_t i = first; i < std::min(first + across, contents.timers.size()); ++i) {
            drawTimer(drawing, contents.timers[i], textLeft + pitch * static_cast<double>(i - first), y);
        }
    }
}

} // namespace

void drawReadings(Book& book)
{
    const Contents& contents = book.contents();
    Drawing& drawing = book.drawing();
    const bool none = contents.charts.empty() && contents.timers.empty();
    Flow flow(book, [&book, none](bool continued) {
        book.begins("readings");
        const Labels& labels = book.labels();
        return drawHead(book, words(labels.readings), words(none ? labels.noReadings : labels.readingsLine), continued);
    });
    for (const RangeChart& chart : contents.charts) {
        drawRange(book, flow, chart);
    }
    drawTimers(book, flow);
    const QStringList closing = wrapped(words(contents.readingsClosing), small, textRight - textLeft);
    if (!closing.isEmpty()) {
        const double top = flow.place(14 + 18.0 * static_cast<double>(closing.size()));
        drawing.lines(textLeft, top + 22, closing, small, 18);
    }
}

} // namespace proofwalk::report
