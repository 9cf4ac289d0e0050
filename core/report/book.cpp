// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/book.h"

#include <QFontMetricsF>

#include <algorithm>

namespace proofwalk::report {

namespace {

constexpr std::size_t groupsInFoot = 4;

QString shortFingerprint(const TitleBlock& block)
{
    QStringList groups;
    for (std::size_t i = 0; i < std::min(groupsInFoot, block.fingerprint.size()); ++i) {
        groups << words(block.fingerprint[i]);
    }
    return groups.join(QLatin1Char(' '));
}

} // namespace

QString fill(const std::string& label, const std::map<std::string, std::string>& places)
{
    QString text = words(label);
    for (const auto& [name, value] : places) {
        text.replace(QLatin1Char('{') + QString::fromStdString(name) + QLatin1Char('}'), words(value));
    }
    return text;
}

Book::Book(QPagedPaintDevice& device, QPainter& painter, const Contents& contents, const Layout& earlier)
    : m_device(device), m_drawing(painter), m_contents(contents), m_earlier(earlier)
{
}

void Book::next(bool foot)
{
    if (m_layout.sheets > 0) {
        m_device.newPage();
    }
    ++m_layout.sheets;
    drawPractice();
    m_drawing.frame(QRectF(QPointF(frameLeft, frameTop), QPointF(frameRight, frameBottom)), ink, 2);
    if (foot) {
        drawFoot();
    }
}

QString Book::number() const
{
    return fill(labels().sheetOf, {{"sheet", std::to_string(m_layout.sheets)},
                                   {"sheets", std::to_string(std::max(m_earlier.sheets, m_layout.sheets))}});
}

int Book::startOf(const std::string& name) const
{
    const auto found = m_earlier.starts.find(name);
    return found == m_earlier.starts.end() ? 0 : found->second;
}

void Book::drawFoot()
{
    const Style small{Face::text, 13, ink2};
    const double baseline = 1231;
    double right = textRight;
    m_drawing.textRight(right, baseline, number(), small);
    right -= widthOf(number(), small) + 22;
    const QString fingerprint = shortFingerprint(m_contents.titleBlock);
    m_drawing.textRight(right, baseline, fingerprint, small);
    right -= widthOf(fingerprint, small) + 22;
    QStringList left;
    for (const std::string& part : {m_contents.site, m_contents.date}) {
        if (!part.empty()) {
            left << words(part);
        }
    }
    m_drawing.text(textLeft, baseline, elided(left.join(QStringLiteral(", ")), small, right - textLeft), small);
}

// The word stands twice: as a large shape across the sheet, drawn under everything (the file may hold no
// transparency), and as words on a plate above the frame, where nothing covers it and a search finds it.
void Book::drawPractice()
{
    if (m_contents.practice.empty()) {
        return;
    }
    const QString word = words(m_contents.practice);
    QPainter& painter = m_drawing.painter();
    QPainterPath shape;
    shape.addText(QPointF(0, 0), fontOf({Face::strong, 100, ink}), word);
    const QRectF bounds = shape.boundingRect();
    if (!bounds.isEmpty()) {
        painter.save();
        painter.translate(sheetWidth / 2, sheetHeight / 2);
        painter.rotate(-54);
        const double factor = std::min(1020 / bounds.width(), 230 / bounds.height());
        painter.scale(factor, factor);
        painter.translate(-bounds.center());
        painter.fillPath(shape, shadowInk);
        painter.restore();
    }
    const Style onPlate{Face::strong, 15, paper};
    const double width = std::min(widthOf(word, onPlate) + 28, 600.0);
    m_drawing.fill(QRectF(sheetWidth / 2 - width / 2, 16, width, 24), ink);
    m_drawing.textCentre(sheetWidth / 2, 33, elided(word, onPlate, width - 16), onPlate);
}

double drawHead(Book& book, const QString& title, const QString& sentence, bool continued, double right)
{
    Drawing& drawing = book.drawing();
    const Style head{Face::strong, 24, ink};
    const Style second{Face::text, 15, ink2};
    const QString fitted = elided(title, head, right - textLeft);
    drawing.text(textLeft, 84, fitted, head);
    if (continued) {
        const double x = textLeft + widthOf(fitted, head) + 12;
        drawing.text(x, 84, elided(words(book.labels().continued), second, right - x), second);
    }
    const QStringList lines = wrapped(sentence, second, right - textLeft, 3);
    const double below = drawing.lines(textLeft, 109, lines, second, 20);
    const double rule = std::max(123.0, below - 6);
    drawing.rule(rule, frameLeft, frameRight, ink, 2);
    return rule + 1;
}

Flow::Flow(Book& book, Begin begin) : m_book(book), m_begin(std::move(begin)) { freshSheet(); }

void Flow::freshSheet()
{
    m_book.next();
    m_y = m_first = m_begin(m_continued);
    m_continued = true;
}

double Flow::place(double height)
{
    if (!fits(height) && m_y > m_first) {
        freshSheet();
    }
    const double top = m_y;
    m_y += height;
    return top;
}

} // namespace proofwalk::report
