// SPDX-License-Identifier: GPL-3.0-or-later
// A verdict's mark in one colour, cut out of a filled button.
#pragma once

#include "qml/parts/kinds.h"

#include <QColor>
#include <QQuickPaintedItem>
#include <QtQml/qqmlregistration.h>

namespace proofwalk::parts {

class ButtonMark : public QQuickPaintedItem {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(int mark READ mark WRITE setMark NOTIFY changed)             ///< a Verdict
    Q_PROPERTY(bool taken READ taken WRITE setTaken NOTIFY changed)         ///< false: without its tick or cross
    Q_PROPERTY(QColor colour READ colour WRITE setColour NOTIFY changed)    ///< of the mark
    Q_PROPERTY(QColor ground READ ground WRITE setGround NOTIFY changed)    ///< of the button

public:
    explicit ButtonMark(QQuickItem* parent = nullptr) : QQuickPaintedItem(parent) { setAntialiasing(true); }

    int mark() const { return m_mark; }
    void setMark(int mark) { put(m_mark, mark); }
    bool taken() const { return m_taken; }
    void setTaken(bool taken) { put(m_taken, taken); }
    QColor colour() const { return m_colour; }
    void setColour(const QColor& colour) { put(m_colour, colour); }
    QColor ground() const { return m_ground; }
    void setGround(const QColor& ground) { put(m_ground, ground); }

    void paint(QPainter* painter) override;

Q_SIGNALS:
    void changed();

private:
    template <class T>
    void put(T& member, const T& value)
    {
        if (member == value) return;
        member = value;
        update();
        Q_EMIT changed();
    }

    int m_mark = verdict::Pass;
    bool m_taken = true;
    QColor m_colour;
    QColor m_ground;
};

} // namespace proofwalk::parts
