// SPDX-License-Identifier: GPL-3.0-or-later
// The state each area is in, as somebody said last, and the saying of another.
#pragma once

#include "qml/models/asking.h"
#include "qml/models/rows.h"

#include <QString>
#include <QStringList>
#include <QtQml/qqmlregistration.h>

namespace proofwalk::models {

struct AreaStateRow {
    Q_GADGET
    Q_PROPERTY(QString area MEMBER area)
    Q_PROPERTY(QString title MEMBER title)         ///< what people call it
    Q_PROPERTY(QString state MEMBER state)         ///< "unpowered", "unset", "walk-test", "set"
    Q_PROPERTY(QString stateWord MEMBER stateWord) ///< "in walk test", "set: Everybody out"
    Q_PROPERTY(QString since MEMBER since)         ///< "since 09:12"; "nobody has said yet"
    Q_PROPERTY(QString mode MEMBER mode)           ///< name of the mode it is set in; may be empty
    Q_PROPERTY(QStringList modes MEMBER modes)     ///< in which it can be set
    Q_PROPERTY(QStringList modeTitles MEMBER modeTitles)

public:
    QString area, title, state, stateWord, since, mode;
    QStringList modes, modeTitles;
    friend bool operator==(const AreaStateRow&, const AreaStateRow&) = default;
};

class AreaStates : public PROOFWALK_ROWS(AreaStateRow) {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(bool busy READ busy NOTIFY askingChanged)
    Q_PROPERTY(QString problem READ problem NOTIFY askingChanged)

public:
    explicit AreaStates(QObject* parent = nullptr);
    bool busy() const { return m_asking.busy(); }
    QString problem() const { return m_asking.problem(); }

    /// Says that the area is in that state from now on; `mode` may be empty.
    Q_INVOKABLE void say(const QString& area, const QString& state, const QString& mode = {});

Q_SIGNALS:
    void askingChanged();
    void taken();

private:
    void refresh();
    Asking m_asking;
};

} // namespace proofwalk::models
