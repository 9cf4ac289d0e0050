// SPDX-License-Identifier: GPL-3.0-or-later
// Comma-separated values with a header line (RFC 4180), read so that every cell still knows where it stood.
#pragma once

#include "core/base/result.h"

#include <string>
#include <string_view>
#include <vector>

namespace proofwalk::base {

/// A table as read: every row has as many cells as the header.
struct CsvTable {
    struct Row {
        int line = 0; ///< of its first cell, the header being line 1
        std::vector<std::string> cells;
    };
    std::vector<std::string> header;
    std::vector<Row> rows;
};

/// Reads a whole file's bytes. A UTF-8 byte order mark is passed over (spreadsheets write one), so are empty lines and
/// white space at the ends of a cell without quotes (RFC 4180 would keep that; in a tag it is always a slip). A line
/// ends with LF, CRLF or CR alone.
/// Errors, with `where` = "NAME:LINE": csv.quote; csv.utf8; csv.nul; csv.cells {found, wanted}; csv.column-twice
/// {found}; csv.column-unnamed; csv.empty (no header line).
Result<CsvTable> readCsv(std::string_view bytes, const std::string& name);

/// Writes one row as RFC 4180 wants it, quoted where needed, ended by CRLF; readCsv gives the same cells back.
std::string csvRow(const std::vector<std::string>& cells);

} // namespace proofwalk::base
