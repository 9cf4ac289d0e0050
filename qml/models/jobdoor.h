// SPDX-License-Identifier: GPL-3.0-or-later
// The way into a job and out of it: opened from its file, begun from a plan, put away.
#pragma once

#include "qml/models/asking.h"

#include <QObject>
#include <QString>
#include <QStringList>
#include <QtQml/qqmlregistration.h>

namespace proofwalk::models {

class JobDoor : public QObject {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(bool busy READ busy NOTIFY changed)
    Q_PROPERTY(QString problem READ problem NOTIFY changed)       ///< why it was not opened
    Q_PROPERTY(QStringList problems READ problems NOTIFY changed) ///< what is wrong with a plan, a sentence each

public:
    explicit JobDoor(QObject* parent = nullptr);
    bool busy() const { return m_asking.busy(); }
    QString problem() const { return m_asking.problem(); }
    QStringList problems() const { return m_problems; }

    Q_INVOKABLE void open(const QString& file);
    /// A new job from the folder of a plan. A plan with errors begins none: they are told.
    Q_INVOKABLE void start(const QString& plan, const QString& file);
    Q_INVOKABLE void close();
    /// A name for the job of that plan, beside its folder, that is not taken yet.
    Q_INVOKABLE QString proposed(const QString& plan) const;
    /// Where to begin looking: the folder of the newest job, else the person's own.
    Q_INVOKABLE QString folder() const;

Q_SIGNALS:
    void changed();

private:
    Asking m_asking;
    QStringList m_problems;
};

/// At the program's start: opens the job that PROOFWALK_JOB names, else the one that was open when the program last
/// ended. One that is gone or cannot be opened leaves the start page.
void reopen();

} // namespace proofwalk::models
