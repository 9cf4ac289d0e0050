// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/measure/conductor.h"

#include "core/base/csv.h"
#include "core/base/datafolder.h"
#include "core/base/decimal.h"
#include "core/base/file.h"
#include "core/base/text.h"
#include "core/measure/cable.h"
#include "core/measure/inputs.h"

#include <algorithm>
#include <array>
#include <string_view>

namespace proofwalk::measure {
namespace {

constexpr std::array<std::string_view, 7> columns{
    "name", "section_mm2", "resistance_ohm_per_km", "temperature_c", "bound", "source", "basis"};

/// A row of the table by column name; every column is known to be there.
struct Row {
    const base::CsvTable& table;
    const base::CsvTable::Row& row;
    std::string where;

    const std::string& text(std::string_view column) const
    {
        const auto at = std::ranges::find(table.header, column) - table.header.begin();
        return row.cells[static_cast<std::size_t>(at)];
    }
    Result<double> number(std::string_view column) const
    {
        const auto value = base::parseDecimal(text(column));
        if (value && value->mantissa > 0) return base::toDouble(*value);
        return failure("measure.table-number", where, {{"column", std::string(column)}, {"found", text(column)}});
    }
};

Result<Conductor> conductorOf(const Row& row)
{
    auto section = row.number("section_mm2");
    if (!section) return passOn(section);
    auto resistance = row.number("resistance_ohm_per_km");
    if (!resistance) return passOn(resistance);
    auto temperature = row.number("temperature_c");
    if (!temperature) return passOn(temperature);
    const std::string& bound = row.text("bound");
    if (bound != "maximum" && bound != "nominal")
        return failure(
            "measure.table-word", row.where,
            {{"column", std::string("bound")}, {"found", bound}, {"wanted", std::string("maximum or nominal")}});
    return Conductor{row.text("name"),   *section,           *resistance,      *temperature,
                     bound == "maximum", row.text("source"), row.text("basis")};
}

Result<std::vector<Conductor>> shippedTable()
{
    const auto path = base::dataFolder() / "measure" / "conductors.csv";
    auto bytes = base::readFile(path);
    if (!bytes) return passOn(bytes);
    return readConductors(*bytes, path.string());
}

} // namespace

Result<std::vector<Conductor>> readConductors(std::string_view bytes, const std::string& name)
{
    auto table = base::readCsv(bytes, name);
    if (!table) return passOn(table);
    for (const std::string_view column : columns)
        if (std::ranges::find(table->header, column) == table->header.end())
            return failure("measure.table-column", name, {{"found", std::string(column)}});

    std::vector<Conductor> conductors;
    for (const auto& each : table->rows) {
        const Row row{*table, each, fmt::format("{}:{}", name, each.line)};
        auto conductor = conductorOf(row);
        if (!conductor) return passOn(conductor);
        if (std::ranges::find(conductors, conductor->name, &Conductor::name) != conductors.end())
            return failure("measure.table-twice", row.where, {{"found", conductor->name}});
        conductors.push_back(std::move(*conductor));
    }
    return conductors;
}

Result<Conductor> conductorByName(std::string_view name, std::span<const Conductor> table)
{
    std::string wanted(base::trimmed(name));
    constexpr std::string_view squared = "²";
    if (const auto at = wanted.find(squared); at != std::string::npos) wanted.replace(at, squared.size(), "2");
    const auto found = std::ranges::find(table, wanted, &Conductor::name);
    if (found != table.end()) return *found;
    std::vector<std::string> known;
    for (const Conductor& each : table) known.push_back(each.name);
    return failure("measure.conductor-unknown", "",
                   {{"found", std::string(name)}, {"nearest", base::nearestWord(wanted, known)}});
}

Result<Conductor> conductorByName(std::string_view name)
{
    static const Result<std::vector<Conductor>> table = shippedTable();
    if (!table) return std::unexpected(table.error());
    return conductorByName(name, *table);
}

Result<double> pairResistance_ohm(const ConductorRun& run)
{
    if (auto sound = checkAbove("length_m", run.length_m, 0); !sound) return passOn(sound);
    return resistanceAtTemperature_ohm({.resistance_ohm = 2 * run.length_m / 1000 * run.conductor.resistance_ohm_per_km,
                                        .known_c = run.conductor.temperature_c,
                                        .wanted_c = run.temperature_c});
}

} // namespace proofwalk::measure
