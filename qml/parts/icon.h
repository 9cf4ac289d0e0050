// SPDX-License-Identifier: GPL-3.0-or-later
// A drawing from icons/: a kind of device, or what an action does.
#pragma once

#include "qml/parts/drawn.h"

#include <QColor>
#include <QString>

namespace proofwalk::parts {

class Icon : public proofwalk::parts::Drawn {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(QString name READ name WRITE setName NOTIFY nameChanged) ///< its file without .svg; others: `unknown`
    Q_PROPERTY(QColor colour READ colour WRITE setColour RESET resetColour NOTIFY colourChanged) ///< the look's ink

public:
    explicit Icon(QQuickItem* parent = nullptr);
    QString name() const { return m_name; }
    void setName(const QString& name);
    QColor colour() const;
    void setColour(const QColor& colour);
    void resetColour() { setColour({}); }

Q_SIGNALS:
    void nameChanged();
    void colourChanged();

protected:
    void draw(report::Drawing& drawing) override;

private:
    QString m_name;
    QColor m_colour; ///< invalid: the ink of the look
};

} // namespace proofwalk::parts
