// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/plan/derive.h"

#include "core/base/text.h"
#include "core/plan/assumptions.h"
#include "core/plan/usual.h"

#include <fmt/format.h>

#include <algorithm>
#include <map>
#include <set>

namespace proofwalk::plan {
namespace {

/// Fills a blank member and says so in the row.
template <class R, class Member, class Value>
void assume(R& row, Member member, const char* column, const Value& value)
{
    row.*member = value;
    row.assumed.emplace_back(column);
}

/// A row for each name that is used and described nowhere.
template <class R>
void addRows(std::vector<R>& rows, std::string R::* member, const char* file, const char* column,
             const std::vector<std::string>& names)
{
    std::set<std::string> made;
    for (const std::string& name : names) {
        if (name.empty() || !made.insert(name).second) continue;
        R& row = rows.emplace_back();
        row.file = file;
        assume(row, member, column, name);
    }
}

void nameDevices(Plan& plan)
{
    std::set<std::string, std::less<>> taken;
    for (const Device& device : plan.devices) taken.insert(device.tag);
    std::size_t number = 0;
    for (Device& device : plan.devices) {
        ++number;
        if (!device.tag.empty()) continue;
        std::string tag = fmt::format("D{:02}", number);
        // Somebody may have written D07 by hand elsewhere: theirs stays.
        while (taken.contains(tag)) tag += '+';
        taken.insert(tag);
        assume(device, &Device::tag, "tag", tag);
    }
}

void addZones(Plan& plan)
{
    if (!plan.zones.empty()) return;
    std::vector<std::string> names;
    for (const Device& device : plan.devices) names.push_back(device.zone);
    for (const Signal& signal : plan.signals) names.push_back(signal.zone);
    addRows(plan.zones, &Zone::zone, "zones.csv", "zone", names);
}

void addAreas(Plan& plan)
{
    if (plan.areas.empty()) {
        std::vector<std::string> names;
        for (const Zone& zone : plan.zones) names.insert(names.end(), zone.areas.begin(), zone.areas.end());
        for (const Mode& mode : plan.modes) names.insert(names.end(), mode.areas.begin(), mode.areas.end());
        if (names.empty() && !plan.zones.empty()) names.emplace_back("all");
        addRows(plan.areas, &Area::area, "areas.csv", "area", names);
    }
    const auto accounts = base::split(plan.siteFact("account"), ';');
    for (Area& area : plan.areas) {
        if (area.account.empty() && accounts.size() == 1) assume(area, &Area::account, "account", accounts.front());
    }
    if (plan.areas.size() != 1) return;
    for (Zone& zone : plan.zones) {
        if (zone.areas.empty()) assume(zone, &Zone::areas, "areas", std::vector{plan.areas.front().area});
    }
}

void addModes(Plan& plan)
{
    std::vector<std::string> every;
    for (const Area& area : plan.areas) every.push_back(area.area);
    if (every.empty()) return;
    if (plan.modes.empty()) addRows(plan.modes, &Mode::mode, "modes.csv", "mode", {"set"});
    for (Mode& mode : plan.modes) {
        if (mode.areas.empty()) assume(mode, &Mode::areas, "areas", every);
    }
}

void addFloors(Plan& plan)
{
    if (plan.floors.empty()) {
        std::vector<std::string> names;
        for (const Device& device : plan.devices) names.push_back(device.floor);
        addRows(plan.floors, &Floor::floor, "floors.csv", "floor", names);
    }
    if (plan.floors.size() != 1) return;
    for (Device& device : plan.devices) {
        if (device.floor.empty()) assume(device, &Device::floor, "floor", plan.floors.front().floor);
    }
}

/// What the devices of each zone usually want of it. A signal other than the alarm says nothing of the purpose, save
/// that a zone of tamper signals alone is a tamper zone.
struct Wishes {
    std::set<std::string> purposes, feeds;
    bool unclear = false;
};

std::map<std::string, Wishes, std::less<>> wishesOf(const Plan& plan)
{
    std::map<std::string, Wishes, std::less<>> wishes;
    for (const Device& device : plan.devices) {
        if (device.zone.empty()) continue;
        Wishes& zone = wishes[device.zone];
        const UsualKind* usual = usualKind(device.kind);
        if (!usual) {
            zone.unclear = true;
            continue;
        }
        zone.purposes.insert(usual->purpose);
        zone.feeds.insert(usual->feed);
    }
    for (const Signal& signal : plan.signals) {
        if (!signal.zone.empty() && signal.signal == "tamper") wishes[signal.zone].purposes.insert("tamper");
        else if (!signal.zone.empty() && signal.signal != "alarm") wishes[signal.zone].unclear = true;
    }
    return wishes;
}

bool hasWiring(const Zone& zone)
{
    return zone.resistors || zone.eol_ohm || zone.alarm_ohm || zone.tamper_ohm || zone.fault_ohm || zone.cable_m
        || !zone.pair.empty() || !zone.conductor.empty() || !zone.rest.empty();
}

/// The modes that set all the zone's areas.
std::vector<std::string> modesOf(const Plan& plan, const Zone& zone)
{
    std::vector<std::string> modes;
    for (const Mode& mode : plan.modes) {
        const auto sets = [&](const std::string& area) {
            return std::ranges::find(mode.areas, area) != mode.areas.end();
        };
        if (!zone.areas.empty() && std::ranges::all_of(zone.areas, sets)) modes.push_back(mode.mode);
    }
    return modes;
}

bool reportsLeave(const Plan& plan)
{
    return std::ranges::any_of(plan.paths, [](const Path& path) { return path.to == "station" || path.to == "owner"; });
}

void deriveFromKinds(Zone& zone, const Wishes& wishes)
{
    if (wishes.unclear) return;
    if (zone.purpose.empty() && wishes.purposes.size() == 1)
        assume(zone, &Zone::purpose, "purpose", *wishes.purposes.begin());
    if (zone.feed.empty() && wishes.feeds.size() == 1 && !wishes.feeds.begin()->empty())
        assume(zone, &Zone::feed, "feed", *wishes.feeds.begin());
}

void deriveFromPurpose(const Plan& plan, Zone& zone)
{
    const UsualPurpose* usual = usualPurpose(zone.purpose);
    if (!usual) return;
    if (zone.sounding.empty()) assume(zone, &Zone::sounding, "sounding", usual->sounding);
    const bool wired = zone.feed == "loop" || zone.feed == "two-wire" || zone.feed == "four-wire";
    if (zone.rest.empty() && wired) assume(zone, &Zone::rest, "rest", usual->rest);
    if (!zone.liveIn.empty()) return;
    const auto modes = usual->liveIn.empty() ? modesOf(plan, zone) : std::vector{usual->liveIn};
    if (!modes.empty()) assume(zone, &Zone::liveIn, "live_in", modes);
}

void deriveZones(Plan& plan)
{
    const auto wishes = wishesOf(plan);
    const bool leave = reportsLeave(plan);
    for (Zone& zone : plan.zones) {
        if (zone.delay.empty()) assume(zone, &Zone::delay, "delay", std::string("none"));
        if (const auto found = wishes.find(zone.zone); found != wishes.end()) deriveFromKinds(zone, found->second);
        if (zone.feed.empty() && hasWiring(zone)) assume(zone, &Zone::feed, "feed", std::string("loop"));
        deriveFromPurpose(plan, zone);
        // A zone that was itself derived has no cells in which a truth could have been left blank.
        if (zone.line == 0 && !isAssumed(zone, "reporting")) zone.assumed.emplace_back("reporting");
        if (isAssumed(zone, "reporting")) zone.reporting = leave || !zone.reportCode.empty();
    }
}

void deriveRest(Plan& plan)
{
    for (Effect& effect : plan.effects) {
        if (effect.inMode.empty()) assume(effect, &Effect::inMode, "in_mode", std::string("always"));
    }
    for (Supply& supply : plan.supplies) {
        // 0.8 is the rated capacity with the margin of 1.25 for ageing that several standards share: core/review.
        if (!supply.derating) assume(supply, &Supply::derating, "derating", base::Decimal{8, -1});
    }
}

} // namespace

void derive(Plan& plan)
{
    nameDevices(plan);
    addZones(plan);
    addAreas(plan);
    addModes(plan);
    addFloors(plan);
    deriveZones(plan);
    deriveRest(plan);
    plan.assumptions = assumptionsOf(plan);
}

} // namespace proofwalk::plan
