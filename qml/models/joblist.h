// SPDX-License-Identifier: GPL-3.0-or-later
// The start page's jobs, the newest first.
#pragma once

#include "qml/models/jobshelf.h"
#include "qml/models/rows.h"

#include <QString>
#include <QtQml/qqmlregistration.h>

#include <memory>
#include <vector>

namespace proofwalk::models {

/// The rooms of a job that is not open, as they were last seen.
class ShelvedRooms : public PROOFWALK_ROWS(RoomRow) {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("a list of jobs makes it")

public:
    explicit ShelvedRooms(std::vector<RoomRow> rooms) { replace(std::move(rooms)); }
};

struct JobRow {
    Q_GADGET
    Q_PROPERTY(QString file MEMBER file)
    Q_PROPERTY(QString site MEMBER site)
    Q_PROPERTY(QString second MEMBER second)     ///< "12 devices, Monday"
    Q_PROPERTY(QString where MEMBER where)       ///< "you stood at CE-07, cellar, ageing room, at 14:02"
    Q_PROPERTY(QString place MEMBER place)       ///< "CE-07, cellar, ageing room"
    Q_PROPERTY(QString count MEMBER count)       ///< "41 of 64"
    Q_PROPERTY(QString findings MEMBER findings) ///< "2 findings"
    Q_PROPERTY(QString word MEMBER word)         ///< "signed", "retest 3 devices", …
    Q_PROPERTY(int verdict MEMBER verdict)
    Q_PROPERTY(bool missing MEMBER missing)      ///< its file is not there
    Q_PROPERTY(proofwalk::models::ShelvedRooms* rooms MEMBER rooms)

public:
    QString file, site, second, where, place, count, findings, word;
    int verdict = 0;
    bool missing = false;
    ShelvedRooms* rooms = nullptr; ///< owned by the list
    friend bool operator==(const JobRow&, const JobRow&) = default;
};

class JobList : public PROOFWALK_ROWS(JobRow) {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(int count READ count NOTIFY countChanged)

public:
    explicit JobList(QObject* parent = nullptr);
    int count() const { return rowCount(); }

    /// Leaves it out of the list; its file stays where it is.
    Q_INVOKABLE void forget(const QString& file) { JobShelf::instance().forget(file); }

Q_SIGNALS:
    void countChanged();

private:
    void refresh();

    std::vector<std::unique_ptr<ShelvedRooms>> m_rooms;
};

} // namespace proofwalk::models
