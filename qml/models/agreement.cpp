// SPDX-License-Identifier: GPL-3.0-or-later
#include "qml/models/agreement.h"

#include "qml/models/desk.h"
#include "qml/models/findingtelling.h"
#include "qml/models/telling.h"
#include "qml/parts/words.h"

#include <QStringList>

#include <algorithm>

namespace proofwalk::models {
namespace {

AgreedRow row(walk::Verdict verdict, const QString& tag, const QString& words, const QString& due = {})
{
    AgreedRow made;
    made.verdict = markOf(verdict);
    made.tag = tag;
    made.words = due.isEmpty() ? words : words + QStringLiteral(", ") + due;
    return made;
}

/// What the customer must know before they sign, worst first.
std::vector<AgreedRow> notAsItShouldBe(const Snapshot& job)
{
    std::vector<AgreedRow> rows, close, untested;
    for (const Noticed& noticed : everythingNoticed(job)) {
        const walk::Verdict verdict = verdictOf(job, noticed);
        if (verdict == walk::Verdict::pass) continue;
        const bool tooClose = verdict == walk::Verdict::tooClose;
        if (!tooClose && noticed.finding && !noticed.finding->pending()) continue;
        (tooClose ? close : rows)
            .push_back(row(verdict, subjectName(job.scope(), noticed.step), lineOf(job, noticed), dueWords(noticed)));
    }
    for (const walk::DeviceView& view : job.views()) {
        if (view.verdict != walk::Verdict::noAccess && view.verdict != walk::Verdict::toDo
            && view.verdict != walk::Verdict::running)
            continue;
        untested.push_back(
            row(view.verdict, text(view.device->device->tag),
                parts::phrase("window.sign.not-tested", {{"device", kindTitle(*view.device).toStdString()}})));
    }
    rows.insert(rows.end(), close.begin(), close.end());
    rows.insert(rows.end(), untested.begin(), untested.end());
    return rows;
}

QString shownSentence(const Snapshot& job)
{
    QStringList topics;
    for (const auto& told : job.state().shown)
        if (job.state().stands(told.fact)) topics << text(told.body.topic);
    if (topics.isEmpty()) return {};
    return parts::phrase("window.sign.was-shown", {{"topics", topics.join(QStringLiteral(", ")).toStdString()}});
}

QString listed(const std::vector<AgreedRow>& rows)
{
    QStringList all;
    for (const AgreedRow& each : rows) all << each.tag + QStringLiteral(" ") + each.words;
    return all.join(QStringLiteral("; "));
}

} // namespace

Agreement::Agreement(QObject* parent) : Rows(parent), m_asking(this, [this] { Q_EMIT askingChanged(); })
{
    connect(&Desk::instance(), &Desk::opened, this, &Agreement::refresh);
    connect(&Desk::instance(), &Desk::published, this, &Agreement::refresh);
    refresh();
}

void Agreement::agree(const QString& name, const QString& words, const QString& ink)
{
    base::Json::Object command{{"do", "acceptance"}};
    if (!name.trimmed().isEmpty()) command["name"] = name.trimmed().toStdString();
    if (!words.trimmed().isEmpty()) command["words"] = words.trimmed().toStdString();
    if (auto strokes = base::parseJson(ink.toStdString());
        strokes && strokes->array() != nullptr && !strokes->array()->empty())
        command["ink"] = *strokes;
    m_asking.tell(std::move(command), [this] { Q_EMIT taken(); });
}

void Agreement::refresh()
{
    const auto job = Desk::instance().job();
    m_agreed = false;
    if (job == nullptr) {
        replace({});
        Q_EMIT changed();
        return;
    }
    std::vector<AgreedRow> rows = notAsItShouldBe(*job);
    const QString shown = shownSentence(*job);
    const QString before = shown.isEmpty() ? QString() : shown + QStringLiteral(" ");
    m_words = before + parts::phrase(rows.empty() ? "window.sign.all-well" : "window.sign.i-know");
    m_fullWords = rows.empty() ? m_words : m_words + QStringLiteral(" ") + listed(rows) + QStringLiteral(".");
    const auto now = base::now();
    m_when = parts::phrase("window.sign.when", {{"day", words::longDate(now)}, {"time", base::localTime(now)}});
    for (const auto& told : job->state().acceptances) {
        if (!job->state().stands(told.fact)) continue;
        m_agreed = true;
        m_name = job->reveal(told.body.name);
        m_agreedWords = job->reveal(told.body.words);
        m_ink = job->reveal(told.body.ink);
        m_when = parts::phrase("window.sign.when",
                               {{"day", words::longDate(told.fact.at)}, {"time", base::localTime(told.fact.at)}});
    }
    if (!m_agreed) {
        m_name.clear();
        m_agreedWords.clear();
        m_ink.clear();
    }
    replace(std::move(rows));
    Q_EMIT changed();
}

} // namespace proofwalk::models
