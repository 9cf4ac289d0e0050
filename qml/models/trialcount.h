// SPDX-License-Identifier: GPL-3.0-or-later
// Trials as they are counted, kept over a kill, told when there are as many as the sheet wants.
#pragma once

#include <QObject>
#include <QString>
#include <QtQml/qqmlregistration.h>

namespace proofwalk::models {

class TrialCount : public QObject {
    Q_OBJECT
    QML_ELEMENT

    Q_PROPERTY(QString of READ of WRITE setOf NOTIFY changed) ///< names what is counted: "GR-02/boundary-walk"
    Q_PROPERTY(int wanted READ wanted WRITE setWanted NOTIFY changed)
    Q_PROPERTY(int hits READ hits NOTIFY changed)
    Q_PROPERTY(int tries READ tries NOTIFY changed)
    Q_PROPERTY(QString words READ words NOTIFY changed) ///< "3 of 5"

public:
    explicit TrialCount(QObject* parent = nullptr) : QObject(parent) {}

    QString of() const { return m_of; }
    void setOf(const QString& of);
    int wanted() const { return m_wanted; }
    void setWanted(int wanted);
    int hits() const { return m_hits; }
    int tries() const { return m_tries; }
    QString words() const;

    Q_INVOKABLE void answered();
    Q_INVOKABLE void missed();
    Q_INVOKABLE void startOver();

Q_SIGNALS:
    void changed();
    void complete(int hits, int tries);

private:
    void count(bool hit);

    QString m_of;
    int m_wanted = 0, m_hits = 0, m_tries = 0;
};

} // namespace proofwalk::models
