// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/loopchart.h"

#include "core/report/filling.h"

#include <algorithm>
#include <cmath>
#include <limits>

namespace proofwalk::report {
namespace {

/// How far inside its nearest limit a point stands, less its uncertainty; in the chart's unit.
double roomLeft(const ChartPoint& point)
{
    double left = std::numeric_limits<double>::infinity();
    if (point.lower) left = std::min(left, point.value - *point.lower);
    if (point.upper) left = std::min(left, *point.upper - point.value);
    return left;
}

std::string answerOf(const words::Book& book, const RangeChart& chart)
{
    const ChartPoint* nearest = nullptr;
    std::int64_t past = 0, close = 0;
    for (const ChartPoint& point : chart.points) {
        past += point.verdict == Verdict::fail ? 1 : 0;
        close += point.verdict == Verdict::tooClose ? 1 : 0;
        if (nearest == nullptr || roomLeft(point) < roomLeft(*nearest)) nearest = &point;
    }
    if (nearest == nullptr || !std::isfinite(roomLeft(*nearest))) return {};
    auto left = base::fromDouble(std::fabs(roomLeft(*nearest)), -3);
    const std::string room = left ? base::toText(*left) : std::string("?");
    return book.phrase(
        past > 0    ? "report.loops.past"
        : close > 0 ? "report.loops.close"
                    : "report.loops.none",
        {{"past", past}, {"close", close}, {"zone", nearest->label}, {"room", room}, {"unit", chart.unit}});
}

} // namespace

RangeChart loopChart(const walk::State& state, const words::Book& book)
{
    RangeChart chart;
    chart.question = book.phrase("report.loops.question");
    chart.axis = book.phrase("report.loops.axis");
    std::optional<base::Decimal> common;
    bool same = true;
    for (const plan::Zone& zone : state.scope->plan->zones) {
        const walk::StepKey key{zone.id, "-", "loop-ohms"};
        const walk::ScopeStep* step = state.scope->step(key);
        const walk::StepView view = walk::viewStep(state, key);
        if (step == nullptr || view.newest == nullptr || !view.newest->answer.reading) continue;
        const auto scale = scaleOf(*step, *view.newest);
        if (!scale) continue;
        chart.unit = base::findUnit(step->step.unit)->written;
        chart.points.push_back({zone.zone, *scale->value, scale->uncertainty, scale->lower, scale->upper,
                                markOf(view.newest->verdict), base::toText(view.newest->answer.reading->value), false});
        same = same && zone.eol_ohm && (!common || base::compare(*common, *zone.eol_ohm) == 0);
        if (zone.eol_ohm) common = zone.eol_ohm;
        if (same && common) chart.nominal = inUnitOf(*step, *common);
    }
    if (!same) chart.nominal.reset();
    const auto nearest = std::ranges::min_element(chart.points, {}, roomLeft);
    if (nearest != chart.points.end()) nearest->named = true;
    chart.answer = answerOf(book, chart);
    chart.note = book.phrase("report.loops.note");
    return chart;
}

} // namespace proofwalk::report
