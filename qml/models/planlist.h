// SPDX-License-Identifier: GPL-3.0-or-later
// The plan as rooms with what is fitted in them: each device with its zone, as it was designed.
#pragma once

#include "qml/models/rows.h"

#include <QString>
#include <QtQml/qqmlregistration.h>

namespace proofwalk::models {

struct PlanRow {
    Q_GADGET
    Q_PROPERTY(bool wall MEMBER wall)        ///< a room begins; title and note are its
    Q_PROPERTY(QString tag MEMBER tag)
    Q_PROPERTY(QString zone MEMBER zone)     ///< its number; a dash if it has none
    Q_PROPERTY(QString title MEMBER title)   ///< the zone's label, else the kind
    Q_PROPERTY(QString note MEMBER note)     ///< kind; what the zone does
    Q_PROPERTY(QString icon MEMBER icon)

public:
    QString tag, zone, title, note, icon;
    bool wall = false;
    friend bool operator==(const PlanRow&, const PlanRow&) = default;
};

class PlanList : public PROOFWALK_ROWS(PlanRow) {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(QString summary READ summary NOTIFY changed) ///< "10 devices, 8 zones, 1 floor"

public:
    explicit PlanList(QObject* parent = nullptr);
    QString summary() const { return m_summary; }

Q_SIGNALS:
    void changed();

private:
    void refresh();
    QString m_summary;
};

} // namespace proofwalk::models
