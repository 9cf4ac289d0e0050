// SPDX-License-Identifier: GPL-3.0-or-later
// What a meter at the end of a pair says about leakage, shorts and earth: Ohm's law turned round.
#pragma once

#include "core/base/result.h"

namespace proofwalk::measure {

/// A leak across a loop that should read `sound_ohm` and reads `found_ohm`: R r / (R - r), ohms.
/// Only for one leak at the panel's end of a short cable; a leak beyond a long one is smaller than this says.
/// Errors: measure.out-of-range {input}: sound_ohm or found_ohm not above 0, found_ohm not below sound_ohm.
Result<double> leakage_ohm(double sound_ohm, double found_ohm);

/// What a loop of that resistance reads with a leak across it, ohms. Errors: measure.out-of-range {input}: not above 0.
Result<double> withLeakage_ohm(double sound_ohm, double leak_ohm);

/// The least leakage that a window reaching `below_pct` beneath the loop's resistance cannot show: R (1 - w) / w.
/// Errors: measure.out-of-range {input}: sound_ohm not above 0; below_pct not above 0 and below 100.
Result<double> leastHiddenLeakage_ohm(double sound_ohm, double below_pct);

/// A short, as the meter sees it from one end.
struct ShortSeen {
    double found_ohm = 0; ///< with the leads
    double leads_ohm = 0; ///< the meter's leads held together
    double ohm_per_km = 0; ///< of one conductor, at temperature_c
    double temperature_c = 20; ///< at which ohm_per_km holds
    double cable_c = 20; ///< of the cable
};
/// Metres of cable to the short: (R - leads) / (2 r), r brought to the cable's temperature (see cable.h). A short with
/// a resistance of its own is nearer than this; 10 K of wrong temperature move it by 4 %.
/// Errors: measure.out-of-range {input}: found_ohm below leads_ohm; leads_ohm below 0; those of
/// resistanceAtTemperature_ohm.
Result<double> distanceToShort_m(const ShortSeen& seen);

/// A loop fed through a resistor, as a panel measures it.
struct Divider {
    double source_v = 0;
    double pullUp_ohm = 0;
};
/// Voltage at the terminals with that loop: V R / (R + Rp). Errors: measure.out-of-range {input}: not above 0.
Result<double> terminal_v(const Divider& divider, double loop_ohm);
/// The loop from the voltage at its terminals: Rp v / (V - v). Errors: measure.out-of-range {input}: source or pull-up
/// not above 0, the terminal voltage below 0 or not below the source's.
Result<double> loopFromVoltage_ohm(const Divider& divider, double terminal_v);
/// How many ohms one volt of error in the terminal voltage makes: Rp V / (V - v)^2. Errors: as loopFromVoltage_ohm.
Result<double> ohmsPerVolt(const Divider& divider, double terminal_v);

/// Two readings of one voltmeter on a supply without a connection to earth.
struct EarthReadings {
    double supply_v = 0; ///< between plus and minus
    double plus_v = 0; ///< from plus to earth, without sign
    double minus_v = 0; ///< from minus to earth, without sign
    double meter_ohm = 0; ///< the voltmeter's input resistance
};
struct EarthLeakage {
    double plus_ohm; ///< from plus to earth; infinite if there is none
    double minus_ohm; ///< from minus to earth
};
/// R+ = Rm (V - v+ - v-) / v-, R- = Rm (V - v+ - v-) / v+: with D = R+ R- + R+ Rm + R- Rm the readings are V R+ Rm / D
/// and V R- Rm / D. Only for a supply with no other way to earth than these two; a reading of 0 on one side leaves the
/// other side's leakage infinite.
/// Errors: measure.out-of-range {input}: supply or meter not above 0; a reading below 0; both together above the supply
/// (then something else feeds the circuit, or the readings are from different moments); both 0.
Result<EarthLeakage> earthLeakage(const EarthReadings& readings);

/// A resistor's window with tolerance and temperature: R (1 -+ tolerance) (1 -+ coefficient x change), each end on its
/// own.
struct ResistorWindow {
    double least_ohm;
    double most_ohm;
};
/// Errors: measure.out-of-range {input}: nominal_ohm not above 0; tolerance_pct not from 0 to below 100;
/// coefficient_ppm_per_k or change_k below 0; together taking the least to 0.
Result<ResistorWindow> resistorWindow(double nominal_ohm, double tolerance_pct, double coefficient_ppm_per_k,
                                      double change_k);

} // namespace proofwalk::measure
