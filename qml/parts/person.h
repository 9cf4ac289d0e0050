// SPDX-License-Identifier: GPL-3.0-or-later
// You, from above.
#pragma once

#include "qml/parts/drawn.h"

#include <QColor>

namespace proofwalk::parts {

class Person : public proofwalk::parts::Drawn {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(
        double heading READ heading WRITE setHeading NOTIFY headingChanged) ///< degrees: 0 up, 90 right, 180 down
    Q_PROPERTY(
        bool timed READ timed WRITE setTimed NOTIFY timedChanged) ///< a clock runs: in the ink of what is running

public:
    explicit Person(QQuickItem* parent = nullptr);
    double heading() const { return m_heading; }
    void setHeading(double heading);
    bool timed() const { return m_timed; }
    void setTimed(bool timed);

Q_SIGNALS:
    void headingChanged();
    void timedChanged();

protected:
    void draw(report::Drawing& drawing) override;

private:
    double m_heading = 90;
    bool m_timed = false;
};

} // namespace proofwalk::parts
