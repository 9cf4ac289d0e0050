// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/measure/battery.h"

#include "core/base/text.h"
#include "core/measure/inputs.h"
#include "core/measure/table.h"

#include <algorithm>
#include <array>

namespace proofwalk::measure {
namespace {

constexpr double greatest_a = 1e3;
constexpr double greatest_h = 1e3;
constexpr double greatest_ah = 1e4;
constexpr double highLoadFactor = 1.75; // BS 5839-1, as quoted on a public page

struct FactorAt {
    double temperature_c;
    double factor;
};

Result<std::vector<FactorAt>> shippedFactors()
{
    constexpr std::array<std::string_view, 4> columns{"temperature_c", "factor", "source", "basis"};
    auto bytes = shippedTable("cell-temperature.csv");
    if (!bytes) return passOn(bytes);
    std::vector<FactorAt> factors;
    auto read = readTable(
        *bytes, shippedTablePath("cell-temperature.csv").string(), columns, [&](const TableRow& row) -> Result<void> {
            auto at = row.number("temperature_c", factors.empty() ? -100 : factors.back().temperature_c);
            if (!at) return passOn(at);
            auto factor = row.positive("factor");
            if (!factor) return passOn(factor);
            factors.push_back({*at, *factor});
            return {};
        });
    if (!read) return passOn(read);
    return factors;
}

Result<std::vector<BatteryRule>> shippedRules()
{
    auto bytes = shippedTable("battery-rules.csv");
    if (!bytes) return passOn(bytes);
    return readBatteryRules(*bytes, shippedTablePath("battery-rules.csv").string());
}

Result<BatteryRule> ruleOf(const TableRow& row)
{
    auto standby = row.number("standby_h", 0);
    if (!standby) return passOn(standby);
    auto alarm = row.number("alarm_min", 0);
    if (!alarm) return passOn(alarm);
    auto factor = row.number("alarm_factor", 1);
    if (!factor) return passOn(factor);
    auto margin = row.number("margin", 1);
    if (!margin) return passOn(margin);
    return BatteryRule{row.text("name"),           *standby,           *alarm,           *factor, *margin,
                       row.text("high_load_rule"), row.text("source"), row.text("basis")};
}

} // namespace

Result<double> dutyCapacity_ah(const Duty& duty, double alarmFactor)
{
    if (auto sound = checkWithin("standby_a", duty.standby_a, 0, greatest_a); !sound) return passOn(sound);
    if (auto sound = checkWithin("standby_h", duty.standby_h, 0, greatest_h); !sound) return passOn(sound);
    if (auto sound = checkWithin("alarm_a", duty.alarm_a, 0, greatest_a); !sound) return passOn(sound);
    if (auto sound = checkWithin("alarm_h", duty.alarm_h, 0, greatest_h); !sound) return passOn(sound);
    if (auto sound = checkWithin("alarm_factor", alarmFactor, 1, 2); !sound) return passOn(sound);
    return duty.standby_a * duty.standby_h + alarmFactor * duty.alarm_a * duty.alarm_h;
}

Result<std::vector<BatteryRule>> readBatteryRules(std::string_view bytes, const std::string& name)
{
    constexpr std::array<std::string_view, 8> columns{"name",   "standby_h",      "alarm_min", "alarm_factor",
                                                      "margin", "high_load_rule", "source",    "basis"};
    std::vector<BatteryRule> rules;
    auto read = readTable(bytes, name, columns, [&](const TableRow& row) -> Result<void> {
        auto rule = ruleOf(row);
        if (!rule) return passOn(rule);
        if (std::ranges::find(rules, rule->name, &BatteryRule::name) != rules.end())
            return failure("measure.table-twice", row.where, {{"found", rule->name}});
        rules.push_back(std::move(*rule));
        return {};
    });
    if (!read) return passOn(read);
    return rules;
}

Result<std::vector<BatteryRule>> batteryRules()
{
    static const Result<std::vector<BatteryRule>> rules = shippedRules();
    return rules;
}

Result<BatteryRule> batteryRule(std::string_view name)
{
    auto rules = batteryRules();
    if (!rules) return passOn(rules);
    const auto found = std::ranges::find(*rules, name, &BatteryRule::name);
    if (found != rules->end()) return *found;
    std::vector<std::string> known;
    for (const BatteryRule& each : *rules) known.push_back(each.name);
    return failure("measure.battery-rule", "",
                   {{"found", std::string(name)}, {"nearest", base::nearestWord(name, known)}});
}

Result<double> requiredCapacity_ah(const BatteryRule& rule, double standby_a, double alarm_a)
{
    auto net = dutyCapacity_ah({standby_a, rule.standby_h, alarm_a, rule.alarm_min / 60}, rule.alarmFactor);
    if (!net) return net;
    return rule.margin * *net;
}

Result<double> alarmFactor(double capacity_ah, double alarm_a)
{
    if (auto sound = checkAbove("capacity_ah", capacity_ah, 0); !sound) return passOn(sound);
    if (auto sound = checkWithin("capacity_ah", capacity_ah, 0, greatest_ah); !sound) return passOn(sound);
    if (auto sound = checkWithin("alarm_a", alarm_a, 0, greatest_a); !sound) return passOn(sound);
    return alarm_a <= capacity_ah / 20 ? 1 : highLoadFactor;
}

Result<FittedBattery> fittedBattery(const BatteryRule& rule, double fitted_ah, double standby_a, double alarm_a)
{
    auto required = requiredCapacity_ah(rule, standby_a, alarm_a);
    if (!required) return passOn(required);
    auto factor = alarmFactor(fitted_ah, alarm_a);
    if (!factor) return passOn(factor);
    return FittedBattery{fitted_ah - *required, *factor > rule.alarmFactor ? rule.highLoadRule : std::string()};
}

Result<DesignCurrent> designCurrent(std::span<const double> listed_a, std::optional<double> measured_a,
                                    double expanded_a)
{
    if (listed_a.empty() && !measured_a) return failure("measure.currents-missing", "");
    double listed = 0;
    for (const double each : listed_a) {
        if (auto sound = checkWithin("listed_a", each, 0, greatest_a); !sound) return passOn(sound);
        listed += each;
    }
    if (auto sound = checkWithin("listed_a", listed, 0, greatest_a); !sound) return passOn(sound);
    if (auto sound = checkWithin("expanded_a", expanded_a, 0, greatest_a); !sound) return passOn(sound);
    if (!measured_a) return DesignCurrent{listed, listed, false};
    if (auto sound = checkWithin("measured_a", *measured_a, 0, greatest_a); !sound) return passOn(sound);
    const double measured = *measured_a + expanded_a;
    return DesignCurrent{std::max(listed, measured), listed, measured > listed};
}

Result<double> cellTemperatureFactor(double temperature_c)
{
    static const Result<std::vector<FactorAt>> factors = shippedFactors();
    if (!factors) return std::unexpected(factors.error());
    if (factors->empty()) return outOfRange("temperature_c", temperature_c, "in the table, which is empty");
    if (auto sound =
            checkWithin("temperature_c", temperature_c, factors->front().temperature_c, factors->back().temperature_c);
        !sound)
        return passOn(sound);
    const auto above = std::ranges::lower_bound(*factors, temperature_c, {}, &FactorAt::temperature_c);
    if (above == factors->begin()) return above->factor;
    const auto below = above - 1;
    return below->factor
         + (above->factor - below->factor) * (temperature_c - below->temperature_c)
               / (above->temperature_c - below->temperature_c);
}

Result<double> sizedCapacity_ah(const Sizing& sizing)
{
    if (auto sound = checkAbove("uncorrected_ah", sizing.uncorrected_ah, 0); !sound) return passOn(sound);
    if (auto sound = checkWithin("uncorrected_ah", sizing.uncorrected_ah, 0, greatest_ah); !sound) return passOn(sound);
    if (auto sound = checkWithin("temperature_factor", sizing.temperatureFactor, 0.5, 3); !sound) return passOn(sound);
    if (auto sound = checkWithin("design_margin", sizing.designMargin, 0.5, 3); !sound) return passOn(sound);
    if (auto sound = checkWithin("ageing", sizing.ageing, 0.5, 3); !sound) return passOn(sound);
    return sizing.uncorrected_ah * sizing.temperatureFactor * sizing.designMargin * sizing.ageing;
}

} // namespace proofwalk::measure
