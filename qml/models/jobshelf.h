// SPDX-License-Identifier: GPL-3.0-or-later
// The jobs this machine had open, the newest first, as they looked when they were last seen; and which one is open.
// Kept beside the machine's key. It is a convenience and no record: if it is lost, jobs are opened by their files.
#pragma once

#include "qml/models/roomlist.h"

#include <QList>
#include <QObject>
#include <QString>
#include <QTimer>

#include <optional>
#include <vector>

namespace proofwalk::models {

/// A job as it was last seen.
struct ShelvedJob {
    QString file, site, where, seenAt, standing; ///< where: "CE-07, cellar, ageing room"; seenAt: RFC 3339, local
    int answered = 0, total = 0, findings = 0, retests = 0, missing = 0;
    bool handedOver = false;
    std::vector<RoomRow> rooms;
    bool operator==(const ShelvedJob&) const = default;
};

class JobShelf : public QObject {
    Q_OBJECT

public:
    static JobShelf& instance();

    /// The newest first.
    const std::vector<ShelvedJob>& jobs() const { return m_jobs; }
    /// The file that was open when the program last ended, or was ended; empty if it was put away.
    QString open() const { return m_open; }

    /// Reads the list; call once, before the first page. A missing or damaged file is an empty list.
    void recall();
    void forget(const QString& file);
    /// The person put the job away: it is not opened at the next start.
    void putAway();

Q_SIGNALS:
    void changed();

private:
    JobShelf();
    void seen();
    void keep();

    std::vector<ShelvedJob> m_jobs;
    QString m_open;
    QTimer m_soon; ///< many taps, one writing
};

} // namespace proofwalk::models
