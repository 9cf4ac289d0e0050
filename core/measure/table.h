// SPDX-License-Identifier: GPL-3.0-or-later
// Reading the tables of figures that stand beside this room's code: columns by name, a source in each row.
#pragma once

#include "core/base/csv.h"
#include "core/base/result.h"

#include <filesystem>
#include <functional>
#include <span>
#include <string>
#include <string_view>

namespace proofwalk::measure {

/// A row of the table by column name; every column asked for is known to be there.
struct TableRow {
    const base::CsvTable& table;
    const base::CsvTable::Row& row;
    std::string where; ///< "NAME:LINE"

    const std::string& text(std::string_view column) const;
    /// Error: measure.table-number {column, found}: not a decimal number from `least` on.
    Result<double> number(std::string_view column, double least) const;
    /// Above zero.
    Result<double> positive(std::string_view column) const;
};

/// Hands each row to `take`. Errors: those of base::readCsv; measure.table-column {found} (missing); those of `take`.
Result<void> readTable(std::string_view bytes, const std::string& name, std::span<const std::string_view> columns,
                       const std::function<Result<void>(const TableRow&)>& take);

/// The bytes of a table that came with the program. Errors: those of base::readFile.
Result<std::string> shippedTable(const std::string& file);

/// Where it stands, for errors.
std::filesystem::path shippedTablePath(const std::string& file);

} // namespace proofwalk::measure
