// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/measure/conductor.h"

#include "core/base/text.h"
#include "core/measure/cable.h"
#include "core/measure/inputs.h"
#include "core/measure/table.h"

#include <algorithm>
#include <array>
#include <string_view>

namespace proofwalk::measure {
namespace {

constexpr std::array<std::string_view, 7> columns{
    "name", "section_mm2", "resistance_ohm_per_km", "temperature_c", "bound", "source", "basis"};

Result<Conductor> conductorOf(const TableRow& row)
{
    auto section = row.positive("section_mm2");
    if (!section) return passOn(section);
    auto resistance = row.positive("resistance_ohm_per_km");
    if (!resistance) return passOn(resistance);
    auto temperature = row.positive("temperature_c");
    if (!temperature) return passOn(temperature);
    const std::string& bound = row.text("bound");
    if (bound != "maximum" && bound != "nominal")
        return failure(
            "measure.table-word", row.where,
            {{"column", std::string("bound")}, {"found", bound}, {"wanted", std::string("maximum or nominal")}});
    return Conductor{row.text("name"),   *section,           *resistance,      *temperature,
                     bound == "maximum", row.text("source"), row.text("basis")};
}

Result<std::vector<Conductor>> shippedConductors()
{
    auto bytes = shippedTable("conductors.csv");
    if (!bytes) return passOn(bytes);
    return readConductors(*bytes, shippedTablePath("conductors.csv").string());
}

} // namespace

Result<std::vector<Conductor>> readConductors(std::string_view bytes, const std::string& name)
{
    std::vector<Conductor> conductors;
    auto read = readTable(bytes, name, columns, [&](const TableRow& row) -> Result<void> {
        auto conductor = conductorOf(row);
        if (!conductor) return passOn(conductor);
        if (std::ranges::find(conductors, conductor->name, &Conductor::name) != conductors.end())
            return failure("measure.table-twice", row.where, {{"found", conductor->name}});
        conductors.push_back(std::move(*conductor));
        return {};
    });
    if (!read) return passOn(read);
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
    static const Result<std::vector<Conductor>> table = shippedConductors();
    if (!table) return std::unexpected(table.error());
    return conductorByName(name, *table);
}

Result<double> pairResistance_ohm(const ConductorRun& run)
{
    if (auto sound = checkAbove("length_m", run.length_m, 0); !sound) return passOn(sound);
    if (auto sound = checkWithin("length_m", run.length_m, 0, 1e5); !sound) return passOn(sound); // 100 km: our choice
    return resistanceAtTemperature_ohm({.resistance_ohm = 2 * run.length_m / 1000 * run.conductor.resistance_ohm_per_km,
                                        .known_c = run.conductor.temperature_c,
                                        .wanted_c = run.temperature_c});
}

} // namespace proofwalk::measure
