// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/plan/rows.h"

#include "core/base/digest.h"
#include "core/plan/assumptions.h"
#include "core/plan/cells.h"

#include <fmt/format.h>

#include <algorithm>
#include <set>

namespace proofwalk::plan {
namespace {

using base::Json;

constexpr std::string_view format = "proofwalk/plan/1";

/// A fact's value is private if its field is; any other cell if its column is.
template <class R>
bool isPrivate(std::string_view table, const Column& column, const R& row)
{
    if constexpr (std::is_same_v<R, Fact>) {
        const Column* fact = column.name == "value" ? factColumn(table, row.field) : nullptr;
        return fact && fact->isPrivate;
    }
    return column.isPrivate;
}

template <class R>
Json rowOut(std::string_view table, const R& row, const Commit& commit)
{
    Json out;
    out["id"] = row.id;
    if (!row.assumed.empty()) {
        auto assumed = row.assumed;
        std::ranges::sort(assumed);
        out["assumed"] = Json::Array(assumed.begin(), assumed.end());
    }
    for (const Field<R>& field : fields<R>()) {
        const std::string text = cellText(field, row);
        if (text.empty()) continue;
        Json cell = text;
        if (isPrivate(table, field.column, row)) {
            cell = Json::Object{};
            cell["private"] = commit(text);
        }
        out[field.column.name] = std::move(cell);
    }
    return out;
}

std::unexpected<Error> refuse(std::string detail, std::string where)
{
    return failure("plan.rows", std::move(where), {{"detail", std::move(detail)}});
}

/// The text of a cell; a commitment's value, or nothing where it cannot be revealed.
Result<std::string> cellIn(const Json& cell, bool mayBePrivate, const Reveal& reveal)
{
    if (const std::string* text = cell.string()) {
        if (mayBePrivate) return refuse("a private cell stands in the open", "");
        return *text;
    }
    const Json::Object* object = cell.object();
    const Json* commitment = cell.find("private");
    if (!object || object->size() != 1 || !commitment || !commitment->string()) return refuse("a cell is no text", "");
    if (!mayBePrivate) return refuse("a cell is hidden that is not private", "");
    if (!base::isLowerHex(*commitment->string(), 64)) return refuse("a commitment is no SHA-256", "");
    return reveal(*commitment->string()).value_or(std::string());
}

template <class R>
Result<void> checkKeys(const Json::Object& object)
{
    for (const auto& [key, cell] : object) {
        const bool known =
            key == "id" || key == "assumed"
            || std::ranges::any_of(fields<R>(), [&](const Field<R>& field) { return field.column.name == key; });
        if (!known) return refuse("unknown key " + key, "");
    }
    return {};
}

Result<void> readCommon(const Json& in, Row& row)
{
    row.id = in.text("id");
    if (!base::isLowerHex(row.id, 32)) return refuse("the row has no id", "");
    const Json* assumed = in.find("assumed");
    if (!assumed) return {};
    if (!assumed->array()) return refuse("assumed is no array", "");
    for (const Json& each : *assumed->array()) {
        if (!each.string()) return refuse("assumed holds no text", "");
        row.assumed.push_back(*each.string());
    }
    return {};
}

/// One cell of a row; a fact's value is checked as its field wants it.
template <class R>
Result<void> readCell(std::string_view table, const Field<R>& field, const Json& in, R& row, const Reveal& reveal)
{
    const Json* cell = in.find(field.column.name);
    if (!cell) {
        if (field.column.required) return failure("plan.cell-empty", "");
        return {};
    }
    auto text = cellIn(*cell, isPrivate(table, field.column, row), reveal);
    if (!text) return passOn(text);
    if (text->empty()) return {};
    if constexpr (std::is_same_v<R, Fact>) {
        if (field.column.name == "value") {
            const Column* fact = factColumn(table, row.field);
            if (!fact) return refuse("unknown fact " + row.field, "");
            if (auto checked = checkedCell(*fact, *text); !checked) return passOn(checked);
        }
    }
    return putCell(field, row, *text);
}

template <class R>
Result<R> rowIn(std::string_view table, const Json& in, const Reveal& reveal)
{
    R row;
    if (!in.object()) return refuse("a row is no object", "");
    if (auto keys = checkKeys<R>(*in.object()); !keys) return passOn(keys);
    if (auto common = readCommon(in, row); !common) return passOn(common);
    for (const Field<R>& field : fields<R>()) {
        auto read = readCell(table, field, in, row, reveal);
        if (!read) return std::unexpected(std::move(read.error()).within(fmt::format("column {}", field.column.name)));
    }
    return row;
}

template <class R>
Result<std::vector<R>> tableIn(std::string_view table, const Json& rows, const Reveal& reveal)
{
    const std::string name(table);
    const Json* array = rows.find(table);
    if (!array || !array->array()) return refuse("the table is missing", name);
    std::vector<R> read;
    for (const Json& each : *array->array()) {
        auto row = rowIn<R>(table, each, reveal);
        if (!row)
            return std::unexpected(std::move(row.error()).within(fmt::format("{} row {}", table, read.size() + 1)));
        read.push_back(std::move(*row));
    }
    return read;
}

} // namespace

void giveIds(Plan& plan)
{
    forEachTable(plan, [](std::string_view, auto& rows) {
        for (Row& row : rows) {
            if (row.id.empty()) row.id = base::randomHex(16);
        }
    });
}

Json toRows(const Plan& plan, const Commit& commit)
{
    Json out;
    out["format"] = format;
    forEachTable(plan, [&](std::string_view table, const auto& rows) {
        Json::Array array;
        for (const auto& row : rows) array.push_back(rowOut(table, row, commit));
        out[table] = std::move(array);
    });
    return out;
}

Result<Plan> fromRows(const Json& rows, const Reveal& reveal)
{
    if (rows.text("format") != format) return refuse("the format is not " + std::string(format), "");
    Plan plan;
    std::optional<Error> first;
    std::set<std::string, std::less<>> known{"format"};
    forEachTable(plan, [&]<class R>(std::string_view table, std::vector<R>& into) {
        known.emplace(table);
        if (first) return;
        auto read = tableIn<R>(table, rows, reveal);
        if (read) into = std::move(*read);
        else first = std::move(read.error());
    });
    for (const auto& [key, value] : *rows.object()) {
        if (!first && !known.contains(key)) first = Error{"plan.rows", "", {{"detail", "unknown table " + key}}};
    }
    if (first) return std::unexpected(std::move(*first));
    plan.assumptions = assumptionsOf(plan);
    return plan;
}

} // namespace proofwalk::plan
