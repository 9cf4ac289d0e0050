// SPDX-License-Identifier: GPL-3.0-or-later
// The end of a PDF and its classic table: ISO 32000-1, 7.5.4 and 7.5.5 (from memory).
#include "core/report/tail.h"

#include <QtTest>

#include <string>

using namespace proofwalk;

class TailTest : public QObject {
    Q_OBJECT

    const std::string m_table =
        "xref\n0 1\n0000000000 65535 f \n14 1\n0000018271 00000 n \n38 1\n0000018419 00002 n \n";

private slots:
    void lastLines()
    {
        const std::string body(100, 'x');
        QCOMPARE(report::tableOffset(body + "\nstartxref\n17\n%%EOF\n").value_or(0), std::size_t{17});
        for (const char* end : {"\nstartxref\n17\n%%EOF", "\nstartxref\n17\n%%EOF\n\n", "\nstartxref\n17 \n%%EOF\n",
                                "\nstartxref\n\n%%EOF\n", "\nstartxref\n017\n%%EOF\n", "\nstartxref\n-1\n%%EOF\n",
                                "\nstartxref\n+1\n%%EOF\n", "\nstartxref\n999\n%%EOF\n", "\nstartxref\r\n17\n%%EOF\n",
                                "\nstartxre\n17\n%%EOF\n", "\n99999999999999999999999\n%%EOF\n", "\n%%EOF\n", ""})
            QVERIFY2(!report::tableOffset(body + end), end);
        QVERIFY(!report::tableOffset("%%EOF\n"));
        QVERIFY(!report::tableOffset(""));
    }

    void tableOfAnUpdate()
    {
        const auto entries = report::updateTable(m_table + "trailer << >>", 0);
        QVERIFY(entries);
        QCOMPARE(entries->size(), std::size_t{2});
        QCOMPARE((*entries)[0].number, 14);
        QCOMPARE((*entries)[0].offset, std::size_t{18271});
        QCOMPARE((*entries)[1].generation, 2);
    }

    void tablesOfOtherForms()
    {
        const auto spoilt = [&](const char* before, const char* after) {
            std::string table = m_table + "trailer << >>";
            table.replace(table.find(before), std::string_view(before).size(), after);
            return report::updateTable(table, 0);
        };
        QVERIFY(spoilt("14 1", "14 1")); // the helper itself spoils nothing
        QVERIFY(!spoilt("14 1", "14 2"));
        QVERIFY(!spoilt("14 1", "38 1"));
        QVERIFY(!spoilt("14 1", "39 1"));
        QVERIFY(!spoilt("14 1", "014 1"));
        QVERIFY(!spoilt("00000 n ", "00000 f "));
        QVERIFY(!spoilt("00000 n \n", "00000 n\n"));
        QVERIFY(!spoilt("0000018271", "+000018271"));
        QVERIFY(!spoilt("0000018271", " 000018271"));
        QVERIFY(!spoilt("65535", "00000"));
        QVERIFY(!spoilt("trailer", "trail"));
        QVERIFY(!report::updateTable(m_table, m_table.size() + 1));
    }
};

QTEST_GUILESS_MAIN(TailTest)
#include "tail.moc"
