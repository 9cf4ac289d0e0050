// SPDX-License-Identifier: GPL-3.0-or-later
// proofwalk work radio: margins, and whether a reading fits its distance (core/measure/radiolevel.h, indoor.h).
#include "core/command/work/topic.h"

#include "core/measure/indoor.h"
#include "core/measure/radiolevel.h"

#include <fmt/format.h>

#include <algorithm>

namespace proofwalk::command::work {
namespace {

constexpr Range levels{-250, 100};
constexpr Range frequencies_mhz{1, 1e5};

/// Said of a margin: kept or not, and whether it is what one wishes for.
std::string saidOf(double margin_db, double demanded_db)
{
    if (margin_db < demanded_db) return "work.radio.not-kept";
    return margin_db >= measure::wishedLinkMargin_db ? "work.radio.ample" : "work.radio.kept";
}

Result<Worked> measured(const Given& given)
{
    const measure::MeasuredLink link{given.number("received_dbm"), given.number("sensitivity_dbm"),
                                     given.number("noise_dbm"), given.number("noise_ratio_db")};
    auto found = measure::measuredMargin(link);
    if (!found) return passOn(found);
    const double demanded = given.number("demanded_db");
    Worked worked;
    worked.lines = {
        {"over the sensitivity: received − sensitivity",
         fmt::format("{} − ({})", shown(link.received_dbm), shown(link.sensitivity_dbm)), "over_sensitivity_db",
         found->overSensitivity_db},
        {"over the noise: received − noise − what the receiver needs over it",
         fmt::format("{} − ({}) − {}", shown(link.received_dbm), shown(link.noise_dbm), shown(link.noiseRatio_db)),
         "over_noise_db", found->overNoise_db},
        {"margin = the lesser", "", "margin_db", found->margin_db},
        {"spare = margin − demanded", shown(found->margin_db) + " − " + shown(demanded), "spare_db",
         found->margin_db - demanded}};
    worked.remarks = {{saidOf(found->margin_db, demanded), {}}};
    if (found->noiseLimits) worked.remarks.push_back({"work.radio.noise-limits", {}});
    worked.limits = {"work.radio.lowest-counts"};
    worked.sources = {"work.radio.link-budget", "work.radio.thumb"};
    return worked;
}

Result<Worked> planned(const Given& given)
{
    const measure::Link link{given.number("eirp_dbm"), given.number("receive_gain_dbi"), given.number("loss_db"),
                             given.number("sensitivity_dbm"), given.number("demanded_db")};
    auto found = measure::linkMargin(link);
    if (!found) return passOn(found);
    Worked worked;
    worked.lines = {
        {"received = e.i.r.p. + gain − loss",
         fmt::format("{} + {} − {}", shown(link.eirp_dbm), shown(link.receiveGain_dbi), shown(link.loss_db)),
         "received_dbm", found->received_dbm},
        {"margin = received − sensitivity",
         fmt::format("{} − ({})", shown(found->received_dbm), shown(link.sensitivity_dbm)), "margin_db",
         found->margin_db},
        {"spare = margin − demanded", shown(found->margin_db) + " − " + shown(link.demanded_db), "spare_db",
         found->spare_db}};
    worked.remarks = {{saidOf(found->margin_db, link.demanded_db), {}}};
    worked.limits = {"work.radio.measure-it"};
    worked.sources = {"work.radio.link-budget", "work.radio.thumb"};
    return worked;
}

Result<Worked> freeSpace(const Given& given)
{
    const double mhz = given.number("frequency_mhz");
    const double metres = given.number("distance_m");
    auto loss = measure::freeSpaceLoss_db(mhz, metres);
    if (!loss) return passOn(loss);
    Worked worked;
    worked.lines = {{"L = 20 log10(4π d f/c)",
                     fmt::format("20 log10(4π × {} × {}e6/299792458)", shown(metres), shown(mhz)), "loss_db", *loss}};
    if (given.has("erp_dbm")) {
        auto eirp = measure::eirpOfErp_dbm(given.number("erp_dbm"));
        if (!eirp) return passOn(eirp);
        auto field = measure::freeSpaceField_dbuv(*eirp, metres);
        if (!field) return passOn(field);
        worked.lines.push_back(
            {"e.i.r.p. = e.r.p. + 10 log10 1.64", shown(given.number("erp_dbm")) + " + 2.148", "eirp_dbm", *eirp});
        worked.lines.push_back(
            {"E = 20 log10(√(30 P)/d) + 120", "P in watts, d = " + shown(metres), "field_dbuv_per_m", *field});
    }
    worked.limits = {"work.radio.free-space"};
    worked.sources = {"work.radio.p525"};
    return worked;
}

measure::Building buildingOf(const std::string& word)
{
    if (word == "office") return measure::Building::office;
    return word == "commercial" ? measure::Building::commercial : measure::Building::residential;
}

Result<Worked> indoor(const Given& given)
{
    const auto building = buildingOf(given.word("building"));
    const double mhz = given.number("frequency_mhz");
    const double metres = given.number("distance_m");
    const int floors = given.count("floors");
    auto coefficients = measure::indoorCoefficients(building, mhz, floors);
    if (!coefficients) return passOn(coefficients);
    auto loss = measure::indoorLoss_db(building, mhz, metres, floors);
    if (!loss) return passOn(loss);
    Worked worked;
    worked.lines = {{"N of the table", given.word("building"), "decade_loss_db", coefficients->decadeLoss_db},
                    {"Lf of the table", fmt::format("{} floors", floors), "floor_loss_db", coefficients->floorLoss_db},
                    {"L = 20 log10 f + N log10 d + Lf − 28",
                     fmt::format("20 log10 {} + {} log10 {} + {} − 28", shown(mhz), shown(coefficients->decadeLoss_db),
                                 shown(metres), shown(coefficients->floorLoss_db)),
                     "loss_db", *loss}};
    worked.limits = {"work.radio.shadowing", "work.radio.measure-it"};
    worked.sources = {"work.radio.p1238-old"};
    return worked;
}

/// The prediction of a place, and whether what was measured fits it.
Result<Worked> fits(const Given& given)
{
    const measure::Surroundings& row = *measure::surroundings(given.word("place"));
    auto found = measure::indoorPrediction(row, given.number("frequency_mhz") / 1000, given.number("distance_m"));
    if (!found) {
        // The range is told in the unit that was asked for.
        Error error = std::move(found.error());
        for (Argument& each : error.arguments)
            if (each.name == "input" && each.value == decltype(each.value)("frequency_ghz"))
                each.value = std::string("frequency_mhz (in GHz)");
        return std::unexpected(std::move(error));
    }
    Worked worked;
    worked.lines = {
        {"L = 10 a log10 d + b + 10 g log10 f, f in GHz",
         fmt::format("10 × {} log10 {} + {} + 10 × {} log10 {}", shown(row.a), shown(given.number("distance_m")),
                     shown(row.b), shown(row.g), shown(given.number("frequency_mhz") / 1000)),
         "median_loss_db", found->median_db}};
    auto spread = measure::shadowingMargin_db(0.95, found->deviation_db);
    if (!spread) return passOn(spread);
    worked.lines.push_back({"not exceeded at 95 % of places: L + 1.645 s",
                            shown(found->median_db) + " + 1.645 × " + shown(found->deviation_db), "loss_95_db",
                            found->median_db + *spread});
    if (given.has("eirp_dbm") && given.has("received_dbm")) {
        const double loss = given.number("eirp_dbm") - given.number("received_dbm");
        auto chance = measure::chanceOfSuchLoss(*found, loss);
        if (!chance) return passOn(chance);
        worked.lines.push_back(
            {"measured loss = e.i.r.p. − received",
             fmt::format("{} − ({})", shown(given.number("eirp_dbm")), shown(given.number("received_dbm"))),
             "measured_loss_db", loss});
        worked.lines.push_back({"chance of such a loss or a worse one", "", "chance", *chance});
        worked.remarks = {{*chance < 0.05   ? "work.radio.does-not-fit"
                           : *chance > 0.95 ? "work.radio.better-than-expected"
                                            : "work.radio.fits",
                           {}}};
    }
    worked.limits = {"work.radio.measure-it"};
    worked.sources = {"work.radio.p1238-new"};
    return worked;
}

Result<Worked> fading(const Given& given)
{
    auto margin = measure::rayleighMargin_db(given.number("availability"));
    if (!margin) return passOn(margin);
    auto shadowed = measure::shadowingMargin_db(given.number("availability"), given.number("deviation_db"));
    if (!shadowed) return passOn(shadowed);
    Worked worked;
    worked.lines = {{"many ways, none in sight (Rayleigh): M = −10 log10(−ln availability)",
                     shown(given.number("availability")), "rayleigh_db", *margin},
                    {"shadowing alone (log-normal): M = z s",
                     fmt::format("{} × {}", shown(*shadowed / std::max(given.number("deviation_db"), 1e-9)),
                                 shown(given.number("deviation_db"))),
                     "shadowing_db", *shadowed}};
    worked.limits = {"work.radio.one-or-the-other"};
    worked.sources = {"work.radio.rayleigh", "work.radio.thumb"};
    return worked;
}

/// Whichever of the three was given, the other two.
Result<Worked> convert(const Given& given)
{
    const int count =
        (given.has("level_dbm") ? 1 : 0) + (given.has("level_dbuv") ? 1 : 0) + (given.has("level_uv") ? 1 : 0);
    if (count == 0) return failure("work.missing", "", {{"wanted", "level_dbm"}});
    if (count > 1) return failure("work.radio.one-level", "level_dbm");
    Worked worked;
    worked.sources = {"work.radio.units"};
    auto dbuv = given.has("level_dbm") ? measure::dbuvOfDbm(given.number("level_dbm"))
              : given.has("level_uv")  ? measure::dbuvOfMicrovolts(given.number("level_uv"))
                                       : Result<double>(given.number("level_dbuv"));
    if (!dbuv) return passOn(dbuv);
    if (given.has("level_dbm"))
        worked.lines.push_back(
            {"in 50 Ω: dBm + 90 + 10 log10 50", shown(given.number("level_dbm")) + " + 106.9897", "level_dbuv", *dbuv});
    if (given.has("level_uv"))
        worked.lines.push_back(
            {"20 log10 of microvolts", "20 log10 " + shown(given.number("level_uv")), "level_dbuv", *dbuv});
    if (!given.has("level_dbm")) {
        auto dbm = measure::dbmOfDbuv(*dbuv);
        if (!dbm) return passOn(dbm);
        worked.lines.push_back({"in 50 Ω: dBµV − 90 − 10 log10 50", shown(*dbuv) + " − 106.9897", "level_dbm", *dbm});
    }
    if (!given.has("level_uv")) {
        auto uv = measure::microvoltsOfDbuv(*dbuv);
        if (!uv) return passOn(uv);
        worked.lines.push_back({"U = 10^(dBµV/20)", fmt::format("10^({}/20)", shown(*dbuv)), "level_uv", *uv});
    }
    return worked;
}

Result<Worked> mean(const Given& given)
{
    const auto& all = given.numbers("levels_dbm");
    auto power = measure::meanPower_dbm(all);
    if (!power) return passOn(power);
    Worked worked;
    worked.lines = {
        {"mean as power: 10 log10(mean of 10^(L/10))", fmt::format("{} readings", all.size()), "mean_dbm", *power},
        {"the lowest: what counts for a margin", "", "lowest_dbm", *std::ranges::min_element(all)}};
    worked.limits = {"work.radio.lowest-counts"};
    worked.sources = {"work.radio.units"};
    return worked;
}

Result<Worked> range(const Given& given)
{
    auto factor = measure::rangeFactor(given.number("less_db"), given.number("decade_loss_db"));
    if (!factor) return passOn(factor);
    Worked worked;
    worked.lines = {{"factor on distance = 10^(−less/N)",
                     fmt::format("10^(−{}/{})", shown(given.number("less_db")), shown(given.number("decade_loss_db"))),
                     "factor", *factor}};
    worked.limits = {"work.radio.measure-it"};
    worked.sources = {"work.radio.power-law"};
    return worked;
}

} // namespace

Topic radioTopic()
{
    const Input demanded = usual("demanded_db", "10", {0, 100});
    const Input sensitivity = needed("sensitivity_dbm", levels);
    const Input frequency = needed("frequency_mhz", frequencies_mhz);
    return {
        "radio",
        {{"measured",
          {needed("received_dbm", levels), sensitivity, needed("noise_dbm", levels),
           usual("noise_ratio_db", "0", {0, 60}), demanded},
          measured,
          "received_dbm=-78 sensitivity_dbm=-105 noise_dbm=-110 noise_ratio_db=10"},
         {"planned",
          {needed("eirp_dbm", levels), usual("receive_gain_dbi", "0", {-50, 50}), needed("loss_db", {0, 300}),
           sensitivity, demanded},
          planned,
          "eirp_dbm=10 loss_db=98.4 sensitivity_dbm=-105"},
         {"free-space",
          {frequency, needed("distance_m", {0, 1e6, true}), optional("erp_dbm", levels)},
          freeSpace,
          "frequency_mhz=868.3 distance_m=100 erp_dbm=14"},
         {"indoor",
          {word("building", {"residential", "office", "commercial"}), frequency, needed("distance_m", {1, 1000, true}),
           whole(usual("floors", "0", {0, 9}))},
          indoor,
          "building=office frequency_mhz=868 distance_m=25 floors=1"},
         {"fits",
          {word("place", {"office-in-sight", "office-not-in-sight", "corridor-in-sight", "corridor-not-in-sight",
                          "industrial-in-sight", "industrial-not-in-sight"}),
           frequency, needed("distance_m", {2, 160}), optional("eirp_dbm", levels), optional("received_dbm", levels)},
          fits,
          "place=office-not-in-sight frequency_mhz=868 distance_m=25 eirp_dbm=14 received_dbm=-72"},
         {"fading",
          {needed("availability", {0.5, 0.999999, true}), usual("deviation_db", "8", {0, 30})},
          fading,
          "availability=0.99"},
         {"convert",
          {optional("level_dbm", levels), optional("level_dbuv", {-150, 220}), optional("level_uv", {1e-7, 1e9})},
          convert,
          "level_dbm=-100"},
         {"mean", {neededList("levels_dbm", levels)}, mean, "levels_dbm=-60,-70,-80"},
         {"range",
          {needed("less_db", {0, 100}), usual("decade_loss_db", "28", {10, 80})},
          range,
          "less_db=10 decade_loss_db=28"}}};
}

} // namespace proofwalk::command::work
