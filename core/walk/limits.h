// SPDX-License-Identifier: GPL-3.0-or-later
// Which limits a reading of a step will meet: those of the sheet and the rule sets, and those the plan itself gives.
#pragma once

#include "core/walk/scope.h"

namespace proofwalk::walk {

/// What the plan's own limits are taken from.
struct LimitGround {
    const plan::Plan& plan;
    const std::vector<measure::Conductor>& conductors;
};

/// Adds the limits of `from` to the joint ones of the step, confirmed and unconfirmed apart, in the base unit.
/// Errors: walk.limits-empty {quantity}; catalogue.unit-mismatch {found, wanted}; base.decimal-range.
Result<void> joinLimits(ScopeStep& step, const std::vector<catalogue::Limit>& from);

/// The plan's limit for the step of this subject (EVENTS.md, "Limits"); nothing if the plan does not give one.
/// Exactly one of zone, timer or device is meant, by the step's subject; the others may be nullptr.
/// Errors: measure.*.
Result<std::optional<catalogue::Limit>> limitOfPlan(const LimitGround& ground, const catalogue::Step& step,
                                                    const plan::Device* device, const plan::Zone* zone,
                                                    const plan::Timer* timer);

} // namespace proofwalk::walk
