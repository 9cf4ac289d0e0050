// SPDX-License-Identifier: GPL-3.0-or-later
// Which loops stand near their limit: the question, its answer in one sentence, and every loop that was read.
#pragma once

#include "qml/models/figures.h"
#include "qml/models/rows.h"

#include <QString>
#include <QtQml/qqmlregistration.h>

namespace proofwalk::models {

struct LoopRow {
    Q_GADGET
    Q_PROPERTY(QString label MEMBER label) ///< the zone
    Q_PROPERTY(QString place MEMBER place) ///< what the panel calls it
    Q_PROPERTY(double value MEMBER value)
    Q_PROPERTY(double uncertainty MEMBER uncertainty)
    Q_PROPERTY(double lower MEMBER lower)
    Q_PROPERTY(double upper MEMBER upper)
    Q_PROPERTY(int verdict MEMBER verdict)
    Q_PROPERTY(QString word MEMBER word)
    Q_PROPERTY(QString figure MEMBER figure) ///< as typed
    Q_PROPERTY(QString spread MEMBER spread) ///< "± 0.05"
    Q_PROPERTY(QString limits MEMBER limits) ///< "3.0 to 3.7"
    Q_PROPERTY(QString tag MEMBER tag)       ///< the first device on it; empty if it has none
    Q_PROPERTY(bool named MEMBER named)      ///< its figure stands on the chart

public:
    QString label, place, word, figure, spread, limits, tag;
    double value = 0, uncertainty = 0, lower = absent, upper = absent;
    int verdict = 0;
    bool named = false;
    friend bool operator==(const LoopRow&, const LoopRow&) = default;
};

class LoopReadings : public PROOFWALK_ROWS(LoopRow) {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(int count READ count NOTIFY changed)
    Q_PROPERTY(QString question READ question NOTIFY changed)
    Q_PROPERTY(QString answer READ answer NOTIFY changed)
    Q_PROPERTY(QString unit READ unit NOTIFY changed)
    Q_PROPERTY(QString axis READ axis NOTIFY changed)
    Q_PROPERTY(double nominal READ nominal NOTIFY changed) ///< NaN: the loops have no common one

public:
    explicit LoopReadings(QObject* parent = nullptr);
    int count() const { return rowCount(); }
    QString question() const { return m_question; }
    QString answer() const { return m_answer; }
    QString unit() const { return m_unit; }
    QString axis() const { return m_axis; }
    double nominal() const { return m_nominal; }

Q_SIGNALS:
    void changed();

private:
    void refresh();

    QString m_question, m_answer, m_unit, m_axis;
    double m_nominal = absent;
};

} // namespace proofwalk::models
