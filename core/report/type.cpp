// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/type.h"

#include <cmath>

#include <QFontInfo>
#include <QFontMetricsF>
#include <QRawFont>

namespace proofwalk::report {

namespace {

constexpr double letterSpacing_pct = 100.5;

/// The blank of B612 is so narrow that text taken out of the file with its layout loses it: "6 s" became "6s".
constexpr double figureWordSpacing_em = 0.06;

QString familyOf(Face face) { return face == Face::figure ? QStringLiteral("B612") : QStringLiteral("Clear Sans"); }

Result<void> checkFace(Face face)
{
    const QFont asked = fontOf({face, 15, ink});
    const QFontInfo info(asked);
    const QString wanted = familyOf(face) + (face == Face::text ? QString() : QStringLiteral(" Bold"));
    // The family's name alone is not enough: the monospaced cut of B612 answers to it as well.
    const bool mono = widthOf(QStringLiteral("i"), {face, 15, ink}) >= widthOf(QStringLiteral("W"), {face, 15, ink});
    if (info.family() != familyOf(face) || info.bold() != (face != Face::text) || info.italic() || mono) {
        const QRawFont raw = QRawFont::fromFont(asked);
        const QString found = raw.familyName() + QLatin1Char(' ') + raw.styleName();
        return failure("report.font-missing", {}, {{"found", found.toStdString()}, {"wanted", wanted.toStdString()}});
    }
    return {};
}

/// How many characters of `text` from `from` on fit, at least one; a surrogate pair is never parted.
qsizetype fitting(const QString& text, qsizetype from, const QFontMetricsF& metrics, double width)
{
    qsizetype count = 1;
    while (from + count < text.size() && metrics.horizontalAdvance(text.mid(from, count + 1)) <= width) {
        ++count;
    }
    if (text.at(from + count - 1).isHighSurrogate() && from + count < text.size()) {
        count += count > 1 ? -1 : 1;
    }
    return count;
}

/// A word cut into pieces that fit; all but the last end a line.
QStringList broken(const QString& word, const QFontMetricsF& metrics, double width)
{
    QStringList pieces;
    for (qsizetype at = 0; at < word.size();) {
        const qsizetype count = fitting(word, at, metrics, width);
        pieces << word.mid(at, count);
        at += count;
    }
    return pieces;
}

} // namespace

QFont fontOf(const Style& style)
{
    QFont font(familyOf(style.face));
    font.setPixelSize(static_cast<int>(std::lround(style.size * typeFactor)));
    font.setBold(style.face != Face::text);
    font.setHintingPreference(QFont::PreferNoHinting);
    font.setLetterSpacing(QFont::PercentageSpacing, letterSpacing_pct);
    if (style.face == Face::figure) {
        font.setWordSpacing(figureWordSpacing_em * font.pixelSize());
    }
    return font;
}

Result<void> checkFonts()
{
    for (const Face face : {Face::text, Face::strong, Face::figure}) {
        if (auto checked = checkFace(face); !checked) {
            return checked;
        }
    }
    return {};
}

QString words(const std::string& text)
{
    QString result = QString::fromStdString(text);
    for (QChar& letter : result) {
        if (letter.category() == QChar::Other_Control) {
            letter = QLatin1Char(' ');
        }
    }
    return result;
}

double widthOf(const QString& text, const Style& style)
{
    return QFontMetricsF(fontOf(style)).horizontalAdvance(text) / typeFactor;
}

QString elided(const QString& text, const Style& style, double width)
{
    return QFontMetricsF(fontOf(style)).elidedText(text, Qt::ElideRight, width * typeFactor);
}

QStringList wrapped(const QString& text, const Style& style, double width, int most)
{
    const QFontMetricsF metrics(fontOf(style));
    const double room = width * typeFactor;
    QStringList lines;
    QString line;
    for (const QString& word : text.split(QLatin1Char(' '), Qt::SkipEmptyParts)) {
        const QString longer = line.isEmpty() ? word : line + QLatin1Char(' ') + word;
        if (metrics.horizontalAdvance(longer) <= room) {
            line = longer;
            continue;
        }
        if (!line.isEmpty()) {
            lines << line;
        }
        const QStringList pieces = broken(word, metrics, room);
        lines << pieces.mid(0, pieces.size() - 1);
        line = pieces.last();
    }
    if (!line.isEmpty()) {
        lines << line;
    }
    if (most > 0 && lines.size() > most) {
        const QString rest = lines.mid(most - 1).join(QLatin1Char(' '));
        lines = lines.mid(0, most - 1);
        lines << elided(rest, style, width);
    }
    return lines;
}

} // namespace proofwalk::report
