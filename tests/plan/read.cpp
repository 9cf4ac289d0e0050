// SPDX-License-Identifier: GPL-3.0-or-later
// Reading a folder: every fault told with its place, nothing half read. The rules are those of core/plan/FORMAT.md.
#include "core/plan/read.h"
#include "tests/plan/folder.h"

#include <QTest>

#include <algorithm>

using namespace proofwalk;
using test::argument;
using test::PlanFolder;

class Read : public QObject {
    Q_OBJECT
private slots:
    void demonstrationPlans_data();
    void demonstrationPlans();
    void everyColumnArrives();
    void leastPlan();
    void everyFaultAtOnce();
    void noFolder();
    void noDevices();
    void kindColumnMissing();
    void placeColumnsMissing();
    void placeMissingInOneRow();
    void unknownColumnsFactsAndFiles();
    void blankRowsOfASpreadsheet();
    void brokenFileBesideSoundOnes();
    void factOutsideItsDomain();
    void loopThresholds();
    void timerWithoutAreaHoldsForAll();
};

namespace {

bool hasError(const std::vector<Error>& errors, std::string_view code, std::string_view where)
{
    return std::ranges::any_of(errors, [&](const Error& error) { return error.code == code && error.where == where; });
}

} // namespace

void Read::demonstrationPlans_data()
{
    QTest::addColumn<QString>("folder");
    QTest::addColumn<int>("least");
    QTest::addColumn<int>("most");
    QTest::newRow("lantern-mill") << "lantern-mill" << 60 << 70;
    QTest::newRow("corner-shop") << "corner-shop" << 8 << 12;
}

void Read::demonstrationPlans()
{
    QFETCH(QString, folder);
    QFETCH(int, least);
    QFETCH(int, most);
    const auto plan = plan::readPlan(std::filesystem::path(PROOFWALK_SOURCE) / "fixtures" / folder.toStdString());
    if (!plan) {
        for (const Error& error : plan.error()) qWarning("%s: %s", error.where.c_str(), error.code.c_str());
    }
    QVERIFY(plan);
    QVERIFY(int(plan->devices.size()) >= least && int(plan->devices.size()) <= most);
    for (const std::string& unknown : plan->unknownColumns) qWarning("%s", unknown.c_str());
    QVERIFY(plan->unknownColumns.empty());
}

void Read::everyColumnArrives()
{
    const PlanFolder folder({
        {"devices.csv",
         "room,kind,tag,zone,floor,position,protects,serial,x_m,y_m,driven_by,supply,standby_ma,alarm_ma,public_access,"
         "fitted,replace_by,note\r\nshop,motion-infrared,K-01,07,ground,\"corner, left\",shop floor,0A,1.50,-2,out 1,main,12,"
         "15.5,yes,2026-11,2036,\"two\nlines\"\r\n"},
        {"zones.csv",
         "zone,label,areas,purpose,delay,live_in,sounding,reporting,report_code,feed,rest,resistors,eol_ohm,alarm_ohm,"
         "tamper_ohm,fault_ohm,tolerance_pct,pair,conductor,cable_m\n07,Shop,mill;flat,intrusion,entry,away;night,loud,yes,"
         "BA,loop,closed,2,4700,2200,1000,680,1,blue,AWG 22,42.50\n"},
    });
    const auto plan = folder.read();
    QVERIFY(plan);
    const plan::Device& device = plan->devices.at(0);
    QCOMPARE(device.position, "corner, left");
    QCOMPARE(device.x_m->exponent, -2);
    QCOMPARE(base::toDouble(*device.y_m), -2.0);
    QCOMPARE(base::toDouble(*device.alarm_ma), 15.5);
    QVERIFY(device.publicAccess);
    QCOMPARE(device.replaceBy, "2036");
    QCOMPARE(device.note, "two\nlines");
    QCOMPARE(device.file, "devices.csv");
    QCOMPARE(device.line, 2);
    const plan::Zone& zone = plan->zones.at(0);
    QCOMPARE(zone.areas, (std::vector<std::string>{"mill", "flat"}));
    QCOMPARE(zone.liveIn, (std::vector<std::string>{"away", "night"}));
    QCOMPARE(zone.reportCode, "BA");
    QCOMPARE(*zone.resistors, 2);
    QCOMPARE(base::toText(*zone.fault_ohm), "680");
    QCOMPARE(base::toText(*zone.cable_m), "42.50");
    QVERIFY(zone.assumed.empty());
    QCOMPARE(plan->findZone("07"), &zone);
    QCOMPARE(plan->findDevice("K-01"), &device);
    QVERIFY(!plan->findDevice("k-01"));
}

