// SPDX-License-Identifier: GPL-3.0-or-later
// Lines that must be refused, each with the code that tells why; nothing is recorded then.
#include "core/walk/command.h"
#include "tests/walk/bench.h"

#include <QTest>

using namespace proofwalk;
using namespace proofwalk::walk;

class CommandTest : public QObject {
    Q_OBJECT

private slots:
    void refused_data();
    void refused();
    void nearestIsNamed();
    void everyCommandIsOnThePage();
};

void CommandTest::refused_data()
{
    QTest::addColumn<QByteArray>("line");
    QTest::addColumn<QByteArray>("code");
    const auto row = [](const char* name, const char* line, const char* code) {
        QTest::newRow(name) << QByteArray(line) << QByteArray(code);
    };
    row("not JSON", "answer GR-01", "json.syntax");
    row("a list", "[1]", "command.not-object");
    row("a float", R"({"do":"answer","device":"GR-01","step":"opening-gap","value":4.5})", "json.number");
    row("a key twice", R"({"do":"note","do":"note","words":"x"})", "json.key-twice");
    row("no do", R"({"device":"GR-01"})", "command.key-missing");
    row("unknown command", R"({"do":"anser"})", "command.unknown");
    row("unknown key", R"({"do":"note","words":"x","colour":"red"})", "command.key-unknown");
    row("unknown device", R"({"do":"answer","device":"GR-99","step":"opened","result":"as-planned"})",
        "walk.device-unknown");
    row("unknown zone", R"({"do":"answer","zone":"77","step":"loop-ohms","value":"4.7 kOhm"})", "walk.zone-unknown");
    row("unknown area", R"({"do":"state","area":"mill","state":"set"})", "walk.area-unknown");
    row("unknown timer", R"({"do":"answer","timer":"entry","area":"shop","step":"entry-delay","value":"30 s"})",
        "walk.timer-unknown");
    row("two subjects", R"({"do":"answer","device":"GR-01","zone":"1","step":"opened","result":"as-planned"})",
        "command.subject-missing");
    row("unknown step", R"({"do":"answer","device":"GR-01","step":"shaken","result":"as-planned"})",
        "walk.step-unknown");
    row("unknown result", R"({"do":"answer","device":"GR-01","step":"opened","result":"fine"})", "command.value");
    row("step in the wrong state", R"({"do":"answer","device":"GR-01","step":"response","result":"as-planned"})",
        "walk.state-wrong");
    row("reading without a figure", R"({"do":"answer","zone":"1","step":"loop-ohms","result":"as-planned"})",
        "walk.reading-missing");
    row("figure for what is only seen", R"({"do":"answer","device":"GR-01","step":"opened","value":"4.7 kOhm"})",
        "walk.value-not-wanted");
    row("unit of another quantity", R"({"do":"answer","zone":"1","step":"loop-ohms","value":"4.7 V"})",
        "walk.unit-mismatch");
    row("unit nobody knows", R"({"do":"answer","zone":"1","step":"loop-ohms","value":"4.7 kohms"})",
        "base.unit-unknown");
    row("comma for a point", R"({"do":"answer","zone":"1","step":"loop-ohms","value":"4,7 kOhm"})",
        "base.decimal-form");
    row("value without a unit", R"({"do":"answer","zone":"1","step":"loop-ohms","value":"4.7"})", "base.quantity-form");
    row("uncertainty in another unit",
        R"({"do":"answer","zone":"1","step":"loop-ohms","value":"4.7 kOhm","uncertainty":"50 Ohm"})",
        "walk.uncertainty-form");
    row("instrument not in the kit",
        R"({"do":"answer","zone":"1","step":"loop-ohms","value":"4.7 kOhm","instrument":"meter B"})",
        "walk.instrument-unknown");
    row("more hits than tries", R"({"do":"answer","device":"GR-02","step":"boundary-walk","hits":6,"tries":5})",
        "walk.trials-form");
    row("not as planned, but not how", R"({"do":"answer","device":"GR-01","step":"opened","result":"not-as-planned"})",
        "walk.seen-missing");
    row("not applicable without a reason",
        R"({"do":"answer","device":"GR-01","step":"opened","result":"not-applicable"})", "walk.reason-missing");
    row("an inspection in bulk",
        R"({"do":"answer","device":"GR-01","step":"fixing","result":"as-planned","how":"bulk"})", "walk.bulk-refused");
    row("life safety in bulk",
        R"({"do":"answer","device":"GR-04","step":"alarm-seen","result":"as-planned","how":"bulk"})",
        "walk.bulk-refused");
    row("started what is seen at once", R"({"do":"answer","device":"GR-01","step":"opened","result":"started"})",
        "walk.not-long");
    row("finding nobody found", R"({"do":"accept","device":"GR-01","step":"opened","name":"Owner","words":"yes"})",
        "walk.no-finding");
    row("deficiency without a fail",
        R"({"do":"finding","device":"GR-01","step":"opened","grade":"deficiency","words":"x"})",
        "walk.deficiency-without-fail");
    row("due on no day",
        R"({"do":"finding","device":"GR-01","step":"opened","grade":"recommendation","words":"x","due":"2026-02-30"})",
        "command.value");
    row("nothing to withdraw", R"({"do":"withdraw","device":"GR-01","step":"opened","reason":"x"})",
        "walk.nothing-to-withdraw");
    row("event nobody knows", R"({"do":"withdraw","event":"0123456789","reason":"x"})", "walk.event-unknown");
    row("put back what is not away", R"({"do":"put-back","name":"lead"})", "walk.not-temporary");
    row("account of nobody", R"({"do":"on-test","account":"1","told":"operator"})", "walk.account-unknown");
    row("unknown mode", R"({"do":"state","area":"shop","state":"set","mode":"night"})", "walk.mode-unknown");
    row("round nobody knows", R"({"do":"round","round":"loops","values":{"1":"4.7 kOhm"}})", "walk.round-unknown");
    row("photograph out of its folder", R"({"do":"photograph","device":"GR-01","step":"opened","file":"../key.jpg"})",
        "command.value");
    row("photograph that is not there", R"({"do":"photograph","device":"GR-01","step":"opened","file":"none.jpg"})",
        "file.missing");
    row("time that is none", R"({"do":"note","words":"x","at":"25 November"})", "base.time-form");
    row("ink outside the box", R"({"do":"acceptance","name":"Owner","words":"x","ink":[[[0,1001]]]})", "command.value");
    row("clock of the sun", R"({"do":"clock","of":"sun","offset_ms":0,"uncertainty_ms":0})", "command.value");
    row("instrument for no quantity", R"({"do":"kit","name":"m","measures":[{"quantity":"ohms"}]})",
        "walk.quantity-unknown");
}

void CommandTest::refused()
{
    QFETCH(QByteArray, line);
    QFETCH(QByteArray, code);
    const Bench bench;
    const auto drafts = draftsFor({bench.state, "."}, line.toStdString());
    QVERIFY2(!drafts, "it was taken");
    QCOMPARE(QByteArray::fromStdString(drafts.error().code), code);
}

void CommandTest::nearestIsNamed()
{
    const Bench bench;
    const auto drafts =
        draftsFor({bench.state, "."}, R"({"do":"answer","device":"GR01","step":"opened","result":"as-planned"})");
    QVERIFY(!drafts);
    QCOMPARE(std::get<std::string>(drafts.error().arguments.at(1).value), std::string("GR-01"));
}

void CommandTest::everyCommandIsOnThePage()
{
    const std::string page = must(base::readFile(PROOFWALK_SOURCE "/core/walk/COMMANDS.md"));
    for (const std::string& name : commandNames())
        QVERIFY2(page.find("{\"do\":\"" + name + "\"") != std::string::npos, name.c_str());
}

QTEST_GUILESS_MAIN(CommandTest)
#include "command.moc"
