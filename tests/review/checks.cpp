// SPDX-License-Identifier: GPL-3.0-or-later
// Each check: the sound plan does not trigger it, one spoilt cell does, at the right place and with the right word.
// A check that is taken out of the table, or added to it without a case here, fails a test.
// Sources of the figures stand beside their cases.
#include "core/words/words.h"
#include "tests/review/sound.h"

#include <QTest>

#include <algorithm>

using namespace proofwalk;
using test::argument;

class Checks : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void soundPlanIsLeftAlone();
    void spoilt_data();
    void spoilt();
    void everyCheckIsTried();
    void leastPlanIsLeftAlone();
    void orderIsTheTables();
};

namespace {

struct Case {
    const char* name;
    const char* check;
    const char* code;
    const char* where;
    const char *file, *from, *to;
    const char* argument = "";
    const char* value = "";
};

const Case cases[] = {
    {"two devices with one tag", "tag-unique", "review.tag-twice", "devices.csv:3, K-1", "devices.csv", "F-1,flood",
     "K-1,flood", "other", "2"},
    {"two zones with one name", "name-unique", "review.name-twice", "zones.csv:6, 4", "zones.csv", "\n5,house",
     "\n4,house"},
    {"two paths with one name", "name-unique", "review.name-twice", "paths.csv:3, line", "paths.csv",
     "mobile,,owner,line", "line,,owner,"},
    {"device in a zone that is not there", "zone-exists", "review.zone-unknown", "devices.csv:3, F-1", "devices.csv",
     "flood,2,", "flood,22,", "found", "22"},
    {"signal in a zone that is not there", "zone-exists", "review.zone-unknown", "signals.csv:2, K-1", "signals.csv",
     "tamper,5", "tamper,7", "found", "7"},
    {"zone in an area misspelt", "area-exists", "review.area-unknown", "zones.csv:5, 4", "zones.csv", "4,shed",
     "4,shad", "nearest", "shed"},
    {"zone without area", "area-exists", "review.zone-without-area", "zones.csv:5, 4", "zones.csv", "4,shed", "4,"},
    {"timer of no area", "area-exists", "review.area-unknown", "timers.csv:2, entry-delay", "timers.csv",
     "entry-delay,house", "entry-delay,attic"},
    {"live in a mode misspelt", "mode-exists", "review.mode-unknown", "zones.csv:2, 1", "zones.csv", "away;night,loud",
     "away;nigth,loud", "nearest", "night"},
    {"always and a mode", "mode-exists", "review.always-and-modes", "zones.csv:3, 2", "zones.csv", "none,always,notify",
     "none,always;away,notify"},
    {"effect in an unknown mode", "mode-exists", "review.mode-unknown", "effects.csv:2, purpose:intrusion",
     "effects.csv", "away;night", "away;party"},
    {"floor not there", "floor-exists", "review.floor-unknown", "devices.csv:3, F-1", "devices.csv", "2,ground,kitchen",
     "2,cellar,kitchen", "nearest", "ground"},
    {"signal of no device", "signal-device", "review.signal-device-unknown", "signals.csv:2, K-11", "signals.csv",
     "K-1,tamper", "K-11,tamper", "nearest", "K-1"},
    {"one signal twice", "signal-device", "review.signal-twice", "signals.csv:4, R-1", "signals.csv", "R-1,extra",
     "R-1,tamper"},
    {"alarm on two zones", "signal-device", "review.alarm-zone-twice", "signals.csv:2, K-1", "signals.csv",
     "K-1,tamper", "K-1,alarm", "other", "1"},
    {"fed by a supply that is not there", "supply-exists", "review.supply-unknown", "devices.csv:4, S-1", "devices.csv",
     "main,20", "mian,20", "nearest", "main"},
    {"panel fed by a supply that is not there", "supply-exists", "review.supply-unknown", "panel.csv, field supply",
     "panel.csv", "supply,main", "supply,spare"},
    {"kind misspelt", "kind-known", "review.kind-unknown", "devices.csv:2, K-1", "devices.csv", "contact-surface",
     "contact-surfase", "nearest", "contact-surface"},
    {"kind of the trade without sheet", "kind-sheet", "review.no-sheet", "devices.csv:7, H-1", "devices.csv",
     "holdup-button", "glass-foil", "count", "1"},
    {"smoke on an intrusion zone", "purpose-fits-kind", "review.purpose-unfit", "devices.csv:4, S-1", "zones.csv",
     "3,house,fire", "3,house,intrusion", "purpose", "intrusion"},
    {"zone whose purpose nobody can tell", "purpose-stated", "review.purpose-missing", "zones.csv:8, 9", "zones.csv",
     "\n6,house,hold-up", "\n6,house,hold-up,none,always,silent,yes,122,loop,closed,,,,,,,\n9,house,"},
    {"zone without device", "zone-used", "review.zone-unused", "zones.csv:7, 6", "devices.csv", "holdup-button,6",
     "holdup-button,1"},
    {"detector without zone", "device-zoned", "review.device-unzoned", "devices.csv:3, F-1", "devices.csv", "flood,2",
     "flood,"},
    {"public can reach it, no tamper", "tamper-where-public", "review.tamper-missing", "devices.csv:2, K-1",
     "signals.csv", "K-1,tamper,5", "K-1,locked,5"},
    // DC-05 list: 111 is smoke; DC-04 list: WA is a water leak (public code lists).
    {"fire code on an intrusion zone", "report-code", "review.code-unfit", "zones.csv:5, 4", "zones.csv", "131", "111",
     "event", "smoke"},
    {"intrusion told as a leak", "report-code", "review.code-unfit", "zones.csv:5, 4", "zones.csv", "131", "WA"},
    {"code that says nothing", "report-code", "review.code-unknown", "zones.csv:5, 4", "zones.csv", "131", "199"},
    {"two resistors, one value", "resistors-stated", "review.resistor-missing", "zones.csv:2, 1", "zones.csv",
     "2,4700,4700", "2,4700,", "wanted", "alarm_ohm"},
    // IEC 60063: 4700 is in E24, 4750 in E96, 4800 in neither; nearest of E24 is 4700 (4.7 and 5.1 a decade).
    {"resistor nobody makes", "resistor-value", "review.resistor-value", "zones.csv:3, 2", "zones.csv", "1,4700,,,1",
     "1,4800,,,1", "nearest", "4700"},
    // measure-vectors loop-01: AWG 24, 100 m, 16.84302 ohm out and back; so 594 m have 100.05 and 593 m 99.88.
    {"594 m of thin cable", "loop-cable", "review.cable-resistance", "zones.csv:3, 2", "zones.csv",
     "4700,,,1,AWG 24,40", "4700,,,1,AWG 24,594", "found", "100"},
    {"conductor not in the table", "loop-cable", "measure.conductor-unknown", "zones.csv:3, 2, column conductor",
     "zones.csv", "4700,,,1,AWG 24", "4700,,,1,AWG 42"},
    // measure-vectors loop-03: 10 kohm and 1 kohm of 10 % each cannot be told apart, the windows reach 11000 and 9900.
    {"resistors that cannot be told apart", "loop-states", "review.loop-states-alike", "zones.csv:2, 1", "zones.csv",
     "2,4700,4700,,1,AWG 24,40", "2,10000,1000,,10,,", "wanted", "9900"},
    // measure-vectors loop-02: 4700 and 4700 of 1 %: alarm from 9306 upwards.
    {"threshold inside the alarm's window", "loop-states", "review.loop-threshold", "zones.csv:2, 1", "panel.csv",
     "loop_normal_alarm_ohm,7050", "loop_normal_alarm_ohm,9307", "reaches", "9306"},
    {"one serial on two devices", "serial-unique", "review.serial-twice", "devices.csv:4, S-1", "devices.csv",
     "kitchen,,,,,no\nS-1,smoke-four-wire,3,ground,hall,,", "kitchen,A2,,,,no\nS-1,smoke-four-wire,3,ground,hall,A2,"},
    {"one input twice", "serial-unique", "review.input-twice", "signals.csv:4, R-1", "signals.csv", "A1,3", "A1,2",
     "other", "tamper"},
    {"rules misspelt", "rules-known", "review.rules-unknown", "site.csv, field rules", "site.csv", "intruder-eu",
     "intruder-ue", "nearest", "intruder-eu"},
    // EN 50131-1:2006 as quoted on a public page: unsetting must be completed within 45 s.
    {"entry delay too long", "timer-range", "review.timer-long", "timers.csv:2, entry-delay", "timers.csv", "house,30",
     "house,46", "limit", "45"},
    // measure-vectors battery-01: 0.42 A for 24 h and 3.8 A for 5 min, with 25 %: 12.99583 Ah.
    {"battery too small", "battery-load", "review.battery-small", "power.csv:2, main", "power.csv", "main,18",
     "main,12.9", "wanted", "13.0"},
    {"smoke in the kitchen", "room-suits-kind", "review.room-unsuited", "devices.csv:4, S-1", "devices.csv",
     "smoke-four-wire,3,ground,hall", "smoke-four-wire,3,ground,Kitchen 2"},
    {"smoke in the garage", "room-suits-kind", "review.room-unsuited", "devices.csv:4, S-1", "devices.csv",
     "smoke-four-wire,3,ground,hall", "smoke-four-wire,3,ground,Van garage"},
    {"opening nothing protects", "opening-protected", "review.opening-unprotected", "openings.csv:2, Door",
     "openings.csv", "hall,K-1", "hall,"},
    {"opening watched by nobody knows what", "opening-device", "review.opening-device-unknown", "openings.csv:2, Door",
     "openings.csv", "hall,K-1", "hall,K-1;K-9", "found", "K-9"},
    {"effect on a device not there", "effect-exists", "review.effect-device-unknown", "effects.csv:3, zone:3 to O-9",
     "effects.csv", "zone:3,always,O-1", "zone:3,always,O-9", "nearest", "O-1"},
    {"effect by a path not there", "effect-exists", "review.effect-path-unknown", "effects.csv:4, F-1 to path:lime",
     "effects.csv", "path:line", "path:lime", "nearest", "line"},
    {"cause of a zone not there", "cause-exists", "review.cause-zone-unknown", "effects.csv:3, zone:33 to O-1",
     "effects.csv", "zone:3", "zone:33"},
    {"cause of a device not there", "cause-exists", "review.cause-device-unknown", "effects.csv:4, F-2 to path:line",
     "effects.csv", "F-1,unset", "F-2,unset"},
    {"cause of a mode not there", "cause-exists", "review.cause-mode-unknown", "effects.csv:5, mode:awy to O-1",
     "effects.csv", "mode:away", "mode:awy", "nearest", "away"},
    {"cause of a purpose misspelt", "cause-exists", "review.cause-purpose-unknown", "effects.csv:2, purpose:intrusio",
     "effects.csv", "purpose:intrusion", "purpose:intrusio", "nearest", "intrusion"},
    {"cause of a purpose no zone has", "cause-exists", "review.cause-purpose-unused", "effects.csv:2, purpose:gas",
     "effects.csv", "purpose:intrusion", "purpose:gas"},
    {"path to nobody", "path-received", "review.path-nobody", "paths.csv:3, mobile", "paths.csv", "mobile,,owner",
     "mobile,,nobody"},
    {"path to blank", "path-received", "review.path-nobody", "paths.csv:3, mobile", "paths.csv", "mobile,,owner",
     "mobile,,"},
    {"zone whose account no path carries", "zone-heard", "review.zone-unheard", "zones.csv:5, 4", "paths.csv",
     "4711;4712,station,\nmobile,,", "4711,station,\nmobile,4711,", "account", "4712"},
    {"stands in for no path", "backup-path", "review.backup-unknown", "paths.csv:3, mobile", "paths.csv", "owner,line",
     "owner,radio"},
    {"stands in for itself", "backup-path", "review.backup-unknown", "paths.csv:3, mobile", "paths.csv", "owner,line",
     "owner,mobile"},
};

const words::Book& english()
{
    static const words::Book book = words::Book::open(PROOFWALK_SOURCE "/core/words/english").value();
    return book;
}

/// The catalogue without the sheet of glass-foil, should it be written one day.
const catalogue::Catalogue& withoutFoil()
{
    static const catalogue::Catalogue catalogue = [] {
        auto files = test::fullCatalogue().files();
        files.erase("kinds/glass-foil.toml");
        return catalogue::Catalogue::read(files).value();
    }();
    return catalogue;
}

} // namespace

