// SPDX-License-Identifier: GPL-3.0-or-later
// One step over many subjects, as a grid in the panel's own order, and which of them is in hand.
#pragma once

#include "qml/models/asking.h"
#include "qml/models/figures.h"
#include "qml/models/rows.h"
#include "qml/models/snapshot.h"

#include <QString>
#include <QtQml/qqmlregistration.h>

namespace proofwalk::models {

struct RoundCellRow {
    Q_GADGET
    Q_PROPERTY(QString subject MEMBER subject) ///< "zone 12"
    Q_PROPERTY(QString number MEMBER number)   ///< "12", as the panel has it
    Q_PROPERTY(QString label MEMBER label)
    Q_PROPERTY(QString figure MEMBER figure)   ///< "4.10", in the unit of the step; empty without one
    Q_PROPERTY(double value MEMBER value)      ///< for the scale, in the unit of the step; NaN without one
    Q_PROPERTY(double uncertainty MEMBER uncertainty)
    Q_PROPERTY(double lower MEMBER lower)
    Q_PROPERTY(double upper MEMBER upper)
    Q_PROPERTY(int verdict MEMBER verdict)
    Q_PROPERTY(QString verdictWord MEMBER verdictWord)
    Q_PROPERTY(bool answered MEMBER answered)

public:
    QString subject, number, label, figure, verdictWord;
    double value = absent, uncertainty = absent, lower = absent, upper = absent;
    int verdict = 0;
    bool answered = false;
    friend bool operator==(const RoundCellRow& left, const RoundCellRow& right);
};

class RoundGrid : public PROOFWALK_ROWS(RoundCellRow) {
    Q_OBJECT
    QML_ELEMENT

    Q_PROPERTY(QString round READ round WRITE setRound NOTIFY changed) ///< its name: "loop-readings"
    Q_PROPERTY(bool found READ found NOTIFY changed)
    Q_PROPERTY(QString title READ title NOTIFY changed)
    Q_PROPERTY(QString summary READ summary NOTIFY changed)
    Q_PROPERTY(QString step READ step NOTIFY changed)
    Q_PROPERTY(int count READ count NOTIFY changed)
    Q_PROPERTY(int answered READ answered NOTIFY changed)
    Q_PROPERTY(QString answeredWords READ answeredWords NOTIFY changed) ///< "9 of 28"
    Q_PROPERTY(
        QString fewWords READ fewWords NOTIFY changed) ///< what is not asked here: "Zones by radio are not here."

    Q_PROPERTY(int current READ current WRITE setCurrent NOTIFY changed) ///< row in hand; -1 if there is none
    Q_PROPERTY(QString subject READ subject NOTIFY changed) ///< of the row in hand
    Q_PROPERTY(QString number READ number NOTIFY changed)
    Q_PROPERTY(QString label READ label NOTIFY changed)
    Q_PROPERTY(QString floor READ floor NOTIFY changed) ///< of its first device: where it is, if one has to go there
    Q_PROPERTY(QString room READ room NOTIFY changed)
    Q_PROPERTY(QString wiring READ wiring NOTIFY changed) ///< "GR-23: 3.3 kΩ at the end, 4.7 kΩ over the contact"
    Q_PROPERTY(QString findingKey READ findingKey NOTIFY changed) ///< of the finding at the row in hand; empty if none

    Q_PROPERTY(QString problem READ problem NOTIFY asked)
    Q_PROPERTY(bool busy READ busy NOTIFY asked)

public:
    explicit RoundGrid(QObject* parent = nullptr);

    QString round() const { return m_round; }
    void setRound(const QString& round);
    bool found() const { return !m_step.isEmpty(); }
    QString title() const { return m_title; }
    QString summary() const { return m_summary; }
    QString step() const { return m_step; }
    int count() const { return static_cast<int>(rows().size()); }
    int answered() const { return m_answered; }
    QString answeredWords() const;
    QString fewWords() const { return m_fewWords; }
    int current() const { return m_current; }
    void setCurrent(int row);
    QString subject() const { return inHand() == nullptr ? QString() : inHand()->subject; }
    QString number() const { return inHand() == nullptr ? QString() : inHand()->number; }
    QString label() const { return inHand() == nullptr ? QString() : inHand()->label; }
    QString floor() const { return m_floor; }
    QString room() const { return m_room; }
    QString wiring() const { return m_wiring; }
    QString findingKey() const { return m_findingKey; }
    QString problem() const { return m_asking.problem(); }
    bool busy() const { return m_asking.busy(); }

    /// To the next that waits, after the one in hand; it stays if none waits.
    Q_INVOKABLE void moveOn();
    Q_INVOKABLE void noAccess(const QString& reason); ///< to the row in hand

Q_SIGNALS:
    void changed();
    void asked();

private:
    const RoundCellRow* inHand() const;
    void refresh();
    void describeInHand(const Snapshot& job);

    QString m_round, m_title, m_summary, m_step, m_fewWords, m_floor, m_room, m_wiring, m_findingKey;
    int m_current = -1, m_answered = 0;
    Asking m_asking;
};

} // namespace proofwalk::models
