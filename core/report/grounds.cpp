// SPDX-License-Identifier: GPL-3.0-or-later
// Instruments and limits; and how to check the report without its makers.
#include "core/report/blocks.h"
#include "core/report/marks.h"
#include "core/report/sheets.h"
#include "core/report/table.h"

#include <algorithm>

namespace proofwalk::report {

namespace {

const Style body{Face::text, 15, ink};
const Style small{Face::text, 13, ink2};

RowBlock blockOf(const Block& block)
{
    RowBlock result{words(block.head), {}, true};
    for (const std::string& paragraph : block.paragraphs) {
        result.rows.push_back(paragraphRow(words(paragraph), body, 21));
    }
    if (block.table) {
        std::ranges::move(tableRows(*block.table), std::back_inserter(result.rows));
    }
    for (const std::string& note : block.notes) {
        result.rows.push_back(paragraphRow(words(note), small, 18));
    }
    if (result.rows.empty()) {
        result.rows.push_back({2, [](Drawing&, double) {}});
    }
    return result;
}

constexpr double stepText = 104;

/// A command as it is to be typed: never broken between two rows without saying so, on film.
struct Command {
    QStringList lines;
    double height = 0;
};

const Style commandStyle{Face::strong, 13, ink};

Command commandOf(const std::string& text)
{
    Command command{wrapped(words(text), commandStyle, textRight - stepText - 24), 0};
    command.height = 12 + 18.0 * static_cast<double>(std::max<qsizetype>(command.lines.size(), 1));
    return command;
}

void drawStep(Book& book, Flow& flow, const CheckStep& step, std::size_t number)
{
    Drawing& drawing = book.drawing();
    const Style head{Face::strong, 18, ink};
    const QStringList heads = wrapped(words(step.head), head, textRight - stepText);
    const QStringList says = wrapped(words(step.words), body, textRight - stepText);
    const QStringList expect = wrapped(words(step.expect), body, textRight - stepText - 24);
    std::vector<Command> commands;
    double height = 22 + 23.0 * static_cast<double>(heads.size()) + 21.0 * static_cast<double>(says.size());
    for (const std::string& text : step.commands) {
        commands.push_back(commandOf(text));
        height += commands.back().height + 6;
    }
    height += expect.isEmpty() ? 0 : 10 + 21.0 * static_cast<double>(expect.size());
    const double top = flow.place(height);
    drawPlate(drawing, QPointF(textLeft, top + 15), QString::number(number));
    double y = drawing.lines(stepText, top + 32, heads, head, 23);
    y = drawing.lines(stepText, y, says, body, 21) - 12;
    for (const Command& command : commands) {
        drawing.fill(QRectF(stepText, y, textRight - stepText, command.height), film);
        drawing.line(stepText + 1.5, y, stepText + 1.5, y + command.height, ink, 3);
        drawing.lines(stepText + 14, y + 19, command.lines, commandStyle, 18);
        y += command.height + 6;
    }
    if (!expect.isEmpty()) {
        drawVerdict(drawing, QPointF(stepText + 9, y + 12), 8, Verdict::pass);
        drawing.lines(stepText + 24, y + 17, expect, body, 21);
    }
}

} // namespace

void drawGrounds(Book& book)
{
    const Contents& contents = book.contents();
    if (contents.grounds.empty()) {
        return;
    }
    Flow flow(book, [&book](bool continued) {
        book.begins("grounds");
        return drawHead(book, words(book.labels().grounds), words(book.contents().groundsLine), continued);
    });
    std::vector<RowBlock> blocks;
    for (const Block& block : contents.grounds) {
        blocks.push_back(blockOf(block));
    }
    flowBlocks(book, flow, blocks);
}

void drawChecking(Book& book)
{
    const Contents& contents = book.contents();
    if (contents.checking.empty()) {
        return;
    }
    Flow flow(book, [&book](bool continued) {
        book.begins("checking");
        return drawHead(book, words(book.labels().checking), words(book.contents().checkingLine), continued);
    });
    for (std::size_t i = 0; i < contents.checking.size(); ++i) {
        drawStep(book, flow, contents.checking[i], i + 1);
    }
    if (!contents.checkingClosing.empty()) {
        const QStringList lines = wrapped(words(contents.checkingClosing), body, textRight - textLeft);
        const double top = flow.place(30 + 21.0 * static_cast<double>(lines.size()));
        book.drawing().rule(top + 8, frameLeft, frameRight);
        book.drawing().lines(textLeft, top + 34, lines, body, 21);
    }
}

} // namespace proofwalk::report
