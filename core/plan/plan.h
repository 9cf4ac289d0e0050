// SPDX-License-Identifier: GPL-3.0-or-later
// What was designed: areas, zones, devices and what they cause, as rows with typed cells. FORMAT.md beside this file
// writes down the domain of every column.
#pragma once

#include "core/base/decimal.h"
#include "core/base/result.h"

#include <map>
#include <optional>
#include <string>
#include <vector>

namespace proofwalk::plan {

/// Every row: its id (32 hex digits, given when a job starts; empty before) and where it was read.
struct Row {
    std::string id;
    std::string file; ///< "zones.csv"; empty for a row read back from a job
    int line = 0;
    std::vector<std::string> assumed; ///< columns that were left blank and derived
};

struct Area : Row {
    std::string area, name, account;
};

struct Mode : Row {
    std::string mode, name;
    std::vector<std::string> areas, by;
};

struct Zone : Row {
    std::string zone, label;
    std::vector<std::string> areas;
    std::string purpose;  ///< intrusion, hold-up, fire, carbon-monoxide, gas, medical, environment, tamper, technical
    std::string delay;    ///< none, entry, on-route
    std::vector<std::string> liveIn; ///< {"always"} or names of modes
    std::string sounding; ///< loud, inside, silent, notify
    bool reporting = false;
    std::string reportCode;
    std::string feed; ///< loop, two-wire, four-wire, radio, addressed
    std::string rest; ///< closed, open
    std::optional<int> resistors; ///< 0 to 3; blank: wired otherwise, not judged
    std::optional<base::Decimal> eol_ohm, alarm_ohm, tamper_ohm, fault_ohm, tolerance_pct;
    std::string pair, conductor;
    std::optional<base::Decimal> cable_m; ///< one way
};

struct Device : Row {
    std::string tag, kind, zone, floor, room;
    std::string position, protects, serial, note; ///< private
    std::optional<base::Decimal> x_m, y_m;        ///< private
    std::string drivenBy, supply;
    std::optional<base::Decimal> standby_ma, alarm_ma;
    bool publicAccess = false;
    std::string fitted, replaceBy;
};

struct Signal : Row {
    std::string tag, signal, zone, input;
    std::string serial; ///< private
};

struct Effect : Row {
    std::string cause;  ///< a tag, zone:N, purpose:NAME or mode:NAME
    std::string inMode; ///< always, unset or modes joined by ;
    std::string effect; ///< a tag or path:NAME
    std::optional<base::Decimal> within_s, for_s;
    bool latching = false;
};

struct Path : Row {
    std::string path, medium;
    std::vector<std::string> accounts; ///< empty: all
    std::string to;                    ///< station, owner, nobody
    std::string backupOf;
    std::optional<base::Decimal> supervised_s;
};

struct Floor : Row {
    std::string floor, name, drawing;
    std::optional<int> level;
    std::optional<base::Decimal> metresPerPixel, stairX_m, stairY_m;
};

struct Timer : Row {
    std::string timer, area; ///< entry-delay, exit-delay, abort-window, sounder-cutoff
    std::optional<base::Decimal> planned_s, tolerance_s;
};

struct Supply : Row {
    std::string supply;
    std::optional<base::Decimal> battery_ah, standby_h, alarm_min, derating, nominal_v, charge_a;
};

/// A door, window or hatch somebody could come in by, and what watches it. Without openings.csv no check asks.
struct Opening : Row {
    std::string opening, floor, room;
    std::vector<std::string> protectedBy; ///< tags; empty: nothing
};

/// site.csv and panel.csv: one row is a fact. site: name and address are private.
struct Fact : Row {
    std::string field, value;
};

/// What was left blank and derived, so that it can be listed and contradicted.
struct Assumption {
    std::string where; ///< "zones.csv:4, column purpose" or "devices.csv:7"
    std::string code; ///< words in core/words: "plan.assumed-purpose"
    std::vector<Argument> arguments;
};

struct Plan {
    std::vector<Fact> site, panel;
    std::vector<Area> areas;
    std::vector<Mode> modes;
    std::vector<Zone> zones;
    std::vector<Device> devices;
    std::vector<Signal> signals;
    std::vector<Effect> effects;
    std::vector<Path> paths;
    std::vector<Floor> floors;
    std::vector<Timer> timers;
    std::vector<Supply> supplies;
    std::vector<Opening> openings;

    std::vector<Assumption> assumptions;
    std::vector<std::string> unknownColumns; ///< "devices.csv: colour", kept out of the job but reported

    /// The value of a fact; empty if it is not there.
    std::string siteFact(std::string_view field) const;
    std::string panelFact(std::string_view field) const;
    /// The rule sets of site.csv, in order.
    std::vector<std::string> rules() const;
    const Zone* findZone(std::string_view zone) const;
    const Device* findDevice(std::string_view tag) const;
    const Area* findArea(std::string_view area) const;
    const Timer* findTimer(std::string_view timer, std::string_view area) const;
};

} // namespace proofwalk::plan
