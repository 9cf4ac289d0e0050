// SPDX-License-Identifier: GPL-3.0-or-later
// A field to sign in, five wide and two high, by finger, pen or mouse.
#pragma once

#include "qml/parts/drawn.h"

#include <QPoint>
#include <QString>

#include <vector>

namespace proofwalk::parts {

class InkPad : public proofwalk::parts::Drawn {
    Q_OBJECT
    QML_ELEMENT
    /// Strokes [[[x, y], …], …] as JSON, whole thousandths of the field's width and height; "[]" if it is empty.
    /// Set to anything else it stays as it was and warns.
    Q_PROPERTY(QString ink READ ink WRITE setInk NOTIFY inkChanged)
    Q_PROPERTY(bool empty READ empty NOTIFY inkChanged)

public:
    explicit InkPad(QQuickItem* parent = nullptr);
    QString ink() const;
    void setInk(const QString& ink);
    bool empty() const { return m_strokes.empty(); }
    Q_INVOKABLE void clear();

Q_SIGNALS:
    void inkChanged();

protected:
    void draw(report::Drawing& drawing) override;
    void mousePressEvent(QMouseEvent* event) override;
    void mouseMoveEvent(QMouseEvent* event) override;
    void mouseReleaseEvent(QMouseEvent* event) override;
    void mouseUngrabEvent() override;

private:
    using Stroke = std::vector<QPoint>;

    QRectF field() const;
    void lay(QPointF place);
    void lift();

    std::vector<Stroke> m_strokes;
    bool m_down = false; ///< the pen is on the field; its stroke is the last
    bool m_off = false;  ///< it has left the field without being lifted
};

} // namespace proofwalk::parts
