// SPDX-License-Identifier: GPL-3.0-or-later
// Source: RFC 4180, section 2, whose rules are named beside each case (clause numbers from memory). What the RFC leaves
// open (line numbers, byte order marks, lone CR) is our own choice.
#include "core/base/csv.h"

#include <QtTest>

using namespace proofwalk;
using base::readCsv;

namespace {

/// The table as one line of text: "1: a|b / 2: 1|2".
std::string shown(std::string_view bytes)
{
    const auto table = readCsv(bytes, "t.csv");
    if (!table) return table.error().where + " " + table.error().code;
    std::string text = "h:";
    for (const auto& cell : table->header) text += " [" + cell + "]";
    for (const auto& row : table->rows) {
        text += "; " + std::to_string(row.line) + ":";
        for (const auto& cell : row.cells) text += " [" + cell + "]";
    }
    return text;
}

} // namespace

class TestCsv : public QObject {
    Q_OBJECT

private slots:
    void whatTheRfcShows_data()
    {
        QTest::addColumn<QByteArray>("bytes");
        QTest::addColumn<QByteArray>("wanted");
        const auto row = [](const char* name, QByteArray bytes, const char* wanted) {
            QTest::newRow(name) << bytes << QByteArray(wanted);
        };
        row("rule 1, CRLF", "aaa,bbb,ccc\r\nzzz,yyy,xxx\r\n", "h: [aaa] [bbb] [ccc]; 2: [zzz] [yyy] [xxx]");
        row("rule 2, no last line end", "aaa,bbb\r\nzzz,yyy", "h: [aaa] [bbb]; 2: [zzz] [yyy]");
        row("rule 5, quotes", "\"aaa\",\"bbb\"\r\nzzz,yyy\r\n", "h: [aaa] [bbb]; 2: [zzz] [yyy]");
        row("rule 6, line ends in quotes", "a,b\r\n\"b\r\nb\",c\r\nd,e\r\n", "h: [a] [b]; 2: [b\r\nb] [c]; 4: [d] [e]");
        row("rule 6, commas in quotes", "a,b\r\n\"x,y\",z\r\n", "h: [a] [b]; 2: [x,y] [z]");
        row("rule 7, quotes in quotes", "a,b\r\n\"b\"\"bb\",c\r\n", "h: [a] [b]; 2: [b\"bb] [c]");
        row("empty cells", "a,b,c\r\n,,\r\n\"\",,x\r\n", "h: [a] [b] [c]; 2: [] [] []; 3: [] [] [x]");
        row("LF alone", "a,b\n1,2\n", "h: [a] [b]; 2: [1] [2]");
        row("CR alone", "a,b\r1,2\r3,4\r", "h: [a] [b]; 2: [1] [2]; 3: [3] [4]");
        row("CR alone, in quotes", "a,b\r\"1\r1\",2\r3,4", "h: [a] [b]; 2: [1\r1] [2]; 4: [3] [4]");
        row("mixed ends", "a\r\n1\n2\r3", "h: [a]; 2: [1]; 3: [2]; 4: [3]");
        row("byte order mark",
            "\xEF\xBB\xBF"
            "a,b\n1,2\n",
            "h: [a] [b]; 2: [1] [2]");
        row("empty lines keep the count", "\n\na,b\n\n1,2\n\n\n3,4", "h: [a] [b]; 5: [1] [2]; 8: [3] [4]");
        row("an empty line in quotes is a cell's", "a,b\n\"1\n\n1\",2\n3,4\n",
            "h: [a] [b]; 2: [1\n\n1] [2]; 5: [3] [4]");
        row("a quoted empty cell is a row", "a\n\"\"\n1\n", "h: [a]; 2: []; 3: [1]");
        row("white space at a cell's ends", "a, b\n 1\t, 2 \n", "h: [a] [b]; 2: [1] [2]");
        row("white space in quotes stays", "a,b\n\" 1 \",2\n", "h: [a] [b]; 2: [ 1 ] [2]");
        row("no rows", "a,b\n", "h: [a] [b]");
        row("beyond ASCII", "stück,Ω\n\xF0\x9F\x98\x80,é\n", "h: [stück] [Ω]; 2: [\xF0\x9F\x98\x80] [é]");
    }
    void whatTheRfcShows()
    {
        QFETCH(QByteArray, bytes);
        QFETCH(QByteArray, wanted);
        QCOMPARE(shown(bytes.toStdString()), wanted.toStdString());
    }

