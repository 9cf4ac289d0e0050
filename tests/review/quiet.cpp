// SPDX-License-Identifier: GPL-3.0-or-later
// Just inside the line: what a check must not complain of. And the demonstration plans, which have no errors.
#include "tests/review/sound.h"

#include <QTest>

#include <algorithm>

using namespace proofwalk;

class Quiet : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void notTold_data();
    void notTold();
    void demonstrationPlans_data();
    void demonstrationPlans();
    void severities();
    void unconfirmedFigureIsSaidToBe();
    void noSerialInTheOpen();
};

void Quiet::notTold_data()
{
    QTest::addColumn<QString>("check");
    QTest::addColumn<QString>("file");
    QTest::addColumn<QString>("from");
    QTest::addColumn<QString>("to");
    const auto row = [](const char* name, const char* check, const char* file, const char* from, const char* to) {
        QTest::newRow(name) << check << file << from << to;
    };
    row("kind unknown, honestly", "kind-known", "devices.csv", "holdup-button", "unknown");
    row("kind unknown needs no zone", "device-zoned", "devices.csv", "holdup-button,6", "unknown,");
    row("detector on a signal's zone", "device-zoned", "devices.csv", "contact-surface,1", "contact-surface,");
    row("public, but nothing in it to guard", "tamper-where-public", "devices.csv", "hall,,main,20,50,no",
        "hall,,main,20,50,yes");
    row("resistor of E96", "resistor-value", "zones.csv", "1,4700,,,1", "1,4750,,,1"); // IEC 60063, E96: 4.75
    row("593 m of thin cable", "loop-cable", "zones.csv", "4700,,,1,AWG 24,40", "4700,,,1,AWG 24,593"); // loop-01
    row("length without conductor", "loop-cable", "zones.csv", "4700,,,1,AWG 24,40", "4700,,,1,,5000");
    row("threshold just below the alarm", "loop-states", "panel.csv", "loop_normal_alarm_ohm,7050",
        "loop_normal_alarm_ohm,9305"); // loop-02: alarm from 9306
    row("one input on two transmitters", "serial-unique", "signals.csv", "K-1,tamper,5,,", "K-1,tamper,5,B7,2");
    row("entry delay at its limit", "timer-range", "timers.csv", "house,30",
        "house,45"); // EN 50131-1, as quoted publicly
    row("battery just large enough", "battery-load", "power.csv", "main,18", "main,13.0"); // battery-01: 12.99583
    row("heat in the kitchen", "room-suits-kind", "devices.csv", "F-1,flood", "F-1,heat-fixed");
    row("room that only sounds alike", "room-suits-kind", "devices.csv", "3,ground,hall", "3,ground,Kitchener Room");
    row("purpose blank cannot be missing", "cause-exists", "zones.csv", "6,house,hold-up", "6,house,");
    row("zone that reports nothing", "zone-heard", "zones.csv", "away,loud,yes,131", "away,loud,no,");
}

void Quiet::notTold()
{
    QFETCH(QString, check);
    QFETCH(QString, file);
    QFETCH(QString, from);
    QFETCH(QString, to);
    auto files = test::soundPlan();
    test::change(files, file.toStdString(), from.toStdString(), to.toStdString());
    for (const review::Remark& remark : test::reviewOf(files)) {
        if (remark.check == check.toStdString()) QFAIL((remark.where + ": " + remark.code).c_str());
    }
}

void Quiet::demonstrationPlans_data()
{
    QTest::addColumn<QString>("folder");
    QTest::newRow("lantern-mill") << "lantern-mill";
    QTest::newRow("corner-shop") << "corner-shop";
}

void Quiet::demonstrationPlans()
{
    QFETCH(QString, folder);
    const auto plan = plan::readPlan(std::filesystem::path(PROOFWALK_SOURCE) / "fixtures" / folder.toStdString());
    QVERIFY(plan);
    for (const auto& remark : review::reviewPlan(*plan, test::fullCatalogue(), test::knowledge()))
        QVERIFY2(remark.severity != review::Severity::error, (remark.where + ": " + remark.code).c_str());
}

void Quiet::severities()
{
    auto files = test::soundPlan();
    test::change(files, "devices.csv", "flood,2", "floood,22");
    test::change(files, "devices.csv", "smoke-four-wire,3,ground,hall", "smoke-four-wire,3,ground,kitchen");
    std::set<std::pair<std::string, review::Severity>> seen;
    for (const auto& remark : test::reviewOf(files)) seen.emplace(remark.code, remark.severity);
    QVERIFY(seen.contains({"review.kind-unknown", review::Severity::error}));
    QVERIFY(seen.contains({"review.zone-unknown", review::Severity::error}));
    QVERIFY(seen.contains({"review.room-unsuited", review::Severity::warning}));
    QCOMPARE(review::wordOf(review::Severity::note), "note");
}

// A figure whose source is not confirmed never counts as a limit broken; the remark says so by its code.
void Quiet::unconfirmedFigureIsSaidToBe()
{
    auto sheets = test::fullCatalogue().files();
    sheets["rules/house-rules.toml"] =
        "format = 1\ntitle = \"x\"\njurisdiction = \"x\"\n[[figures]]\n"
        "quantity = \"exit-delay\"\nunit = \"min\"\nlower = \"2\"\nbinding = \"advice\"\n"
        "confirmed = false\nsource = { basis = \"from memory\", note = \"x.\" }\n";
    const auto catalogue = catalogue::Catalogue::read(sheets);
    QVERIFY2(catalogue, catalogue ? "" : (catalogue.error().where + " " + catalogue.error().code).c_str());
    auto files = test::soundPlan();
    test::change(files, "site.csv", "intruder-eu", "intruder-eu;house-rules");
    const auto remarks = test::reviewOf(files, *catalogue);
    QCOMPARE(remarks.size(), 1U);
    QCOMPARE(remarks[0].code, "review.timer-unconfirmed");
    QCOMPARE(remarks[0].where, "timers.csv:3, exit-delay");
    QCOMPARE(test::argument(remarks[0].arguments, "limit"), "120"); // two minutes in seconds
}

void Quiet::noSerialInTheOpen()
{
    auto files = test::soundPlan();
    test::change(files, "devices.csv", "kitchen,,,,,no", "kitchen,SECRET,,,,no");
    test::change(files, "devices.csv", "garage,A1", "garage,SECRET");
    const auto remarks = test::reviewOf(files);
    QVERIFY(!remarks.empty());
    for (const auto& remark : remarks) {
        for (const Argument& each : remark.arguments) QVERIFY(test::argument({each}, each.name) != "SECRET");
    }
}

QTEST_GUILESS_MAIN(Quiet)
#include "quiet.moc"
