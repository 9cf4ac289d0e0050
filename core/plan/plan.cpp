// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/plan/plan.h"

#include "core/base/text.h"

#include <algorithm>

namespace proofwalk::plan {
namespace {

template <class R, class Wanted>
const R* findRow(const std::vector<R>& rows, Wanted wanted)
{
    const auto found = std::ranges::find_if(rows, wanted);
    return found == rows.end() ? nullptr : &*found;
}

std::string factOf(const std::vector<Fact>& facts, std::string_view field)
{
    const Fact* fact = findRow(facts, [&](const Fact& each) { return each.field == field; });
    return fact ? fact->value : std::string();
}

} // namespace

std::string Plan::siteFact(std::string_view field) const { return factOf(site, field); }

std::string Plan::panelFact(std::string_view field) const { return factOf(panel, field); }

std::vector<std::string> Plan::rules() const { return base::split(siteFact("rules"), ';'); }

const Zone* Plan::findZone(std::string_view zone) const
{
    return findRow(zones, [&](const Zone& each) { return each.zone == zone; });
}

const Device* Plan::findDevice(std::string_view tag) const
{
    return findRow(devices, [&](const Device& each) { return each.tag == tag; });
}

const Area* Plan::findArea(std::string_view area) const
{
    return findRow(areas, [&](const Area& each) { return each.area == area; });
}

const Timer* Plan::findTimer(std::string_view timer, std::string_view area) const
{
    const Timer* own = findRow(timers, [&](const Timer& each) { return each.timer == timer && each.area == area; });
    // A timer without an area holds for every area that has none of its own.
    return own ? own : findRow(timers, [&](const Timer& each) { return each.timer == timer && each.area.empty(); });
}

} // namespace proofwalk::plan
