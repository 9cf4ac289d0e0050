// SPDX-License-Identifier: GPL-3.0-or-later
// The sheet for what is not as planned, filled in as far as plan and step know it: which step, what was expected, what
// was seen instead, how bad, by when, a photograph, words. What is half typed outlives the program.
#pragma once

#include "core/walk/job.h"
#include "qml/models/duechoice.h"
#include "qml/models/snapshot.h"

#include <QObject>
#include <QString>
#include <QStringList>
#include <QtQml/qqmlregistration.h>

#include <filesystem>
#include <memory>
#include <vector>

namespace proofwalk::models {

class FaultDraft : public QObject {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(
        QString subject READ subject WRITE setSubject NOTIFY asked) ///< "GR-01", "zone 4", "timer entry-delay shop"
    Q_PROPERTY(QStringList steps READ steps WRITE setSteps NOTIFY asked)   ///< names of the steps one of which failed
    Q_PROPERTY(QString signal READ signal WRITE setSignal NOTIFY asked) ///< where two signals have a step of one name
    Q_PROPERTY(bool found READ found NOTIFY changed)          ///< there is such a step
    Q_PROPERTY(int chosen READ chosen WRITE setChosen NOTIFY changed) ///< row of `steps`
    Q_PROPERTY(QString step READ step NOTIFY changed)         ///< its name
    Q_PROPERTY(QString title READ title NOTIFY changed) ///< what the subject is: the device's kind, the zone's label
    Q_PROPERTY(QString floor READ floor NOTIFY changed)
    Q_PROPERTY(QString room READ room NOTIFY changed)
    Q_PROPERTY(QString expected READ expected NOTIFY changed) ///< what must happen, with its limit
    Q_PROPERTY(QString seen READ seen WRITE setSeen NOTIFY changed)
    Q_PROPERTY(
        bool deficiency READ deficiency WRITE setDeficiency NOTIFY changed) ///< else a recommendation: nothing failed
    Q_PROPERTY(proofwalk::models::DueChoice* due READ due CONSTANT)
    Q_PROPERTY(QString photograph READ photograph WRITE setPhotograph NOTIFY changed) ///< path of a file; empty if none
    Q_PROPERTY(QString photographName READ photographName NOTIFY changed)
    Q_PROPERTY(QString words READ words WRITE setWords NOTIFY changed)
    Q_PROPERTY(bool ready READ ready NOTIFY changed) ///< enough is filled in to keep it
    Q_PROPERTY(QString missing READ missing NOTIFY changed) ///< else: what is missing
    Q_PROPERTY(bool busy READ busy NOTIFY busyChanged)
    Q_PROPERTY(QString problem READ problem NOTIFY problemChanged)

public:
    explicit FaultDraft(QObject* parent = nullptr);

    QString subject() const { return m_subject; }
    void setSubject(const QString& subject);
    QStringList steps() const { return m_steps; }
    void setSteps(const QStringList& steps);
    QString signal() const { return m_signal; }
    void setSignal(const QString& signal);
    bool found() const { return !m_keys.empty(); }
    int chosen() const { return m_chosen; }
    void setChosen(int chosen);
    QString step() const;
    QString title() const;
    QString floor() const;
    QString room() const;
    QString expected() const;
    QString seen() const { return m_seen; }
    void setSeen(const QString& seen);
    bool deficiency() const { return m_deficiency; }
    void setDeficiency(bool deficiency);
    DueChoice* due() { return &m_due; }
    QString photograph() const { return m_photograph; }
    void setPhotograph(const QString& path);
    QString photographName() const;
    QString words() const { return m_words; }
    void setWords(const QString& words);
    bool ready() const { return missing().isEmpty(); }
    QString missing() const;
    bool busy() const { return m_busy; }
    QString problem() const { return m_problem; }

    /// Records the answer, the finding and the photograph, one after the other. What was recorded before one of them was
    /// refused is not asked for again.
    Q_INVOKABLE void keep();
    /// Forgets what was typed: it was as planned after all.
    Q_INVOKABLE void discard();

Q_SIGNALS:
    void asked();
    void changed();
    void busyChanged();
    void problemChanged();
    void done();

private:
    void refresh();
    void prefill();
    void recall();
    void remember();
    QString draftName() const { return QStringLiteral("fault/") + m_subject; }
    const walk::StepKey* key() const;
    const walk::ScopeStep* scopeStep() const;
    void checkPhotograph();
    void setProblem(const QString& problem);

    std::shared_ptr<const Snapshot> m_job;
    QString m_subject, m_signal, m_seen, m_photograph, m_words, m_problem;
    QStringList m_steps;
    std::vector<walk::StepKey> m_keys; ///< as m_steps; empty if one of them is unknown
    int m_chosen = 0;
    bool m_deficiency = true, m_busy = false, m_seenTyped = false, m_recalling = false;
    DueChoice m_due;
};

/// What is to be recorded of a fault.
struct Fault {
    walk::StepKey step;
    bool deficiency = true;
    std::string seen, words, due;
    std::filesystem::path photograph; ///< empty if there is none
};

/// On the job's thread: each of its events that is not there yet. Errors: those of Job::take.
Result<void> keepFault(walk::Job& job, const Fault& fault);

} // namespace proofwalk::models
