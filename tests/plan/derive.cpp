// SPDX-License-Identifier: GPL-3.0-or-later
// What is derived, that each derived cell is named and listed, and that what is not clear stays blank.
#include "core/plan/derive.h"
#include "core/words/words.h"
#include "tests/plan/folder.h"

#include <QTest>

#include <algorithm>
#include <set>

using namespace proofwalk;
using test::argument;
using test::PlanFolder;

class Derive : public QObject {
    Q_OBJECT
private slots:
    void tags();
    void zonesAreasModesAndFloors();
    void fireZone();
    void intrusionZoneLiveInItsModes();
    void mixedKindsLeaveThePurposeBlank();
    void tamperSignalsMakeATamperZone();
    void reportingWithAndWithoutAReceiver();
    void writtenCellsStand();
    void sameInEveryRowIsOneAssumption();
    void accountOfTheSite();
    void feedOfTwoWireHeads();
    void everyAssumptionHasWords();
};

namespace {

bool assumes(const plan::Row& row, std::string_view column)
{
    return std::ranges::find(row.assumed, column) != row.assumed.end();
}

std::string listed(const plan::Plan& plan, std::string_view code, std::string_view where)
{
    for (const plan::Assumption& each : plan.assumptions) {
        if (each.code == code && each.where == where) return argument(each.arguments, "value");
    }
    return "not listed";
}

} // namespace

void Derive::tags()
{
    const auto plan = PlanFolder({{"devices.csv", "tag,kind,room\n,flood,a\nD03,flood,b\n,flood,c\n"}}).read();
    QVERIFY(plan);
    QCOMPARE(plan->devices[0].tag, "D01");
    QCOMPARE(plan->devices[1].tag, "D03");
    QCOMPARE(plan->devices[2].tag, "D03+"); // D03 is taken: theirs stays
    QVERIFY(!assumes(plan->devices[1], "tag"));
    QCOMPARE(listed(*plan, "plan.assumed-tag", "devices.csv:2, column tag"), "D01");
}

void Derive::zonesAreasModesAndFloors()
{
    const auto plan =
        PlanFolder({{"devices.csv", "kind,zone,floor\nflood,3,cellar\ncontact-surface,1,ground\nflood,3,cellar\n"}})
            .read();
    QVERIFY(plan);
    QCOMPARE(plan->zones.size(), 2U);
    QCOMPARE(plan->zones[0].zone, "3");
    QCOMPARE(plan->zones[0].purpose, "environment");
    QCOMPARE(plan->zones[1].purpose, "intrusion");
    QCOMPARE(plan->zones[1].liveIn, std::vector<std::string>{"set"});
    QCOMPARE(plan->areas.at(0).area, "all");
    QCOMPARE(plan->zones[1].areas, std::vector<std::string>{"all"});
    QCOMPARE(plan->modes.at(0).mode, "set");
    QCOMPARE(plan->modes[0].areas, std::vector<std::string>{"all"});
    QCOMPARE(plan->floors.size(), 2U);
    QCOMPARE(listed(*plan, "plan.assumed-zone", "zones.csv, column zone"), "3");
    QCOMPARE(listed(*plan, "plan.assumed-mode", "modes.csv, column mode"), "set");
}

void Derive::fireZone()
{
    const auto plan =
        PlanFolder({{"devices.csv", "kind,zone,room\nsmoke-four-wire,9,hall\n"}, {"zones.csv", "zone\n9\n"}}).read();
    QVERIFY(plan);
    const plan::Zone& zone = plan->zones[0];
    QCOMPARE(zone.purpose, "fire");
    QCOMPARE(zone.delay, "none");
    QCOMPARE(zone.liveIn, std::vector<std::string>{"always"});
    QCOMPARE(zone.sounding, "loud");
    QCOMPARE(zone.feed, "four-wire");
    QCOMPARE(zone.rest, "open");
    QVERIFY(!zone.resistors);
    for (const char* column : {"purpose", "delay", "live_in", "sounding", "feed", "rest", "reporting", "areas"})
        QVERIFY2(assumes(zone, column), column);
    QVERIFY(!assumes(zone, "resistors"));
    QCOMPARE(listed(*plan, "plan.assumed-live-in", "zones.csv:2, column live_in"), "always");
}

void Derive::intrusionZoneLiveInItsModes()
{
    const auto plan = PlanFolder({{"devices.csv", "kind,zone,room\ncontact-surface,1,hall\n"},
                                  {"zones.csv", "zone,areas\n1,mill\n"},
                                  {"areas.csv", "area\nmill\nflat\n"},
                                  {"modes.csv", "mode,areas\nfull,mill;flat\nflat-only,flat\nshop,mill\n"}})
                          .read();
    QVERIFY(plan);
    QCOMPARE(plan->zones[0].liveIn, (std::vector<std::string>{"full", "shop"}));
}

void Derive::mixedKindsLeaveThePurposeBlank()
{
    const auto plan =
        PlanFolder({{"devices.csv", "kind,zone,room\nflood,1,a\nsmoke-four-wire,1,b\nkeypad,2,c\n"}}).read();
    QVERIFY(plan);
    for (const plan::Zone& zone : plan->zones) {
        QVERIFY(zone.purpose.empty());
        QVERIFY(zone.sounding.empty());
        QVERIFY(zone.liveIn.empty());
        QVERIFY(!assumes(zone, "purpose"));
    }
}

void Derive::tamperSignalsMakeATamperZone()
{
    const auto plan = PlanFolder({{"devices.csv", "tag,kind,zone,room\nA,motion-infrared,1,a\n"},
                                  {"signals.csv", "tag,signal,zone\nA,tamper,41\nA,fault,42\n"}})
                          .read();
    QVERIFY(plan);
    QCOMPARE(plan->findZone("41")->purpose, "tamper");
    QCOMPARE(plan->findZone("42")->purpose, "");
    QCOMPARE(plan->findZone("1")->purpose, "intrusion");
}

