// SPDX-License-Identifier: GPL-3.0-or-later
// Each form of a cell: what it takes, what it refuses and by which code. The domains are those of core/plan/FORMAT.md.
#include "core/plan/cells.h"
#include "tests/plan/folder.h"

#include <QTest>

using namespace proofwalk;
using plan::Column;
using plan::Form;

class Cells : public QObject {
    Q_OBJECT
private slots:
    void taken_data();
    void taken();
    void refused_data();
    void refused();
    void nearestWordIsNamed();
    void numberKeepsItsDigits();
};

namespace {

Column columnOf(Form form)
{
    return {.name = "c",
            .form = form,
            .blank = "not allowed",
            .example = "7",
            .lower = "0",
            .upper = "100",
            .list = "closed;open"};
}

} // namespace

void Cells::taken_data()
{
    QTest::addColumn<int>("form");
    QTest::addColumn<QString>("cell");
    QTest::addColumn<QString>("kept");
    const auto row = [](const char* name, Form form, const QString& cell, const QString& kept) {
        QTest::newRow(name) << int(form) << cell << kept;
    };
    row("name trimmed", Form::name, " shop ", "shop");
    row("64 characters, not bytes", Form::name, QString(64, QChar(0xE4)), QString(64, QChar(0xE4)));
    row("list without spaces", Form::names, "mill ; flat", "mill;flat");
    row("text over two lines", Form::text, "a\nb", "a\nb");
    row("word", Form::word, "open", "open");
    row("words", Form::words, "open; closed", "open;closed");
    row("lower bound", Form::number, "0", "0");
    row("upper bound, two digits more", Form::number, "100.00", "100.00");
    row("whole", Form::whole, "3", "3");
    row("year", Form::date, "2026", "2026");
    row("month", Form::date, "2026-11", "2026-11");
    row("leap day", Form::date, "2024-02-29", "2024-02-29");
    row("code of three digits", Form::code, "130", "130");
    row("code of two capitals", Form::code, "BA", "BA");
    row("cause, tag", Form::cause, "K-01", "K-01");
    row("cause, zone", Form::cause, "zone:07", "zone:07");
    row("effect, path", Form::effect, "path:line", "path:line");
}

void Cells::taken()
{
    QFETCH(int, form);
    QFETCH(QString, cell);
    QFETCH(QString, kept);
    const auto checked = plan::checkedCell(columnOf(Form(form)), cell.toStdString());
    QVERIFY(checked);
    QCOMPARE(QString::fromStdString(*checked), kept);
}

void Cells::refused_data()
{
    QTest::addColumn<int>("form");
    QTest::addColumn<QString>("cell");
    QTest::addColumn<QString>("code");
    const auto row = [](const char* name, Form form, const QString& cell, const char* code) {
        QTest::newRow(name) << int(form) << cell << code;
    };
    row("65 characters", Form::name, QString(65, QChar('a')), "plan.cell-form");
    row("name with a list's sign", Form::name, "a;b", "plan.cell-form");
    row("name over two lines", Form::name, "a\nb", "plan.cell-form");
    row("tag with a colon", Form::tag, "zone:7", "plan.cell-form");
    row("list with a hole", Form::names, "mill;;flat", "plan.cell-form");
    row("list that ends in ;", Form::names, "mill;", "plan.cell-form");
    row("list with one twice", Form::names, "mill;mill", "plan.cell-form");
    row("line too long", Form::line, QString(201, QChar('a')), "plan.cell-form");
    row("word in capitals", Form::word, "Open", "plan.cell-word");
    row("word unknown in a list", Form::words, "open;ajar", "plan.cell-word");
    row("truth in another word", Form::truth, "true", "plan.cell-word");
    row("decimal comma", Form::number, "12,5", "plan.cell-not-a-number");
    row("number with its unit", Form::number, "12 m", "plan.cell-not-a-number");
    row("power of ten", Form::number, "1e3", "plan.cell-not-a-number");
    row("below", Form::number, "-0.1", "plan.cell-range");
    row("above", Form::number, "100.1", "plan.cell-range");
    row("more digits than are kept", Form::number, "1234567890123456", "plan.cell-range");
    row("half of a whole", Form::whole, "2.5", "plan.cell-not-a-number");
    row("no such day", Form::date, "2026-02-29", "plan.cell-form");
    row("day first", Form::date, "25.11.2026", "plan.cell-form");
    row("month of one digit", Form::date, "2026-1", "plan.cell-form");
    row("code with its qualifier", Form::code, "E130", "plan.cell-code");
    row("code in small letters", Form::code, "ba", "plan.cell-code");
    row("cause of an unknown sort", Form::cause, "area:mill", "plan.cell-form");
    row("cause without a name", Form::cause, "zone:", "plan.cell-form");
    row("effect on a zone", Form::effect, "zone:7", "plan.cell-form");
}

void Cells::refused()
{
    QFETCH(int, form);
    QFETCH(QString, cell);
    QFETCH(QString, code);
    const auto checked = plan::checkedCell(columnOf(Form(form)), cell.toStdString());
    QVERIFY(!checked);
    QCOMPARE(QString::fromStdString(checked.error().code), code);
}

void Cells::nearestWordIsNamed()
{
    const auto checked = plan::checkedCell(columnOf(Form::word), "closd");
    QVERIFY(!checked);
    QCOMPARE(test::argument(checked.error().arguments, "found"), "closd");
    QCOMPARE(test::argument(checked.error().arguments, "nearest"), "closed");
    QCOMPARE(test::argument(checked.error().arguments, "wanted"), "closed, open");
}

// 3.40 and 3.4 are different answers of a meter (design of the record); a plan keeps the difference too.
void Cells::numberKeepsItsDigits()
{
    plan::Zone zone;
    for (const auto& field : plan::fields<plan::Zone>()) {
        if (field.column.name == "cable_m") QVERIFY(plan::putCell(field, zone, " 3.40 "));
    }
    QVERIFY(zone.cable_m.has_value());
    QCOMPARE(zone.cable_m->mantissa, 340);
    QCOMPARE(zone.cable_m->exponent, -2);
}

QTEST_GUILESS_MAIN(Cells)
#include "cells.moc"
