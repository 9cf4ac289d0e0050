// SPDX-License-Identifier: GPL-3.0-or-later
#include "qml/models/retestlist.h"

#include "core/walk/retest.h"
#include "qml/models/desk.h"
#include "qml/models/findingtelling.h"
#include "qml/models/telling.h"
#include "qml/parts/words.h"

#include <algorithm>
#include <map>
#include <set>

namespace proofwalk::models {
namespace {

/// For each step in doubt, which of the touched words put it there: core is asked for each word alone.
std::map<walk::StepKey, QStringList> doubts(const walk::State& state, const walk::StepKey& key,
                                            const std::vector<std::string>& touched)
{
    std::map<walk::StepKey, QStringList> doubtful;
    for (const walk::StepKey& step : walk::stepsToRetest(state, {key}, touched)) doubtful[step];
    for (const std::string& word : touched)
        for (const walk::StepKey& step : walk::stepsToRetest(state, {key}, {word}))
            if (step != key) doubtful[step].push_back(parts::phrase("window.touched." + word));
    return doubtful;
}

QString reason(const walk::StepKey& step, const walk::StepKey& failed, const QStringList& because)
{
    if (step == failed) return parts::phrase("window.retest.failed");
    return parts::phrase("window.retest.touched", {{"what", because.join(QStringLiteral(", ")).toStdString()}});
}

} // namespace

RetestList::RetestList(QObject* parent) : Rows(parent)
{
    connect(&Desk::instance(), &Desk::opened, this, &RetestList::refresh);
    connect(&Desk::instance(), &Desk::published, this, &RetestList::refresh);
}

QStringList RetestList::touchable() const
{
    QStringList words;
    for (const std::string& word : walk::touchableWords()) words.push_back(text(word));
    return words;
}

QList<bool> RetestList::marks() const
{
    QList<bool> marks;
    for (const QString& word : touchable()) marks.push_back(m_touched.contains(word));
    return marks;
}

void RetestList::turn(const QString& word, bool on)
{
    QStringList touched = touchable();
    touched.removeIf([&](const QString& each) { return each == word ? !on : !m_touched.contains(each); });
    setTouched(touched);
}

void RetestList::setKey(const QString& key)
{
    if (key == m_key) return;
    m_key = key;
    Q_EMIT asked();
    refresh();
}

void RetestList::setTouched(const QStringList& touched)
{
    if (touched == m_touched) return;
    m_touched = touched;
    Q_EMIT asked();
    refresh();
}

void RetestList::setRecorded(bool recorded)
{
    if (recorded == m_recorded) return;
    m_recorded = recorded;
    Q_EMIT asked();
    refresh();
}

void RetestList::refresh()
{
    const auto job = Desk::instance().job();
    const auto key = job == nullptr ? std::nullopt : keyFrom(job->scope(), m_key);
    const auto noticed = key ? noticedAt(*job, *key) : std::nullopt;
    std::vector<walk::StepKey> steps;
    std::vector<std::string> touched;
    if (noticed && noticed->finding && m_recorded && !noticed->finding->repairs.empty()) {
        const walk::RepairBody& repair = noticed->finding->repairs.back()->body;
        steps = repair.retest; // as recorded: not what would be in doubt today
        touched = repair.touched;
    } else if (key && !m_recorded && !m_touched.isEmpty()) {
        for (const QString& word : m_touched) touched.push_back(word.toStdString());
        steps = walk::stepsToRetest(job->state(), {*key}, touched);
    }
    std::vector<RetestRow> rows;
    std::set<QString> places;
    if (!steps.empty()) {
        const auto why = doubts(job->state(), *key, touched);
        // The finding's own step first, then as core has them.
        std::ranges::stable_partition(steps, [&key](const walk::StepKey& step) { return step == *key; });
        for (const walk::StepKey& step : steps) {
            const auto because = why.find(step);
            rows.push_back({subjectName(job->scope(), step), text(step.name),
                            reason(step, *key, because == why.end() ? QStringList() : because->second),
                            markOf(walk::viewStep(job->state(), step).verdict)});
            places.insert(rows.back().tag);
        }
    }
    m_summary = rows.empty() ? QString()
                             : parts::phrase(rows.size() == 1 ? "window.retest.one" : "window.retest.many",
                                             {{"steps", static_cast<std::int64_t>(rows.size())},
                                              {"places", static_cast<std::int64_t>(places.size())}});
    replace(std::move(rows));
    Q_EMIT changed();
}

} // namespace proofwalk::models
