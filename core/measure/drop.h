// SPDX-License-Identifier: GPL-3.0-or-later
// How many volts are left at the appliances of a supply circuit: Ohm's law along the cable, direct current.
//   [1] Point to point and lump at the end: common practice of designing alarm circuits.
// Left out: contacts and terminals (0.05 to 0.2 ohm each, common practice). Conductor figures: conductor.h.
#pragma once

#include "core/base/result.h"
#include "core/measure/conductor.h"

#include <span>
#include <vector>

namespace proofwalk::measure {

inline constexpr double metresPerFoot = 0.3048; // exact (international foot, 1959)

/// One pair from a supply, its conductors as they are at the cable's temperature.
struct Supply {
    double source_v = 0;          ///< at its worst: with batteries at the end of their discharge
    double feed_ohm_per_km = 0;   ///< of the one conductor
    double return_ohm_per_km = 0; ///< of the other
};

/// An appliance. It draws a current that does not change with its voltage, or a power, or both.
struct Appliance {
    double segment_m = 0; ///< of cable, one way, from the one before it (or from the supply)
    double current_a = 0;
    double power_w = 0;   ///< of a regulated appliance: the lower its voltage, the more it draws
};

struct AtAppliance {
    double drop_v;    ///< in the segment before it
    double voltage_v; ///< at its terminals
    double current_a; ///< that it draws there
};

/// The drop in one run: L (ra + rb) I. Errors: measure.out-of-range {input}: lengths, resistances and currents are 0 or
/// more, and at most 100 km, 10^6 ohm a km, 1000 A.
Result<double> runDrop_v(const Supply& supply, double length_m, double current_a);

/// Each segment carries what is drawn at or beyond its far end [1]. Powers are solved by going round from the supply's
/// voltage down, which ends at the upper of the two states that fit; in the lower one nothing works.
/// Errors: those of runDrop_v; measure.out-of-range {input}: source_v not from 1 mV to 1000 V; power_w below 0;
/// measure.loads {found}: none, or more than 1000; measure.no-operating-point {at}: the circuit cannot feed appliance
/// number `at`: no voltage is left, or no state fits the powers.
Result<std::vector<AtAppliance>> pointToPoint(const Supply& supply, std::span<const Appliance> appliances);

/// All current over the whole length, V = L (ra + rb) sum I: never less than the true drop at the last appliance [1].
/// Only for currents. Errors: as pointToPoint; measure.out-of-range {power_w} if there is a power.
Result<double> lumpDrop_v(const Supply& supply, std::span<const Appliance> appliances);

/// One regulated appliance at the end of a loop resistance: V = (Vs + sqrt(Vs^2 - 4 R P)) / 2.
struct RegulatedState {
    double voltage_v;
    double current_a;
    double mostPower_w; ///< Vs^2 / (4 R): beyond it the circuit cannot start
};
/// Errors: measure.out-of-range {input}: not above 0; measure.no-operating-point {at}.
Result<RegulatedState> regulatedState(double source_v, double loop_ohm, double power_w);

/// The longest run, one way, at whose end `least_v` are left: (Vs - Vmin) / I / (ra + rb).
struct LongestRun {
    double loop_ohm; ///< the most it may have, out and back
    double length_m;
};
/// Errors: measure.out-of-range {input}: current_a not above 0; least_v not above 0 or not below source_v; no
/// resistance.
Result<LongestRun> longestRun(const Supply& supply, double least_v, double current_a);

/// The conductor of least section of the table with which every appliance has at least `least_v`, at that temperature.
/// Errors: those of pointToPoint but measure.no-operating-point; measure.no-conductor {wanted}; those of
/// resistanceAtTemperature_ohm.
Result<Conductor> smallestConductor(double source_v, double least_v, double temperature_c,
                                    std::span<const Appliance> appliances, std::span<const Conductor> table);

} // namespace proofwalk::measure
