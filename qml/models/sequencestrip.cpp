// SPDX-License-Identifier: GPL-3.0-or-later
#include "qml/models/sequencestrip.h"

#include "qml/models/desk.h"
#include "qml/models/figures.h"
#include "qml/models/stepref.h"
#include "qml/models/telling.h"
#include "qml/models/whereabouts.h"
#include "qml/parts/words.h"

#include <algorithm>

namespace proofwalk::models {
namespace {

/// The area a sequence's step belongs to: its subject, or its timer's.
const plan::Area* areaOf(const plan::Plan& plan, const walk::StepKey& key)
{
    std::string name;
    for (const plan::Timer& timer : plan.timers)
        if (timer.id == key.subject) name = timer.area;
    for (const plan::Area& area : plan.areas)
        if (area.id == key.subject || area.area == name) return &area;
    return nullptr;
}

/// The first that waits; one that may be left out waits only until somebody has gone past it. -1: none.
int firstWaiting(const std::vector<SequenceRow>& rows)
{
    const auto last = std::find_if(rows.rbegin(), rows.rend(), [](const SequenceRow& row) { return row.answered; });
    for (auto row = rows.begin(); row != rows.end(); ++row)
        if (!row->answered && (row->core || row >= last.base())) return static_cast<int>(row - rows.begin());
    return -1;
}

} // namespace

SequenceStrip::SequenceStrip(QObject* parent) : Rows(parent), m_asking(this, [this] { Q_EMIT askingChanged(); })
{
    connect(&Desk::instance(), &Desk::opened, this, &SequenceStrip::refresh);
    connect(&Desk::instance(), &Desk::published, this, &SequenceStrip::refresh);
}

void SequenceStrip::setSequence(const QString& sequence)
{
    if (sequence == m_sequence) return;
    m_sequence = sequence;
    m_chosen = -1;
    m_area = Whereabouts::instance().draft("sequence/" + sequence).toInt();
    refresh();
}

void SequenceStrip::setArea(int area)
{
    if (area == m_area || area < 0 || area >= static_cast<int>(m_areas.size())) return;
    m_area = area;
    m_chosen = -1;
    Whereabouts::instance().setDraft("sequence/" + m_sequence, QString::number(area));
    refresh();
}

const SequenceRow* SequenceStrip::row() const
{
    return m_inHand < 0 ? nullptr : &rows()[static_cast<std::size_t>(m_inHand)];
}

SequenceRow SequenceStrip::rowOf(const Snapshot& job, const walk::StepKey& key) const
{
    SequenceRow row;
    const catalogue::Step& step = job.scope().step(key)->step;
    row.subject = subjectWord(*job.scope().plan, key.subject);
    row.step = text(key.name);
    row.act = text(step.act);
    row.expect = text(step.expect);
    row.caution = text(step.caution);
    row.never = text(step.never);
    row.timed = step.kind == catalogue::StepKind::time || step.kind == catalogue::StepKind::read;
    row.core = step.core;
    const walk::StepView view = walk::viewStep(job.state(), key);
    row.verdict = markOf(view.verdict);
    row.answered = view.answered() && view.verdict != walk::Verdict::retest;
    if (view.newest != nullptr) {
        row.seen = seenOf(view.newest->answer.how);
        if (view.newest->answer.reading) row.figure = written(*view.newest->answer.reading);
    }
    row.possible = std::ranges::find(step.states, walk::stateFor(job.state(), key)) != step.states.end();
    if (!row.possible) row.wants = text(std::string(catalogue::wordOf(step.states.front())));
    return row;
}

void SequenceStrip::refresh()
{
    const auto job = Desk::instance().job();
    std::vector<SequenceRow> rows;
    m_title = m_summary = m_stateWord = m_doneWords = {};
    m_areas.clear();
    m_areaTitles.clear();
    m_modes.clear();
    m_set = false;
    m_inHand = -1;
    const walk::ScopeSequence* sequence = nullptr;
    if (job != nullptr)
        for (const auto& each : job->scope().sequences)
            if (text(each.name) == m_sequence) sequence = &each;
    std::int64_t done = 0;
    if (sequence != nullptr) {
        m_title = text(sequence->title);
        for (const auto& each : job->scope().catalogue->sequences())
            if (each.name == sequence->name) m_summary = text(each.summary);
        const plan::Plan& plan = *job->scope().plan;
        for (const walk::StepKey& key : sequence->steps)
            if (const auto* area = areaOf(plan, key); area != nullptr && !m_areas.contains(text(area->area))) {
                m_areas.append(text(area->area));
                m_areaTitles.append(text(area->name.empty() ? area->area : area->name));
            }
        m_area = std::clamp(m_area, 0, std::max(0, static_cast<int>(m_areas.size()) - 1));
        for (const walk::StepKey& key : sequence->steps) {
            const auto* area = areaOf(plan, key);
            if (area == nullptr || text(area->area) != m_areas.value(m_area)) continue;
            rows.push_back(rowOf(*job, key));
            done += rows.back().answered ? 1 : 0;
            const auto state = walk::areaState(job->state(), area->id);
            m_set = state == catalogue::SystemState::set;
            m_stateWord = parts::phrase("window.state." + std::string(catalogue::wordOf(state)));
        }
        for (const plan::Mode& mode : plan.modes)
            if (std::ranges::find(mode.areas, m_areas.value(m_area).toStdString()) != mode.areas.end())
                m_modes.append(text(mode.mode));
        m_doneWords =
            parts::phrase("window.some-of", {{"some", done}, {"all", static_cast<std::int64_t>(rows.size())}});
        m_inHand = m_chosen >= 0 && m_chosen < static_cast<int>(rows.size()) ? m_chosen : firstWaiting(rows);
        if (m_inHand >= 0) rows[static_cast<std::size_t>(m_inHand)].here = true;
    }
    replace(std::move(rows));
    Q_EMIT changed();
}

QString SequenceStrip::wantsWords() const
{
    return wants().isEmpty()
             ? QString()
             : parts::phrase("window.now-state",
                             {{"state", parts::phrase("window.state." + wants().toStdString()).toStdString()}});
}

void SequenceStrip::choose(int row)
{
    m_chosen = row;
    refresh();
}

void SequenceStrip::answer(base::Json::Object more)
{
    if (row() == nullptr) return;
    more.merge(named(row()->subject));
    more["do"] = "answer";
    more["step"] = row()->step.toStdString();
    m_asking.tell(std::move(more), [this] {
        choose(-1);
        Q_EMIT answered();
    });
}

void SequenceStrip::asPlanned() { answer({{"result", "as-planned"}}); }

void SequenceStrip::noAccess(const QString& reason)
{
    answer({{"result", "no-access"}, {"reason", reason.toStdString()}});
}

void SequenceStrip::notApplicable(const QString& reason)
{
    answer({{"result", "not-applicable"}, {"reason", reason.toStdString()}});
}

void SequenceStrip::sayState()
{
    if (wants().isEmpty()) return;
    const bool mode = wants() == QStringLiteral("set") && !m_modes.isEmpty();
    if (mode && m_modes.size() > 1) {
        Whereabouts::instance().go(Whereabouts::Walk, QStringLiteral("state"), m_areas.value(m_area));
        return;
    }
    base::Json::Object command{
        {"do", "state"}, {"area", m_areas.value(m_area).toStdString()}, {"state", wants().toStdString()}};
    if (mode) command["mode"] = m_modes.constFirst().toStdString();
    m_asking.tell(std::move(command));
}

} // namespace proofwalk::models
