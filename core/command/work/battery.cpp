// SPDX-License-Identifier: GPL-3.0-or-later
// proofwalk work battery: how large a battery must be, and what one on site says of itself (core/measure/battery.h,
// peukert.h, batterytest.h).
#include "core/command/work/topic.h"

#include "core/measure/battery.h"
#include "core/measure/batterytest.h"
#include "core/measure/peukert.h"

#include <fmt/format.h>

namespace proofwalk::command::work {
namespace {

constexpr Range current{0, 1e3};
constexpr Range capacity{1e-3, 1e4};
constexpr Range hours{0, 1e3};
constexpr Range voltage{1e-3, 1e3};

Result<Worked> duty(const Given& given)
{
    const double standby = given.number("standby_a"), quiet = given.number("standby_h");
    const double alarm = given.number("alarm_a"), loud = given.number("alarm_min") / 60;
    const double factor = given.number("alarm_factor"), margin = given.number("margin");
    auto net = measure::dutyCapacity_ah({standby, quiet, alarm, loud}, factor);
    if (!net) return passOn(net);
    Worked worked;
    worked.lines = {
        {"C = Is Ts + D Ia Ta",
         fmt::format("{} A × {} h + {} × {} A × {} h", shown(standby), shown(quiet), shown(factor), shown(alarm),
                     shown(loud)),
         "net_ah", *net},
        {"C × margin", fmt::format("{} × {} Ah", shown(*net), shown(margin)), "required_ah", *net * margin}};
    worked.limits = {"work.limit.battery-rate"};
    worked.sources = {"work.source.ampere-hours"};
    return worked;
}

/// What is computed with: the list, the measured current with its uncertainty, or the larger of the two.
Result<double> currentOf(Worked& worked, const Given& given, const std::string& which)
{
    const std::string listed = "listed_" + which + "_a", measured = "measured_" + which + "_a";
    std::vector<double> list;
    if (given.has(listed)) list = given.numbers(listed);
    const auto found = given.maybe(measured);
    if (list.empty() && !found) return failure("work.missing", "", {{"wanted", listed + " or " + measured}});
    const double expanded = found.value_or(0) * given.number("expanded_pct") / 100;
    auto design = measure::designCurrent(list, found, expanded);
    if (!design) return passOn(design);
    worked.lines.push_back({"the larger of the sum of the list and the measured current + U",
                            fmt::format("list {} A, measured {}", shown(design->listed_a),
                                        found ? shown(*found) + " + " + shown(expanded) + " A" : "nothing"),
                            which + "_a", design->current_a});
    if (design->isMeasured && !list.empty()) worked.remarks.push_back({"work.battery.list-lacks", {{"which", which}}});
    return design->current_a;
}

Result<Worked> rule(const Given& given)
{
    auto chosen = measure::batteryRule(given.word("rule"));
    if (!chosen) return std::unexpected(std::move(chosen.error()).within("rule=" + given.word("rule")));
    Worked worked;
    auto standby = currentOf(worked, given, "standby");
    if (!standby) return passOn(standby);
    auto alarm = currentOf(worked, given, "alarm");
    if (!alarm) return passOn(alarm);
    auto required = measure::requiredCapacity_ah(*chosen, *standby, *alarm);
    if (!required) return passOn(required);
    worked.lines.push_back(
        {"C = margin (Is Ts + D Ia Ta)",
         fmt::format("{} × ({} A × {} h + {} × {} A × {} min/60)", shown(chosen->margin), shown(*standby),
                     shown(chosen->standby_h), shown(chosen->alarmFactor), shown(*alarm), shown(chosen->alarm_min)),
         "required_ah", *required});
    worked.remarks.push_back({"work.battery.rule", {{"source", chosen->source}, {"basis", chosen->basis}}});
    if (given.has("fitted_ah")) {
        const double fitted = given.number("fitted_ah");
        auto there = measure::fittedBattery(*chosen, fitted, *standby, *alarm);
        if (!there) return passOn(there);
        worked.lines.push_back({"what is fitted, less what is required",
                                fmt::format("{} − {} Ah", shown(fitted), shown(*required)), "spare_ah",
                                there->spare_ah});
        worked.remarks.push_back({there->spare_ah < 0 ? "work.battery.too-small" : "work.battery.large-enough", {}});
        if (!there->holdInstead.empty())
            worked.remarks.push_back({"work.battery.high-load", {{"rule", there->holdInstead}}});
    }
    worked.limits = {"work.limit.battery-rate", "work.limit.adopted-edition"};
    worked.sources = {"work.source.ampere-hours", "work.source.battery-rules"};
    return worked;
}

Result<Worked> sizing(const Given& given)
{
    auto factor = measure::cellTemperatureFactor(given.number("temperature_c"));
    if (!factor) return passOn(factor);
    const measure::Sizing size{given.number("uncorrected_ah"), *factor, given.number("design_margin"),
                               given.number("ageing")};
    auto sized = measure::sizedCapacity_ah(size);
    if (!sized) return passOn(sized);
    Worked worked;
    worked.lines = {{"temperature factor, between the rows of the table", shown("x_c", given.number("temperature_c")),
                     "temperature_factor", *factor},
                    {"size = C × temperature × ageing",
                     fmt::format("{} × {} × {} Ah", shown(size.uncorrected_ah), shown(*factor), shown(size.ageing)),
                     "without_margin_ah", *sized / size.designMargin},
                    {"size × design margin",
                     fmt::format("{} × {} Ah", shown(*sized / size.designMargin), shown(size.designMargin)),
                     "required_ah", *sized}};
    if (*factor < 1) worked.remarks.push_back({"work.battery.warm-credit", {}});
    worked.limits = {"work.limit.ieee-485-table"};
    worked.sources = {"work.source.ieee-485"};
    return worked;
}

measure::PeukertBattery batteryOf(const Given& given)
{
    return {given.number("capacity_ah"), given.number("rated_h"), given.number("exponent")};
}

Result<Worked> peukert(const Given& given)
{
    const auto battery = batteryOf(given);
    const double amperes = given.number("current_a");
    auto lasts = measure::lastsFor_h(battery, amperes);
    if (!lasts) return passOn(lasts);
    auto equivalent = measure::equivalentCurrent_a(battery, amperes);
    if (!equivalent) return passOn(equivalent);
    Worked worked;
    worked.lines = {{"t = H (C/(I H))^k",
                     fmt::format("{0} h × ({1}/({2} × {0}))^{3}", shown(battery.rated_h), shown(battery.capacity_ah),
                                 shown(amperes), shown(battery.exponent)),
                     "lasts_h", *lasts},
                    {"delivered = I t", fmt::format("{} A × {} h", shown(amperes), shown(*lasts)), "delivered_ah",
                     amperes * *lasts},
                    {"equivalent current = (C/H) (I/(C/H))^k", "", "equivalent_a", *equivalent}};
    worked.limits = {"work.limit.peukert"};
    worked.sources = {"work.source.peukert"};
    return worked;
}

Result<Worked> oneAmpere(const Given& given)
{
    const double cp = given.number("capacity_1a_ah"), k = given.number("exponent"), amperes = given.number("current_a");
    auto lasts = measure::lastsForOneAmpereForm_h(cp, k, amperes);
    if (!lasts) return passOn(lasts);
    Worked worked;
    worked.lines = {{"t = Cp/I^k", fmt::format("{}/{}^{}", shown(cp), shown(amperes), shown(k)), "lasts_h", *lasts}};
    worked.limits = {"work.limit.one-ampere-form", "work.limit.peukert"};
    worked.sources = {"work.source.peukert"};
    return worked;
}

Result<Worked> dutyCheck(const Given& given)
{
    const auto& currents = given.numbers("currents_a");
    const auto& times = given.numbers("times_h");
    if (currents.size() != times.size())
        return failure("work.battery.counts", "times_h",
                       {{"found", static_cast<std::int64_t>(times.size())},
                        {"wanted", static_cast<std::int64_t>(currents.size())}});
    const auto battery = batteryOf(given);
    std::vector<measure::Load> loads;
    std::vector<double> lasting;
    for (std::size_t i = 0; i < currents.size(); ++i) {
        loads.push_back({currents[i], times[i]});
        auto lasts = measure::lastsFor_h(battery, currents[i]);
        if (!lasts) return passOn(lasts);
        lasting.push_back(*lasts);
    }
    auto use = measure::dutyUse(battery, loads);
    if (!use) return passOn(use);
    Worked worked;
    worked.lines = {
        {"t_i = H (C/(I_i H))^k", "", "lasts_h", lasting},
        {"used = Σ T_i/t_i", "", "used", use->used},
        {"least capacity: C used^(1/k)",
         fmt::format("{} × {}^(1/{}) Ah", shown(battery.capacity_ah), shown(use->used), shown(battery.exponent)),
         "needed_ah", use->needed_ah}};
    worked.remarks.push_back({use->used <= 1 ? "work.battery.lasts" : "work.battery.lasts-not", {}});
    worked.limits = {"work.limit.peukert", "work.limit.linear-sum"};
    worked.sources = {"work.source.peukert"};
    return worked;
}

Result<Worked> resistance(const Given& given)
{
    const measure::TwoLoads loads{given.number("light_v"), given.number("light_a"), given.number("heavy_v"),
                                  given.number("heavy_a"), given.number("resolution_v")};
    auto line = measure::loadLine(loads);
    if (!line) return passOn(line);
    Worked worked;
    worked.lines = {
        {"r = (V1 − V2)/(I2 − I1)",
         fmt::format("({} − {}) V/({} − {}) A", shown(loads.light_v), shown(loads.heavy_v), shown(loads.heavy_a),
                     shown(loads.light_a)),
         "internal_ohm", line->resistance_ohm},
        {"u(r) = √2 (d/2)/√3/(I2 − I1)", fmt::format("d = {} V", shown(loads.resolution_v)), "standard_ohm",
         line->standard_ohm},
        {"E = V1 + I1 r",
         fmt::format("{} V + {} A × {} Ω", shown(loads.light_v), shown(loads.light_a), shown(line->resistance_ohm)),
         "emf_v", line->emf_v}};
    if (given.has("at_a")) {
        auto volts = measure::terminalVoltage_v(*line, given.number("at_a"));
        if (!volts) return passOn(volts);
        worked.lines.push_back({"V = E − I r",
                                fmt::format("{} V − {} A × {} Ω", shown(line->emf_v), shown(given.number("at_a")),
                                            shown(line->resistance_ohm)),
                                "terminal_v", *volts});
    }
    worked.limits = {"work.limit.direct-resistance"};
    worked.sources = {"work.source.load-line", "work.source.jcgm-100"};
    return worked;
}

const char* wordOf(measure::DischargeOutlook outlook)
{
    switch (outlook) {
    case measure::DischargeOutlook::belowEnd: return "below-end";
    case measure::DischargeOutlook::fallsShort: return "falls-short";
    case measure::DischargeOutlook::tooClose: return "too-close";
    case measure::DischargeOutlook::nothingAgainst: return "nothing-against";
    }
    return "";
}

Result<Worked> discharge(const Given& given)
{
    const auto& minutes = given.numbers("times_min");
    const auto& volts = given.numbers("voltages_v");
    if (minutes.size() != volts.size())
        return failure("work.battery.counts", "voltages_v",
                       {{"found", static_cast<std::int64_t>(volts.size())},
                        {"wanted", static_cast<std::int64_t>(minutes.size())}});
    std::vector<measure::DischargeReading> readings;
    for (std::size_t i = 0; i < minutes.size(); ++i) readings.push_back({minutes[i], volts[i]});
    auto judged = measure::judgeDischarge(
        {given.number("end_v"), given.number("required_min"), given.number("expanded_v")}, readings);
    if (!judged) return passOn(judged);
    Worked worked;
    worked.lines.push_back({"straight on from the first through the last reading to the required time",
                            fmt::format("{} V and {} V, to {} min", shown(volts.front()), shown(volts.back()),
                                        shown(given.number("required_min"))),
                            "straight_on_v", judged->straightOn_v.value_or(volts.back())});
    worked.lines.push_back({"against the end voltage, with U in each reading", shown("end_v", given.number("end_v")),
                            "outlook", std::string(wordOf(judged->outlook))});
    worked.remarks.push_back({std::string("work.battery.outlook.") + wordOf(judged->outlook), {}});
    worked.limits = {"work.limit.discharge-indicative"};
    worked.sources = {"work.source.load-test"};
    return worked;
}

Result<Worked> recharge(const Given& given)
{
    const measure::Recharge what{given.number("capacity_ah"), given.number("share"), given.number("efficiency"),
                                 given.number("load_a")};
    Worked worked;
    worked.limits = {"work.limit.charge-efficiency"};
    worked.sources = {"work.source.en-54-4"};
    if (given.has("charger_a")) {
        auto time = measure::rechargeTime_h(what, given.number("charger_a"));
        if (!time) return passOn(time);
        worked.lines = {{"T = C s/(η (I − I_load))",
                         fmt::format("{} Ah × {}/({} × ({} − {}) A)", shown(what.capacity_ah), shown(what.share),
                                     shown(what.efficiency), shown(given.number("charger_a")), shown(what.load_a)),
                         "recharge_h", *time}};
        return worked;
    }
    auto needed = measure::chargerCurrent(what, given.number("within_h"));
    if (!needed) return passOn(needed);
    worked.lines = {{"I = C s/(T η)",
                     fmt::format("{} Ah × {}/({} h × {})", shown(what.capacity_ah), shown(what.share),
                                 shown(given.number("within_h")), shown(what.efficiency)),
                     "charge_a", needed->battery_a},
                    {"with the load", fmt::format("{} + {} A", shown(needed->battery_a), shown(what.load_a)),
                     "charger_a", needed->total_a}};
    return worked;
}

Result<Worked> floating(const Given& given)
{
    auto volts = measure::floatVoltage_v(given.count("cells"), given.number("cell_at_20_v"),
                                         given.number("change_mv_per_k"), given.number("temperature_c"));
    if (!volts) return passOn(volts);
    Worked worked;
    worked.lines = {
        {"V = n (V20 + c (T − 20))",
         fmt::format("{} × ({} V + {} mV/K × ({} − 20) K)", given.count("cells"), shown(given.number("cell_at_20_v")),
                     shown(given.number("change_mv_per_k")), shown(given.number("temperature_c"))),
         "float_v", *volts}};
    worked.limits = {"work.limit.maker-first"};
    worked.sources = {"work.source.float-practice"};
    return worked;
}

} // namespace

Topic batteryTopic()
{
    const Input rated = usual("rated_h", "20", {0.01, 1e3}), exponent = needed("exponent", {1, 1.6});
    const Input ah = needed("capacity_ah", capacity), amperes = needed("current_a", {1e-4, 1e4});
    return {"battery",
            {{"duty",
              {needed("standby_a", current), needed("standby_h", hours), needed("alarm_a", current),
               needed("alarm_min", {0, 6e4}), usual("alarm_factor", "1", {1, 2}), usual("margin", "1", {1, 3})},
              duty,
              "standby_a=0.42 standby_h=24 alarm_a=3.8 alarm_min=5 margin=1.2"},
             {"rule",
              {word("rule", {}), optionalList("listed_standby_a", current), optional("measured_standby_a", current),
               optionalList("listed_alarm_a", current), optional("measured_alarm_a", current),
               usual("expanded_pct", "2", {0, 50}), optional("fitted_ah", capacity)},
              rule,
              "rule=bs-5839-1 listed_standby_ma=20,15,15 measured_standby_ma=52 listed_alarm_a=0.3 fitted_ah=2.1"},
             {"sizing",
              {needed("uncorrected_ah", capacity), needed("temperature_c", {-3.9, 51.7}),
               usual("design_margin", "1.1", {0.5, 3}), usual("ageing", "1.25", {0.5, 3})},
              sizing,
              "uncorrected_ah=10.4 temperature_c=10"},
             {"peukert", {ah, rated, exponent, amperes}, peukert, "capacity_ah=7 exponent=1.15 current_a=2"},
             {"peukert-one-ampere",
              {needed("capacity_1a_ah", capacity), exponent, amperes},
              oneAmpere,
              "capacity_1a_ah=100 exponent=1.2 current_a=5"},
             {"duty-check",
              {ah, rated, exponent, neededList("currents_a", {1e-4, 1e4}), neededList("times_h", hours)},
              dutyCheck,
              "capacity_ah=18 exponent=1.15 currents_a=0.42,3.8 times_h=24,0.0833333333333333"},
             {"resistance",
              {needed("light_v", voltage), needed("light_a", current), needed("heavy_v", voltage),
               needed("heavy_a", current), usual("resolution_v", "0.01", {0, 1}), optional("at_a", current)},
              resistance,
              "light_v=12.72 light_a=0.05 heavy_v=12.31 heavy_a=5.05 at_a=10"},
             {"discharge",
              {neededList("times_min", {0, 1e5}), neededList("voltages_v", voltage), needed("end_v", voltage),
               needed("required_min", {1e-3, 1e5}), usual("expanded_v", "0.05", {0, 100})},
              discharge,
              "times_min=15,30 voltages_v=12.31,12.24 end_v=10.5 required_min=60"},
             {"recharge",
              {ah, usual("share", "0.8", {1e-3, 1}), usual("efficiency", "0.85", {0.1, 1}),
               usual("load_a", "0", current), usual("within_h", "24", {0.01, 1e3}), optional("charger_a", current)},
              recharge,
              "what=recharge capacity_ah=17 load_a=0.42"},
             {"float",
              {whole(needed("cells", {1, 600})), usual("cell_at_20_v", "2.275", {2, 2.5}),
               usual("change_mv_per_k", "-3", {-10, 0}), needed("temperature_c", {-10, 50})},
              floating,
              "cells=6 temperature_c=35"}}};
}

} // namespace proofwalk::command::work
