// SPDX-License-Identifier: GPL-3.0-or-later
// How long a lead-acid battery lasts at a current other than the one it is rated at.
//   [1] Peukert's law in its rated form, as in public worked examples: t = H (C / (I H))^k.
// Poor far below the rated current, when cold, and for an exponent measured over a narrow range. About 1.05 to 1.15 for
// absorbed glass mat, 1.1 to 1.25 for gel, 1.2 to 1.6 for flooded cells (common practice).
#pragma once

#include "core/base/result.h"

#include <span>

namespace proofwalk::measure {

struct PeukertBattery {
    double capacity_ah = 0; ///< at the rate of rated_h
    double rated_h = 20;
    double exponent = 1;
};

/// Hours at that current [1]. Errors: measure.out-of-range {input}: capacity_ah, rated_h or current_a not above 0, or
/// above 10000, 1000, 10000; exponent not from 1 to 1.6.
Result<double> lastsFor_h(const PeukertBattery& battery, double current_a);

/// Hours from the capacity at one ampere: t = Cp / I^k. A capacity at the 20 hour rate does not belong here: of 100 Ah
/// with k = 1.2 at 5 A it would make 14.5 h of the 20. Errors: as lastsFor_h; the capacity is named capacity_1a_ah.
Result<double> lastsForOneAmpereForm_h(double capacityAtOneAmpere_ah, double exponent, double current_a);

/// The current that would drain the battery as fast if its capacity did not hang on the current: (C/H) (I / (C/H))^k.
/// Errors: as lastsFor_h.
Result<double> equivalentCurrent_a(const PeukertBattery& battery, double current_a);

/// A load and how long it lasts.
struct Load {
    double current_a = 0;
    double hours = 0;
};

/// The share of the battery that the loads use, one after the other: sum of hours / lastsFor_h (a linear sum, common
/// practice; in it the order does not matter, in life the alarm comes last, at the lowest voltage). And the least
/// capacity at the same rate for which that is 1: C used^(1/k).
struct DutyUse {
    double used;
    double needed_ah;
};
/// Errors: as lastsFor_h; measure.loads {found}: none or more than 1000; measure.out-of-range {hours}: not from 0 to
/// 1000.
Result<DutyUse> dutyUse(const PeukertBattery& battery, std::span<const Load> loads);

} // namespace proofwalk::measure
