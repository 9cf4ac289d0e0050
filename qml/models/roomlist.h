// SPDX-License-Identifier: GPL-3.0-or-later
// The rooms of the job with the worst verdict in each: what the building cut open shows.
#pragma once

#include "qml/models/rows.h"

#include <QString>
#include <QtQml/qqmlregistration.h>

namespace proofwalk::models {

struct RoomRow {
    Q_GADGET
    Q_PROPERTY(QString floor MEMBER floor)
    Q_PROPERTY(int level MEMBER level)
    Q_PROPERTY(bool outside MEMBER outside)
    Q_PROPERTY(QString room MEMBER room)
    Q_PROPERTY(int verdict MEMBER verdict)
    Q_PROPERTY(bool here MEMBER here)
    Q_PROPERTY(QString caption MEMBER caption) ///< "2 of 4"

public:
    QString floor, room, caption;
    int level = 0, verdict = 0, answered = 0, count = 0;
    bool outside = false, here = false;
    friend bool operator==(const RoomRow&, const RoomRow&) = default;
};

class RoomList : public PROOFWALK_ROWS(RoomRow) {
    Q_OBJECT
    QML_ELEMENT

public:
    explicit RoomList(QObject* parent = nullptr);

private:
    void refresh();
};

} // namespace proofwalk::models
