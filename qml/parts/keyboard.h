// SPDX-License-Identifier: GPL-3.0-or-later
// Whether the person works by keyboard just now: its place is shown then, and not to a thumb.
#pragma once

#include <QObject>
#include <QtQml/qqmlregistration.h>

namespace proofwalk::parts {

class Keyboard : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_SINGLETON
    Q_PROPERTY(bool inUse READ inUse NOTIFY changed) ///< the last thing that was pressed was a key

public:
    explicit Keyboard(QObject* parent = nullptr);
    bool inUse() const { return m_inUse; }

Q_SIGNALS:
    void changed();

private:
    bool eventFilter(QObject* watched, QEvent* event) override;
    void turn(bool inUse);

    bool m_inUse = false;
};

} // namespace proofwalk::parts
