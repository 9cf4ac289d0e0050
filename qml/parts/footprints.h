// SPDX-License-Identifier: GPL-3.0-or-later
// The way ahead: a trail of prints that fills its box, downwards or to the right.
#pragma once

#include "qml/parts/drawn.h"

namespace proofwalk::parts {

class Footprints : public proofwalk::parts::Drawn {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(bool vertical READ vertical WRITE setVertical NOTIFY verticalChanged)
    Q_PROPERTY(double length READ length WRITE setLength NOTIFY lengthChanged) ///< of one print

public:
    explicit Footprints(QQuickItem* parent = nullptr);
    bool vertical() const { return m_vertical; }
    void setVertical(bool vertical);
    double length() const { return m_length; }
    void setLength(double length);

Q_SIGNALS:
    void verticalChanged();
    void lengthChanged();

protected:
    void draw(report::Drawing& drawing) override;

private:
    bool m_vertical = false;
    double m_length = 7;
};

} // namespace proofwalk::parts
