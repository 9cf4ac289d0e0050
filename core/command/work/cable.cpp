// SPDX-License-Identifier: GPL-3.0-or-later
// proofwalk work cable: what is left of a voltage at the end of a cable (core/measure/drop.h, cable.h, conductor.h).
#include "core/command/work/topic.h"

#include "core/base/datafolder.h"
#include "core/base/file.h"
#include "core/measure/cable.h"
#include "core/measure/conductor.h"
#include "core/measure/drop.h"

#include <fmt/format.h>

#include <algorithm>

namespace proofwalk::command::work {
namespace {

using measure::metresPerFoot;

constexpr Range length{0, 1e5};
constexpr Range current{0, 1e3};
constexpr Range voltage{1e-3, 1e3};
constexpr Range temperature{-40, 90};

Input text(std::string_view name) { return {.name = name, .kind = Input::Kind::text, .required = false}; }

std::vector<Input> joined(std::vector<Input> first, const std::vector<Input>& second)
{
    first.insert(first.end(), second.begin(), second.end());
    return first;
}

std::vector<Input> conductorInputs()
{
    return {optional("wire_ohm_per_km", {1e-3, 1e6}), optional("return_ohm_per_km", {1e-3, 1e6}), text("conductor"),
            usual("cable_c", "20", temperature)};
}

/// The two conductors, as figures given (which are for the cable as it is) or by name at the cable's temperature; a
/// line for what was looked up.
Result<measure::Supply> supplyOf(const Given& given, Worked& worked)
{
    measure::Supply supply{given.maybe("source_v").value_or(0), 0, 0};
    if (given.has("wire_ohm_per_km") && given.has("conductor")) return failure("work.cable.either", "conductor");
    if (!given.has("wire_ohm_per_km") && !given.has("conductor"))
        return failure("work.missing", "", {{"wanted", "conductor or wire_ohm_per_km"}});
    if (given.has("wire_ohm_per_km")) {
        supply.feed_ohm_per_km = given.number("wire_ohm_per_km");
        supply.return_ohm_per_km = given.maybe("return_ohm_per_km").value_or(supply.feed_ohm_per_km);
        return supply;
    }
    auto named = measure::conductorByName(given.word("conductor"));
    if (!named) return std::unexpected(std::move(named.error()).within("conductor=" + given.word("conductor")));
    auto ohm_per_km = measure::resistanceAtTemperature_ohm(
        {named->resistance_ohm_per_km, named->temperature_c, given.number("cable_c")});
    if (!ohm_per_km) return passOn(ohm_per_km);
    supply.feed_ohm_per_km = supply.return_ohm_per_km = *ohm_per_km;
    if (given.has("return_ohm_per_km")) supply.return_ohm_per_km = given.number("return_ohm_per_km");
    worked.lines.push_back(
        {"r at the cable's temperature, from the table",
         fmt::format("{} Ω/km at {} °C", shown(named->resistance_ohm_per_km), shown(named->temperature_c)),
         "r_ohm_per_km", *ohm_per_km});
    worked.remarks.push_back({named->isMaximum ? "work.cable.maximum" : "work.cable.nominal",
                              {{"source", named->source}, {"basis", named->basis}}});
    return supply;
}

void addLimits(Worked& worked)
{
    worked.limits = {"work.limit.direct-current", "work.limit.no-terminals"};
    worked.sources = {"work.source.ohm", "work.source.iec-60028"};
}

Result<Worked> drop(const Given& given)
{
    Worked worked;
    auto supply = supplyOf(given, worked);
    if (!supply) return passOn(supply);
    const double metres = given.number("length_m"), amperes = given.number("current_a");
    auto volts = measure::runDrop_v(*supply, metres, amperes);
    if (!volts) return passOn(volts);
    const double both = supply->feed_ohm_per_km + supply->return_ohm_per_km;
    worked.lines.push_back({"R = L (ra + rb)",
                            fmt::format("{} m × ({} + {}) Ω/km", shown(metres), shown(supply->feed_ohm_per_km),
                                        shown(supply->return_ohm_per_km)),
                            "loop_ohm", metres / 1000 * both});
    worked.lines.push_back(
        {"V = R I", fmt::format("{} Ω × {} A", shown(metres / 1000 * both), shown(amperes)), "drop_v", *volts});
    if (given.has("source_v")) {
        worked.lines.push_back({"drop in per cent of the source",
                                fmt::format("100 × {}/{}", shown(*volts), shown(supply->source_v)), "drop_pct",
                                100 * *volts / supply->source_v});
        worked.lines.push_back({"left at the end", fmt::format("{} − {} V", shown(supply->source_v), shown(*volts)),
                                "end_v", supply->source_v - *volts});
        if (*volts >= supply->source_v) worked.remarks.push_back({"work.cable.nothing-left", {}});
    }
    addLimits(worked);
    return worked;
}

Result<std::vector<measure::Appliance>> appliancesOf(const Given& given)
{
    const auto& segments = given.numbers("segments_m");
    std::vector<measure::Appliance> appliances;
    for (const double each : segments) appliances.push_back({each, 0, 0});
    const auto fill = [&](const char* name, double measure::Appliance::* field) -> Result<void> {
        if (!given.has(name)) return {};
        const auto& values = given.numbers(name);
        if (values.size() != segments.size())
            return failure("work.cable.counts", name,
                           {{"found", static_cast<std::int64_t>(values.size())},
                            {"wanted", static_cast<std::int64_t>(segments.size())}});
        for (std::size_t i = 0; i < values.size(); ++i) appliances[i].*field = values[i];
        return {};
    };
    if (!given.has("currents_a") && !given.has("powers_w"))
        return failure("work.missing", "", {{"wanted", "currents_a"}});
    if (auto filled = fill("currents_a", &measure::Appliance::current_a); !filled) return passOn(filled);
    if (auto filled = fill("powers_w", &measure::Appliance::power_w); !filled) return passOn(filled);
    return appliances;
}

/// The lines of drops and voltages; with least_v a remark for each appliance that gets less.
void addAppliances(Worked& worked, const Given& given, const std::vector<measure::AtAppliance>& at)
{
    std::vector<double> drops, voltages, currents;
    for (const auto& each : at) {
        drops.push_back(each.drop_v);
        voltages.push_back(each.voltage_v);
        currents.push_back(each.current_a);
    }
    worked.lines.push_back({"V_j = L_j (ra + rb) Σ I at or beyond its far end", "", "drops_v", drops});
    worked.lines.push_back({"at each appliance: the source less the drops before it", "", "voltages_v", voltages});
    if (given.has("powers_w")) worked.lines.push_back({"what each draws there: I + P/V", "", "drawn_a", currents});
    worked.lines.push_back({"all drops together", "", "drop_v", given.number("source_v") - voltages.back()});
    if (!given.has("least_v")) return;
    const double least = given.number("least_v");
    const bool low = std::ranges::any_of(voltages, [&](double each) { return each < least; });
    for (std::size_t i = 0; i < voltages.size(); ++i)
        if (voltages[i] < least)
            worked.remarks.push_back({"work.cable.too-low",
                                      {{"at", static_cast<std::int64_t>(i + 1)},
                                       {"found", shown("x_v", voltages[i])},
                                       {"wanted", shown("x_v", least)}}});
    if (!low) worked.remarks.push_back({"work.cable.enough", {{"wanted", shown("x_v", least)}}});
}

Result<Worked> circuit(const Given& given)
{
    Worked worked;
    auto supply = supplyOf(given, worked);
    if (!supply) return passOn(supply);
    auto appliances = appliancesOf(given);
    if (!appliances) return passOn(appliances);
    auto at = measure::pointToPoint(*supply, *appliances);
    if (!at) return passOn(at);
    addAppliances(worked, given, *at);
    if (!given.has("powers_w")) {
        auto lump = measure::lumpDrop_v(*supply, *appliances);
        if (!lump) return passOn(lump);
        worked.lines.push_back({"lump at the end: Σ L (ra + rb) Σ I, never less", "", "lump_drop_v", *lump});
        worked.lines.push_back({"left at the end by the lump",
                                fmt::format("{} − {} V", shown(supply->source_v), shown(*lump)), "lump_end_v",
                                supply->source_v - *lump});
        worked.lines.push_back({"the drops against the lump", "", "ratio",
                                *lump > 0 ? (supply->source_v - at->back().voltage_v) / *lump : 1});
    }
    addLimits(worked);
    worked.sources.push_back("work.source.point-to-point");
    return worked;
}

Result<Worked> longest(const Given& given)
{
    Worked worked;
    auto supply = supplyOf(given, worked);
    if (!supply) return passOn(supply);
    auto run = measure::longestRun(*supply, given.number("least_v"), given.number("current_a"));
    if (!run) return passOn(run);
    worked.lines.push_back({"R = (Vs − Vmin)/I",
                            fmt::format("({} − {}) V/{} A", shown(supply->source_v), shown(given.number("least_v")),
                                        shown(given.number("current_a"))),
                            "loop_ohm", run->loop_ohm});
    worked.lines.push_back({"L = R/(ra + rb)",
                            fmt::format("{} Ω/({} + {}) Ω/km", shown(run->loop_ohm), shown(supply->feed_ohm_per_km),
                                        shown(supply->return_ohm_per_km)),
                            "length_m", run->length_m});
    worked.lines.push_back({"the same in feet", fmt::format("{}/0.3048", shown(run->length_m)), "length_ft",
                            run->length_m / metresPerFoot});
    addLimits(worked);
    return worked;
}

Result<Worked> choose(const Given& given)
{
    const auto path = base::dataFolder() / "measure" / "conductors.csv";
    auto bytes = base::readFile(path);
    if (!bytes) return passOn(bytes);
    auto table = measure::readConductors(*bytes, path.string());
    if (!table) return passOn(table);
    auto appliances = appliancesOf(given);
    if (!appliances) return passOn(appliances);
    auto found = measure::smallestConductor(given.number("source_v"), given.number("least_v"), given.number("cable_c"),
                                            *appliances, *table);
    if (!found) return passOn(found);
    auto ohm_per_km = measure::resistanceAtTemperature_ohm(
        {found->resistance_ohm_per_km, found->temperature_c, given.number("cable_c")});
    if (!ohm_per_km) return passOn(ohm_per_km);
    auto at = measure::pointToPoint({given.number("source_v"), *ohm_per_km, *ohm_per_km}, *appliances);
    if (!at) return passOn(at);
    Worked worked;
    worked.lines.push_back({"the least section with which every appliance has enough", "", "conductor", found->name});
    worked.lines.push_back({"its section", "", "section_mm2", found->section_mm2});
    worked.lines.push_back({"its r at the cable's temperature", "", "r_ohm_per_km", *ohm_per_km});
    addAppliances(worked, given, *at);
    worked.remarks.push_back({found->isMaximum ? "work.cable.maximum" : "work.cable.nominal",
                              {{"source", found->source}, {"basis", found->basis}}});
    addLimits(worked);
    worked.sources.push_back("work.source.point-to-point");
    return worked;
}

Result<Worked> regulated(const Given& given)
{
    const double source = given.number("source_v"), ohm = given.number("loop_ohm"), power = given.number("power_w");
    auto state = measure::regulatedState(source, ohm, power);
    if (!state) return passOn(state);
    Worked worked;
    worked.lines = {
        {"V = (Vs + √(Vs² − 4 R P))/2",
         fmt::format("({0} + √({0}² − 4 × {1} × {2}))/2 V", shown(source), shown(ohm), shown(power)), "load_v",
         state->voltage_v},
        {"I = P/V", fmt::format("{}/{} A", shown(power), shown(state->voltage_v)), "load_a", state->current_a},
        {"drop = Vs − V", "", "drop_v", source - state->voltage_v},
        {"P_max = Vs²/(4 R): beyond it the circuit cannot start",
         fmt::format("{}²/(4 × {}) W", shown(source), shown(ohm)), "most_w", state->mostPower_w}};
    worked.limits = {"work.limit.direct-current", "work.limit.upper-state"};
    worked.sources = {"work.source.ohm"};
    return worked;
}

Result<Worked> warmed(const Given& given)
{
    const measure::ResistanceAt known{given.number("resistance_ohm"), given.number("known_c"),
                                      given.number("wanted_c")};
    Worked worked;
    if (given.has("coefficient_ppm_per_k")) {
        const double coefficient = given.number("coefficient_ppm_per_k") * 1e-6;
        auto ohm = measure::resistanceByCoefficient_ohm(known, coefficient);
        if (!ohm) return passOn(ohm);
        worked.lines.push_back({"R = R_known (1 + a (T − T_known))",
                                fmt::format("{} × (1 + {} × ({} − {})) Ω", shown(known.resistance_ohm),
                                            shown(coefficient), shown(known.wanted_c), shown(known.known_c)),
                                "warm_ohm", *ohm});
    } else {
        auto ohm = measure::resistanceAtTemperature_ohm(known);
        if (!ohm) return passOn(ohm);
        worked.lines.push_back({"R = R_known (1 + 0.00393 (T − 20))/(1 + 0.00393 (T_known − 20))",
                                fmt::format("{} Ω from {} °C to {} °C", shown(known.resistance_ohm),
                                            shown(known.known_c), shown(known.wanted_c)),
                                "warm_ohm", *ohm});
    }
    worked.limits = {"work.limit.copper-line"};
    worked.sources = {"work.source.iec-60028", "work.source.nfpa-70"};
    return worked;
}

Result<Worked> warmth(const Given& given)
{
    const double cold = given.number("resistance_ohm"), known = given.number("known_c"),
                 found = given.number("found_ohm");
    auto celsius = measure::temperatureFromResistance_c(cold, known, found);
    if (!celsius) return passOn(celsius);
    Worked worked;
    worked.lines = {{"T = 20 + (R/R_known (1 + 0.00393 (T_known − 20)) − 1)/0.00393",
                     fmt::format("{}/{} Ω, known at {} °C", shown(found), shown(cold), shown(known)), "temperature_c",
                     *celsius}};
    worked.limits = {"work.limit.copper-line"};
    worked.sources = {"work.source.iec-60028"};
    return worked;
}

/// The last lines of gauge and strands: r at 20 and 75 °C.
Result<void> addOhmPerKm(Worked& worked, double section_mm2)
{
    for (const double celsius : {20.0, 75.0}) {
        auto ohm =
            measure::pairResistance_ohm(measure::CableRun{500, section_mm2, celsius}); // half a pair of a kilometre
        if (!ohm) return passOn(ohm);
        worked.lines.push_back({"r = 1000/(58 A) (1 + 0.00393 (T − 20))",
                                fmt::format("{} mm², {} °C", shown(section_mm2), shown(celsius)),
                                fmt::format("at_{}c_ohm_per_km", celsius), *ohm});
    }
    return {};
}

Result<Worked> gauge(const Given& given)
{
    const int number = given.count("gauge");
    auto diameter = measure::gaugeDiameter_mm(number);
    if (!diameter) return passOn(diameter);
    auto section = measure::gaugeSection_mm2(number);
    if (!section) return passOn(section);
    Worked worked;
    worked.lines = {
        {"d = 0.127 × 92^((36 − n)/39)", fmt::format("0.127 × 92^((36 − {})/39) mm", number), "diameter_mm", *diameter},
        {"A = π d²/4", fmt::format("π × {}²/4 mm²", shown(*diameter)), "section_mm2", *section}};
    if (auto added = addOhmPerKm(worked, *section); !added) return passOn(added);
    worked.limits = {"work.limit.ideal-copper"};
    worked.sources = {"work.source.astm-b258", "work.source.iec-60028"};
    return worked;
}

Result<Worked> strands(const Given& given)
{
    const int count = given.count("count");
    const double diameter = given.number("diameter_mm");
    auto section = measure::strandedSection_mm2(count, diameter);
    if (!section) return passOn(section);
    Worked worked;
    worked.lines = {
        {"A = n π d²/4", fmt::format("{} × π × {}²/4 mm²", count, shown(diameter)), "section_mm2", *section}};
    if (auto added = addOhmPerKm(worked, *section); !added) return passOn(added);
    if (given.has("length_m")) {
        auto ohm = measure::pairResistance_ohm(measure::CableRun{given.number("length_m"), *section, 20});
        if (!ohm) return passOn(ohm);
        worked.lines.push_back(
            {"R = 2 L r at 20 °C", fmt::format("2 × {} m", shown(given.number("length_m"))), "loop_ohm", *ohm});
    }
    worked.limits = {"work.limit.ideal-copper"};
    worked.sources = {"work.source.iec-60028"};
    return worked;
}

} // namespace

Topic cableTopic()
{
    const Input segments = neededList("segments_m", length), currents = optionalList("currents_a", current);
    const Input powers = optionalList("powers_w", {0, 1e6}), source = needed("source_v", voltage);
    return {
        "cable",
        {{"drop",
          joined({needed("length_m", length), needed("current_a", current), optional("source_v", voltage)},
                 conductorInputs()),
          drop, "length_m=60 current_a=0.5 wire_ohm_per_km=12.1 source_v=24"},
         {"circuit", joined({segments, currents, powers, source, optional("least_v", voltage)}, conductorInputs()),
          circuit, "segments_ft=25,50,50 currents_a=0.75,1.05,0.75 source_v=20.4 wire_ohm_per_kft=3.07 least_v=16"},
         {"longest", joined({needed("least_v", voltage), needed("current_a", {1e-6, 1e3}), source}, conductorInputs()),
          longest, "least_v=16 current_a=2 source_v=20.4 wire_ohm_per_kft=1.98"},
         {"choose",
          {segments, currents, powers, source, needed("least_v", voltage), usual("cable_c", "20", temperature)},
          choose,
          "what=choose segments_m=40,30 currents_a=0.3,0.3 source_v=20.4 least_v=16 cable_c=40"},
         {"regulated",
          {source, needed("loop_ohm", {1e-6, 1e6}), needed("power_w", {1e-6, 1e6})},
          regulated,
          "source_v=20.4 loop_ohm=2.5 power_w=12"},
         {"temperature",
          {needed("resistance_ohm", {1e-6, 1e9}), usual("known_c", "20", temperature), needed("wanted_c", temperature),
           optional("coefficient_ppm_per_k", {1, 7500})},
          warmed,
          "resistance_ohm=12.1 wanted_c=50"},
         {"warmth",
          {needed("resistance_ohm", {1e-6, 1e9}), usual("known_c", "20", temperature),
           needed("found_ohm", {1e-6, 1e9})},
          warmth,
          "resistance_ohm=1.452 found_ohm=1.561"},
         {"gauge", {whole(needed("gauge", {10, 30}))}, gauge, "gauge=22"},
         {"strands",
          {whole(needed("count", {1, 10000})), needed("diameter_mm", {0.01, 10}), optional("length_m", {0, 1e5, true})},
          strands,
          "count=7 diameter_mm=0.2 length_m=100"}}};
}

} // namespace proofwalk::command::work
