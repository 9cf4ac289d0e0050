// SPDX-License-Identifier: GPL-3.0-or-later
#include "qml/parts/rowreader.h"

namespace proofwalk::parts {

bool RowReader::setSource(QAbstractItemModel* source)
{
    if (source == m_source) return false;
    if (m_source) m_source->disconnect(this);
    m_source = source;
    m_roles.clear();
    if (source != nullptr) {
        const QHash<int, QByteArray> names = source->roleNames();
        for (auto role = names.begin(); role != names.end(); ++role) m_roles.insert(role.value(), role.key());
        const auto afresh = [this] {
            reread();
            update();
        };
        connect(source, &QAbstractItemModel::modelReset, this, afresh);
        connect(source, &QAbstractItemModel::rowsInserted, this, afresh);
        connect(source, &QAbstractItemModel::rowsRemoved, this, afresh);
        connect(source, &QAbstractItemModel::rowsMoved, this, afresh);
        connect(source, &QAbstractItemModel::layoutChanged, this, afresh);
        connect(source, &QAbstractItemModel::dataChanged, this, afresh);
        connect(source, &QObject::destroyed, this, afresh);
    }
    reread();
    update();
    return true;
}

QVariant RowReader::at(int row, const char* role) const
{
    const auto found = m_roles.find(role);
    return m_source && found != m_roles.end() ? m_source->data(m_source->index(row, 0), *found) : QVariant();
}

} // namespace proofwalk::parts