void Read::leastPlan()
{
    const auto plan = PlanFolder({{"devices.csv", "kind,room\nunknown,hall\n"}}).read();
    QVERIFY(plan);
    QCOMPARE(plan->devices.size(), 1U);
    QCOMPARE(plan->devices[0].tag, "D01");
    QVERIFY(plan->zones.empty());
    QVERIFY(plan->areas.empty());
}

void Read::everyFaultAtOnce()
{
    const auto plan =
        PlanFolder({{"devices.csv", "tag,kind,room,standby_ma,public_access\nA,,hall,1,maybe\nB,flood,hall,x,no\n"},
                    {"zones.csv", "zone,purpose,cable_m\n1,intrusoin,\"12,5\"\n,fire,99999\n"}})
            .read();
    QVERIFY(!plan);
    const auto& errors = plan.error();
    QCOMPARE(errors.size(), 7U);
    QVERIFY(hasError(errors, "plan.cell-empty", "devices.csv:2, column kind"));
    QVERIFY(hasError(errors, "plan.cell-word", "devices.csv:2, column public_access"));
    QVERIFY(hasError(errors, "plan.cell-not-a-number", "devices.csv:3, column standby_ma"));
    QVERIFY(hasError(errors, "plan.cell-word", "zones.csv:2, column purpose"));
    QVERIFY(hasError(errors, "plan.cell-not-a-number", "zones.csv:2, column cable_m"));
    QVERIFY(hasError(errors, "plan.cell-empty", "zones.csv:3, column zone"));
    QVERIFY(hasError(errors, "plan.cell-range", "zones.csv:3, column cable_m"));
    const auto word = std::ranges::find(errors, "zones.csv:2, column purpose", &Error::where);
    QCOMPARE(argument(word->arguments, "nearest"), "intrusion");
    const auto number = std::ranges::find(errors, "zones.csv:2, column cable_m", &Error::where);
    QCOMPARE(argument(number->arguments, "found"), "12,5");
}

void Read::noFolder()
{
    const auto plan = plan::readPlan("/nowhere/at/all");
    QVERIFY(!plan);
    QCOMPARE(plan.error().at(0).code, "plan.no-devices");
    QCOMPARE(argument(plan.error().at(0).arguments, "found"), "/nowhere/at/all");
}

void Read::noDevices()
{
    const auto plan = PlanFolder({{"devices.csv", "kind,room\n,\n"}}).read();
    QVERIFY(!plan);
    QCOMPARE(plan.error().at(0).code, "plan.no-devices");
}

void Read::kindColumnMissing()
{
    const auto plan = PlanFolder({{"devices.csv", "tag,Kind,room\nA,flood,hall\nB,flood,hall\n"}}).read();
    QVERIFY(!plan);
    QCOMPARE(plan.error().size(), 1U); // once for the column, not once a row
    QCOMPARE(plan.error()[0].code, "plan.column-missing");
    QCOMPARE(argument(plan.error()[0].arguments, "wanted"), "kind");
}

void Read::placeColumnsMissing()
{
    const auto plan = PlanFolder({{"devices.csv", "kind\nflood\nflood\n"}}).read();
    QVERIFY(!plan);
    QCOMPARE(plan.error().size(), 1U);
    QCOMPARE(plan.error()[0].code, "plan.column-missing");
}

