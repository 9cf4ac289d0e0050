// SPDX-License-Identifier: GPL-3.0-or-later
// Page one: what works, what does not, what to do, who signed.
#include "core/report/blocks.h"
#include "core/report/marks.h"
#include "core/report/section.h"
#include "core/report/sheets.h"
#include "core/report/titleblock.h"

#include <algorithm>

namespace proofwalk::report {

namespace {

const Style body{Face::text, 15, ink};
const Style small{Face::text, 13, ink2};

Row countsRow(const std::vector<Count>& counts)
{
    // Verdicts side by side, on a second line where they do not fit.
    const Style number{Face::figure, 24, ink};
    struct Place {
        double x;
        int line;
    };
    std::vector<Place> places;
    double x = blockText;
    int line = 0;
    for (const Count& count : counts) {
        const double width = 32 + widthOf(QString::number(count.number), number) + 7 + widthOf(words(count.word), body);
        if (x > blockText && x + width > textRight) {
            x = blockText;
            ++line;
        }
        places.push_back({x, line});
        x += width + 27;
    }
    return {34.0 * (line + 1) + 3, [counts, places, number](Drawing& drawing, double top) {
                for (std::size_t i = 0; i < counts.size(); ++i) {
                    const double left = places[i].x;
                    const double y = top + 15 + 34.0 * places[i].line;
                    const QString figure = QString::number(counts[i].number);
                    drawVerdict(drawing, QPointF(left + 13, y), 11, counts[i].verdict);
                    drawing.text(left + 32, y + 8, figure, number);
                    drawing.text(left + 32 + widthOf(figure, number) + 7, y + 6, words(counts[i].word), body);
                }
            }};
}

Row shortcomingRow(const Shortcoming& one, double tagWidth, bool ruled)
{
    const double left = blockText + 30 + tagWidth;
    const QStringList lines = wrapped(words(one.words), body, textRight - left);
    const double height = (ruled ? 10 : 6) + 21.0 * static_cast<double>(std::max<qsizetype>(lines.size(), 1));
    return {height, [one, lines, left, height, ruled](Drawing& drawing, double top) {
                drawVerdict(drawing, QPointF(blockText + 9, top + 9), 8.5, one.verdict);
                drawing.text(blockText + 30, top + 15, words(one.tag), {Face::figure, 15, ink});
                drawing.lines(left, top + 15, lines, body, 21);
                if (ruled) {
                    drawing.rule(top + height - 5, blockText, textRight, hair);
                }
            }};
}

RowBlock shortcomingsBlock(const Book& book, const std::string& head, const std::vector<Shortcoming>& list,
                           const std::string& note)
{
    RowBlock block{words(head), {}, true};
    double tagWidth = 0;
    for (const Shortcoming& one : list) {
        tagWidth = std::max(tagWidth, widthOf(words(one.tag), {Face::figure, 15, ink}) + 9);
    }
    for (std::size_t i = 0; i < list.size(); ++i) {
        block.rows.push_back(shortcomingRow(list[i], tagWidth, i + 1 < list.size()));
    }
    if (list.empty()) {
        block.rows.push_back(paragraphRow(words(book.labels().nothing), body, 21));
    }
    if (!note.empty()) {
        block.rows.push_back(paragraphRow(words(note), small, 18));
    }
    return block;
}

Row dutyRow(const Duty& duty, std::size_t number)
{
    const Style bold{Face::strong, 15, ink};
    const double due = duty.due.empty() ? 0 : std::min(widthOf(words(duty.due), bold), 220.0);
    const QStringList lines = wrapped(words(duty.words), body, textRight - blockText - 30 - due - 14);
    return {8 + 21.0 * static_cast<double>(std::max<qsizetype>(lines.size(), 1)),
            [duty, lines, number, bold](Drawing& drawing, double top) {
                drawPlate(drawing, QPointF(blockText, top - 2), QString::number(number));
                drawing.lines(blockText + 30, top + 14, lines, body, 21);
                drawing.textRight(textRight, top + 14, elided(words(duty.due), bold, 220), bold);
            }};
}

Row liveRow(const Contents& contents)
{
    const Style plate{Face::figure, 18, paper};
    const QString word = words(contents.liveWord);
    const double width = word.isEmpty() ? 0 : std::max(54.0, widthOf(word, plate) + 24);
    const double left = blockText + (word.isEmpty() ? 0 : width + 14);
    QStringList lines;
    for (const std::string& line : contents.liveLines) {
        lines << wrapped(words(line), body, textRight - left);
    }
    if (lines.isEmpty() && word.isEmpty()) {
        lines << words(contents.labels.liveUnknown);
    }
    const QColor colour = inkOf(contents.liveVerdict);
    return {std::max(21.0 * static_cast<double>(lines.size()), 40.0), [=](Drawing& drawing, double top) {
                if (!word.isEmpty()) {
                    drawing.fill(QRectF(blockText, top, width, 36), colour);
                    drawing.textCentre(blockText + width / 2, top + 24, word, plate);
                }
                drawing.lines(left, top + 14, lines, body, 21);
            }};
}

Row contactsRow(const std::vector<Contact>& contacts)
{
    constexpr double pitch = 232;
    constexpr std::size_t across = 3;
    const Style bold{Face::strong, 15, ink};
    const Style plain{Face::text, 13, ink};
    struct Placed {
        double x, y;
        QStringList occasion, whom;
    };
    std::vector<Placed> placed;
    double y = 0;
    double lineHeight = 0;
    for (std::size_t i = 0; i < contacts.size(); ++i) {
        if (i > 0 && i % across == 0) {
            y += lineHeight + 6;
            lineHeight = 0;
        }
        const double x = blockText + pitch * static_cast<double>(i % across);
        const double width = i % across == across - 1 ? textRight - x : pitch - 14;
        placed.push_back(
            {x, y, wrapped(words(contacts[i].occasion), bold, width), wrapped(words(contacts[i].whom), plain, width)});
        lineHeight = std::max(lineHeight, 20.0 * static_cast<double>(placed.back().occasion.size())
                                              + 17.0 * static_cast<double>(placed.back().whom.size()));
    }
    return {y + lineHeight, [placed, bold, plain](Drawing& drawing, double top) {
                for (const Placed& one : placed) {
                    const double next = drawing.lines(one.x, top + one.y + 14, one.occasion, bold, 20);
                    drawing.lines(one.x, next - 1, one.whom, plain, 17);
                }
            }};
}

std::vector<RowBlock> blocksOf(const Book& book)
{
    const Contents& contents = book.contents();
    const Labels& labels = book.labels();
    std::vector<RowBlock> blocks;
    RowBlock works{words(labels.whatWorks), {}, false};
    if (!contents.counts.empty()) {
        works.rows.push_back(countsRow(contents.counts));
    }
    for (const std::string& sentence : contents.works) {
        works.rows.push_back(paragraphRow(words(sentence), body, 21));
    }
    if (works.rows.empty()) {
        works.rows.push_back(paragraphRow(words(labels.nothing), body, 21));
    }
    blocks.push_back(std::move(works));
    blocks.push_back(shortcomingsBlock(book, labels.whatDoesNot, contents.doesNot, {}));
    blocks.push_back(shortcomingsBlock(book, labels.notTested, contents.notTested, contents.notTestedNote));
    RowBlock duties{words(labels.mustDo), {}, true};
    for (std::size_t i = 0; i < contents.duties.size(); ++i) {
        duties.rows.push_back(dutyRow(contents.duties[i], i + 1));
    }
    if (contents.duties.empty()) {
        duties.rows.push_back(paragraphRow(words(labels.nothing), body, 21));
    }
    blocks.push_back(std::move(duties));
    blocks.push_back({words(labels.liveNow), {liveRow(contents)}, false});
    if (!contents.contacts.empty()) {
        blocks.push_back({words(labels.whomToCall), {contactsRow(contents.contacts)}, false});
    }
    return blocks;
}

double wholeHeight(const std::vector<RowBlock>& blocks)
{
    double height = 0;
    for (const RowBlock& block : blocks) {
        height += heightOf(block, block.rows.size());
    }
    return height;
}

constexpr double moreHeight = 22; ///< of the line "and 12 more: sheet 2"

/// How many rows of each block page one shows, so that every block is on it: the longest lists give way first.
std::vector<std::size_t> shownRows(const std::vector<RowBlock>& blocks, double room)
{
    std::vector<std::size_t> rows;
    for (const RowBlock& block : blocks) {
        rows.push_back(block.rows.size());
    }
    const auto total = [&] {
        double height = 0;
        for (std::size_t i = 0; i < blocks.size(); ++i) {
            height += heightOf(blocks[i], rows[i]) + (rows[i] < blocks[i].rows.size() ? moreHeight : 0);
        }
        return height;
    };
    while (total() > room) {
        std::size_t longest = blocks.size();
        for (std::size_t i = 0; i < blocks.size(); ++i) {
            if (blocks[i].mayBeCut && rows[i] > 1 && (longest == blocks.size() || rows[i] > rows[longest])) {
                longest = i;
            }
        }
        if (longest == blocks.size()) {
            break;
        }
        --rows[longest];
    }
    return rows;
}

/// Site, subtitle and date along the top; returns the y of the rule beneath.
double drawTop(Book& book)
{
    Drawing& drawing = book.drawing();
    const Contents& contents = book.contents();
    const Style name{Face::strong, 18, ink};
    const QString right =
        (contents.date.empty() ? QString() : words(contents.date) + QStringLiteral(" · ")) + book.number();
    drawing.textRight(textRight, 73, right, body);
    const double room = textRight - widthOf(right, body) - 20 - textLeft;
    const QStringList site = wrapped(words(contents.site), name, room, 3);
    drawing.lines(textLeft, 73, site, name, 23);
    const double after = site.isEmpty() ? textLeft : textLeft + widthOf(site.first(), name) + 16;
    const QString subtitle = words(contents.subtitle);
    double y = 73 + 23.0 * static_cast<double>(std::max<qsizetype>(site.size() - 1, 0));
    if (site.size() <= 1 && after + widthOf(subtitle, body) <= textLeft + room) {
        drawing.text(after, 73, subtitle, body);
    } else {
        const QStringList lines = wrapped(subtitle, body, textRight - textLeft, 2);
        y = drawing.lines(textLeft, y + 21, lines, body, 20) - 20;
    }
    drawing.rule(y + 14, frameLeft, frameRight, ink, 2);
    return y + 14;
}

/// "Interim sheet" and the like, white on ink: nobody may take this for the final report.
double drawBanner(Book& book, double top)
{
    if (book.contents().title.empty()) {
        return top;
    }
    Drawing& drawing = book.drawing();
    const Style style{Face::strong, 18, paper};
    const QStringList lines = wrapped(words(book.contents().title), style, textRight - textLeft, 2);
    const double height = 12 + 23.0 * static_cast<double>(lines.size());
    drawing.fill(QRectF(frameLeft, top, frameRight - frameLeft, height), ink);
    drawing.lines(textLeft, top + 24, lines, style, 23);
    return top + height;
}

double drawHeadline(Book& book, double top)
{
    Drawing& drawing = book.drawing();
    const Contents& contents = book.contents();
    const Style head{Face::strong, 24, ink};
    const QStringList lines = wrapped(words(contents.headline), head, textRight - textLeft + 4, 4);
    double y = drawing.lines(textLeft, top + 37, lines, head, 34) - 34;
    const QStringList against = wrapped(words(contents.testedAgainst), {Face::text, 15, ink2}, textRight - textLeft, 3);
    y = drawing.lines(textLeft, y + 24, against, {Face::text, 15, ink2}, 20);
    return y - 12;
}

/// Rows that page one had no room for, and the customer's words where they were too long for the title block.
void drawRest(Book& book, const std::vector<RowBlock>& rest)
{
    if (rest.empty()) {
        return;
    }
    Flow flow(book, [&book](bool continued) {
        book.begins("summary");
        return drawHead(book, words(book.labels().summaryContinued), words(book.contents().headline), continued);
    });
    flowBlocks(book, flow, rest);
}

} // namespace

Result<void> drawSummary(Book& book)
{
    Drawing& drawing = book.drawing();
    book.next(false);
    double y = drawHeadline(book, drawBanner(book, drawTop(book)));
    const double titleTop = titleBlockTop(book);
    const std::vector<RowBlock> blocks = blocksOf(book);
    if (double height = sectionHeight(book.contents().floors); height > 0) {
        // The building gives way a little before a row must go to another sheet.
        const double lacking = y + height + 19 + wholeHeight(blocks) - titleTop;
        height -= std::clamp(lacking, 0.0, height - leastSectionHeight(book.contents().floors));
        drawSection(drawing, QRectF(QPointF(68, y + 8), QSizeF(774, height)), book.contents().floors, book.labels());
        y += height + 7;
    }
    y += 12;
    const std::vector<std::size_t> rows = shownRows(blocks, titleTop - y);
    std::vector<RowBlock> rest;
    bool full = false;
    for (std::size_t i = 0; i < blocks.size(); ++i) {
        const bool cut = rows[i] < blocks[i].rows.size();
        // What does not fit even when cut short goes whole to the next sheet, and all after it.
        full = full || y + heightOf(blocks[i], rows[i]) + (cut ? moreHeight : 0) > titleTop + 0.5;
        if (full) {
            rest.push_back(blocks[i]);
            continue;
        }
        drawing.rule(y, frameLeft, frameRight);
        y = drawBlock(drawing, blocks[i], 0, rows[i], y);
        if (cut) {
            const std::size_t left = blocks[i].rows.size() - rows[i];
            const QString more = fill(book.labels().moreBelow, {{"count", std::to_string(left)},
                                                                {"sheet", std::to_string(book.startOf("summary"))}});
            drawing.text(blockText, y + 4, more, {Face::strong, 13, ink});
            y += moreHeight;
            const auto first = blocks[i].rows.begin() + static_cast<std::ptrdiff_t>(rows[i]);
            rest.push_back({blocks[i].head, {first, blocks[i].rows.end()}, true});
        }
    }
    const auto agreedInFull = drawTitleBlock(book, titleTop);
    if (!agreedInFull) {
        return std::unexpected(agreedInFull.error());
    }
    if (*agreedInFull) {
        rest.push_back(
            {words(book.labels().agreedTo), {paragraphRow(words(book.contents().titleBlock.agreed), body, 21)}, false});
    }
    drawRest(book, rest);
    return {};
}

} // namespace proofwalk::report
