// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/titleblock.h"

#include "core/report/code.h"
#include "core/report/marks.h"

#include <algorithm>

namespace proofwalk::report {

namespace {

constexpr double usualTop = 890;
constexpr double highestTop = 790;
constexpr double bottom = 1206;
constexpr double second = 324; ///< x of the columns
constexpr double third = 604;
constexpr double upperHeight = 165;
constexpr double installerTop = 1184; ///< installerPlace begins here

const Style label{Face::text, 13, ink2};
const Style body{Face::text, 15, ink};
const Style small{Face::text, 13, ink};
const Style bold{Face::strong, 18, ink};

constexpr double agreedWidth = third - second - 32;

/// The customer's words, in the larger size if they fit.
struct Agreed {
    QStringList lines;
    Style style = body;
    double leading = 21;
    bool cut = false;
};

Agreed agreedOf(const Book& book, double height)
{
    const QString text = words(book.contents().titleBlock.agreed);
    Agreed agreed{wrapped(text, body, agreedWidth), body, 21, false};
    if (21.0 * static_cast<double>(agreed.lines.size()) + 40 <= height) {
        return agreed;
    }
    agreed = {wrapped(text, small, agreedWidth), small, 17, false};
    const auto most = static_cast<qsizetype>((height - 40) / 17);
    if (agreed.lines.size() > most) {
        agreed.lines = wrapped(text, small, agreedWidth, static_cast<int>(most) - 1);
        agreed.cut = true;
    }
    return agreed;
}

void drawTester(Book& book, double top, double split)
{
    Drawing& drawing = book.drawing();
    const TitleBlock& block = book.contents().titleBlock;
    const double width = second - textLeft - 14;
    drawing.text(textLeft, top + 23, words(book.labels().testedBy), label);
    double y = drawing.lines(textLeft, top + 48, wrapped(words(block.tester), bold, width, 2), bold, 23);
    y = drawing.lines(textLeft, y + 2, wrapped(words(block.testedWhen), body, width, 2), body, 20) + 4;
    const int fitting = std::max(1, static_cast<int>((split - 4 - y) / 18) + 1);
    drawing.lines(textLeft, y, wrapped(words(block.testerNote), label, width, fitting), label, 18);
}

void drawKey(Book& book, double split)
{
    Drawing& drawing = book.drawing();
    const TitleBlock& block = book.contents().titleBlock;
    const double width = second - textLeft - 14;
    drawing.text(textLeft, split + 24, words(book.labels().key), label);
    double y = split + 46;
    if (!block.key.empty()) {
        const Style key{Face::figure, 18, ink};
        y = drawing.lines(textLeft, y, wrapped(words(block.key), key, width, 2), key, 22);
    }
    if (block.signedLine.empty()) {
        drawing.text(textLeft, y + 6, words(book.labels().notSigned), body);
    } else {
        drawVerdict(drawing, QPointF(textLeft + 8, y + 1), 8, Verdict::pass);
        drawing.text(textLeft + 23, y + 6, elided(words(block.signedLine), body, width - 23), body);
    }
    const int fitting = std::max(1, static_cast<int>((installerTop - 4 - y - 36) / 18) + 1);
    drawing.lines(textLeft, y + 36, wrapped(words(block.sealsLine), label, width, fitting), label, 18);
}

void drawCustomer(Book& book, double top, double split)
{
    Drawing& drawing = book.drawing();
    const TitleBlock& block = book.contents().titleBlock;
    const double left = second + 16;
    const std::string& line = block.customerLine.empty() ? book.labels().customer : block.customerLine;
    drawing.text(left, top + 23, elided(words(line), label, agreedWidth), label);
    const QStringList name = wrapped(words(block.customerName), {Face::strong, 15, ink}, agreedWidth, 2);
    const double first = split - 20 - 20.0 * static_cast<double>(std::max<qsizetype>(name.size() - 1, 0));
    drawing.lines(left, first, name, {Face::strong, 15, ink}, 20);
    drawInk(drawing, QRectF(QPointF(left + 8, top + 34), QPointF(third - 24, first - 22)), block.ink);
}

bool drawAgreed(Book& book, double split)
{
    Drawing& drawing = book.drawing();
    const double left = second + 16;
    drawing.text(left, split + 24, words(book.labels().agreedTo), label);
    const Agreed agreed = agreedOf(book, bottom - split);
    const double y = drawing.lines(left, split + 46, agreed.lines, agreed.style, agreed.leading);
    if (agreed.cut) {
        const QString where = fill(book.labels().agreedInFull, {{"sheet", std::to_string(book.startOf("summary"))}});
        drawing.text(left, y, where, {Face::strong, 13, ink});
    }
    return agreed.cut;
}

Result<void> drawFingerprint(Book& book, double top)
{
    Drawing& drawing = book.drawing();
    const TitleBlock& block = book.contents().titleBlock;
    const double left = third + 28;
    drawing.text(left, top + 23, words(book.labels().fingerprint), label);
    double y = top + 36;
    if (!block.code.empty()) {
        if (auto drawn = drawCode(drawing, QRectF(left, y, 145, 145), block.code); !drawn) {
            return drawn;
        }
        y += 145;
    }
    QString groups;
    for (const std::string& group : block.fingerprint) {
        groups += (groups.isEmpty() ? QString() : QStringLiteral(" ")) + words(group);
    }
    const Style figures{Face::figure, 15, ink};
    y = drawing.lines(left, y + 23, wrapped(groups, figures, 178, 4), figures, 22);
    const int fitting = std::max(1, static_cast<int>((bottom - 12 - y - 12) / 18) + 1);
    drawing.lines(left, y + 12, wrapped(words(block.codeNote), label, textRight - left, fitting), label, 18);
    return {};
}

} // namespace

double titleBlockTop(const Book& book)
{
    const Agreed agreed = agreedOf(book, 1e6);
    const double needed = upperHeight + 46 + 21.0 * static_cast<double>(agreed.lines.size());
    return std::clamp(bottom - needed, highestTop, usualTop);
}

Result<bool> drawTitleBlock(Book& book, double top)
{
    Drawing& drawing = book.drawing();
    const double split = top + upperHeight;
    drawing.rule(top, frameLeft, frameRight, ink, 2);
    drawing.rule(split, frameLeft, third);
    drawing.line(second, top, second, bottom, ink, 1);
    drawing.line(third, top, third, bottom, ink, 1);
    drawing.rule(bottom, frameLeft, frameRight);
    drawTester(book, top, split);
    drawKey(book, split);
    drawCustomer(book, top, split);
    const bool cut = drawAgreed(book, split);
    if (auto drawn = drawFingerprint(book, top); !drawn) {
        return passOn(drawn);
    }
    const QString last = words(book.contents().titleBlock.lastLine);
    drawing.text(textLeft, 1231, elided(last, label, textRight - textLeft), label);
    return cut;
}

} // namespace proofwalk::report
