// SPDX-License-Identifier: GPL-3.0-or-later
// What was done for the time of the work: what waits to be put back, oldest first, then what is back.
#pragma once

#include "qml/models/asking.h"
#include "qml/models/rows.h"

#include <QString>
#include <QtQml/qqmlregistration.h>

namespace proofwalk::models {

struct PutBackRow {
    Q_GADGET
    Q_PROPERTY(QString event MEMBER event)
    Q_PROPERTY(QString subject MEMBER subject) ///< "GR-05", "zone 7"; empty if nothing was named
    Q_PROPERTY(QString title MEMBER title)     ///< "sounder lead off"
    Q_PROPERTY(QString where MEMBER where)     ///< "Packing, above the door"; the words given
    Q_PROPERTY(QString since MEMBER since)     ///< "since 13:37, 1 h 6 min"; back: "10:52"
    Q_PROPERTY(bool back MEMBER back)
    Q_PROPERTY(bool here MEMBER here)          ///< where the person stands

public:
    QString event, subject, title, where, since;
    bool back = false, here = false;
    friend bool operator==(const PutBackRow&, const PutBackRow&) = default;
};

class PutBackList : public PROOFWALK_ROWS(PutBackRow) {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(int left READ left NOTIFY changed)
    Q_PROPERTY(QString summary READ summary NOTIFY changed) ///< "3 left, 2 put back"
    Q_PROPERTY(bool busy READ busy NOTIFY askingChanged)
    Q_PROPERTY(QString problem READ problem NOTIFY askingChanged)

public:
    explicit PutBackList(QObject* parent = nullptr);
    int left() const { return m_left; }
    QString summary() const { return m_summary; }
    bool busy() const { return m_asking.busy(); }
    QString problem() const { return m_asking.problem(); }

    /// `subject` (a tag) and `where` may be empty.
    Q_INVOKABLE void add(const QString& what, const QString& subject, const QString& where);
    Q_INVOKABLE void putBack(const QString& title);
    Q_INVOKABLE void withdraw(const QString& event, const QString& reason);
    Q_INVOKABLE void refresh(); ///< also as time passes

Q_SIGNALS:
    void changed();
    void askingChanged();
    void taken();

private:
    int m_left = 0;
    QString m_summary;
    Asking m_asking;
};

} // namespace proofwalk::models
