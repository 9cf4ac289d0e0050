// SPDX-License-Identifier: GPL-3.0-or-later
// Time until something is due as a stretch of corridor: open from the first jamb to the chosen one, masonry behind.
#pragma once

#include <QQuickPaintedItem>
#include <QtQml/qqmlregistration.h>

namespace proofwalk::parts {

class DueWall : public QQuickPaintedItem {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(int jambs READ jambs WRITE setJambs NOTIFY changed)    ///< days to choose from, evenly along the wall
    Q_PROPERTY(int chosen READ chosen WRITE setChosen NOTIFY changed) ///< the one it is open up to

public:
    explicit DueWall(QQuickItem* parent = nullptr);
    int jambs() const { return m_jambs; }
    void setJambs(int jambs);
    int chosen() const { return m_chosen; }
    void setChosen(int chosen);

    void paint(QPainter* painter) override;

Q_SIGNALS:
    void changed();

private:
    int m_jambs = 4, m_chosen = 1;
};

} // namespace proofwalk::parts
