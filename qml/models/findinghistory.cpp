// SPDX-License-Identifier: GPL-3.0-or-later
#include "qml/models/findinghistory.h"

#include "core/report/filling.h"
#include "qml/models/desk.h"
#include "qml/models/telling.h"
#include "qml/parts/words.h"

#include <algorithm>

namespace proofwalk::models {

FindingHistory::FindingHistory(QObject* parent) : Rows(parent)
{
    connect(&Desk::instance(), &Desk::opened, this, &FindingHistory::refresh);
    connect(&Desk::instance(), &Desk::published, this, &FindingHistory::refresh);
}

void FindingHistory::setKey(const QString& key)
{
    if (key == m_key) return;
    m_key = key;
    Q_EMIT keyChanged();
    refresh();
}

QString FindingHistory::titleOf(const QString& event) const
{
    const auto row = std::ranges::find(rows(), event, &HistoryRow::event);
    return event.isEmpty() || row == rows().end() ? QString() : row->title;
}

void FindingHistory::refresh()
{
    const auto job = Desk::instance().job();
    const auto key = job == nullptr ? std::nullopt : keyFrom(job->scope(), m_key);
    const auto noticed = key ? noticedAt(*job, *key) : std::nullopt;
    m_found = noticed.has_value();
    if (m_found) describe(*job, *noticed);
    // After a withdrawal there may be no finding any more; what was is still told.
    replace(key ? historyOf(*job, *key) : std::vector<HistoryRow>());
    Q_EMIT changed();
}

void FindingHistory::describe(const Snapshot& job, const Noticed& noticed)
{
    const walk::Scope& scope = job.scope();
    const Spot spot = spotOf(scope, noticed.step);
    m_tag = subjectName(scope, noticed.step);
    m_title = subjectTitle(scope, noticed.step);
    m_floor = spot.floor;
    m_room = spot.room;
    m_step = text(noticed.step.name);
    m_line = lineOf(job, noticed);
    m_verdict = markOf(verdictOf(job, noticed));
    m_word = wordFor(job, noticed);
    m_dueWords = models::dueWords(noticed);
    m_expected = expectedAt(scope, noticed.step);
    m_cardTag = cardOf(scope, noticed.step);
    m_seen.clear();
    m_standing.clear();
    m_words.clear();
    m_due.clear();
    m_retestWords.clear();
    m_failed = m_lifeSafety = m_repairable = m_acceptable = false;
    if (noticed.finding) describeFinding(job, *noticed.finding);
}

void FindingHistory::describeFinding(const Snapshot& job, const walk::Finding& finding)
{
    const bool pending = finding.pending();
    m_failed = finding.lastFail != nullptr;
    m_lifeSafety = finding.lifeSafety;
    m_repairable = m_failed && pending && finding.status != walk::FindingStatus::putRight;
    m_acceptable = finding.status != walk::FindingStatus::cleared && !finding.accepted;
    if (m_failed) {
        m_seen = job.reveal(finding.lastFail->answer.seen);
        if (m_seen.isEmpty()) m_seen = text(report::readingText(finding.lastFail->answer));
    }
    if (!finding.described.empty()) {
        m_words = job.reveal(finding.described.back()->body.words);
        m_due = text(finding.described.back()->body.due);
    }
    if (finding.status == walk::FindingStatus::putRight && !m_cardTag.isEmpty())
        m_retestWords = parts::phrase("window.finding.retest-tag", {{"tag", m_tag.toStdString()}});
    if (pending && finding.lifeSafety)
        m_standing = parts::phrase(finding.accepted ? "window.finding.life-safety-accepted"
                                                    : "window.finding.life-safety-stands");
    else if (finding.accepted)
        m_standing = parts::phrase("window.finding.accepted-by",
                                   {{"name", job.reveal(finding.accepts.back()->body.name).toStdString()}});
}

} // namespace proofwalk::models
