// SPDX-License-Identifier: GPL-3.0-or-later
// The walk in order: arrival, rounds, the rooms with their devices, sequences, what is to be put back.
#pragma once

#include "qml/models/rows.h"

#include <QString>
#include <QtQml/qqmlregistration.h>

namespace proofwalk::models {

struct WalkRow {
    Q_GADGET
    Q_PROPERTY(int type MEMBER type)          ///< WalkList::Type
    Q_PROPERTY(QString key MEMBER key)        ///< a tag; a round's or sequence's name; "arrival", "put-back"
    Q_PROPERTY(QString floor MEMBER floor)    ///< Room only
    Q_PROPERTY(QString title MEMBER title)    ///< what people call it
    Q_PROPERTY(QString note MEMBER note)      ///< "2 of 4", "to do", "3 of 8 steps"
    Q_PROPERTY(QString icon MEMBER icon)
    Q_PROPERTY(int verdict MEMBER verdict)
    Q_PROPERTY(int seen MEMBER seen)
    Q_PROPERTY(bool here MEMBER here)         ///< where the person stands
    Q_PROPERTY(bool finished MEMBER finished) ///< nothing is left to do in it

public:
    QString key, floor, title, note, icon;
    int type = 0, verdict = 0, seen = 0;
    bool here = false, finished = false;
    friend bool operator==(const WalkRow&, const WalkRow&) = default;
};

class WalkList : public PROOFWALK_ROWS(WalkRow) {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(QString next READ next NOTIFY nextChanged) ///< tag of the device to go to; empty when all are answered
    Q_PROPERTY(QString nextWords READ nextWords NOTIFY nextChanged) ///< "CE-07, cellar, ageing room"

public:
    enum Type { Arrival, Round, Room, Device, Sequence, PutBack };
    Q_ENUM(Type)

    explicit WalkList(QObject* parent = nullptr);
    QString next() const { return m_next; }
    QString nextWords() const { return m_nextWords; }

Q_SIGNALS:
    void nextChanged();

private:
    void refresh();

    QString m_next, m_nextWords;
};

} // namespace proofwalk::models