void Checks::soundPlanIsLeftAlone()
{
    for (const review::Remark& remark : test::reviewOf(test::soundPlan()))
        QFAIL((remark.check + ", " + remark.where + ": " + remark.code).c_str());
}

void Checks::spoilt_data()
{
    QTest::addColumn<int>("number");
    for (int i = 0; i < int(std::size(cases)); ++i) QTest::newRow(cases[i].name) << i;
}

void Checks::spoilt()
{
    QFETCH(int, number);
    const Case& spoil = cases[number];
    auto files = test::soundPlan();
    test::change(files, spoil.file, spoil.from, spoil.to);
    const auto remarks = test::reviewOf(files, withoutFoil());
    const auto found = std::ranges::find_if(remarks, [&](const review::Remark& remark) {
        return remark.code == spoil.code && remark.where == spoil.where;
    });
    if (found == remarks.end()) {
        for (const auto& remark : remarks)
            qWarning("%s, %s: %s", remark.check.c_str(), remark.where.c_str(), remark.code.c_str());
    }
    QVERIFY(found != remarks.end());
    QCOMPARE(found->check, spoil.check);
    if (*spoil.argument) QCOMPARE(argument(found->arguments, spoil.argument), spoil.value);
    const auto sentence = english().sentence({found->code, found->where, found->arguments});
    QVERIFY2(english().has(found->code) && !sentence.contains('{'), sentence.c_str());
    // Once and not once a row.
    QCOMPARE(
        std::ranges::count_if(remarks, [&](const auto& r) { return r.code == spoil.code && r.where == spoil.where; }),
        1);
}

