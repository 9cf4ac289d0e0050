// SPDX-License-Identifier: GPL-3.0-or-later
// How large a standby battery must be, by the rule a system is built to. The rules are data with a source each, in
// battery-rules.csv beside this file; the temperature factors in cell-temperature.csv.
//   [1] NFPA 72, 10.6.7: C = margin (Is Ts + Ia Ta). As quoted on public pages.
//   [2] BS 5839-1, annex on standby batteries: C = 1.25 (T1 I1 + D I2 T2). From memory but for its factors.
//   [3] IEEE 485: size = uncorrected size x temperature factor x design margin x ageing. From memory.
#pragma once

#include "core/base/result.h"

#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace proofwalk::measure {

/// What the battery must carry: first at rest, then in alarm.
struct Duty {
    double standby_a = 0;
    double standby_h = 0;
    double alarm_a = 0;
    double alarm_h = 0;
};

/// Ampere hours without any margin: Is Ts + D Ia Ta. Errors: measure.out-of-range {input}: a current not from 0 to
/// 1000, hours not from 0 to 1000; alarmFactor not from 1 to 2.
Result<double> dutyCapacity_ah(const Duty& duty, double alarmFactor = 1);

/// A rule set: how long, and what is put on top.
struct BatteryRule {
    std::string name;
    double standby_h = 0;
    double alarm_min = 0;
    double alarmFactor = 1; ///< D of [2]: a high alarm load takes more than its ampere hours
    double margin = 1; ///< for ageing and what was forgotten
    std::string
        highLoadRule; ///< its name: what holds instead where the alarm load is high for the battery; may be empty
    std::string source;
    std::string basis;
};

/// Reads a table of rules. Errors: those of readTable; measure.table-number; measure.table-twice.
Result<std::vector<BatteryRule>> readBatteryRules(std::string_view bytes, const std::string& name);

/// The rule of that name in the table that came with the program. Error: measure.battery-rule {found, nearest}; those
/// of readBatteryRules.
Result<BatteryRule> batteryRule(std::string_view name);
/// All of them, in the table's order.
Result<std::vector<BatteryRule>> batteryRules();

/// The capacity to buy: margin (Is Ts + D Ia Ta), at the 20 hour rate and room temperature. Errors: as dutyCapacity_ah.
Result<double> requiredCapacity_ah(const BatteryRule& rule, double standby_a, double alarm_a);

/// D of [2] for a battery of that capacity at its 20 hour rate: 1 up to its 20 hour current, 1.75 above. The battery
/// maker's discharge curve goes before this rule.
/// Errors: measure.out-of-range {input}: capacity_ah not above 0 to 10000; alarm_a not from 0 to 1000.
Result<double> alarmFactor(double capacity_ah, double alarm_a);

/// A battery that is there, held against what a rule requires of it.
struct FittedBattery {
    double spare_ah; ///< below 0: it is too small by the rule
    std::string holdInstead; ///< the rule for a high alarm load, if this is one; else empty
};
/// A high alarm load is one above the battery's 20 hour current, where the rule has another for it. Errors: those of
/// requiredCapacity_ah and alarmFactor.
Result<FittedBattery> fittedBattery(const BatteryRule& rule, double fitted_ah, double standby_a, double alarm_a);

/// What to compute with: of what the parts' sheets say together and of what was measured (with its uncertainty on top)
/// the larger, since a measured quiet system may miss a load that comes and goes, and a list may miss a part.
struct DesignCurrent {
    double current_a;
    double listed_a;
    bool isMeasured; ///< the measured one is the larger: the list lacks something
};
/// Errors: measure.currents-missing (neither); measure.out-of-range {input}: not from 0 to 1000.
Result<DesignCurrent> designCurrent(std::span<const double> listed_a, std::optional<double> measured_a,
                                    double expanded_a);

/// The factor on a cell's size at that electrolyte temperature, between the rows of the table along a straight line
/// [3]. Outside the table (-3.9 to 51.7 °C) refused. Below 1 when warm: most practice does not take credit for that.
/// Errors: measure.out-of-range {temperature_c}; those of readTable.
Result<double> cellTemperatureFactor(double temperature_c);

/// [3]; margin 1.10 to 1.15 is usual, ageing 1.25 (replaced at 80 % of the rated capacity).
struct Sizing {
    double uncorrected_ah = 0;
    double temperatureFactor = 1;
    double designMargin = 1;
    double ageing = 1;
};
/// Errors: measure.out-of-range {input}: uncorrected_ah not above 0 to 10000; a factor not from 0.5 to 3.
Result<double> sizedCapacity_ah(const Sizing& sizing);

} // namespace proofwalk::measure
