// SPDX-License-Identifier: GPL-3.0-or-later
// A small plan with which no check finds fault, though it has every file and nearly every column; and what it takes to
// review it. Tests spoil one cell at a time.
#pragma once

#include "core/review/review.h"
#include "tests/plan/folder.h"

#include <map>
#include <set>
#include <string>

namespace proofwalk::test {

using PlanFiles = std::map<std::string, std::string>;

inline PlanFiles soundPlan()
{
    return {
        {"site.csv", "field,value\nname,Test house\nrules,intruder-eu;fire-uk\n"},
        {"areas.csv", "area,name,account\nhouse,House,4711\nshed,Shed,4712\n"},
        {"modes.csv", "mode,areas\naway,house;shed\nnight,house\n"},
        {"zones.csv",
         "zone,areas,purpose,delay,live_in,sounding,reporting,report_code,feed,rest,resistors,eol_ohm,alarm_ohm,"
         "fault_ohm,tolerance_pct,conductor,cable_m\n"
         "1,house,intrusion,entry,away;night,loud,yes,134,loop,closed,2,4700,4700,,1,AWG 24,40\n"
         "2,house,environment,none,always,notify,yes,WA,loop,closed,1,4700,,,1,AWG 24,40\n"
         "3,house,fire,none,always,loud,yes,111,four-wire,open,2,4700,680,,1,AWG 24,40\n"
         "4,shed,intrusion,none,away,loud,yes,131,radio,,,,,,,,\n"
         "5,house,tamper,none,always,inside,yes,137,loop,closed,1,4700,,,1,AWG 24,40\n"
         "6,house,hold-up,none,always,silent,yes,122,loop,closed,,,,,,,\n"},
        {"devices.csv", "tag,kind,zone,floor,room,serial,supply,standby_ma,alarm_ma,public_access\n"
                        "K-1,contact-surface,1,ground,hall,,,,,yes\n"
                        "F-1,flood,2,ground,kitchen,,,,,no\n"
                        "S-1,smoke-four-wire,3,ground,hall,,main,20,50,no\n"
                        "R-1,contact-surface,4,ground,garage,A1,,,,no\n"
                        "O-1,sounder-inside,,ground,hall,,main,400,3750,no\n"
                        "H-1,holdup-button,6,ground,office,,,,,no\n"},
        {"signals.csv", "tag,signal,zone,serial,input\nK-1,tamper,5,,\nR-1,tamper,5,A1,2\nR-1,extra,4,A1,3\n"},
        {"effects.csv",
         "cause,in_mode,effect\npurpose:intrusion,away;night,O-1\nzone:3,always,O-1\nF-1,unset,path:line\n"
         "mode:away,always,O-1\n"},
        {"paths.csv", "path,account,to,backup_of\nline,4711;4712,station,\nmobile,,owner,line\n"},
        {"panel.csv",
         "field,value\nloop_short_normal_ohm,2000\nloop_normal_alarm_ohm,7050\nloop_alarm_normal_ohm,2300\n"
         "loop_alarm_cut_ohm,20000\nsupply,main\n"},
        {"floors.csv", "floor,level\nground,0\n"},
        {"timers.csv", "timer,area,planned_s\nentry-delay,house,30\nexit-delay,,60\n"},
        {"power.csv", "supply,battery_ah,standby_h,alarm_min,derating\nmain,18,24,5,0.8\n"},
        {"openings.csv", "opening,floor,room,protected_by\nDoor,ground,hall,K-1\n"},
    };
}

/// Puts `to` in the place of `from`, which must be there.
inline void change(PlanFiles& files, const std::string& file, const std::string& from, const std::string& to)
{
    std::string& text = files.at(file);
    const auto at = text.find(from);
    if (at == std::string::npos) qFatal("%s holds no \"%s\"", file.c_str(), from.c_str());
    text.replace(at, from.size(), to);
}

inline const catalogue::Catalogue& fullCatalogue()
{
    static const auto read =
        catalogue::Catalogue::read(catalogue::readFolder(PROOFWALK_SOURCE "/core/catalogue").value());
    if (!read) qFatal("%s: %s", read.error().where.c_str(), read.error().code.c_str());
    return *read;
}

inline const review::Knowledge& knowledge()
{
    static const auto read = review::Knowledge::read(PROOFWALK_SOURCE "/core");
    if (!read) qFatal("%s: %s", read.error().where.c_str(), read.error().code.c_str());
    return *read;
}

inline plan::Plan planOf(const PlanFiles& files)
{
    auto plan = PlanFolder(files).read();
    if (!plan) qFatal("%s: %s", plan.error().front().where.c_str(), plan.error().front().code.c_str());
    return *plan;
}

inline std::vector<review::Remark> reviewOf(const PlanFiles& files,
                                            const catalogue::Catalogue& sheets = fullCatalogue())
{
    return review::reviewPlan(planOf(files), sheets, knowledge());
}

} // namespace proofwalk::test
