// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/plan/table.h"

#include <algorithm>

namespace proofwalk::plan {

void reportUnknown(const std::vector<std::string>& header, const std::vector<std::string_view>& known,
                   const std::string& file, Findings& findings)
{
    for (const std::string& column : header) {
        if (std::ranges::find(known, column) == known.end()) findings.unknown.push_back(file + ": " + column);
    }
}

bool isBlank(const base::CsvTable::Row& row)
{
    return std::ranges::all_of(row.cells, [](const std::string& cell) { return base::trimmed(cell).empty(); });
}

} // namespace proofwalk::plan
