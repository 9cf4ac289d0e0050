// SPDX-License-Identifier: GPL-3.0-or-later
// The small scale of rows and cells.
#pragma once

#include "qml/parts/readingscale.h"

namespace proofwalk::parts {

class DoorwayScale : public proofwalk::parts::ReadingScale {
    Q_OBJECT
    QML_ELEMENT

public:
    explicit DoorwayScale(QQuickItem* parent = nullptr);

protected:
    void draw(report::Drawing& drawing) override;
};

} // namespace proofwalk::parts
