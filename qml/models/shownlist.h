// SPDX-License-Identifier: GPL-3.0-or-later
// What the customer was shown: the usual topics, those of the record first ticked, and any other.
#pragma once

#include "qml/models/asking.h"
#include "qml/models/rows.h"

#include <QString>
#include <QtQml/qqmlregistration.h>

namespace proofwalk::models {

struct TopicRow {
    Q_GADGET
    Q_PROPERTY(QString topic MEMBER topic)
    Q_PROPERTY(QString note MEMBER note)   ///< what was said of it, and when
    Q_PROPERTY(bool shown MEMBER shown)

public:
    QString topic, note, event;
    bool shown = false;
    friend bool operator==(const TopicRow&, const TopicRow&) = default;
};

class ShownList : public PROOFWALK_ROWS(TopicRow) {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(bool busy READ busy NOTIFY askingChanged)
    Q_PROPERTY(QString problem READ problem NOTIFY askingChanged)

public:
    explicit ShownList(QObject* parent = nullptr);
    bool busy() const { return m_asking.busy(); }
    QString problem() const { return m_asking.problem(); }

    /// Asks to record that the topic was shown. The words may be empty.
    Q_INVOKABLE void show(const QString& topic, const QString& words = {});
    /// Asks to withdraw what that row records, with a reason.
    Q_INVOKABLE void takeBack(int row, const QString& reason);

Q_SIGNALS:
    void askingChanged();
    void taken(); ///< the last thing asked for is durable

private:
    void refresh();

    Asking m_asking;
};

} // namespace proofwalk::models
