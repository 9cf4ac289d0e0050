// SPDX-License-Identifier: GPL-3.0-or-later
// The stopwatch: a square corridor walked clockwise from its upper left corner, round the figure its user sets inside.
#pragma once

#include "qml/parts/timedpicture.h"

#include <QList>
#include <QPolygonF>

namespace proofwalk::parts {

class StopwatchPicture : public proofwalk::parts::TimedPicture {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(QList<double> previous READ previous WRITE setPrevious NOTIFY previousChanged) ///< earlier trials
    Q_PROPERTY(QRectF inside READ inside NOTIFY insideChanged) ///< the room within the corridor

public:
    explicit StopwatchPicture(QQuickItem* parent = nullptr);
    QList<double> previous() const { return m_previous; }
    void setPrevious(const QList<double>& previous);
    QRectF inside() const;
    /// Where a moment stands, on the middle of the corridor.
    Q_INVOKABLE QPointF at(double seconds) const;

Q_SIGNALS:
    void previousChanged();
    void insideChanged();

protected:
    void draw(report::Drawing& drawing) override;
    void geometryChange(const QRectF& now, const QRectF& before) override;

private:
    struct Stand {
        QPointF point;
        double heading_deg = 0;
    };
    QRectF middle() const;
    Stand stand(double part) const;
    QPainterPath way(double from, double to) const;
    void drawJamb(report::Drawing& drawing, double part) const;
    void drawWalls(report::Drawing& drawing) const;
    void drawPrevious(report::Drawing& drawing) const;

    QList<double> m_previous;
};

} // namespace proofwalk::parts
