// SPDX-License-Identifier: GPL-3.0-or-later
// A place is a door on the corridor: open where you are, ajar where you were, shut ahead. It stands on its lower edge.
#pragma once

#include "qml/parts/drawn.h"

namespace proofwalk::parts {

class DoorPicture : public proofwalk::parts::Drawn {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(int way READ way WRITE setWay NOTIFY wayChanged) ///< DoorPicture.Here, Been or Ahead

public:
    enum Way { Here, Been, Ahead };
    Q_ENUM(Way)

    explicit DoorPicture(QQuickItem* parent = nullptr);
    int way() const { return m_way; }
    void setWay(int way);

Q_SIGNALS:
    void wayChanged();

protected:
    void draw(report::Drawing& drawing) override;

private:
    int m_way = Ahead;
};

} // namespace proofwalk::parts
