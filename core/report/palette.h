// SPDX-License-Identifier: GPL-3.0-or-later
// The inks a drawing is made with. By default those of print; the window lays in those of the look that is chosen, so
// that sheet and screen are drawn by one hand.
#pragma once

#include "core/report/colours.h"

namespace proofwalk::report {

/// Every ink that marks, scales and sections use, by what it is for.
struct Palette {
    QColor film = report::film;               ///< behind the masonry of a large scale
    QColor paper = report::paper;             ///< a room not yet walked, the halo round a reading
    QColor roof = {0xFC, 0xFD, 0xFB};         ///< under the roof of a section
    QColor ink = report::ink;                 ///< walls, words
    QColor ink2 = report::ink2;               ///< second words, the ring of what is to do
    QColor hair = report::hair;               ///< decoration only
    QColor done = report::done;               ///< all pass; what is allowed
    QColor failTint = report::failTint;       ///< a room or row that failed
    QColor accessTint = report::accessTint;   ///< no access, retest
    QColor closeTint = report::closeTint;     ///< too close
    QColor passInk = report::passInk;         ///< the disc, a lit window
    QColor failInk = report::failInk;         ///< the diamond
    QColor closeInk = report::closeInk;       ///< too close: ring, jamb, hatch
    QColor closeFill = report::closeFill;     ///< too close: the half in the open
    QColor accessInk = report::accessInk;     ///< the doorway walled up
    QColor runInk = report::runInk;           ///< running, retest
    QColor glyph = report::paper;             ///< tick, cross and sign on what is filled
    QColor here = {0xFF, 0xD6, 0x3D};         ///< the one room where you stand
    QColor hereEdge = {0xFF, 0xD6, 0x3D};     ///< its inner edge, where the fill alone is too dark to be seen
    QColor route = {0x9A, 0x14, 0x58};        ///< the person, the way
    QColor personEdge = report::paper;        ///< the pale edge that parts the person from what they stand on
};

} // namespace proofwalk::report
