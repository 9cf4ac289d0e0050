// SPDX-License-Identifier: GPL-3.0-or-later
// Readings as marks with whiskers between the walls of their limits, as on the sheet of readings.
#pragma once

#include "qml/parts/rowreader.h"

namespace proofwalk::parts {

class ChartPicture : public proofwalk::parts::RowReader {
    Q_OBJECT
    QML_ELEMENT
    /// Roles: label, value, uncertainty, lower, upper (numbers; NaN: absent), verdict, figure, named.
    Q_PROPERTY(QAbstractItemModel* points READ points WRITE setPoints NOTIFY pointsChanged)
    Q_PROPERTY(QString unit MEMBER m_unit WRITE setUnit NOTIFY unitChanged)
    Q_PROPERTY(QString axis MEMBER m_axis WRITE setAxis NOTIFY axisChanged)
    Q_PROPERTY(double nominal MEMBER m_nominal WRITE setNominal NOTIFY nominalChanged) ///< NaN: none

public:
    explicit ChartPicture(QQuickItem* parent = nullptr) : RowReader(QSizeF(320, 180), parent) {}
    QAbstractItemModel* points() const { return source(); }
    void setPoints(QAbstractItemModel* points);
    void setUnit(const QString& unit);
    void setAxis(const QString& axis);
    void setNominal(double nominal);

Q_SIGNALS:
    void pointsChanged();
    void unitChanged();
    void axisChanged();
    void nominalChanged();

protected:
    void draw(report::Drawing& drawing) override;
    void reread() override;

private:
    QString m_unit, m_axis;
    double m_nominal = std::nan("");
    report::RangeChart m_chart;
};

} // namespace proofwalk::parts