void Checks::everyCheckIsTried()
{
    std::set<std::string> tried;
    for (const Case& each : cases) tried.insert(each.check);
    std::set<std::string> there;
    for (const review::Check& check : review::checks()) {
        QVERIFY2(there.emplace(check.id).second, std::string(check.id).c_str());
        QVERIFY2(!check.basis.empty(), std::string(check.id).c_str());
    }
    QCOMPARE(tried, there);
}

void Checks::leastPlanIsLeftAlone()
{
    for (const auto& remark : test::reviewOf({{"devices.csv", "kind,room\ncontact-surface,hall\n"}}))
        QCOMPARE(remark.code, "review.device-unzoned");
}

void Checks::orderIsTheTables()
{
    auto files = test::soundPlan();
    test::change(files, "devices.csv", "F-1,flood,2", "K-1,floodd,22");
    const auto remarks = test::reviewOf(files);
    std::vector<std::string> order;
    for (const auto& remark : remarks) {
        if (order.empty() || order.back() != remark.check) order.push_back(remark.check);
    }
    std::vector<std::string> wanted;
    for (const auto& check : review::checks()) {
        if (std::ranges::find(order, check.id) != order.end()) wanted.emplace_back(check.id);
    }
    QVERIFY(wanted.size() >= 3);
    QCOMPARE(order, wanted);
}

QTEST_GUILESS_MAIN(Checks)
#include "checks.moc"
