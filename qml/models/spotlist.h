// SPDX-License-Identifier: GPL-3.0-or-later
// The devices of one room, as its drawing shows them.
#pragma once

#include "qml/models/rows.h"

#include <QString>
#include <QtQml/qqmlregistration.h>

namespace proofwalk::models {

struct SpotRow {
    Q_GADGET
    Q_PROPERTY(QString tag MEMBER tag)
    Q_PROPERTY(QString position MEMBER position) ///< in words: "above the door"
    Q_PROPERTY(int verdict MEMBER verdict)
    Q_PROPERTY(bool here MEMBER here)

public:
    QString tag, position;
    int verdict = 0;
    bool here = false;
    friend bool operator==(const SpotRow&, const SpotRow&) = default;
};

class SpotList : public PROOFWALK_ROWS(SpotRow) {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(QString tag READ tag WRITE setTag NOTIFY tagChanged) ///< the device in hand; its room is shown

public:
    explicit SpotList(QObject* parent = nullptr);
    QString tag() const { return m_tag; }
    void setTag(const QString& tag);
    Q_INVOKABLE QString tagAt(int row) const;

Q_SIGNALS:
    void tagChanged();

private:
    void refresh();
    QString m_tag;
};

} // namespace proofwalk::models
