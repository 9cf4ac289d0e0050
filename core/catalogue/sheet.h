// SPDX-License-Identifier: GPL-3.0-or-later
// A test sheet: the steps by which one device is proved, composed from its kind, its wiring and what its zone does.
#pragma once

#include "core/base/decimal.h"
#include "core/base/result.h"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace proofwalk::catalogue {

/// What a step asks of the person.
enum class StepKind {
    act,        ///< "do": cause something; answered by having done it
    see,        ///< something must be seen (or not seen) to happen
    read,       ///< a number with a unit, against a limit
    time,       ///< a duration, against a limit
    trial,      ///< so many of so many tries must answer
    listen,     ///< a sound and its pattern
    photograph, ///< a picture for the record
    inspect,    ///< how it is fitted, looked at
    confirm,    ///< somebody else says so: the station, the owner
};

/// What a device's steps can prove (design: input, response, output, received).
enum class Proof { none, input, response, output, received };

/// The state the system must be in for a step to mean anything.
enum class SystemState { unpowered, unset, walkTest, set };

/// Whose property a step is: a step of a zone shows on the card of each of its devices and is answered once.
enum class Subject { device, zone, area, timer };

/// A limit the plan itself gives, filled in by the walk.
enum class PlanLimit {
    none,
    loopNormal,    ///< the zone's loop at rest, by its resistors and cable (core/measure/loop.h)
    timer,         ///< the timer's planned_s and tolerance_s
    effectWithin,  ///< within_s of the effects that name this device
    radioMinimum,  ///< panel.csv radio_minimum
};

/// How hard a limit binds.
enum class Binding { lifeSafety, legal, performance, advice };

/// Where a figure comes from. A clause is printed only if clauseBasis is "read".
struct Source {
    std::string standard;    ///< "BS 5839-1"; empty for the plan's or the trade's own
    std::string edition;     ///< "2017"
    std::string clause;      ///< "14.2"
    std::string clauseBasis; ///< "read" or "not confirmed"
    std::string basis;       ///< "read", "from memory", "common practice", "project choice", "computed"
    std::string note;        ///< one sentence for the sheet of sources; may be empty

    friend bool operator==(const Source&, const Source&) = default;
};

/// One limit on one quantity, in the unit named (UCUM). At least one side is there.
struct Limit {
    std::string quantity;
    std::string unit;
    std::optional<base::Decimal> lower;
    std::optional<base::Decimal> upper;
    Binding binding = Binding::performance;
    bool confirmed = false; ///< an unconfirmed limit never fails a device by itself: it makes a recommendation
    std::string rules;      ///< the rule set's name; empty if the sheet or the plan gives it
    Source source;
};

/// One thing to do and observe.
struct Step {
    std::string name;            ///< identifies the step with its subject and signal; never changes its meaning
    StepKind kind = StepKind::act;
    std::string signal = "alarm"; ///< which of the device's signals; "-" for none
    Subject subject = Subject::device;
    Proof proves = Proof::none;
    std::vector<SystemState> states; ///< where it is valid; never empty
    bool core = true;                ///< handover core; otherwise extended, which counts once answered
    bool lifeSafety = false;         ///< never answered in bulk; a reading without uncertainty is too close at best
    std::string act;                 ///< what to do, one sentence
    std::string expect;              ///< what must happen, one sentence; empty for an act
    std::string caution;             ///< stands before the step; empty if none
    std::string never;               ///< what must never be done; empty if none
    int seconds = 0;                 ///< operator time of the step
    std::string quantity;            ///< read, time: which limits apply
    std::string unit;                ///< read, time: UCUM
    PlanLimit planLimit = PlanLimit::none;
    std::vector<Limit> limits;       ///< from the step itself and from the rule sets, in the unit of the step
    int trialsWanted = 0;            ///< trial: how many tries
    int trialsNeeded = 0;            ///< trial: how many must answer
    std::string pattern;             ///< listen: "steady", "temporal-three", "pulsed"...; empty if any
    Source source;                   ///< of the step itself
    std::string part;                ///< the file that gave it: "kinds/flood.toml", "parts/purpose-fire.toml"
};

/// What a sheet is composed for; the walk fills it from the plan.
struct Traits {
    std::string kind;
    std::vector<std::string> signals; ///< "alarm" and what signals.csv adds
    std::string feed, rest, resistors, purpose, delay, sounding, reporting; ///< words of the plan; empty if unknown
    std::vector<std::string> rules;
};

/// A composed sheet.
struct Sheet {
    std::string kind;
    std::vector<Step> steps;
};

/// The words used in files and in the record for the enumerators ("do", "walk-test", "received"...).
std::string_view wordOf(StepKind kind);
std::string_view wordOf(Proof proof);
std::string_view wordOf(SystemState state);
std::string_view wordOf(Subject subject);
std::string_view wordOf(PlanLimit limit);
std::string_view wordOf(Binding binding);
std::optional<SystemState> stateFrom(std::string_view word);

} // namespace proofwalk::catalogue
