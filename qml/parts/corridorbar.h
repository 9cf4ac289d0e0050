// SPDX-License-Identifier: GPL-3.0-or-later
// The corridor of time laid flat, for a step of a sequence.
#pragma once

#include "qml/parts/timedpicture.h"

namespace proofwalk::parts {

class CorridorBar : public proofwalk::parts::TimedPicture {
    Q_OBJECT
    QML_ELEMENT

public:
    explicit CorridorBar(QQuickItem* parent = nullptr);
    /// Where a moment stands, in units from the left edge; 0 if it is absent.
    Q_INVOKABLE double xOf(double seconds) const;

protected:
    void draw(report::Drawing& drawing) override;
};

} // namespace proofwalk::parts
