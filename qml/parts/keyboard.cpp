// SPDX-License-Identifier: GPL-3.0-or-later
#include "qml/parts/keyboard.h"

#include <QEvent>
#include <QGuiApplication>

namespace proofwalk::parts {

Keyboard::Keyboard(QObject* parent) : QObject(parent) { qApp->installEventFilter(this); }

bool Keyboard::eventFilter(QObject* watched, QEvent* event)
{
    switch (event->type()) {
    case QEvent::KeyPress: turn(true); break;
    case QEvent::MouseButtonPress:
    case QEvent::TouchBegin: turn(false); break;
    default: break;
    }
    return QObject::eventFilter(watched, event);
}

void Keyboard::turn(bool inUse)
{
    if (inUse == m_inUse) return;
    m_inUse = inUse;
    Q_EMIT changed();
}

} // namespace proofwalk::parts
