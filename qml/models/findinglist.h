// SPDX-License-Identifier: GPL-3.0-or-later
// Every finding of the job by how far it has come: not put right, put right and to retest, noted, cleared.
#pragma once

#include "qml/models/rows.h"

#include <QList>
#include <QString>
#include <QTimer>
#include <QtQml/qqmlregistration.h>

namespace proofwalk::models {

struct FindingRow {
    Q_GADGET
    Q_PROPERTY(QString key MEMBER key)       ///< names the step: FindingHistory.key
    Q_PROPERTY(QString heading MEMBER heading) ///< "Not put right": of the group it is the first of, else empty
    Q_PROPERTY(bool cleared MEMBER cleared)  ///< told in one line
    Q_PROPERTY(QString tag MEMBER tag)       ///< "GR-01", "zone 4"
    Q_PROPERTY(int verdict MEMBER verdict)   ///< Verdict
    Q_PROPERTY(QString word MEMBER word)     ///< "fail", "comes and goes", "recommended"
    Q_PROPERTY(QString line MEMBER line)     ///< what it is
    Q_PROPERTY(QString second MEMBER second) ///< "Door contact, back door · due 2 Dec · accepted"
    Q_PROPERTY(QString age MEMBER age)       ///< "25 min" since the last thing that happened to it
    Q_PROPERTY(int rooms MEMBER rooms)       ///< of its floor
    Q_PROPERTY(QList<int> at MEMBER at)      ///< where among them
    Q_PROPERTY(bool here MEMBER here)        ///< its page is open

public:
    QString key, heading, tag, word, line, second, age;
    int verdict = 0, rooms = 0;
    QList<int> at;
    bool cleared = false, here = false;
    friend bool operator==(const FindingRow&, const FindingRow&) = default;
};

class FindingList : public PROOFWALK_ROWS(FindingRow) {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(QString summary READ summary NOTIFY changed) ///< "7 found, 2 not put right"; empty if there is none
    Q_PROPERTY(QString emptyWords READ emptyWords NOTIFY changed) ///< what to make of it that there is none; else empty
    Q_PROPERTY(QString retestTag READ retestTag NOTIFY changed) ///< whose card is next to retest; empty if none
    Q_PROPERTY(QString retestWords READ retestWords NOTIFY changed) ///< "retest CE-14"

public:
    explicit FindingList(QObject* parent = nullptr);
    QString summary() const { return m_summary; }
    QString emptyWords() const { return m_emptyWords; }
    QString retestTag() const { return m_retestTag; }
    QString retestWords() const { return m_retestWords; }

Q_SIGNALS:
    void changed();

private:
    void refresh();

    QString m_summary, m_emptyWords, m_retestTag, m_retestWords;
    QTimer m_minute; ///< ages grow without anything being recorded
};

} // namespace proofwalk::models
