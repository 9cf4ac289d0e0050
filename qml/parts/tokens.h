// SPDX-License-Identifier: GPL-3.0-or-later
// The colours of the three looks, by the names the design gives them. Their contrasts are computed in tests/qml.
#pragma once

#include <QColor>

namespace proofwalk::parts {

enum class Look { Light, Dark, HighContrast };

/// One look. What a name is for stands in theme.h.
struct Tokens {
    QColor film, paper, ink, ink2, hair, here, hereEdge, sign, signInk, openBg, band, bandInk, pick, route, routeBtn,
        btnInk, done, failT, nrT, undT, passC, passInk, passBtn, failC, failBtn, undC, undF, nrC, runC;
};

const Tokens& tokensOf(Look look);

} // namespace proofwalk::parts
