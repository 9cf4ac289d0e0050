// SPDX-License-Identifier: GPL-3.0-or-later
// FORMAT.md and the code describe the same columns: names, domains, units, blanks, examples, what is private.
#include "core/base/file.h"
#include "core/base/text.h"
#include "core/plan/cells.h"

#include <QTest>

#include <map>

using namespace proofwalk;
using plan::Column;

class Format : public QObject {
    Q_OBJECT
private slots:
    void tablesAgree();
    void examplesAreRight();
    void boundsAreNumbers();
    void privateColumns();
};

namespace {

using Table = std::vector<std::vector<std::string>>;

/// The tables of FORMAT.md by the file named in the heading above them, without their two head lines.
std::map<std::string, Table> tablesOfPage()
{
    const auto page = base::readFile(PROOFWALK_SOURCE "/core/plan/FORMAT.md").value();
    std::map<std::string, Table> tables;
    std::string file;
    int line = 0;
    for (const std::string& each : base::split(page, '\n')) {
        if (each.starts_with("## ")) {
            file = each.substr(3);
            line = 0;
        } else if (each.starts_with("|") && ++line > 2) {
            std::vector<std::string> cells;
            for (const std::string& cell : base::split(each, '|')) cells.emplace_back(base::trimmed(cell));
            tables[file].push_back({cells.begin() + 1, cells.end() - 1});
        }
    }
    return tables;
}

/// Each file's columns as the code has them; a file of facts lists its facts.
std::map<std::string, std::vector<Column>> columnsOfCode()
{
    std::map<std::string, std::vector<Column>> columns;
    plan::Plan plan;
    plan::forEachTable(plan, [&]<class R>(std::string_view table, const std::vector<R>&) {
        auto& list = columns[std::string(table) + ".csv"];
        if constexpr (std::is_same_v<R, plan::Fact>) {
            const auto facts = table == "site" ? plan::siteFacts() : plan::panelFacts();
            list.assign(facts.begin(), facts.end());
        } else {
            for (const auto& field : plan::fields<R>()) list.push_back(field.column);
        }
    });
    return columns;
}

} // namespace

void Format::tablesAgree()
{
    const auto page = tablesOfPage();
    const auto code = columnsOfCode();
    QCOMPARE(page.size(), code.size());
    for (const auto& [file, columns] : code) {
        QVERIFY2(page.contains(file), file.c_str());
        const Table& table = page.at(file);
        QCOMPARE(table.size(), columns.size());
        for (std::size_t i = 0; i < columns.size(); ++i) {
            const Column& column = columns[i];
            QCOMPARE(table[i].size(), 7U);
            QCOMPARE(table[i][0], std::string(column.name));
            QVERIFY2(!table[i][1].empty(), std::string(column.name).c_str());
            QCOMPARE(table[i][2], plan::domainOf(column));
            QCOMPARE(table[i][3], std::string(column.unit));
            QCOMPARE(table[i][4], std::string(column.blank));
            QCOMPARE(table[i][5], std::string(column.example));
            QCOMPARE(table[i][6], std::string(column.isPrivate ? "yes" : ""));
        }
    }
}

void Format::examplesAreRight()
{
    for (const auto& [file, columns] : columnsOfCode()) {
        for (const Column& column : columns) {
            const auto checked = plan::checkedCell(column, column.example);
            QVERIFY2(checked, (file + " " + std::string(column.name)).c_str());
            QCOMPARE(*checked, std::string(column.example));
        }
    }
}

void Format::boundsAreNumbers()
{
    for (const auto& [file, columns] : columnsOfCode()) {
        for (const Column& column : columns) {
            if (column.form != plan::Form::number && column.form != plan::Form::whole) continue;
            const auto lower = base::parseDecimal(column.lower);
            const auto upper = base::parseDecimal(column.upper);
            QVERIFY2(lower && upper, (file + " " + std::string(column.name)).c_str());
            QVERIFY(base::compare(*lower, *upper) < 0);
        }
    }
}

// The list of what is private is a promise of the record, so it is written out here a second time.
void Format::privateColumns()
{
    std::vector<std::string> found;
    for (const auto& [file, columns] : columnsOfCode()) {
        for (const Column& column : columns) {
            if (column.isPrivate) found.push_back(file + " " + std::string(column.name));
        }
    }
    QCOMPARE(found,
             (std::vector<std::string>{"devices.csv position", "devices.csv protects", "devices.csv serial",
                                       "devices.csv x_m", "devices.csv y_m", "devices.csv note", "floors.csv drawing",
                                       "signals.csv serial", "site.csv name", "site.csv address"}));
}

QTEST_GUILESS_MAIN(Format)
#include "format.moc"
