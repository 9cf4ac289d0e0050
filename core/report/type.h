// SPDX-License-Identifier: GPL-3.0-or-later
// The two typefaces of the sheets, and how wide words are in them.
//
// Sizes and widths are in grid units: an A4 sheet is 910 by 1286 of them, 110 to the inch. Fonts are shaped
// `typeFactor` times as large and drawn smaller, so that no width is rounded to a whole unit.
#pragma once

#include "core/base/result.h"
#include "core/report/colours.h"

#include <QFont>
#include <QString>
#include <QStringList>

namespace proofwalk::report {

inline constexpr double typeFactor = 10;

/// Clear Sans Regular, Clear Sans Bold, B612 Bold (tags, readings, counts: its figures are equally wide).
enum class Face { text, strong, figure };

/// How words look.
struct Style {
    Face face = Face::text;
    double size = 15;
    QColor colour = ink;
};

/// The font of a style, `typeFactor` times as large. Its letter spacing is 100.5 %: at exactly 100 % ff, fi and fl
/// become one glyph, and a search for "verified" in the finished file misses it.
QFont fontOf(const Style& style);

/// Whether both typefaces are what the system gives when asked for them.
/// Error: report.font-missing {found, wanted}.
Result<void> checkFonts();

/// UTF-8 to what Qt draws; control characters (a line break in a name) become spaces.
QString words(const std::string& text);

double widthOf(const QString& text, const Style& style);

/// The text, or as much of it as fits, ended by an ellipsis.
QString elided(const QString& text, const Style& style, double width);

/// Lines no wider than `width`. A word that is wider alone is broken within. Of more than `most` lines (0: no bound)
/// the last kept one is elided.
QStringList wrapped(const QString& text, const Style& style, double width, int most = 0);

} // namespace proofwalk::report
