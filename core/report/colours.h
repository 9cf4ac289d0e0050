// SPDX-License-Identifier: GPL-3.0-or-later
// The inks of the sheets. Colour never speaks alone: every one of these stands with a shape and a word.
#pragma once

#include <QColor>

namespace proofwalk::report {

inline const QColor film{0xE9, 0xEF, 0xED};
inline const QColor paper{0xFF, 0xFF, 0xFF};
inline const QColor ink{0x12, 0x20, 0x2A};
inline const QColor ink2{0x45, 0x57, 0x62};
inline const QColor hair{0xB5, 0xC2, 0xC3};
inline const QColor done{0xC4, 0xE4, 0xD6};
inline const QColor failTint{0xF8, 0xD8, 0xC7};
inline const QColor accessTint{0xCF, 0xE6, 0xF4};
inline const QColor closeTint{0xFB, 0xE9, 0xC4};
inline const QColor passInk{0x00, 0x6B, 0x4C};
inline const QColor failInk{0xA9, 0x36, 0x00};
inline const QColor closeInk{0x8A, 0x52, 0x00};
inline const QColor closeFill{0xE6, 0x9F, 0x00};
inline const QColor accessInk{0x17, 0x61, 0x8E};
inline const QColor runInk{0x00, 0x5F, 0x9E};
inline const QColor penInk{0x16, 0x30, 0x6E};    ///< a signature by hand
inline const QColor shadowInk{0xEC, 0xE6, 0xE8}; ///< PRACTICE, large, under the words

} // namespace proofwalk::report
