// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/plan/assumptions.h"

#include "core/plan/cells.h"

#include <fmt/format.h>

#include <algorithm>

namespace proofwalk::plan {
namespace {

std::string placeOf(const Row& row, std::string_view table)
{
    const std::string file = row.file.empty() ? std::string(table) + ".csv" : row.file;
    return row.line > 0 ? fmt::format("{}:{}", file, row.line) : file;
}

template <class R>
void listColumn(std::string_view table, const std::vector<R>& rows, const Field<R>& field,
                std::vector<Assumption>& list)
{
    std::vector<Assumption> each;
    bool same = true;
    std::string code = fmt::format("plan.assumed-{}", field.column.name);
    std::ranges::replace(code, '_', '-');
    for (const R& row : rows) {
        if (!isAssumed(row, field.column.name)) continue;
        each.push_back({fmt::format("{}, column {}", placeOf(row, table), field.column.name),
                        code,
                        {{"value", cellText(field, row)}}});
        same = same && each.back().arguments == each.front().arguments;
    }
    if (same && each.size() > 1 && each.size() == rows.size()) {
        each.resize(1);
        each.front().where = fmt::format("{}.csv, column {}", table, field.column.name);
    }
    list.insert(list.end(), each.begin(), each.end());
}

} // namespace

bool isAssumed(const Row& row, std::string_view column)
{
    return std::ranges::find(row.assumed, column) != row.assumed.end();
}

std::vector<Assumption> assumptionsOf(const Plan& plan)
{
    std::vector<Assumption> list;
    forEachTable(plan, [&]<class R>(std::string_view table, const std::vector<R>& rows) {
        for (const Field<R>& field : fields<R>()) listColumn(table, rows, field, list);
    });
    return list;
}

} // namespace proofwalk::plan
