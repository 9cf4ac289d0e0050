// SPDX-License-Identifier: GPL-3.0-or-later
// What is seen from every place: how far the walk is, what was found, what is on test, what is to be put back.
#pragma once

#include <QObject>
#include <QString>
#include <QtQml/qqmlregistration.h>

namespace proofwalk::models {

class Glance : public QObject {
    Q_OBJECT
    QML_ELEMENT

    Q_PROPERTY(bool open READ open NOTIFY changed)                 ///< a job is open
    Q_PROPERTY(QString site READ site NOTIFY changed)              ///< its name
    Q_PROPERTY(int answered READ answered NOTIFY changed)          ///< devices with a result; one to retest has none
    Q_PROPERTY(int total READ total NOTIFY changed)                ///< devices
    Q_PROPERTY(QString answeredWords READ answeredWords NOTIFY changed) ///< "of 64 answered"
    Q_PROPERTY(int findings READ findings NOTIFY changed)          ///< not yet put right, or not yet retested
    Q_PROPERTY(QString findingsWords READ findingsWords NOTIFY changed)
    Q_PROPERTY(bool onTest READ onTest NOTIFY changed)
    Q_PROPERTY(bool live READ live NOTIFY changed)                 ///< signals go out and nobody was told
    Q_PROPERTY(QString testWords READ testWords NOTIFY changed)    ///< "on test until 15:30"
    Q_PROPERTY(int putBack READ putBack NOTIFY changed)
    Q_PROPERTY(QString putBackWords READ putBackWords NOTIFY changed)
    Q_PROPERTY(QString zonesWords READ zonesWords NOTIFY changed)  ///< "64 in 41 zones"
    Q_PROPERTY(QString walkWords READ walkWords NOTIFY changed)    ///< "41 of 64"
    Q_PROPERTY(QString rungsWords READ rungsWords NOTIFY changed)  ///< what still stands before the signature

public:
    explicit Glance(QObject* parent = nullptr);

    bool open() const { return m_open; }
    QString site() const { return m_site; }
    int answered() const { return m_answered; }
    int total() const { return m_total; }
    QString answeredWords() const { return m_answeredWords; }
    int findings() const { return m_findings; }
    QString findingsWords() const { return m_findingsWords; }
    bool onTest() const { return m_onTest; }
    bool live() const { return m_live; }
    QString testWords() const { return m_testWords; }
    int putBack() const { return m_putBack; }
    QString putBackWords() const { return m_putBackWords; }
    QString zonesWords() const { return m_zonesWords; }
    QString walkWords() const { return m_walkWords; }
    QString rungsWords() const { return m_rungsWords; }

Q_SIGNALS:
    void changed();

private:
    void refresh();
    void tellTest(const class Snapshot& job);

    bool m_open = false, m_onTest = false, m_live = false;
    int m_answered = 0, m_total = 0, m_findings = 0, m_putBack = 0;
    QString m_site, m_answeredWords, m_findingsWords, m_testWords, m_putBackWords, m_zonesWords, m_walkWords,
        m_rungsWords;
};

} // namespace proofwalk::models
