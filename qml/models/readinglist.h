// SPDX-License-Identifier: GPL-3.0-or-later
// Every figure that was read and stands, in walking order, on its own small scale.
#pragma once

#include "qml/models/figures.h"
#include "qml/models/rows.h"

#include <QString>
#include <QtQml/qqmlregistration.h>

namespace proofwalk::models {

struct ReadingRow {
    Q_GADGET
    Q_PROPERTY(QString subject MEMBER subject) ///< "GR-01", "zone 4", "entry-delay, shop"
    Q_PROPERTY(QString step MEMBER step)       ///< "opening gap"
    Q_PROPERTY(QString figure MEMBER figure)   ///< "3.40 ± 0.05 kΩ"
    Q_PROPERTY(QString limits MEMBER limits)
    Q_PROPERTY(QString time MEMBER time)
    Q_PROPERTY(QString tag MEMBER tag)         ///< whose card shows it; empty: nobody's
    Q_PROPERTY(double value MEMBER value)
    Q_PROPERTY(double uncertainty MEMBER uncertainty)
    Q_PROPERTY(double lower MEMBER lower)
    Q_PROPERTY(double upper MEMBER upper)
    Q_PROPERTY(int verdict MEMBER verdict)
    Q_PROPERTY(QString word MEMBER word)

public:
    QString subject, step, figure, limits, time, tag, word;
    double value = absent, uncertainty = 0, lower = absent, upper = absent;
    int verdict = 0;

    /// Absent numbers are alike.
    friend bool operator==(const ReadingRow& a, const ReadingRow& b)
    {
        return a.subject == b.subject && a.step == b.step && a.figure == b.figure && a.limits == b.limits
            && a.time == b.time && a.tag == b.tag && a.verdict == b.verdict && a.word == b.word;
    }
};

class ReadingList : public PROOFWALK_ROWS(ReadingRow) {
    Q_OBJECT
    QML_ELEMENT

public:
    explicit ReadingList(QObject* parent = nullptr);

private:
    void refresh();
};

} // namespace proofwalk::models
