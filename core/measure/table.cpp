// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/measure/table.h"

#include "core/base/datafolder.h"
#include "core/base/decimal.h"
#include "core/base/file.h"

#include <fmt/format.h>

#include <algorithm>

namespace proofwalk::measure {

const std::string& TableRow::text(std::string_view column) const
{
    const auto at = std::ranges::find(table.header, column) - table.header.begin();
    return row.cells[static_cast<std::size_t>(at)];
}

Result<double> TableRow::number(std::string_view column, double least) const
{
    if (const auto value = base::parseDecimal(text(column)); value && base::toDouble(*value) >= least)
        return base::toDouble(*value);
    return failure("measure.table-number", where, {{"column", std::string(column)}, {"found", text(column)}});
}

Result<double> TableRow::positive(std::string_view column) const
{
    if (const auto value = base::parseDecimal(text(column)); value && value->mantissa > 0)
        return base::toDouble(*value);
    return failure("measure.table-number", where, {{"column", std::string(column)}, {"found", text(column)}});
}

Result<void> readTable(std::string_view bytes, const std::string& name, std::span<const std::string_view> columns,
                       const std::function<Result<void>(const TableRow&)>& take)
{
    auto table = base::readCsv(bytes, name);
    if (!table) return passOn(table);
    for (const std::string_view column : columns)
        if (std::ranges::find(table->header, column) == table->header.end())
            return failure("measure.table-column", name, {{"found", std::string(column)}});
    for (const auto& each : table->rows)
        if (auto taken = take({*table, each, fmt::format("{}:{}", name, each.line)}); !taken) return taken;
    return {};
}

std::filesystem::path shippedTablePath(const std::string& file) { return base::dataFolder() / "measure" / file; }

Result<std::string> shippedTable(const std::string& file) { return base::readFile(shippedTablePath(file)); }

} // namespace proofwalk::measure
