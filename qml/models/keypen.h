// SPDX-License-Identifier: GPL-3.0-or-later
// A pen led by the keyboard over the field to sign in, for those who have neither finger nor mouse on it.
#pragma once

#include <QObject>
#include <QPoint>
#include <QString>
#include <QtQml/qqmlregistration.h>

#include <vector>

namespace proofwalk::models {

class KeyPen : public QObject {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(double x READ x NOTIFY moved) ///< 0 to 1 of the field's width
    Q_PROPERTY(double y READ y NOTIFY moved) ///< 0 to 1 of its height
    Q_PROPERTY(bool down READ down NOTIFY moved) ///< it writes
    Q_PROPERTY(QString ink READ ink NOTIFY moved) ///< what it wrote, as InkPad has it

public:
    using QObject::QObject;
    double x() const { return m_at.x() / 1000.0; }
    double y() const { return m_at.y() / 1000.0; }
    bool down() const { return m_down; }
    QString ink() const;

    /// One step; the field's edge stops it.
    Q_INVOKABLE void step(int right, int downwards);
    /// Sets the pen on the paper, or lifts it.
    Q_INVOKABLE void press();
    Q_INVOKABLE void clear();

Q_SIGNALS:
    void moved();

private:
    QPoint m_at{200, 500};
    bool m_down = false;
    std::vector<std::vector<QPoint>> m_strokes;
};

} // namespace proofwalk::models
