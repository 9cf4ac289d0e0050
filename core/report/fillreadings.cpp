// SPDX-License-Identifier: GPL-3.0-or-later
// The sheet of readings: which loops stand near their limit, and whether the timers were on time.
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

std::string answerOf(const Filling& filling, const RangeChart& chart)
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
    return filling.phrase(
        past > 0    ? "report.loops.past"
        : close > 0 ? "report.loops.close"
                    : "report.loops.none",
        {{"past", past}, {"close", close}, {"zone", nearest->label}, {"room", room}, {"unit", chart.unit}});
}

/// Every loop that was read, in the order of the plan's zones.
RangeChart loopChart(const Filling& filling)
{
    RangeChart chart;
    chart.question = filling.phrase("report.loops.question");
    chart.axis = filling.phrase("report.loops.axis");
    std::optional<base::Decimal> common;
    bool same = true;
    for (const plan::Zone& zone : filling.plan.zones) {
        const walk::StepKey key{zone.id, "-", "loop-ohms"};
        const walk::ScopeStep* step = filling.scope.step(key);
        const walk::StepView view = walk::viewStep(filling.state, key);
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
    chart.answer = answerOf(filling, chart);
    chart.note = filling.phrase("report.loops.note");
    return chart;
}

void fillTimers(const Filling& filling, Contents& contents)
{
    bool all = true;
    for (const plan::Timer& timer : filling.plan.timers) {
        for (auto each = filling.scope.steps.lower_bound({timer.id, "", ""});
             each != filling.scope.steps.end() && each->first.subject == timer.id; ++each) {
            const walk::StepView view = walk::viewStep(filling.state, each->first);
            if (view.newest == nullptr || !view.newest->answer.reading) continue;
            const auto scale = scaleOf(each->second, *view.newest);
            if (!scale) continue;
            all = all && view.verdict == walk::Verdict::pass;
            contents.timers.push_back({timer.timer + ", " + timer.area, readingText(view.newest->answer), *scale});
        }
    }
    if (!contents.timers.empty())
        contents.timersAnswer = filling.phrase(all ? "report.timers.all" : "report.timers.not-all");
}

} // namespace

void fillReadings(const Filling& filling, Contents& contents)
{
    if (RangeChart chart = loopChart(filling); !chart.points.empty()) contents.charts.push_back(std::move(chart));
    fillTimers(filling, contents);
    contents.readingsClosing = filling.phrase("report.first-walk");
}

} // namespace proofwalk::report
