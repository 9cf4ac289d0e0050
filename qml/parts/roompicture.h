// SPDX-License-Identifier: GPL-3.0-or-later
// A room without a drawing: one box, a door low at the left, you inside it, footprints to the device in hand. Nobody
// measured it, so it shows no scale and no neighbour. Its user gives it its accessible name.
#pragma once

#include "qml/parts/rowreader.h"

#include <vector>

namespace proofwalk::parts {

class RoomPicture : public proofwalk::parts::RowReader {
    Q_OBJECT
    QML_ELEMENT
    /// Roles: tag, position, verdict, here. The words of `position` choose a device's place.
    Q_PROPERTY(QAbstractItemModel* spots READ spots WRITE setSpots NOTIFY spotsChanged)
    Q_PROPERTY(QPointF hereAt READ hereAt NOTIFY placesChanged) ///< of the device in hand; (-1, -1) without one

public:
    explicit RoomPicture(QQuickItem* parent = nullptr);
    QAbstractItemModel* spots() const { return source(); }
    void setSpots(QAbstractItemModel* spots);
    QPointF hereAt() const;
    /// Where that row's device stands; (-1, -1) if there is none.
    Q_INVOKABLE QPointF spotAt(int row) const;
    /// The row whose target of 48 holds the place, the nearest of several; -1 for none.
    Q_INVOKABLE int rowAt(double x, double y) const;

Q_SIGNALS:
    void spotsChanged();
    void placesChanged();
    void spotTapped(int row);

protected:
    void draw(report::Drawing& drawing) override;
    void reread() override;
    void geometryChange(const QRectF& now, const QRectF& before) override;
    void mousePressEvent(QMouseEvent* event) override;
    void mouseReleaseEvent(QMouseEvent* event) override;

private:
    struct Spot {
        QPointF place;
        int verdict = 0;
        bool here = false;
        bool window = false;
    };
    QRectF room() const; ///< within the walls
    QRectF doorway() const;
    QPointF person() const;
    void place();
    void drawShell(report::Drawing& drawing) const;
    void drawWay(report::Drawing& drawing) const;

    std::vector<Spot> m_spots;
    int m_pressed = -1;
};

} // namespace proofwalk::parts
