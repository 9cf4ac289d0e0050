// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/base/csv.h"

#include "core/base/text.h"

#include <csv.h>
#include <fmt/format.h>

#include <algorithm>
#include <set>

namespace proofwalk::base {
namespace {

/// What libcsv's callbacks collect. libcsv counts no lines, so the reader feeds it a line at a time.
struct Collector {
    int line = 1;    ///< of the byte being read
    int rowLine = 0; ///< of the row's first cell, 0 between rows
    std::vector<std::string> cells;
    std::vector<CsvTable::Row> rows;
};

void endOfCell(void* bytes, size_t count, void* context)
{
    auto& collector = *static_cast<Collector*>(context);
    collector.cells.emplace_back(static_cast<const char*>(bytes), count);
}

void endOfRow(int, void* context)
{
    auto& collector = *static_cast<Collector*>(context);
    collector.rows.push_back({collector.rowLine, std::move(collector.cells)});
    collector.cells.clear();
    collector.rowLine = 0;
}

struct Parser {
    csv_parser state{};
    bool ready = csv_init(&state, CSV_STRICT | CSV_STRICT_FINI) == 0;
    Parser() = default;
    Parser(const Parser&) = delete;
    Parser& operator=(const Parser&) = delete;
    ~Parser() { csv_free(&state); }
};

/// Where the line that begins at `at` is over: behind LF, CRLF or a CR alone, all of which libcsv takes for an end.
std::size_t endOfLine(std::string_view bytes, std::size_t at)
{
    const std::size_t mark = bytes.find_first_of("\r\n", at);
    if (mark == std::string_view::npos) return bytes.size();
    return bytes.substr(mark).starts_with("\r\n") ? mark + 2 : mark + 1;
}

/// The line of the first fault by `isSound`, if the bytes as a whole are at fault.
template <class Check>
int lineOfFault(std::string_view bytes, Check isSound)
{
    int line = 1;
    for (std::size_t at = 0; at < bytes.size(); ++line) {
        const std::size_t end = endOfLine(bytes, at);
        if (!isSound(bytes.substr(at, end - at))) break;
        at = end;
    }
    return line;
}

/// Feeds the bytes a line at a time, so that each row can be given the line on which it began.
Result<std::vector<CsvTable::Row>> rowsOf(std::string_view bytes, const std::string& name)
{
    Parser parser;
    Collector collector;
    std::size_t at = 0;
    while (at < bytes.size()) {
        const std::size_t end = endOfLine(bytes, at);
        if (collector.rowLine == 0) collector.rowLine = collector.line;
        const std::size_t length = end - at;
        if (csv_parse(&parser.state, bytes.data() + at, length, endOfCell, endOfRow, &collector) != length)
            return failure("csv.quote", fmt::format("{}:{}", name, collector.line));
        // An empty line inside a quoted cell belongs to its row; between rows it belongs to none.
        if (collector.rowLine != 0 && collector.cells.empty() && trimmed(bytes.substr(at, length)).empty()
            && parser.state.quoted == 0)
            collector.rowLine = 0;
        at = end;
        ++collector.line;
    }
    if (csv_fini(&parser.state, endOfCell, endOfRow, &collector) != 0)
        return failure("csv.quote", fmt::format("{}:{}", name, collector.rowLine));
    return std::move(collector.rows);
}

Result<void> checkHeader(const std::vector<std::string>& header, const std::string& where)
{
    std::set<std::string_view> seen;
    for (std::size_t i = 0; i < header.size(); ++i) {
        if (header[i].empty()) return failure("csv.column-unnamed", where, {{"column", std::int64_t(i + 1)}});
        if (!seen.insert(header[i]).second) return failure("csv.column-twice", where, {{"found", header[i]}});
    }
    return {};
}

/// Whether the cell must be quoted: for its signs, or because the reader passes over white space at a bare cell's ends.
bool needsQuotes(std::string_view cell)
{
    return cell.find_first_of("\",\r\n") != std::string_view::npos || trimmed(cell).size() != cell.size();
}

} // namespace

Result<CsvTable> readCsv(std::string_view bytes, const std::string& name)
{
    if (bytes.starts_with("\xEF\xBB\xBF")) bytes.remove_prefix(3);
    const auto hasNoNul = [](std::string_view text) { return text.find('\0') == std::string_view::npos; };
    if (!hasNoNul(bytes)) return failure("csv.nul", fmt::format("{}:{}", name, lineOfFault(bytes, hasNoNul)));
    if (!isUtf8(bytes)) return failure("csv.utf8", fmt::format("{}:{}", name, lineOfFault(bytes, isUtf8)));
    auto rows = rowsOf(bytes, name);
    if (!rows) return passOn(rows);
    if (rows->empty()) return failure("csv.empty", name);

    CsvTable table;
    for (std::string& cell : rows->front().cells) table.header.emplace_back(trimmed(cell));
    if (auto sound = checkHeader(table.header, fmt::format("{}:{}", name, rows->front().line)); !sound)
        return passOn(sound);
    rows->erase(rows->begin());
    for (const CsvTable::Row& row : *rows) {
        if (row.cells.size() != table.header.size())
            return failure("csv.cells", fmt::format("{}:{}", name, row.line),
                           {{"found", std::int64_t(row.cells.size())}, {"wanted", std::int64_t(table.header.size())}});
    }
    table.rows = std::move(*rows);
    return table;
}

std::string csvRow(const std::vector<std::string>& cells)
{
    std::string line;
    for (const std::string& cell : cells) {
        if (&cell != cells.data()) line += ',';
        // A row of one empty cell would be an empty line, which is no row.
        if (!needsQuotes(cell) && !(cell.empty() && cells.size() == 1)) {
            line += cell;
            continue;
        }
        line += '"';
        for (const char c : cell) line.append(c == '"' ? 2 : 1, c);
        line += '"';
    }
    return line + "\r\n";
}

} // namespace proofwalk::base
