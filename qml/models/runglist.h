// SPDX-License-Identifier: GPL-3.0-or-later
// The single rungs of one tread, as sentences; each leads to where it can be climbed.
#pragma once

#include "qml/models/rows.h"
#include "qml/models/rungs.h"

#include <QString>

namespace proofwalk::models {

struct RungRow {
    Q_GADGET
    Q_PROPERTY(QString sentence MEMBER sentence)
    Q_PROPERTY(int verdict MEMBER verdict)   ///< of the device it is about; to do if it is about none
    Q_PROPERTY(bool blocking MEMBER blocking)

public:
    QString sentence;
    int verdict = 0;
    bool blocking = false;
    friend bool operator==(const RungRow&, const RungRow&) = default;
};

class RungList : public PROOFWALK_ROWS(RungRow) {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(int tread READ tread WRITE setTread NOTIFY treadChanged) ///< Tread; below 0: those that block, of all
    Q_PROPERTY(int count READ count NOTIFY countChanged)

public:
    explicit RungList(QObject* parent = nullptr);
    int tread() const { return m_tread; }
    void setTread(int tread);
    int count() const { return rowCount(); }

    Q_INVOKABLE void go(int row) const;

Q_SIGNALS:
    void treadChanged();
    void countChanged();

private:
    void refresh();

    int m_tread = -1;
    std::vector<walk::Rung> m_rungs;
};

} // namespace proofwalk::models
