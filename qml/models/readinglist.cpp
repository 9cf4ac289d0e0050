// SPDX-License-Identifier: GPL-3.0-or-later
#include "qml/models/readinglist.h"

#include "core/report/filling.h"
#include "qml/models/desk.h"
#include "qml/models/telling.h"

#include <algorithm>

namespace proofwalk::models {
namespace {

ReadingRow rowOf(const Snapshot& job, const walk::ScopeStep& step, const walk::Attempt& attempt)
{
    ReadingRow row;
    row.subject = text(walk::nameOfSubject(job.scope(), step.key));
    row.step = text(step.key.name).replace('-', ' ');
    row.figure = text(report::readingText(attempt.answer));
    row.limits = text(report::limitText(step));
    row.time = text(base::localTime(attempt.fact.at));
    if (const walk::ScopeDevice* owner = job.scope().ownerOf(step.key)) row.tag = text(owner->device->tag);
    if (const auto scale = report::scaleOf(step, attempt)) {
        row.value = scale->value.value_or(absent);
        row.uncertainty = scale->uncertainty;
        row.lower = scale->lower.value_or(absent);
        row.upper = scale->upper.value_or(absent);
    }
    row.verdict = markOf(attempt.verdict);
    row.word = verdictWord(attempt.verdict);
    return row;
}

} // namespace

ReadingList::ReadingList(QObject* parent) : Rows(parent)
{
    connect(&Desk::instance(), &Desk::opened, this, &ReadingList::refresh);
    connect(&Desk::instance(), &Desk::published, this, &ReadingList::refresh);
    refresh();
}

void ReadingList::refresh()
{
    const auto job = Desk::instance().job();
    std::vector<ReadingRow> rows;
    if (job != nullptr) {
        const auto add = [&](const walk::StepKey& key) {
            const walk::StepView view = walk::viewStep(job->state(), key);
            if (view.newest == nullptr || !view.newest->answer.reading) return;
            rows.push_back(rowOf(*job, *job->scope().step(key), *view.newest));
        };
        std::set<walk::StepKey> shown; // a step of a zone stands on several cards
        for (const std::size_t index : job->order())
            for (const walk::StepKey& key : job->scope().devices[index].steps)
                if (shown.insert(key).second) add(key);
        for (const walk::ScopeSequence& sequence : job->scope().sequences)
            for (const walk::StepKey& key : sequence.steps)
                if (shown.insert(key).second) add(key);
    }
    replace(std::move(rows));
}

} // namespace proofwalk::models
