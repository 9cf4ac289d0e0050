// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/plan/usual.h"

#include "core/base/csv.h"
#include "usualdata.h"

#include <algorithm>
#include <map>

namespace proofwalk::plan {
namespace {

/// The table by its first column; made by `row` of the cells. The text is built in, so a fault in it is ours.
template <class Value, class Make>
std::map<std::string, Value, std::less<>> tableOf(const char* text, const char* name, Make make)
{
    const base::CsvTable table = base::readCsv(text, name).value();
    std::map<std::string, Value, std::less<>> values;
    for (const auto& row : table.rows) values.emplace(row.cells[0], make(row.cells));
    return values;
}

template <class Value>
const Value* find(const std::map<std::string, Value, std::less<>>& values, std::string_view key)
{
    const auto found = values.find(key);
    return found == values.end() ? nullptr : &found->second;
}

} // namespace

const UsualKind* usualKind(std::string_view kind)
{
    static const auto kinds = tableOf<UsualKind>(usualKindsCsv, "usual-kinds.csv", [](const auto& cells) {
        return UsualKind{.purpose = cells[1], .feed = cells[2]};
    });
    return find(kinds, kind);
}

const UsualPurpose* usualPurpose(std::string_view purpose)
{
    static const auto purposes = tableOf<UsualPurpose>(usualPurposesCsv, "usual-purposes.csv", [](const auto& cells) {
        return UsualPurpose{.liveIn = cells[1], .sounding = cells[2], .rest = cells[3]};
    });
    return find(purposes, purpose);
}

} // namespace proofwalk::plan