void Derive::reportingWithAndWithoutAReceiver()
{
    const std::string devices = "kind,zone,room\nflood,1,a\nflood,2,a\n";
    const std::string zones = "zone,report_code\n1,154\n2,\n";
    const auto alone = PlanFolder({{"devices.csv", devices}, {"zones.csv", zones}}).read();
    QVERIFY(alone);
    QVERIFY(alone->findZone("1")->reporting);
    QVERIFY(!alone->findZone("2")->reporting);
    const auto heard =
        PlanFolder({{"devices.csv", devices}, {"zones.csv", zones}, {"paths.csv", "path,to\nline,owner\n"}}).read();
    QVERIFY(heard);
    QVERIFY(heard->findZone("2")->reporting);
    const auto nobody =
        PlanFolder({{"devices.csv", devices}, {"zones.csv", zones}, {"paths.csv", "path,to\nline,nobody\n"}}).read();
    QVERIFY(nobody);
    QVERIFY(!nobody->findZone("2")->reporting);
}

void Derive::writtenCellsStand()
{
    const auto plan = PlanFolder({{"devices.csv", "kind,zone,room\nsmoke-four-wire,9,hall\n"},
                                  {"zones.csv", "zone,purpose,delay,live_in,sounding,reporting,feed,rest,areas\n"
                                                "9,technical,entry,away,silent,no,loop,closed,x\n"},
                                  {"paths.csv", "path,to\nline,station\n"}})
                          .read();
    QVERIFY(plan);
    const plan::Zone& zone = plan->zones[0];
    QVERIFY(zone.assumed.empty());
    QCOMPARE(zone.purpose, "technical");
    QCOMPARE(zone.sounding, "silent");
    QVERIFY(!zone.reporting);
}

void Derive::sameInEveryRowIsOneAssumption()
{
    const auto plan = PlanFolder({{"devices.csv", "kind,room\nflood,a\nflood,b\nflood,c\n"}}).read();
    QVERIFY(plan);
    const auto count = std::ranges::count(plan->assumptions, "plan.assumed-public-access", &plan::Assumption::code);
    QCOMPARE(count, 1);
    QCOMPARE(listed(*plan, "plan.assumed-public-access", "devices.csv, column public_access"), "no");
    QCOMPARE(std::ranges::count(plan->assumptions, "plan.assumed-tag", &plan::Assumption::code), 3);
}

void Derive::accountOfTheSite()
{
    const std::string devices = "kind,zone,room\nflood,1,a\n";
    const auto one = PlanFolder({{"devices.csv", devices}, {"site.csv", "field,value\naccount,4711\n"}}).read();
    QVERIFY(one);
    QCOMPARE(one->areas.at(0).account, "4711");
    const auto two = PlanFolder({{"devices.csv", devices}, {"site.csv", "field,value\naccount,4711;4712\n"}}).read();
    QVERIFY(two);
    QCOMPARE(two->areas.at(0).account, "");
}

void Derive::feedOfTwoWireHeads()
{
    const auto plan =
        PlanFolder({{"devices.csv", "kind,zone,room\nsmoke-two-wire,1,a\ncontact-surface,2,a\ncontact-surface,3,a\n"},
                    {"zones.csv", "zone,eol_ohm\n1,4700\n2,4700\n3,\n"}})
            .read();
    QVERIFY(plan);
    QCOMPARE(plan->findZone("1")->feed, "two-wire");
    QCOMPARE(plan->findZone("2")->feed, "loop"); // a resistor stands in a loop
    QCOMPARE(plan->findZone("3")->feed, "");     // may be radio: nobody said
    QCOMPARE(plan->findZone("3")->rest, "");
}

// A plan that says as little as it may in every file.
void Derive::everyAssumptionHasWords()
{
    const auto book = words::Book::open(PROOFWALK_SOURCE "/core/words/english");
    QVERIFY(book);
    std::set<std::string> codes;
    const std::string devices = "kind,zone,floor,room\nsmoke-four-wire,1,ground,\ncontact-surface,2,,hall\n";
    for (const auto& plan : {PlanFolder({{"devices.csv", devices}, {"site.csv", "field,value\naccount,4711\n"}}).read(),
                             PlanFolder({{"devices.csv", devices},
                                         {"zones.csv", "zone,eol_ohm\n1,\n2,4700\n"},
                                         {"modes.csv", "mode\naway\n"},
                                         {"effects.csv", "cause,effect\nzone:1,D02\n"},
                                         {"power.csv", "supply\nmain\n"}})
                                 .read()}) {
        QVERIFY(plan);
        for (const auto& each : plan->assumptions) {
            codes.insert(each.code);
            const auto sentence = book->phrase(each.code, each.arguments);
            QVERIFY2(book->has(each.code) && !sentence.contains('{'), sentence.c_str());
        }
    }
    // As many as derive() and the blank truths can make.
    QCOMPARE(codes, (std::set<std::string>{"plan.assumed-account", "plan.assumed-area", "plan.assumed-areas",
                                           "plan.assumed-delay", "plan.assumed-derating", "plan.assumed-feed",
                                           "plan.assumed-floor", "plan.assumed-in-mode", "plan.assumed-latching",
                                           "plan.assumed-live-in", "plan.assumed-mode", "plan.assumed-public-access",
                                           "plan.assumed-purpose", "plan.assumed-reporting", "plan.assumed-rest",
                                           "plan.assumed-sounding", "plan.assumed-tag", "plan.assumed-zone"}));
}

QTEST_GUILESS_MAIN(Derive)
#include "derive.moc"
