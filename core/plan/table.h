// SPDX-License-Identifier: GPL-3.0-or-later
// One CSV file of a plan into its rows, every bad cell told.
#pragma once

#include "core/base/csv.h"
#include "core/plan/cells.h"

#include <algorithm>

namespace proofwalk::plan {

/// What reading the files brings to light.
struct Findings {
    std::vector<Error> errors;
    std::vector<std::string> unknown; ///< "devices.csv: colour", kept out
};

/// Which column of a table holds each field; -1 where it is not there.
template <class R>
std::vector<int> columnsOf(const base::CsvTable& table, const std::string& file, Findings& findings);

/// The rows of the table. A row whose cells are all blank (spreadsheets write such) is passed over; a bad row is told
/// and kept, so that the rest of the plan can still be looked at.
template <class R>
std::vector<R> rowsOf(const base::CsvTable& table, const std::string& file, Findings& findings);

/// Reports the header's columns that nobody knows.
void reportUnknown(const std::vector<std::string>& header, const std::vector<std::string_view>& known,
                   const std::string& file, Findings& findings);

/// Whether every cell is blank.
bool isBlank(const base::CsvTable::Row& row);

template <class R>
std::vector<int> columnsOf(const base::CsvTable& table, const std::string& file, Findings& findings)
{
    std::vector<int> columns;
    std::vector<std::string_view> known;
    for (const Field<R>& field : fields<R>()) {
        const auto found = std::ranges::find(table.header, field.column.name);
        known.push_back(field.column.name);
        columns.push_back(found == table.header.end() ? -1 : static_cast<int>(found - table.header.begin()));
        if (columns.back() < 0 && field.column.required)
            findings.errors.push_back({"plan.column-missing", file, {{"wanted", std::string(field.column.name)}}});
    }
    reportUnknown(table.header, known, file, findings);
    return columns;
}

template <class R>
std::vector<R> rowsOf(const base::CsvTable& table, const std::string& file, Findings& findings)
{
    const auto columns = columnsOf<R>(table, file, findings);
    const auto all = fields<R>();
    std::vector<R> rows;
    rows.reserve(table.rows.size());
    for (const base::CsvTable::Row& read : table.rows) {
        if (isBlank(read)) continue;
        R& row = rows.emplace_back();
        row.file = file;
        row.line = read.line;
        for (std::size_t i = 0; i < all.size(); ++i) {
            const bool there = columns[i] >= 0;
            if (!there && all[i].column.required) continue; // told once, for the column
            const std::string_view cell =
                there ? std::string_view(read.cells[static_cast<std::size_t>(columns[i])]) : "";
            // A truth has no blank to stand for "not said": it is taken as no, and that is an assumption.
            if (all[i].column.form == Form::truth && base::trimmed(cell).empty())
                row.assumed.emplace_back(all[i].column.name);
            if (auto put = putCell(all[i], row, cell); !put) {
                put.error().where =
                    file + ":" + std::to_string(read.line) + ", column " + std::string(all[i].column.name);
                findings.errors.push_back(std::move(put.error()));
            }
        }
    }
    return rows;
}

} // namespace proofwalk::plan
