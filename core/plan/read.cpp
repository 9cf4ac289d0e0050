// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/plan/read.h"

#include "core/base/file.h"
#include "core/plan/derive.h"
#include "core/plan/table.h"

#include <algorithm>

namespace proofwalk::plan {
namespace {

/// The table of a file, if the file is there and sound.
std::optional<base::CsvTable> tableOf(const std::filesystem::path& folder, const std::string& file, Findings& findings)
{
    const auto path = folder / file;
    std::error_code ignored;
    if (!std::filesystem::exists(path, ignored)) return std::nullopt;
    const auto bytes = base::readFile(path);
    if (!bytes) {
        findings.errors.push_back(bytes.error());
        return std::nullopt;
    }
    auto table = base::readCsv(*bytes, file);
    if (!table) {
        findings.errors.push_back(table.error());
        return std::nullopt;
    }
    return std::move(*table);
}

/// A fact is a row, but its value has the domain of its field; a fact nobody knows is kept out like an unknown column.
void checkFacts(std::string_view table, std::vector<Fact>& facts, Findings& findings)
{
    std::erase_if(facts, [&](Fact& fact) {
        const Column* column = factColumn(table, fact.field);
        if (!column) {
            if (!fact.field.empty()) findings.unknown.push_back(fact.file + ": " + fact.field);
            return true;
        }
        if (fact.value.empty()) return true;
        auto value = checkedCell(*column, fact.value);
        if (value) {
            fact.value = std::move(*value);
            return false;
        }
        value.error().where = fact.file + ":" + std::to_string(fact.line) + ", field " + fact.field;
        findings.errors.push_back(std::move(value.error()));
        return true;
    });
}

/// Of devices, beside the kind, one of floor and room must say where the thing is.
void checkPlaces(const base::CsvTable& table, const std::vector<Device>& devices, Findings& findings)
{
    const auto has = [&](std::string_view column) {
        return std::ranges::find(table.header, column) != table.header.end();
    };
    if (!has("floor") && !has("room")) {
        findings.errors.push_back({"plan.column-missing", "devices.csv", {{"wanted", std::string("room")}}});
        return;
    }
    for (const Device& device : devices) {
        if (!device.floor.empty() || !device.room.empty()) continue;
        const std::string where = "devices.csv:" + std::to_string(device.line) + ", column ";
        const bool told = std::ranges::any_of(findings.errors, [&](const Error& error) {
            return error.where == where + "room" || error.where == where + "floor";
        });
        if (!told) findings.errors.push_back({"plan.cell-empty", where + (has("room") ? "room" : "floor"), {}});
    }
}

/// A CSV file whose name nobody knows is most likely misspelt: it is reported, not passed over.
void reportFiles(const std::filesystem::path& folder, const std::vector<std::string>& known, Findings& findings)
{
    std::vector<std::string> unknown;
    std::error_code ignored;
    for (const auto& entry : std::filesystem::directory_iterator(folder, ignored)) {
        const std::string name = entry.path().filename().string();
        if (name.ends_with(".csv") && std::ranges::find(known, name) == known.end()) unknown.push_back(name);
    }
    std::ranges::sort(unknown);
    findings.unknown.insert(findings.unknown.end(), unknown.begin(), unknown.end());
}

} // namespace

ResultOrErrors<Plan> readPlan(const std::filesystem::path& folder)
{
    std::error_code ignored;
    if (!std::filesystem::exists(folder / "devices.csv", ignored))
        return std::unexpected(std::vector{Error{"plan.no-devices", folder.string(), {{"found", folder.string()}}}});

    Plan plan;
    Findings findings;
    std::vector<std::string> known;
    forEachTable(plan, [&]<class R>(std::string_view name, std::vector<R>& rows) {
        const std::string file = std::string(name) + ".csv";
        known.push_back(file);
        const auto table = tableOf(folder, file, findings);
        if (!table) return;
        rows = rowsOf<R>(*table, file, findings);
        if constexpr (std::is_same_v<R, Fact>) checkFacts(name, rows, findings);
        if constexpr (std::is_same_v<R, Device>) checkPlaces(*table, rows, findings);
    });
    reportFiles(folder, known, findings);
    if (!findings.errors.empty()) return std::unexpected(std::move(findings.errors));
    if (plan.devices.empty())
        return std::unexpected(std::vector{Error{"plan.no-devices", "devices.csv", {{"found", folder.string()}}}});

    plan.unknownColumns = std::move(findings.unknown);
    derive(plan);
    return plan;
}

} // namespace proofwalk::plan
