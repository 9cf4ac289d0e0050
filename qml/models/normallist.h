// SPDX-License-Identifier: GPL-3.0-or-later
// What keeps the system from being back to normal: accounts on test, what is to be put back, areas left in test.
#pragma once

#include "qml/models/asking.h"
#include "qml/models/rows.h"

#include <QString>
#include <QtQml/qqmlregistration.h>

namespace proofwalk::models {

struct NormalRow {
    Q_GADGET
    Q_PROPERTY(int type MEMBER type)         ///< NormalList::Type
    Q_PROPERTY(QString key MEMBER key)       ///< the account, the name, the area
    Q_PROPERTY(QString title MEMBER title)
    Q_PROPERTY(QString second MEMBER second)
    Q_PROPERTY(bool back MEMBER back)        ///< it is as it should be again

public:
    int type = 0;
    QString key, title, second;
    bool back = false;
    friend bool operator==(const NormalRow&, const NormalRow&) = default;
};

class NormalList : public PROOFWALK_ROWS(NormalRow) {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(bool busy READ busy NOTIFY askingChanged)
    Q_PROPERTY(QString problem READ problem NOTIFY askingChanged)

public:
    enum Type { Account, Temporary, AreaState };
    Q_ENUM(Type)

    explicit NormalList(QObject* parent = nullptr);
    bool busy() const { return m_asking.busy(); }
    QString problem() const { return m_asking.problem(); }

    /// Whom the account was put on test with, so that it need not be typed again; empty if it is not on test.
    Q_INVOKABLE QString toldBefore(const QString& account) const;
    Q_INVOKABLE QString referenceBefore(const QString& account) const;
    Q_INVOKABLE void offTest(const QString& account, const QString& told, const QString& reference);
    Q_INVOKABLE void putBack(const QString& name);
    Q_INVOKABLE void unset(const QString& area);

Q_SIGNALS:
    void askingChanged();
    void taken();

private:
    void refresh();

    Asking m_asking;
};

} // namespace proofwalk::models
