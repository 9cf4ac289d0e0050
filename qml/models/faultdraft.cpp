// SPDX-License-Identifier: GPL-3.0-or-later
#include "qml/models/faultdraft.h"

#include "core/base/file.h"
#include "qml/models/desk.h"
#include "qml/models/findingtelling.h"
#include "qml/models/stepref.h"
#include "qml/models/telling.h"
#include "qml/models/whereabouts.h"
#include "qml/parts/words.h"

#include <QFileInfo>
#include <QJsonDocument>
#include <QJsonObject>

namespace proofwalk::models {

FaultDraft::FaultDraft(QObject* parent) : QObject(parent)
{
    connect(&Desk::instance(), &Desk::opened, this, &FaultDraft::refresh);
    connect(&m_due, &DueChoice::changed, this, [this] {
        remember();
        Q_EMIT changed();
    });
}

void FaultDraft::setSubject(const QString& subject)
{
    if (subject == m_subject) return;
    m_subject = subject;
    Q_EMIT asked();
    refresh();
}

void FaultDraft::setSteps(const QStringList& steps)
{
    if (steps == m_steps) return;
    m_steps = steps;
    Q_EMIT asked();
    refresh();
}

void FaultDraft::setSignal(const QString& signal)
{
    if (signal == m_signal) return;
    m_signal = signal;
    Q_EMIT asked();
    refresh();
}

void FaultDraft::refresh()
{
    m_job = Desk::instance().job();
    m_keys.clear();
    m_chosen = 0;
    if (m_job != nullptr && !m_subject.isEmpty()) {
        for (const QString& name : m_steps)
            if (auto key = stepNamed(*m_job, m_subject, name, m_signal)) m_keys.push_back(*key);
        if (m_keys.size() != static_cast<std::size_t>(m_steps.size())) m_keys.clear();
    }
    if (found()) recall();
    setProblem({});
    Q_EMIT changed();
}

const walk::StepKey* FaultDraft::key() const { return found() ? &m_keys[static_cast<std::size_t>(m_chosen)] : nullptr; }

const walk::ScopeStep* FaultDraft::scopeStep() const
{
    return key() == nullptr ? nullptr : m_job->scope().step(*key());
}

QString FaultDraft::step() const { return key() == nullptr ? QString() : text(key()->name); }

QString FaultDraft::title() const { return key() == nullptr ? QString() : subjectTitle(m_job->scope(), *key()); }

QString FaultDraft::floor() const { return key() == nullptr ? QString() : spotOf(m_job->scope(), *key()).floor; }

QString FaultDraft::room() const { return key() == nullptr ? QString() : spotOf(m_job->scope(), *key()).room; }

QString FaultDraft::expected() const { return key() == nullptr ? QString() : expectedAt(m_job->scope(), *key()); }

QString FaultDraft::photographName() const { return QFileInfo(m_photograph).fileName(); }

/// What is usually seen when a step of that kind fails; the person changes it.
void FaultDraft::prefill()
{
    if (m_seenTyped || scopeStep() == nullptr) return;
    m_seen = parts::phrase("window.fault.seen." + std::string(catalogue::wordOf(scopeStep()->step.kind)));
}

void FaultDraft::setChosen(int chosen)
{
    if (chosen == m_chosen || chosen < 0 || chosen >= static_cast<int>(m_keys.size())) return;
    m_chosen = chosen;
    prefill();
    remember();
    Q_EMIT changed();
}

void FaultDraft::setSeen(const QString& seen)
{
    if (seen == m_seen) return;
    m_seen = seen;
    m_seenTyped = true;
    remember();
    Q_EMIT changed();
}

void FaultDraft::setDeficiency(bool deficiency)
{
    if (deficiency == m_deficiency) return;
    m_deficiency = deficiency;
    remember();
    Q_EMIT changed();
}

void FaultDraft::setWords(const QString& words)
{
    if (words == m_words) return;
    m_words = words;
    remember();
    Q_EMIT changed();
}

void FaultDraft::setPhotograph(const QString& path)
{
    if (path == m_photograph) return;
    m_photograph = path;
    remember();
    setProblem({});
    checkPhotograph();
    Q_EMIT changed();
}

/// Says at once whether the journal would take the picture, not only after the answer was recorded.
void FaultDraft::checkPhotograph()
{
    if (m_photograph.isEmpty()) return;
    auto refused = std::make_shared<QString>();
    Desk::instance().aside(
        [path = m_photograph.toStdString(), refused] {
            auto bytes = base::readFile(path);
            auto picture = bytes ? journal::preparePhotograph(*bytes) : bytes;
            if (!picture) *refused = sentence(picture.error());
        },
        this,
        [this, path = m_photograph, refused] {
            if (path != m_photograph || refused->isEmpty()) return;
            m_photograph.clear();
            remember();
            setProblem(*refused);
            Q_EMIT changed();
        });
}

QString FaultDraft::missing() const
{
    if (!found()) return parts::phrase("window.fault.no-step");
    if (m_deficiency && m_seen.trimmed().isEmpty()) return parts::phrase("window.fault.seen-missing");
    if (!m_deficiency && m_words.trimmed().isEmpty()) return parts::phrase("window.fault.words-missing");
    if (m_deficiency && m_due.day().isEmpty()) return parts::phrase("window.fault.day-missing");
    return {};
}

void FaultDraft::remember()
{
    if (m_recalling || m_subject.isEmpty()) return;
    const QJsonObject kept{{"step", step()},
                           {"seen", m_seenTyped ? m_seen : QString()},
                           {"typed", m_seenTyped},
                           {"deficiency", m_deficiency},
                           {"due", m_due.choice()},
                           {"other", m_due.other()},
                           {"photograph", m_photograph},
                           {"words", m_words}};
    Whereabouts::instance().setDraft(draftName(),
                                     QString::fromUtf8(QJsonDocument(kept).toJson(QJsonDocument::Compact)));
}

void FaultDraft::recall()
{
    m_recalling = true;
    const QJsonObject kept = QJsonDocument::fromJson(Whereabouts::instance().draft(draftName()).toUtf8()).object();
    // What was typed belongs to the step it was typed at.
    const auto at = m_steps.indexOf(kept["step"].toString());
    const bool same = at >= 0;
    m_chosen = same ? static_cast<int>(at) : 0;
    m_seenTyped = same && kept["typed"].toBool();
    m_seen = m_seenTyped ? kept["seen"].toString() : QString();
    m_deficiency = !same || kept["deficiency"].toBool(true);
    m_photograph = same ? kept["photograph"].toString() : QString();
    m_words = same ? kept["words"].toString() : QString();
    m_due.setOther(same ? kept["other"].toString() : QString());
    m_due.setChoice(same ? kept["due"].toInt(DueChoice::Week) : int{DueChoice::Week});
    prefill();
    m_recalling = false;
    checkPhotograph();
}

void FaultDraft::keep()
{
    if (m_busy || !ready()) return;
    const QString described = m_words.trimmed().isEmpty() ? m_seen.trimmed() : m_words.trimmed();
    const Fault fault{*key(),
                      m_deficiency,
                      m_seen.trimmed().toStdString(),
                      described.toStdString(),
                      m_deficiency ? m_due.day().toStdString() : std::string(),
                      m_photograph.toStdString()};
    m_busy = true;
    setProblem({});
    Q_EMIT busyChanged();
    Desk::instance().ask<Result<void>>(
        this, [fault](walk::Job& job) { return keepFault(job, fault); },
        [this](const Result<void>& outcome) {
            m_busy = false;
            Q_EMIT busyChanged();
            if (!outcome) return setProblem(sentence(outcome.error()));
            discard();
            Q_EMIT done();
        });
}

void FaultDraft::discard() { Whereabouts::instance().setDraft(draftName(), {}); }

void FaultDraft::setProblem(const QString& problem)
{
    if (problem == m_problem) return;
    m_problem = problem;
    Q_EMIT problemChanged();
}

} // namespace proofwalk::models
