// SPDX-License-Identifier: GPL-3.0-or-later
// A list whose rows are computed afresh after each commit; only those that differ say so.
#pragma once

#include <QAbstractListModel>
#include <QMetaProperty>

#include <algorithm>
#include <vector>

namespace proofwalk::models {

/// `Row` is a gadget that can be compared: its properties are the roles, by their names and types. A row keeps its place
/// while it is the same thing; at the end rows come and go. A model names it as its base by PROOFWALK_ROWS.
template <class Row>
class Rows : public QAbstractListModel {
public:
    using QAbstractListModel::QAbstractListModel;

    int rowCount(const QModelIndex& parent = {}) const override
    {
        return parent.isValid() ? 0 : static_cast<int>(m_rows.size());
    }

    QVariant data(const QModelIndex& index, int role) const override
    {
        const int property = role - firstRole;
        if (!checkIndex(index, CheckIndexOption::IndexIsValid) || property < 0
            || property >= Row::staticMetaObject.propertyCount())
            return {};
        return Row::staticMetaObject.property(property).readOnGadget(&m_rows[static_cast<std::size_t>(index.row())]);
    }

    QHash<int, QByteArray> roleNames() const override
    {
        QHash<int, QByteArray> names;
        for (int i = 0; i < Row::staticMetaObject.propertyCount(); ++i)
            names[firstRole + i] = Row::staticMetaObject.property(i).name();
        return names;
    }

    const std::vector<Row>& rows() const { return m_rows; }

protected:
    static constexpr int firstRole = Qt::UserRole + 1;

    void replace(std::vector<Row> next)
    {
        const std::size_t common = std::min(m_rows.size(), next.size());
        if (next.size() < m_rows.size()) {
            beginRemoveRows({}, static_cast<int>(common), static_cast<int>(m_rows.size()) - 1);
            m_rows.resize(common);
            endRemoveRows();
        }
        for (std::size_t i = 0; i < common; ++i) {
            if (m_rows[i] == next[i]) continue;
            m_rows[i] = std::move(next[i]);
            const QModelIndex changed = index(static_cast<int>(i));
            Q_EMIT dataChanged(changed, changed);
        }
        if (next.size() > common) {
            beginInsertRows({}, static_cast<int>(common), static_cast<int>(next.size()) - 1);
            m_rows.insert(m_rows.end(), std::make_move_iterator(next.begin() + static_cast<std::ptrdiff_t>(common)),
                          std::make_move_iterator(next.end()));
            endInsertRows();
        }
    }

private:
    std::vector<Row> m_rows;
};

} // namespace proofwalk::models

/// Rows<Row> as a base. moc is told of Qt's class instead: Rows has no meta-object of its own, so Qt's is the one it
/// inherits; and Qt 6.4's type register, to which moc hands the base's name, knows no templates, nor does qmllint then.
#ifdef Q_MOC_RUN
#define PROOFWALK_ROWS(Row) QAbstractListModel
#else
#define PROOFWALK_ROWS(Row) proofwalk::models::Rows<Row>
#endif
