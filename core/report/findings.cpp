// SPDX-License-Identifier: GPL-3.0-or-later
// Findings with everything that happened to them; what was cleared the same day as rows.
#include "core/report/marks.h"
#include "core/report/sheets.h"
#include "core/report/sketch.h"

#include <algorithm>

namespace proofwalk::report {

namespace {

constexpr double bandHeight = 34;
constexpr double middleLeft = 252;
constexpr double historyLine = 263;
constexpr double timeLeft = 284;
constexpr double whatLeft = 332;
constexpr double photoLeft = 670;
const QSizeF placeSize(172, 108);
const QSizeF photoSize(176, 118);

const Style body{Face::text, 15, ink};
const Style bold{Face::strong, 13, ink};
const Style small{Face::text, 13, ink2};
const Style plain{Face::text, 13, ink};
const Style figure{Face::figure, 13, ink};

/// A piece of the middle column, drawn from its top; a line of history draws the stretch to the next one too.
struct Piece {
    double height = 0;
    std::function<void(Drawing&, double top, bool lineGoesOn)> draw;
};

Piece historyPiece(const HistoryLine& line, bool last, double right)
{
    const QStringList what = wrapped(words(line.what), bold, right - whatLeft);
    const QStringList detail = wrapped(words(line.detail), small, right - whatLeft);
    const double text = 16.0 * static_cast<double>(what.size() + detail.size());
    const double height = std::max(36.0, text + 5);
    return {height, [line, what, detail, last, height](Drawing& drawing, double top, bool goesOn) {
                const double y = top + 11;
                if (!last && goesOn) {
                    drawing.line(historyLine, y, historyLine, y + height, ink, 3);
                }
                if (line.verdict) {
                    QPainterPath around;
                    around.addEllipse(QPointF(historyLine, y), 10, 10);
                    drawing.fill(around, paper);
                    drawVerdict(drawing, QPointF(historyLine, y), 8, *line.verdict);
                } else {
                    QPainterPath dot;
                    dot.addEllipse(QPointF(historyLine, y), 5, 5);
                    drawing.fill(dot, ink);
                }
                drawing.text(timeLeft, y + 5, elided(words(line.time), figure, whatLeft - timeLeft - 4), figure);
                const double next = drawing.lines(whatLeft, y + 4.5, what, bold, 16);
                drawing.lines(whatLeft, next, detail, small, 16);
            }};
}

/// The retest list: two columns where the words fit, else one.
std::vector<Piece> retestPieces(const Finding& finding, double right)
{
    std::vector<Piece> pieces;
    if (finding.retests.empty()) {
        return pieces;
    }
    if (!finding.retestHead.empty()) {
        pieces.push_back({26, [head = words(finding.retestHead), right](Drawing& drawing, double top, bool) {
                              drawing.text(middleLeft, top + 19, elided(head, bold, right - middleLeft), bold);
                          }});
    }
    const auto widthFor = [](const RetestLine& one) {
        return 22 + widthOf(words(one.tag), figure) + 6 + widthOf(words(one.words), plain);
    };
    const double half = (right - middleLeft) / 2;
    for (std::size_t i = 0; i < finding.retests.size();) {
        const RetestLine one = finding.retests[i];
        const double x = middleLeft;
        const auto drawOne = [](Drawing& drawing, double left, double top, const RetestLine& line,
                                const QStringList& lines) {
            drawVerdict(drawing, QPointF(left + 8, top + 9), 6.5, line.verdict);
            drawing.text(left + 22, top + 14, words(line.tag), figure);
            drawing.lines(left + 22 + widthOf(words(line.tag), figure) + 6, top + 14, lines, plain, 16);
        };
        const bool pair =
            i + 1 < finding.retests.size() && widthFor(one) < half - 8 && widthFor(finding.retests[i + 1]) < half;
        if (pair) {
            const RetestLine two = finding.retests[i + 1];
            pieces.push_back({18, [=](Drawing& drawing, double top, bool) {
                                  drawOne(drawing, x, top, one, {words(one.words)});
                                  drawOne(drawing, x + half, top, two, {words(two.words)});
                              }});
            i += 2;
            continue;
        }
        const double room = right - x - 28 - widthOf(words(one.tag), figure);
        const QStringList lines = wrapped(words(one.words), plain, room);
        pieces.push_back({2 + 16.0 * static_cast<double>(std::max<qsizetype>(lines.size(), 1)),
                          [=](Drawing& drawing, double top, bool) { drawOne(drawing, x, top, one, lines); }});
        ++i;
    }
    return pieces;
}

std::vector<Piece> piecesOf(const Finding& finding)
{
    // Without a photograph the words have its place too.
    const double right = finding.photograph ? photoLeft - 14 : textRight;
    std::vector<Piece> pieces;
    for (std::size_t i = 0; i < finding.history.size(); ++i) {
        pieces.push_back(historyPiece(finding.history[i], i + 1 == finding.history.size(), right));
    }
    std::ranges::move(retestPieces(finding, right), std::back_inserter(pieces));
    return pieces;
}

double heightOfBand(const Finding& finding, double tagEnd, QStringList& lines)
{
    const Style line{Face::strong, 15, ink};
    const double due = widthOf(words(finding.due), line);
    const double left = std::max(240.0, tagEnd);
    lines = wrapped(words(finding.line), line, textRight - due - 16 - left, 3);
    return bandHeight + 20.0 * static_cast<double>(std::max<qsizetype>(lines.size() - 1, 0));
}

struct Band {
    double height = bandHeight;
    double left = 240;
    QStringList lines;
};

Band bandOf(const Finding& finding)
{
    Band band;
    const double tag = 92 + widthOf(words(finding.tag), {Face::figure, 18, ink});
    band.left = std::max(240.0, tag + 18 + widthOf(words(finding.word), {Face::strong, 15, ink}) + 20);
    band.height = heightOfBand(finding, band.left, band.lines);
    return band;
}

void drawBand(Book& book, const Finding& finding, const Band& band, double top, bool continued)
{
    Drawing& drawing = book.drawing();
    const Style line{Face::strong, 15, ink};
    const Style tag{Face::figure, 18, ink};
    drawing.fill(QRectF(frameLeft + 1, top, frameRight - frameLeft - 2, band.height), tintOf(finding.verdict));
    drawing.rule(top, frameLeft, frameRight, ink, 1.2);
    drawVerdict(drawing, QPointF(74, top + 17), 10, finding.verdict);
    drawing.text(92, top + 23, words(finding.tag), tag);
    drawing.text(92 + widthOf(words(finding.tag), tag) + 18, top + 23, words(finding.word), line);
    drawing.lines(band.left, top + 23, band.lines, line, 20);
    const QString due = continued ? words(book.labels().continued) : words(finding.due);
    drawing.textRight(textRight, top + 23, due, line);
}

/// Place and photograph stand beside the first stretch of a finding.
double sidesHeight(const Finding& finding, const QStringList& caption)
{
    const double photo =
        finding.photograph ? photoSize.height() + 12 + 18.0 * static_cast<double>(caption.size()) : 0.0;
    return std::max(placeSize.height() + 6, photo) + 16;
}

void drawSides(Book& book, const Finding& finding, const QStringList& caption, double top)
{
    Drawing& drawing = book.drawing();
    drawPlace(drawing, QRectF(QPointF(65, top + 14), placeSize), finding, book.contents().floors);
    if (finding.photograph) {
        const QRectF box(QPointF(photoLeft, top + 12), photoSize);
        drawPhotograph(drawing, box, *finding.photograph, words(book.labels().photographUnreadable));
        drawing.lines(photoLeft, box.bottom() + 18, caption, small, 18);
    }
}

void drawFinding(Book& book, Flow& flow, const Finding& finding)
{
    const std::vector<Piece> pieces = piecesOf(finding);
    const Band band = bandOf(finding);
    QStringList caption;
    if (finding.photograph) {
        caption = wrapped(words(finding.photograph->caption), small, photoSize.width(), 4);
    }
    double all = 20;
    for (const Piece& piece : pieces) {
        all += piece.height;
    }
    const double sides = sidesHeight(finding, caption);
    // Together where a sheet has room for it, else cut between two pieces.
    const double whole = band.height + std::max(all, sides);
    const double least = band.height + sides;
    if (!flow.fits(std::min(whole, flowBottom - 200)) || !flow.fits(least)) {
        flow.freshSheet();
    }
    bool continued = false;
    std::size_t next = 0;
    do {
        const double top = flow.y();
        drawBand(book, finding, band, top, continued);
        double y = top + band.height + 9;
        if (!continued) {
            drawSides(book, finding, caption, top + band.height);
        }
        const std::size_t first = next;
        while (next < pieces.size() && (y + pieces[next].height + 8 <= flowBottom || next == first)) {
            const bool goesOn =
                next + 1 < pieces.size() && y + pieces[next].height + pieces[next + 1].height + 8 <= flowBottom;
            pieces[next].draw(book.drawing(), y, goesOn);
            y += pieces[next].height;
            ++next;
        }
        const double end = std::max(y + 8, continued ? 0.0 : top + band.height + sides);
        flow.skip(end - top);
        if (next < pieces.size()) {
            flow.freshSheet();
            continued = true;
        }
    } while (next < pieces.size());
}

void drawClearedRow(Book& book, const ClearedFinding& one, double top, double height)
{
    Drawing& drawing = book.drawing();
    const double middle = top + height / 2;
    drawVerdict(drawing, QPointF(72, middle), 8, Verdict::pass);
    const Style tag{Face::figure, 15, ink};
    drawing.text(92, middle + 5, words(one.tag), tag);
    const double left = std::max(148.0, 92 + widthOf(words(one.tag), tag) + 10);
    drawing.text(left, middle - 4, elided(words(one.what), bold, 354 - left), bold);
    drawing.text(left, middle + 13, elided(words(one.detail), plain, 354 - left), plain);
    const auto cell = [&](double x, double width, const std::string& text) {
        const QStringList lines = wrapped(words(text), plain, width, 2);
        drawing.lines(x, middle + (lines.size() > 1 ? -4 : 5), lines, plain, 17);
    };
    cell(364, 150, one.done);
    cell(526, 260, one.retested);
    drawing.textRight(textRight, middle + 5, words(one.time), figure);
    drawing.rule(top + height, textLeft, textRight, hair);
}

void drawCleared(Book& book, Flow& flow)
{
    const Contents& contents = book.contents();
    if (contents.cleared.empty()) {
        return;
    }
    constexpr double head = 40;
    constexpr double row = 44;
    const double top = flow.place(head + row);
    flow.skip(-row);
    Drawing& drawing = book.drawing();
    const Style title{Face::strong, 18, ink};
    drawing.rule(top, frameLeft, frameRight, ink, 2);
    drawing.text(textLeft, top + 27, words(book.labels().cleared), title);
    const double x = textLeft + widthOf(words(book.labels().cleared), title) + 12;
    drawing.text(x, top + 27, elided(words(contents.clearedLine), small, textRight - x), small);
    for (const ClearedFinding& one : contents.cleared) {
        const double y = flow.place(row);
        drawClearedRow(book, one, y, row);
    }
}

} // namespace

void drawFindings(Book& book)
{
    const Contents& contents = book.contents();
    Flow flow(book, [&book](bool continued) {
        book.begins("findings");
        return drawHead(book, words(book.labels().findings), words(book.contents().findingsLine), continued);
    });
    for (const Finding& finding : contents.findings) {
        drawFinding(book, flow, finding);
    }
    drawCleared(book, flow);
    if (!contents.findingsClosing.empty()) {
        const QStringList lines = wrapped(words(contents.findingsClosing), body, textRight - textLeft);
        const double top = flow.place(20 + 21.0 * static_cast<double>(lines.size()));
        if (!contents.findings.empty() || !contents.cleared.empty()) {
            book.drawing().rule(top, frameLeft, frameRight);
        }
        book.drawing().lines(textLeft, top + 26, lines, body, 21);
    }
}

} // namespace proofwalk::report
