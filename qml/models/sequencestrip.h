// SPDX-License-Identifier: GPL-3.0-or-later
// A sequence as it is done in one area: its steps in order, and the one in hand.
#pragma once

#include "qml/models/asking.h"
#include "qml/models/rows.h"
#include "qml/models/snapshot.h"

#include <QString>
#include <QStringList>
#include <QtQml/qqmlregistration.h>

namespace proofwalk::models {

struct SequenceRow {
    Q_GADGET
    Q_PROPERTY(QString subject MEMBER subject) ///< "area mill", "timer exit-delay mill"
    Q_PROPERTY(QString step MEMBER step)
    Q_PROPERTY(QString act MEMBER act)
    Q_PROPERTY(QString expect MEMBER expect)
    Q_PROPERTY(QString caution MEMBER caution)
    Q_PROPERTY(QString never MEMBER never)
    Q_PROPERTY(bool timed MEMBER timed)        ///< by the stopwatch; otherwise seen or heard
    Q_PROPERTY(bool core MEMBER core)          ///< false: may be left out
    Q_PROPERTY(int verdict MEMBER verdict)
    Q_PROPERTY(int seen MEMBER seen)
    Q_PROPERTY(QString figure MEMBER figure)   ///< "57.1 s"
    Q_PROPERTY(bool answered MEMBER answered)
    Q_PROPERTY(bool here MEMBER here)
    Q_PROPERTY(bool possible MEMBER possible)  ///< in the area's present state
    Q_PROPERTY(QString wants MEMBER wants)     ///< the state it wants, if not: "set"

public:
    QString subject, step, act, expect, caution, never, figure, wants;
    int verdict = 0, seen = 0;
    bool timed = false, core = true, answered = false, here = false, possible = true;
    friend bool operator==(const SequenceRow&, const SequenceRow&) = default;
};

class SequenceStrip : public PROOFWALK_ROWS(SequenceRow) {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(QString sequence READ sequence WRITE setSequence NOTIFY changed)
    Q_PROPERTY(QString title READ title NOTIFY changed)
    Q_PROPERTY(QString summary READ summary NOTIFY changed)
    Q_PROPERTY(QStringList areas READ areas NOTIFY changed) ///< their names
    Q_PROPERTY(QStringList areaTitles READ areaTitles NOTIFY changed)
    Q_PROPERTY(int area READ area WRITE setArea NOTIFY changed) ///< row of areas
    Q_PROPERTY(QString stateWord READ stateWord NOTIFY changed) ///< of that area: "unset", "set: Everybody out"
    Q_PROPERTY(bool isSet READ isSet NOTIFY changed)
    Q_PROPERTY(QString doneWords READ doneWords NOTIFY changed) ///< "3 of 10"

    Q_PROPERTY(int inHand READ inHand NOTIFY changed) ///< -1: all are answered
    Q_PROPERTY(QString subject READ subject NOTIFY changed) ///< of the one in hand
    Q_PROPERTY(QString step READ step NOTIFY changed)
    Q_PROPERTY(bool timed READ timed NOTIFY changed)
    Q_PROPERTY(bool possible READ possible NOTIFY changed)
    Q_PROPERTY(QString wants READ wants NOTIFY changed) ///< "set"
    Q_PROPERTY(QString wantsWords READ wantsWords NOTIFY changed) ///< "It is set now"

    Q_PROPERTY(bool busy READ busy NOTIFY askingChanged)
    Q_PROPERTY(QString problem READ problem NOTIFY askingChanged)

public:
    explicit SequenceStrip(QObject* parent = nullptr);

    QString sequence() const { return m_sequence; }
    void setSequence(const QString& sequence);
    QString title() const { return m_title; }
    QString summary() const { return m_summary; }
    QStringList areas() const { return m_areas; }
    QStringList areaTitles() const { return m_areaTitles; }
    int area() const { return m_area; }
    void setArea(int area);
    QString stateWord() const { return m_stateWord; }
    bool isSet() const { return m_set; }
    QString doneWords() const { return m_doneWords; }
    int inHand() const { return m_inHand; }
    QString subject() const { return row() == nullptr ? QString() : row()->subject; }
    QString step() const { return row() == nullptr ? QString() : row()->step; }
    bool timed() const { return row() != nullptr && row()->timed; }
    bool possible() const { return row() == nullptr || row()->possible; }
    QString wants() const { return row() == nullptr ? QString() : row()->wants; }
    QString wantsWords() const;
    bool busy() const { return m_asking.busy(); }
    QString problem() const { return m_asking.problem(); }

    /// Takes a step in hand; -1 goes back to the first that waits.
    Q_INVOKABLE void choose(int row);
    Q_INVOKABLE void asPlanned();
    Q_INVOKABLE void noAccess(const QString& reason);
    Q_INVOKABLE void notApplicable(const QString& reason);
    /// The area is in the wanted state now. Where it can be set in several modes the person says which, on another page.
    Q_INVOKABLE void sayState();
    bool oneMode() const { return m_modes.size() <= 1; }

Q_SIGNALS:
    void changed();
    void askingChanged();
    void answered();

private:
    const SequenceRow* row() const;
    void refresh();
    void answer(base::Json::Object more);
    SequenceRow rowOf(const Snapshot& job, const walk::StepKey& key) const;

    QString m_sequence, m_title, m_summary, m_stateWord, m_doneWords;
    QStringList m_areas, m_areaTitles, m_modes;
    int m_area = 0, m_inHand = -1, m_chosen = -1;
    bool m_set = false;
    Asking m_asking;
};

} // namespace proofwalk::models
