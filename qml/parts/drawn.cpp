// SPDX-License-Identifier: GPL-3.0-or-later
#include "qml/parts/drawn.h"

#include "qml/parts/kinds.h"
#include "qml/parts/theme.h"

#include <QPainter>

namespace proofwalk::parts {

report::Palette inksOfLook()
{
    const Theme& theme = Theme::instance();
    const Tokens& tokens = theme.tokens();
    return {
        .film = tokens.film,
        .paper = tokens.paper,
        .roof = tokens.paper,
        .ink = tokens.ink,
        .ink2 = tokens.ink2,
        .hair = tokens.hair,
        .done = tokens.done,
        .failTint = tokens.failT,
        .accessTint = tokens.nrT,
        .closeTint = tokens.undT,
        .passInk = tokens.passC,
        .failInk = tokens.failC,
        .closeInk = tokens.undC,
        .closeFill = tokens.undF,
        .accessInk = tokens.nrC,
        .runInk = tokens.runC,
        .glyph = tokens.passInk,
        .here = tokens.here,
        .hereEdge = tokens.hereEdge,
        .route = tokens.route,
        .personEdge = theme.dark() ? tokens.film : tokens.paper,
    };
}

std::optional<report::Verdict> verdictOf(int mark)
{
    if (mark < verdict::Pass || mark > verdict::Retest) return {};
    return static_cast<report::Verdict>(mark);
}

std::optional<report::ProofSeen> seenOf(int seen)
{
    if (seen < seen::Singly || seen > seen::Partner) return {};
    return static_cast<report::ProofSeen>(seen);
}

std::optional<report::ProofState> proofOf(int state)
{
    if (state < proof::NotPromised || state > proof::Failed) return {};
    return static_cast<report::ProofState>(state);
}

Drawn::Drawn(QSizeF implicit, QQuickItem* parent) : QQuickPaintedItem(parent)
{
    setImplicitSize(implicit.width(), implicit.height());
    setAntialiasing(true);
    connect(&Theme::instance(), &Theme::changed, this, [this] { update(); });
}

void Drawn::paint(QPainter* painter)
{
    if (width() <= 0 || height() <= 0) return;
    painter->setRenderHint(QPainter::Antialiasing);
    report::Drawing drawing(*painter, inksOfLook());
    draw(drawing);
}

} // namespace proofwalk::parts
