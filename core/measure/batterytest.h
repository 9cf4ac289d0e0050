// SPDX-License-Identifier: GPL-3.0-or-later
// What a battery on site says of itself: under load, while charging, floating.
//   [1] Two-point load line, after IEC 60896-21, 6.3 in outline; the clause from memory.
//   [2] JCGM 100:2008, 4.3.7: half of the last place as the half-width of a rectangle.
#pragma once

#include "core/base/result.h"

#include <optional>
#include <span>

namespace proofwalk::measure {

/// The terminal voltage under two steady loads, read after the same settling.
struct TwoLoads {
    double light_v = 0;
    double light_a = 0;
    double heavy_v = 0;
    double heavy_a = 0;
    double resolution_v = 0; ///< the last place of the voltmeter; its other errors are alike in both and cancel
};
struct LoadLine {
    double resistance_ohm; ///< (V1 - V2) / (I2 - I1) [1]
    double emf_v;          ///< V1 + I1 r
    double standard_ohm;   ///< u of the resistance by the resolution d: sqrt(2) d / (2 sqrt(3)) / (I2 - I1) [2]
};
/// Direct current resistance: an alternating current tester reads roughly half to four fifths of it (common practice),
/// so the method is kept with the number. Errors: measure.out-of-range {input}: voltages not above 0 to 1000, currents
/// not from 0 to 1000, heavy_a not above light_a, heavy_v not below light_v, resolution_v not from 0 to 1.
Result<LoadLine> loadLine(const TwoLoads& loads);

/// The terminal voltage of that line at another current: emf - I r. Errors: measure.out-of-range {current_a}: below 0,
/// or so high that nothing is left.
Result<double> terminalVoltage_v(const LoadLine& line, double current_a);

/// A reading during the discharge.
struct DischargeReading {
    double minutes = 0; ///< since the load was put on
    double volts = 0;
};
/// What readings under load say of a test that is not over.
enum class DischargeOutlook {
    belowEnd, ///< a reading is under the end voltage by more than its uncertainty: failed
    fallsShort, ///< even straight on, the end voltage is reached before the time, uncertainty allowed for
    tooClose, ///< cannot be said
    nothingAgainst, ///< straight on it lasts; indicative, never a pass: the voltage falls faster towards the end
};
struct DischargeTest {
    double end_v = 0; ///< the supply's low-battery threshold
    double required_min = 0;
    double expanded_v = 0; ///< U (k = 2) of a reading
};
struct DischargeJudged {
    DischargeOutlook outlook;
    std::optional<double> straightOn_v; ///< where the line through the first and last reading is at the required time
};
/// From two readings on, in order of time (15 and 30 minutes are usual: the first minutes settle and are not to be
/// taken). The line may be as steep and as flat as the uncertainties of its two readings allow.
/// Errors: measure.discharge-readings {found}: fewer than two or more than 1000, or not in order; measure.out-of-range
/// {input}: minutes from 0 to 10^5, volts above 0 to 1000, end_v, required_min above 0, expanded_v 0 or more; a last
/// reading after the required time.
Result<DischargeJudged> judgeDischarge(const DischargeTest& test, std::span<const DischargeReading> readings);

/// Putting charge back while the load goes on.
struct Recharge {
    double capacity_ah = 0;
    double share = 0; ///< of the capacity to put back: 0.8
    double efficiency = 0; ///< ampere hours stored per ampere hour put in: 0.85 (an assumption)
    double load_a = 0; ///< what the system draws meanwhile
};
struct ChargerCurrent {
    double battery_a;
    double total_a;
};
/// C share / hours / efficiency, and with the load. Errors: measure.out-of-range {input}: capacity_ah above 0 to 10000,
/// share and efficiency above 0 to 1, load_a from 0 to 1000, hours above 0 to 1000.
Result<ChargerCurrent> chargerCurrent(const Recharge& recharge, double hours);
/// The hours a charger of that current takes, if it holds the current to the end (it does not for the last fifth:
/// longer than this). Errors: as chargerCurrent; measure.out-of-range {charger_a}: not above load_a.
Result<double> rechargeTime_h(const Recharge& recharge, double charger_a);

/// Float voltage of that many cells: n (V20 + c (T - 20)), c in millivolts per kelvin and cell, below 0. General
/// practice of valve-regulated lead-acid cells; the maker's figures go before it. From -10 °C to 50 °C (our choice).
/// Errors: measure.out-of-range {input}.
Result<double> floatVoltage_v(int cells, double cellAt20_v, double change_mv_per_k, double temperature_c);

} // namespace proofwalk::measure
