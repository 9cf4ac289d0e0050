// SPDX-License-Identifier: GPL-3.0-or-later
// The lines of a finding's history, gathered from every list of the job in which its step is named.
#include "core/base/text.h"
#include "core/report/filling.h"
#include "qml/models/findinghistory.h"
#include "qml/models/telling.h"
#include "qml/parts/words.h"

#include <QStringList>

#include <algorithm>

namespace proofwalk::models {
namespace {

struct Dated {
    journal::Stamp stamp;
    base::WallClock at;
    HistoryRow row;
};

class Gathering {
public:
    Gathering(const Snapshot& job, const walk::StepKey& key) : m_job(job), m_key(key) {}

    void attempts();
    void acts();
    std::vector<HistoryRow> inOrder();

private:
    void add(const walk::Fact& fact, HistoryRow row, const walk::PrivateRef& words);
    QString detailOf(const walk::Attempt& attempt) const;
    bool names(const std::vector<walk::StepKey>& steps) const { return std::ranges::find(steps, m_key) != steps.end(); }

    const Snapshot& m_job;
    const walk::StepKey& m_key;
    std::vector<Dated> m_dated;
};

/// Adds a line; a withdrawn one says why.
void Gathering::add(const walk::Fact& fact, HistoryRow row, const walk::PrivateRef& words)
{
    if (row.detail.isEmpty()) row.detail = m_job.reveal(words);
    const walk::State& state = m_job.state();
    row.withdrawn = !state.stands(fact);
    row.event = row.withdrawn ? QString() : text(fact.event);
    if (row.withdrawn) {
        row.verdict = -1;
        row.title = parts::phrase("window.finding.withdrawn", {{"what", row.title.toStdString()}});
        const auto why = std::ranges::find(state.withdrawals, fact.event,
                                           [](const walk::Told<walk::WithdrawBody>& each) { return each.body.event; });
        if (why != state.withdrawals.end())
            row.detail = parts::phrase("window.finding.withdrawn-because",
                                       {{"reason", m_job.reveal(why->body.reason).toStdString()}});
    }
    m_dated.push_back({fact.stamp, fact.at, std::move(row)});
}

QString Gathering::detailOf(const walk::Attempt& attempt) const
{
    QStringList words;
    for (const QString& each : {text(report::readingText(attempt.answer)), m_job.reveal(attempt.answer.seen),
                                m_job.reveal(attempt.answer.reason)})
        if (!each.isEmpty()) words.push_back(each);
    return words.join(QStringLiteral("; "));
}

void Gathering::attempts()
{
    const auto found = m_job.state().attempts.find(m_key);
    if (found == m_job.state().attempts.end()) return;
    bool failedBefore = false;
    for (const walk::Attempt& attempt : found->second) {
        const bool failed = attempt.verdict == walk::Verdict::fail;
        const char* code = failed       ? (failedBefore ? "report.history.again" : "report.history.found")
                         : failedBefore ? "report.history.retested"
                                        : "report.history.answered";
        HistoryRow row;
        row.verdict = markOf(attempt.verdict);
        row.title =
            parts::phrase(code, {{"step", m_key.name}, {"verdict", verdictWord(attempt.verdict).toStdString()}});
        row.detail = detailOf(attempt);
        add(attempt.fact, std::move(row), {});
        failedBefore = failedBefore || (failed && m_job.state().stands(attempt.fact));
    }
}

void Gathering::acts()
{
    const walk::State& state = m_job.state();
    for (const auto& told : state.findings) {
        if (told.body.step != m_key) continue;
        HistoryRow row;
        row.title = parts::phrase("window.finding.described." + std::string(walk::wordOf(told.body.grade)));
        add(told.fact, std::move(row), told.body.words);
    }
    for (const auto& told : state.photographs) {
        if (told.body.step != m_key) continue;
        HistoryRow row;
        row.title = parts::phrase("window.finding.photograph");
        if (state.stands(told.fact)) row.picture = m_job.reveal(told.body.photograph);
        add(told.fact, std::move(row), told.body.words);
    }
    for (const auto& told : state.repairs) {
        if (!names(told.body.findings)) continue;
        QStringList touched;
        for (const std::string& word : told.body.touched) touched.push_back(parts::phrase("window.touched." + word));
        HistoryRow row;
        row.title =
            parts::phrase("report.history.put-right", {{"touched", touched.join(QStringLiteral(", ")).toStdString()}});
        add(told.fact, std::move(row), told.body.words);
    }
    for (const auto& told : state.accepts) {
        if (!names(told.body.findings)) continue;
        HistoryRow row;
        row.title = parts::phrase("report.history.accepted", {{"name", m_job.reveal(told.body.name).toStdString()}});
        add(told.fact, std::move(row), told.body.words);
    }
}

std::vector<HistoryRow> Gathering::inOrder()
{
    std::ranges::stable_sort(m_dated, {}, &Dated::stamp);
    std::vector<HistoryRow> rows;
    std::string day;
    for (Dated& each : m_dated) {
        const std::string date = base::localDate(each.at);
        each.row.time = text(base::localTime(each.at));
        if (date != day) each.row.time = text(report::shortDay(date)) + QStringLiteral("\n") + each.row.time;
        day = date;
        rows.push_back(std::move(each.row));
    }
    return rows;
}

} // namespace

std::vector<HistoryRow> historyOf(const Snapshot& job, const walk::StepKey& key)
{
    Gathering gathering(job, key);
    gathering.attempts();
    gathering.acts();
    return gathering.inOrder();
}

} // namespace proofwalk::models
