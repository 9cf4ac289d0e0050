// SPDX-License-Identifier: GPL-3.0-or-later
// The list of event codes. Expected meanings are those of public tables of DC-05 and DC-04 (DC-05: public zone alarm
// codes 100 to 169, several tables agree; DC-04: public code lists); which purpose fits is common practice.
#include "core/signals/reportcode.h"

#include "core/base/file.h"

#include <QTemporaryDir>
#include <QTest>

using namespace proofwalk;

class Codes : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void meaningAndPurposes_data();
    void meaningAndPurposes();
    void restoresAndUsersFitNoZone_data();
    void restoresAndUsersFitNoZone();
    void unknown_data();
    void unknown();
    void openedFromAFolder();
    void badLists_data();
    void badLists();
};

void Codes::meaningAndPurposes_data()
{
    QTest::addColumn<QString>("code");
    QTest::addColumn<QString>("system");
    QTest::addColumn<QString>("group");
    QTest::addColumn<QString>("fits");
    QTest::addColumn<QString>("fitsNot");
    const auto row = [](const char* code, const char* system, const char* group, const char* fits,
                        const char* fitsNot) { QTest::newRow(code) << code << system << group << fits << fitsNot; };
    row("130", "DC-05", "burglary", "intrusion", "fire");
    row("111", "DC-05", "fire", "fire", "intrusion");
    row("122", "DC-05", "panic", "hold-up", "intrusion");
    row("137", "DC-05", "tamper", "tamper", "intrusion");
    row("154", "DC-05", "environmental", "environment", "fire");
    row("113", "DC-05", "fire", "fire", "environment"); // sprinkler flow is no leak
    row("162", "DC-05", "carbon monoxide", "carbon-monoxide", "gas");
    row("301", "DC-05", "power", "technical", "fire");
    row("203", "DC-05", "supervisory", "technical", "intrusion");
    row("100", "DC-05", "medical", "medical", "hold-up");
    row("BA", "DC-04", "burglary", "intrusion", "hold-up");
    row("FA", "DC-04", "fire", "fire", "gas");
    row("GA", "DC-04", "gas", "carbon-monoxide", "environment");
    row("WA", "DC-04", "environmental", "environment", "fire");
    row("TA", "DC-04", "tamper", "tamper", "fire");
}

void Codes::meaningAndPurposes()
{
    QFETCH(QString, code);
    QFETCH(QString, system);
    QFETCH(QString, group);
    QFETCH(QString, fits);
    QFETCH(QString, fitsNot);
    const auto found = signals::findReportCode(code.toStdString());
    QVERIFY(found);
    QCOMPARE(QString::fromStdString(found->system), system);
    QCOMPARE(QString::fromStdString(found->group), group);
    QVERIFY(!found->basis.empty());
    QVERIFY(signals::fitsPurpose(*found, fits.toStdString()));
    QVERIFY(!signals::fitsPurpose(*found, fitsNot.toStdString()));
}

// A zone's alarm cannot carry the code that says an alarm is over, nor one whose third field is a user.
void Codes::restoresAndUsersFitNoZone_data()
{
    QTest::addColumn<QString>("code");
    for (const char* code : {"BH", "BR", "FH", "121", "401", "OP", "CL"}) QTest::newRow(code) << code;
}

void Codes::restoresAndUsersFitNoZone()
{
    QFETCH(QString, code);
    const auto found = signals::findReportCode(code.toStdString());
    QVERIFY(found);
    QVERIFY(found->purposes.empty());
}

void Codes::unknown_data()
{
    QTest::addColumn<QString>("code");
    for (const char* code : {"", "199", "E130", "ba", "130 ", "100-109"}) QTest::newRow(code) << code;
}

void Codes::unknown()
{
    QFETCH(QString, code);
    const auto found = signals::findReportCode(code.toStdString());
    QVERIFY(!found);
    QCOMPARE(found.error().code, "signals.code-unknown");
}

void Codes::openedFromAFolder()
{
    const auto codes = signals::ReportCodes::open(PROOFWALK_SOURCE "/core");
    QVERIFY(codes);
    QVERIFY(codes->size() > 500);
    QTemporaryDir empty;
    const auto missing = signals::ReportCodes::open(empty.path().toStdString());
    QVERIFY(!missing);
    QCOMPARE(missing.error().code, "file.missing");
}

void Codes::badLists_data()
{
    QTest::addColumn<QString>("text");
    QTest::addColumn<QString>("code");
    const QString head = "system,code,event,group,purposes,basis\n";
    QTest::newRow("column missing") << "system,code,event,group,basis\n" << "signals.column-missing";
    QTest::newRow("small letters") << head + "DC-04,ba,x,burglary,intrusion,read\n" << "signals.code-form";
    QTest::newRow("another system") << head + "DC-03,BA,x,burglary,intrusion,read\n" << "signals.code-form";
    QTest::newRow("twice") << head + "DC-05,130,x,burglary,,read\nDC-05,130,y,burglary,,read\n" << "signals.code-twice";
    QTest::newRow("empty") << "" << "csv.empty";
}

void Codes::badLists()
{
    QFETCH(QString, text);
    QFETCH(QString, code);
    const auto codes = signals::ReportCodes::read(text.toStdString(), "list.csv");
    QVERIFY(!codes);
    QCOMPARE(QString::fromStdString(codes.error().code), code);
}

QTEST_GUILESS_MAIN(Codes)
#include "reportcode.moc"
