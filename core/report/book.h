// SPDX-License-Identifier: GPL-3.0-or-later
// Sheets that follow each other: frame, foot, numbers, and things placed one below the other until a sheet is full.
#pragma once

#include "core/report/contents.h"
#include "core/report/drawing.h"

#include <QPagedPaintDevice>

#include <functional>
#include <map>
#include <string>

namespace proofwalk::report {

// The grid of a sheet, in units.
inline constexpr double sheetWidth = 910;
inline constexpr double sheetHeight = 1286;
inline constexpr double frameLeft = 45;
inline constexpr double frameRight = 865;
inline constexpr double frameTop = 45;
inline constexpr double frameBottom = 1241;
inline constexpr double textLeft = 64;
inline constexpr double textRight = 846;
inline constexpr double flowBottom = 1204; ///< what flows ends here; the foot stands below

/// How many sheets there were, and on which one something began, when they were laid out before.
struct Layout {
    int sheets = 0;
    std::map<std::string, int> starts;

    friend bool operator==(const Layout&, const Layout&) = default;
};

/// The sheets of one report. Laid out twice: what the first time has counted, the second time prints.
class Book {
public:
    /// All four must outlive it. `earlier` is empty the first time.
    Book(QPagedPaintDevice& device, QPainter& painter, const Contents& contents, const Layout& earlier);

    const Contents& contents() const { return m_contents; }
    const Labels& labels() const { return m_contents.labels; }
    Drawing& drawing() { return m_drawing; }

    /// Begins a sheet with its frame; with a foot of site, date, fingerprint and number unless it has its own.
    void next(bool foot = true);
    /// "sheet 3 of 9", for this sheet.
    QString number() const;
    /// Remembers that something begins on this sheet; and where it began when laid out before (0: nowhere).
    void begins(const std::string& name) { m_layout.starts.try_emplace(name, m_layout.sheets); }
    int startOf(const std::string& name) const;

    const Layout& layout() const { return m_layout; }

private:
    void drawPractice();
    void drawFoot();

    QPagedPaintDevice& m_device;
    Drawing m_drawing;
    const Contents& m_contents;
    const Layout& m_earlier;
    Layout m_layout;
};

/// Fills a label's places: fill("sheet {sheet}", {{"sheet", "3"}}).
QString fill(const std::string& label, const std::map<std::string, std::string>& places);

/// Title and sentence of a sheet, with the rule beneath; returns where what follows may begin.
double drawHead(Book& book, const QString& title, const QString& sentence, bool continued, double right = textRight);

/// Things placed one below the other, on as many sheets as they need.
class Flow {
public:
    /// Begins a sheet (`continued` from the second on) and returns where its first thing may stand.
    using Begin = std::function<double(bool continued)>;

    Flow(Book& book, Begin begin);

    double y() const { return m_y; }
    bool fits(double height) const { return m_y + height <= flowBottom; }
    /// Where a thing of that height stands: below the last, or on a fresh sheet. One higher than a sheet gets its own.
    double place(double height);
    void skip(double height) { m_y += height; }
    void freshSheet();

private:
    Book& m_book;
    Begin m_begin;
    double m_y = 0;
    double m_first = 0;
    bool m_continued = false;
};

} // namespace proofwalk::report
