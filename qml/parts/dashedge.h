// SPDX-License-Identifier: GPL-3.0-or-later
// A plate with a dashed edge: a door that is shut for now.
#pragma once

#include <QColor>
#include <QQuickPaintedItem>
#include <QtQml/qqmlregistration.h>

namespace proofwalk::parts {

class DashEdge : public QQuickPaintedItem {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(QColor colour READ colour WRITE setColour NOTIFY colourChanged) ///< of the dashes, two units wide
    Q_PROPERTY(QColor fill READ fill WRITE setFill NOTIFY fillChanged)         ///< within them

public:
    explicit DashEdge(QQuickItem* parent = nullptr) : QQuickPaintedItem(parent) { setAntialiasing(true); }

    QColor colour() const { return m_colour; }
    void setColour(const QColor& colour);
    QColor fill() const { return m_fill; }
    void setFill(const QColor& fill);

    void paint(QPainter* painter) override;

Q_SIGNALS:
    void colourChanged();
    void fillChanged();

private:
    QColor m_colour;
    QColor m_fill;
};

} // namespace proofwalk::parts
