// SPDX-License-Identifier: GPL-3.0-or-later
// What does not fit in the plan, by core/review: each with its reason and where it stands.
#pragma once

#include "qml/models/rows.h"

#include <QString>
#include <QtQml/qqmlregistration.h>

namespace proofwalk::models {

struct ProblemRow {
    Q_GADGET
    Q_PROPERTY(QString where MEMBER where)     ///< "zones.csv:4, column purpose"
    Q_PROPERTY(QString words MEMBER words)     ///< what, and what to do
    Q_PROPERTY(QString severity MEMBER severity)
    Q_PROPERTY(bool error MEMBER error)

public:
    QString where, words, severity;
    bool error = false;
    friend bool operator==(const ProblemRow&, const ProblemRow&) = default;
};

class PlanProblems : public PROOFWALK_ROWS(ProblemRow) {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(QString headline READ headline NOTIFY changed) ///< "3 things do not fit"
    Q_PROPERTY(bool ready READ ready NOTIFY changed)          ///< the review is done

public:
    explicit PlanProblems(QObject* parent = nullptr);
    QString headline() const { return m_headline; }
    bool ready() const { return m_ready; }

Q_SIGNALS:
    void changed();

private:
    void refresh();
    QString m_headline;
    bool m_ready = false;
};

} // namespace proofwalk::models