    void badInput_data()
    {
        QTest::addColumn<QByteArray>("bytes");
        QTest::addColumn<QByteArray>("refusal");
        const auto row = [](const char* name, QByteArray bytes, const char* refusal) {
            QTest::newRow(name) << bytes << QByteArray(refusal);
        };
        row("empty file", "", "t.csv csv.empty");
        row("only a byte order mark", "\xEF\xBB\xBF", "t.csv csv.empty");
        row("only line ends", "\n\r\n\r", "t.csv csv.empty");
        row("quote in a bare cell", "a,b\n1\"2,3\n", "t.csv:2 csv.quote");
        row("quote after a quoted cell", "a,b\n\"1\"2,3\n", "t.csv:2 csv.quote");
        row("quote never closed", "a,b\n1,2\n\"3,4\n5,6\n", "t.csv:3 csv.quote");
        row("too few cells", "a,b\n1,2\n3\n", "t.csv:3 csv.cells");
        row("too many cells", "a,b\n1,2,3\n", "t.csv:2 csv.cells");
        row("too many after a cell of two lines", "a,b\n\"1\n\",2\n3\n", "t.csv:4 csv.cells");
        row("too few, CR alone", "a,b\r1,2\r3\r", "t.csv:3 csv.cells");
        row("column twice", "a,b,a\n", "t.csv:1 csv.column-twice");
        row("column twice but for white space", "a,b,\" a \"\n", "t.csv:1 csv.column-twice");
        row("column without a name", "\na,,c\n", "t.csv:2 csv.column-unnamed");
        row("column of white space", "a,\" \"\n", "t.csv:1 csv.column-unnamed");
        row("NUL", QByteArray("a,b\n1,\0\n", 8), "t.csv:2 csv.nul");
        row("Latin-1",
            "a,b\n1,2\nst\xFC"
            "ck,3\n",
            "t.csv:3 csv.utf8");
        row("UTF-16",
            QByteArray("\xFF\xFE"
                       "a\0,\0",
                       6),
            "t.csv:1 csv.nul");
        row("a surrogate in UTF-8", "a\n\xED\xA0\x80\n", "t.csv:2 csv.utf8");
    }
    void badInput()
    {
        QFETCH(QByteArray, bytes);
        QFETCH(QByteArray, refusal);
        QCOMPARE(shown(bytes.toStdString()), refusal.toStdString());
    }

    void manyColumnsDoNotTakeForever()
    {
        std::string header = "c0";
        for (int i = 1; i < 200'000; ++i) header += ",c" + std::to_string(i);
        QElapsedTimer timer;
        timer.start();
        QCOMPARE(readCsv(header, "t.csv").value().header.size(), std::size_t{200'000});
        QVERIFY(timer.elapsed() < 20'000); // comparing each with each took minutes
    }

    void whatIsWrittenReadsBack_data()
    {
        QTest::addColumn<QStringList>("cells");
        QTest::newRow("plain") << QStringList{"a", "b"};
        QTest::newRow("signs") << QStringList{"a,b", "c\"d", "e\r\nf", "g\rh", "\""};
        QTest::newRow("white space") << QStringList{" a", "b ", "\tc", " ", "d e"};
        QTest::newRow("one empty cell") << QStringList{""};
        QTest::newRow("empty cells") << QStringList{"", "", ""};
        QTest::newRow("beyond ASCII") << QStringList{QString::fromUtf8("Ω"), QString::fromUtf8("😀")};
    }
    void whatIsWrittenReadsBack()
    {
        QFETCH(QStringList, cells);
        std::vector<std::string> row, header;
        for (const QString& cell : cells) {
            row.push_back(cell.toStdString());
            header.push_back("c" + std::to_string(header.size()));
        }
        const auto table = readCsv(base::csvRow(header) + base::csvRow(row), "t.csv").value();
        QCOMPARE(table.rows.size(), std::size_t{1});
        QVERIFY(table.rows.front().cells == row);
    }
    void bareCellsStayBare() { QCOMPARE(base::csvRow({"a", "b c", ""}), std::string("a,b c,\r\n")); }
};

QTEST_GUILESS_MAIN(TestCsv)
#include "csv.moc"