void Read::placeMissingInOneRow()
{
    const auto plan = PlanFolder({{"devices.csv", "kind,floor,room\nflood,cellar,\nflood,,\n"}}).read();
    QVERIFY(!plan);
    QCOMPARE(plan.error().size(), 1U);
    QVERIFY(hasError(plan.error(), "plan.cell-empty", "devices.csv:3, column room"));
}

void Read::unknownColumnsFactsAndFiles()
{
    const auto plan = PlanFolder({{"devices.csv", "kind,room,colour\nflood,hall,white\n"},
                                  {"site.csv", "field,value\nrules,fire-uk\nweather,wet\n"},
                                  {"zone.csv", "zone\n1\n"},
                                  {"readme.txt", "not ours"}})
                          .read();
    QVERIFY(plan);
    QCOMPARE(plan->unknownColumns, (std::vector<std::string>{"site.csv: weather", "devices.csv: colour", "zone.csv"}));
    QCOMPARE(plan->rules(), std::vector<std::string>{"fire-uk"});
    QCOMPARE(plan->site.size(), 1U);
}

void Read::blankRowsOfASpreadsheet()
{
    const auto plan = PlanFolder({{"devices.csv", "kind,room\nflood,hall\n,\n , \nflood,cellar\n"}}).read();
    QVERIFY(plan);
    QCOMPARE(plan->devices.size(), 2U);
    QCOMPARE(plan->devices[1].line, 5);
}

void Read::brokenFileBesideSoundOnes()
{
    const auto plan = PlanFolder({{"devices.csv", "kind,room\nflood,hall\n"},
                                  {"zones.csv", "zone,zone\n1,2\n"},
                                  {"areas.csv", std::string("area\n\0\n", 7)},
                                  {"paths.csv", "path,to\nline,station,extra\n"}})
                          .read();
    QVERIFY(!plan);
    QCOMPARE(plan.error().size(), 3U);
    QVERIFY(hasError(plan.error(), "csv.column-twice", "zones.csv:1"));
    QVERIFY(hasError(plan.error(), "csv.nul", "areas.csv:2"));
    QVERIFY(hasError(plan.error(), "csv.cells", "paths.csv:2"));
}

void Read::factOutsideItsDomain()
{
    const auto plan = PlanFolder({{"devices.csv", "kind,room\nflood,hall\n"},
                                  {"site.csv", "field,value\npaper,A5\n"},
                                  {"panel.csv", "field,value\nloop_response_ms,quick\n"}})
                          .read();
    QVERIFY(!plan);
    QVERIFY(hasError(plan.error(), "plan.cell-word", "site.csv:2, field paper"));
    QVERIFY(hasError(plan.error(), "plan.cell-not-a-number", "panel.csv:2, field loop_response_ms"));
}

void Read::loopThresholds()
{
    const auto plan = PlanFolder({{"devices.csv", "kind,room\nflood,hall\n"},
                                  {"panel.csv", "field,value\nloop_normal_alarm_ohm,7050\nloop_normal_normal_ohm,1\n"
                                                "loop_LOWER_UPPER_ohm,5\n"}})
                          .read();
    QVERIFY(plan);
    QCOMPARE(plan->panelFact("loop_normal_alarm_ohm"), "7050");
    QCOMPARE(plan->unknownColumns,
             (std::vector<std::string>{"panel.csv: loop_normal_normal_ohm", "panel.csv: loop_LOWER_UPPER_ohm"}));
}

void Read::timerWithoutAreaHoldsForAll()
{
    const auto plan = PlanFolder({{"devices.csv", "kind,room\nflood,hall\n"},
                                  {"timers.csv", "timer,area,planned_s\nentry-delay,,30\nentry-delay,flat,45\n"}})
                          .read();
    QVERIFY(plan);
    QCOMPARE(base::toText(*plan->findTimer("entry-delay", "flat")->planned_s), "45");
    QCOMPARE(base::toText(*plan->findTimer("entry-delay", "mill")->planned_s), "30");
    QVERIFY(!plan->findTimer("exit-delay", "mill"));
}

QTEST_GUILESS_MAIN(Read)
#include "read.moc"
