// SPDX-License-Identifier: GPL-3.0-or-later
#include "qml/models/loopreadings.h"

#include "core/report/loopchart.h"
#include "qml/models/desk.h"
#include "qml/models/telling.h"
#include "qml/parts/words.h"

namespace proofwalk::models {
namespace {

walk::Verdict verdictOf(report::Verdict verdict)
{
    switch (verdict) {
    case report::Verdict::pass: return walk::Verdict::pass;
    case report::Verdict::fail: return walk::Verdict::fail;
    case report::Verdict::tooClose: return walk::Verdict::tooClose;
    case report::Verdict::noAccess: return walk::Verdict::noAccess;
    case report::Verdict::running: return walk::Verdict::running;
    case report::Verdict::toDo: return walk::Verdict::toDo;
    case report::Verdict::notApplicable: return walk::Verdict::notApplicable;
    case report::Verdict::retest: return walk::Verdict::retest;
    }
    return walk::Verdict::toDo;
}

QString firstOn(const walk::Scope& scope, const plan::Zone& zone)
{
    const auto on = scope.devicesOfZone.find(zone.id);
    if (on == scope.devicesOfZone.end() || on->second.empty()) return {};
    return text(scope.devices[on->second.front()].device->tag);
}

} // namespace

LoopReadings::LoopReadings(QObject* parent) : Rows(parent)
{
    connect(&Desk::instance(), &Desk::opened, this, &LoopReadings::refresh);
    connect(&Desk::instance(), &Desk::published, this, &LoopReadings::refresh);
    refresh();
}

void LoopReadings::refresh()
{
    const auto job = Desk::instance().job();
    std::vector<LoopRow> rows;
    m_question = parts::phrase("report.loops.question");
    m_answer = parts::phrase("window.no-loops-read");
    if (job != nullptr) {
        const report::RangeChart chart = report::loopChart(job->state(), parts::book());
        if (!chart.points.empty()) m_answer = text(chart.answer);
        m_unit = text(chart.unit);
        m_axis = text(chart.axis);
        m_nominal = chart.nominal.value_or(absent);
        for (const report::ChartPoint& point : chart.points) {
            LoopRow row;
            row.label = text(point.label);
            if (const plan::Zone* zone = job->scope().plan->findZone(point.label)) {
                row.place = text(zone->label);
                row.tag = firstOn(job->scope(), *zone);
            }
            row.value = point.value;
            row.uncertainty = point.uncertainty;
            row.lower = point.lower.value_or(absent);
            row.upper = point.upper.value_or(absent);
            row.verdict = static_cast<int>(point.verdict);
            row.word = verdictWord(verdictOf(point.verdict));
            row.figure = text(point.figure);
            row.spread = point.uncertainty > 0 ? QStringLiteral("± ") + shortFigure(point.uncertainty) : QString();
            row.limits = rangeText(row.lower, row.upper);
            row.named = point.named;
            rows.push_back(std::move(row));
        }
    }
    replace(std::move(rows));
    Q_EMIT changed();
}

} // namespace proofwalk::models
