// SPDX-License-Identifier: GPL-3.0-or-later
#include "qml/parts/doorwayscale.h"

#include "core/report/scale.h"

#include <algorithm>

namespace proofwalk::parts {

DoorwayScale::DoorwayScale(QQuickItem* parent) : ReadingScale(QSizeF(70, 20), parent) {}

void DoorwayScale::draw(report::Drawing& drawing)
{
    const double high = std::min(height(), 20.0);
    drawScale(drawing, QRectF(0, (height() - high) / 2, width(), high), scale());
}

} // namespace proofwalk::parts
