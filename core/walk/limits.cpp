// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/walk/limits.h"

#include "core/base/unit.h"
#include "core/measure/conformity.h"
#include "core/measure/loop.h"
#include "core/walk/loopwiring.h"

#include <algorithm>

namespace proofwalk::walk {
namespace {

using base::Decimal;
using catalogue::Limit;

/// The limit's side in the base unit of its quantity.
Result<std::optional<Decimal>> sideInBase(const std::optional<Decimal>& side, const base::Unit& unit)
{
    if (!side) return std::optional<Decimal>{};
    auto value = base::inBaseUnit({*side, &unit});
    if (!value) return passOn(value);
    return std::optional(*value);
}

/// Narrows the joint limit by one more.
void intersect(JointLimit& joint, const std::optional<Decimal>& lower, const std::optional<Decimal>& upper)
{
    if (lower && (!joint.lower || base::compare(*lower, *joint.lower) > 0)) joint.lower = lower;
    if (upper && (!joint.upper || base::compare(*upper, *joint.upper) < 0)) joint.upper = upper;
}

Limit ofPlan(const catalogue::Step& step, std::string unit, const char* note)
{
    Limit limit;
    limit.quantity = step.quantity;
    limit.unit = std::move(unit);
    limit.confirmed = true;
    limit.source.basis = "plan";
    limit.source.note = note;
    return limit;
}

/// At rest the loop shows its end-of-line resistor and the cable, whatever stands across the alarm contact.
Result<std::optional<Limit>> loopAtRest(const LimitGround& ground, const catalogue::Step& step, const plan::Zone& zone)
{
    const auto wiring = loopWiring(zone, ground.conductors);
    if (!wiring) return std::unexpected(wiring.error());
    if (!*wiring) return std::optional<Limit>{};
    const auto window = measure::loopWindow(**wiring, measure::LoopState::closed);
    if (!window) return std::unexpected(window.error());

    Limit limit = ofPlan(step, "Ohm", "plan.loop");
    for (const auto& [side, target] : {std::pair{window->lower_ohm, &limit.lower}, {window->upper_ohm, &limit.upper}}) {
        if (!side) continue;
        auto rounded = base::fromDouble(*side, -1);
        if (!rounded) return passOn(rounded);
        *target = *rounded;
    }
    return std::optional(limit);
}

Result<std::optional<Limit>> aroundPlanned(const catalogue::Step& step, const plan::Timer& timer)
{
    if (!timer.planned_s || !timer.tolerance_s) return std::optional<Limit>{};
    Limit limit = ofPlan(step, "s", "plan.timer");
    auto lower = base::subtract(*timer.planned_s, *timer.tolerance_s);
    auto upper = base::add(*timer.planned_s, *timer.tolerance_s);
    if (!lower) return passOn(lower);
    if (!upper) return passOn(upper);
    limit.lower = *lower;
    limit.upper = *upper;
    return std::optional(limit);
}

/// Whether the effect is set off by this device: by its tag, its zone or its zone's purpose.
bool isCausedBy(const plan::Effect& effect, const plan::Device& device, const plan::Zone* zone)
{
    if (effect.cause == device.tag) return true;
    return zone != nullptr && (effect.cause == "zone:" + zone->zone || effect.cause == "purpose:" + zone->purpose);
}

/// By its kind's name, since a sounder may be in the plan before there is a sheet for it.
bool isSounder(const plan::Device* device) { return device != nullptr && device->kind.starts_with("sounder"); }

/// The least time promised for what drives the device; for one that drives sounders, for those.
std::optional<Limit> leastWithin(const plan::Plan& plan, const catalogue::Step& step, const plan::Device& device,
                                 const plan::Zone* zone)
{
    Limit limit = ofPlan(step, "s", "plan.effect");
    const bool driven =
        std::ranges::any_of(plan.effects, [&](const plan::Effect& each) { return each.effect == device.tag; });
    for (const plan::Effect& effect : plan.effects) {
        const bool concerns = driven ? effect.effect == device.tag
                                     : isCausedBy(effect, device, zone) && isSounder(plan.findDevice(effect.effect));
        if (!concerns || !effect.within_s) continue;
        if (!limit.upper || base::compare(*effect.within_s, *limit.upper) < 0) limit.upper = effect.within_s;
    }
    if (!limit.upper) return {};
    return limit;
}

Result<std::optional<Limit>> leastMargin(const plan::Plan& plan, const catalogue::Step& step)
{
    const std::string least = plan.panelFact("radio_minimum");
    if (least.empty()) return std::optional<Limit>{};
    auto value = base::parseDecimal(least);
    if (!value) return std::unexpected(std::move(value.error()).within("panel.csv, radio_minimum"));
    Limit limit = ofPlan(step, step.unit, "plan.radio");
    limit.lower = *value;
    return std::optional(limit);
}

} // namespace

Result<void> joinLimits(ScopeStep& step, const std::vector<Limit>& from)
{
    const base::Unit* wanted = base::findUnit(step.step.unit);
    for (const Limit& limit : from) {
        const base::Unit* unit = base::findUnit(limit.unit);
        if (unit == nullptr || wanted == nullptr || unit->quantity != wanted->quantity)
            return failure("catalogue.unit-mismatch", step.key.name,
                           {{"found", limit.unit}, {"wanted", step.step.unit}});
        auto lower = sideInBase(limit.lower, *unit);
        auto upper = sideInBase(limit.upper, *unit);
        if (!lower) return passOn(lower);
        if (!upper) return passOn(upper);
        JointLimit& joint = limit.confirmed ? step.confirmed : step.unconfirmed;
        intersect(joint, *lower, *upper);
        joint.from.push_back(limit);
        if (limit.confirmed
            && (limit.binding == catalogue::Binding::lifeSafety || limit.binding == catalogue::Binding::legal))
            joint.strict = true;
        if (joint.lower && joint.upper && base::compare(*joint.lower, *joint.upper) > 0)
            return failure("walk.limits-empty", step.key.name, {{"quantity", limit.quantity}});
    }
    return {};
}

Result<std::optional<Limit>> limitOfPlan(const LimitGround& ground, const catalogue::Step& step,
                                         const plan::Device* device, const plan::Zone* zone, const plan::Timer* timer)
{
    switch (step.planLimit) {
    case catalogue::PlanLimit::loopNormal:
        if (zone != nullptr) return loopAtRest(ground, step, *zone);
        break;
    case catalogue::PlanLimit::timer:
        if (timer != nullptr) return aroundPlanned(step, *timer);
        break;
    case catalogue::PlanLimit::effectWithin:
        if (device != nullptr) return leastWithin(ground.plan, step, *device, zone);
        break;
    case catalogue::PlanLimit::radioMinimum: return leastMargin(ground.plan, step);
    case catalogue::PlanLimit::none: break;
    }
    return std::optional<Limit>{};
}

} // namespace proofwalk::walk
