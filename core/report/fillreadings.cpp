// SPDX-License-Identifier: GPL-3.0-or-later
// The sheet of readings: which loops stand near their limit, and whether the timers were on time.
#include "core/report/filling.h"
#include "core/report/loopchart.h"

namespace proofwalk::report {
namespace {

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
    if (RangeChart chart = loopChart(filling.state, filling.ground.book); !chart.points.empty())
        contents.charts.push_back(std::move(chart));
    fillTimers(filling, contents);
    contents.readingsClosing = filling.phrase("report.first-walk");
}

} // namespace proofwalk::report
