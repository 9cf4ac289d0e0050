// SPDX-License-Identifier: GPL-3.0-or-later
#include "qml/models/findinglist.h"

#include "qml/models/desk.h"
#include "qml/models/findingtelling.h"
#include "qml/models/telling.h"
#include "qml/models/whereabouts.h"
#include "qml/parts/words.h"

#include <QStringList>

#include <algorithm>
#include <array>
#include <chrono>
#include <utility>

namespace proofwalk::models {
namespace {

enum Group { NotPutRight, ToRetest, Noted, Cleared };
constexpr std::array groupCodes{"window.finding.not-put-right", "window.finding.to-retest", "window.finding.noted",
                                "window.finding.cleared"};

Group groupOf(const Noticed& noticed)
{
    if (!noticed.finding) return Noted;
    switch (noticed.finding->status) {
    case walk::FindingStatus::open:
    case walk::FindingStatus::intermittent: return NotPutRight;
    case walk::FindingStatus::putRight: return ToRetest;
    case walk::FindingStatus::noted: return Noted;
    case walk::FindingStatus::cleared: return Cleared;
    }
    return NotPutRight;
}

/// The moment its age counts from: when it was found, put right or cleared.
base::WallClock since(const Snapshot& job, const Noticed& noticed)
{
    const walk::StepView view = walk::viewStep(job.state(), noticed.step);
    if (!noticed.finding) return view.newest->fact.at; // too close, so there is a reading
    const walk::Finding& finding = *noticed.finding;
    switch (finding.status) {
    case walk::FindingStatus::putRight: return finding.repairs.back()->fact.at;
    case walk::FindingStatus::cleared: return view.deciding.back()->fact.at;
    case walk::FindingStatus::open:
    case walk::FindingStatus::intermittent:
    case walk::FindingStatus::noted: break;
    }
    const auto failed = std::ranges::find(finding.attempts, walk::Verdict::fail,
                                          [](const walk::Attempt* attempt) { return attempt->verdict; });
    return failed != finding.attempts.end() ? (*failed)->fact.at : finding.described.front()->fact.at;
}

QString secondLine(const Snapshot& job, const Noticed& noticed, const Spot& spot)
{
    QStringList words;
    for (const QString& each : {subjectTitle(job.scope(), noticed.step), spot.room, dueWords(noticed)})
        if (!each.isEmpty()) words.push_back(each);
    if (noticed.finding && noticed.finding->lifeSafety) words.push_back(parts::phrase("window.finding.life-safety"));
    if (noticed.finding && noticed.finding->accepted) words.push_back(parts::phrase("window.finding.accepted"));
    return words.join(QStringLiteral(" · "));
}

FindingRow rowOf(const Snapshot& job, const Noticed& noticed, const base::WallClock& now)
{
    const Group group = groupOf(noticed);
    const Spot spot = spotOf(job.scope(), noticed.step);
    FindingRow row;
    row.key = keyText(noticed.step);
    row.cleared = group == Cleared;
    row.tag = subjectName(job.scope(), noticed.step);
    row.verdict = markOf(verdictOf(job, noticed));
    row.word = wordFor(job, noticed);
    row.line = lineOf(job, noticed);
    row.second = secondLine(job, noticed, spot);
    row.age = ageWords(since(job, noticed), now);
    row.rooms = spot.rooms;
    row.at = spot.at;
    row.here = Whereabouts::instance().subject() == row.key;
    return row;
}

QString summaryOf(const std::array<std::int64_t, 4>& counts)
{
    const std::int64_t found = counts[NotPutRight] + counts[ToRetest] + counts[Cleared];
    if (found + counts[Noted] == 0) return {};
    if (found == 0) return parts::phrase("window.finding.summary-noted", {{"noted", counts[Noted]}});
    if (counts[NotPutRight] > 0)
        return parts::phrase("window.finding.summary", {{"found", found}, {"left", counts[NotPutRight]}});
    if (counts[ToRetest] > 0)
        return parts::phrase("window.finding.summary-retest", {{"found", found}, {"left", counts[ToRetest]}});
    return parts::phrase("window.finding.summary-cleared", {{"found", found}});
}

} // namespace

FindingList::FindingList(QObject* parent) : Rows(parent)
{
    connect(&Desk::instance(), &Desk::opened, this, &FindingList::refresh);
    connect(&Desk::instance(), &Desk::published, this, &FindingList::refresh);
    connect(&Whereabouts::instance(), &Whereabouts::moved, this, &FindingList::refresh);
    connect(&m_minute, &QTimer::timeout, this, &FindingList::refresh);
    m_minute.start(std::chrono::minutes(1));
    refresh();
}

void FindingList::refresh()
{
    const auto job = Desk::instance().job();
    std::array<std::vector<FindingRow>, 4> groups;
    m_retestTag.clear();
    m_retestWords.clear();
    if (job != nullptr) {
        const base::WallClock now = base::now();
        for (const Noticed& noticed : everythingNoticed(*job)) {
            const Group group = groupOf(noticed);
            groups[group].push_back(rowOf(*job, noticed, now));
            if (group != ToRetest || !m_retestTag.isEmpty()) continue;
            m_retestTag = cardOf(job->scope(), noticed.step);
            m_retestWords =
                parts::phrase("window.finding.retest-tag", {{"tag", groups[group].back().tag.toStdString()}});
        }
    }
    std::array<std::int64_t, 4> counts{};
    std::vector<FindingRow> rows;
    for (std::size_t group = 0; group < groups.size(); ++group) {
        counts[group] = std::ssize(groups[group]);
        if (!groups[group].empty()) groups[group].front().heading = parts::phrase(groupCodes[group]);
        std::ranges::move(groups[group], std::back_inserter(rows));
    }
    m_summary = summaryOf(counts);
    m_emptyWords = rows.empty() ? parts::phrase("window.finding.none") : QString();
    replace(std::move(rows));
    Q_EMIT changed();
}

} // namespace proofwalk::models
