// SPDX-License-Identifier: GPL-3.0-or-later
// A picture of a list: it reads the rows by their roles' names and reads afresh when any of them changes.
#pragma once

#include "qml/parts/drawn.h"

#include <QAbstractItemModel>
#include <QPointer>

namespace proofwalk::parts {

class RowReader : public proofwalk::parts::Drawn {
    Q_OBJECT
    QML_ANONYMOUS

public:
    using Drawn::Drawn;

protected:
    QAbstractItemModel* source() const { return m_source; }
    /// Takes another list, or none; false if it is the same.
    bool setSource(QAbstractItemModel* source);
    int rows() const { return m_source ? m_source->rowCount() : 0; }
    /// What the row says under that role; invalid if the list has no such role.
    QVariant at(int row, const char* role) const;

    /// Called when rows may have changed.
    virtual void reread() = 0;

private:
    QPointer<QAbstractItemModel> m_source;
    QHash<QByteArray, int> m_roles;
};

} // namespace proofwalk::parts
