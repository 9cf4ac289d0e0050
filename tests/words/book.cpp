// SPDX-License-Identifier: GPL-3.0-or-later
// Sentences as a reader sees them, and files of words that are damaged. The form "WHERE: WHAT. REMEDY." is the
// project's own.
#include "core/base/datafolder.h"
#include "core/base/file.h"
#include "core/words/words.h"

#include <QTemporaryDir>
#include <QtTest>

using namespace proofwalk;
using words::Book;

namespace {

/// A folder of words that is gone again after the test.
class Folder {
public:
    std::filesystem::path path() const { return m_folder.path().toStdString(); }
    void write(const char* name, std::string_view bytes) const { QVERIFY(base::writeFile(path() / name, bytes)); }
    std::string refusal() const
    {
        const auto book = Book::open(path());
        if (book) return "";
        const std::string where =
            book.error().where.substr(std::min(path().string().size() + 1, book.error().where.size()));
        return where + " " + book.error().code;
    }

private:
    QTemporaryDir m_folder;
};

// Written out, since moc loses its way in raw strings of several lines.
const std::string_view sample =
    "[errors]\n"
    "\"plan.cell\" = { what = '\"{found}\" is not a number of {unit}', remedy = 'Write {example}' }\n"
    "\"plan.bare\" = { what = 'something is wrong' }\n"
    "[phrases]\n"
    "\"verdict.too-close\" = 'too close'\n"
    "\"zone.tripped\" = 'zone {zone} tripped {times} times'\n";

Book sampleBook()
{
    const Folder folder;
    folder.write("a.toml", sample);
    return Book::open(folder.path()).value();
}

} // namespace

class TestBook : public QObject {
    Q_OBJECT

private slots:
    void whereWhatRemedy()
    {
        const Error error{
            "plan.cell",
            "zones.csv:14, column cable_m",
            {{"found", std::string("12,5")}, {"unit", std::string("metres")}, {"example", std::string("12.5")}}};
        QCOMPARE(sampleBook().sentence(error),
                 std::string("zones.csv:14, column cable_m: \"12,5\" is not a number of metres. Write 12.5."));
    }
    void noPlaceAndNoRemedy()
    {
        QCOMPARE(sampleBook().sentence({"plan.bare", "", {}}), std::string("Something is wrong."));
        QCOMPARE(sampleBook().sentence({"plan.bare", "a.csv", {}}), std::string("a.csv: something is wrong."));
    }
    void aCodeWithoutWordsLosesNothing()
    {
        QCOMPARE(sampleBook().sentence({"x.y", "a.csv:2", {{"found", std::string("q")}, {"wanted", std::int64_t{3}}}}),
                 std::string("a.csv:2: x.y (found = q, wanted = 3)."));
        QCOMPARE(sampleBook().phrase("x.z"), std::string("x.z"));
        QVERIFY(!sampleBook().has("x.z"));
    }
    void phrases()
    {
        QCOMPARE(sampleBook().phrase("verdict.too-close"), std::string("too close"));
        QCOMPARE(sampleBook().phrase("zone.tripped", {{"zone", std::string("07")}, {"times", std::int64_t{2}}}),
                 std::string("zone 07 tripped 2 times"));
        QVERIFY(sampleBook().has("plan.cell") && sampleBook().has("zone.tripped"));
        QCOMPARE(sampleBook().codes().size(), std::size_t{4});
    }
    void aMissingArgumentStaysVisible()
    {
        QCOMPARE(sampleBook().phrase("zone.tripped", {{"zone", std::string("07")}}),
                 std::string("zone 07 tripped {times} times"));
    }
    void whatIsFilledInIsNotFilledAgain()
    {
        QCOMPARE(sampleBook().phrase("zone.tripped", {{"zone", std::string("{times}")}, {"times", std::int64_t{2}}}),
                 std::string("zone {times} tripped 2 times"));
    }

    void damagedFiles_data()
    {
        QTest::addColumn<QByteArray>("bytes");
        QTest::addColumn<QByteArray>("refusal");
        QTest::newRow("no TOML") << QByteArray("[errors\n") << QByteArray("a.toml:1 words.syntax");
        QTest::newRow("bad UTF-8") << QByteArray("[errors]\n\"a.b\" = \"\xff\"\n")
                                   << QByteArray("a.toml:2 words.syntax");
        QTest::newRow("key twice") << QByteArray("[phrases]\n\"a.b\" = \"x\"\n\"a.b\" = \"y\"\n")
                                   << QByteArray("a.toml:3 words.syntax");
        QTest::newRow("error and phrase")
            << QByteArray("[errors]\n\"a.b\" = {what=\"x\"}\n[phrases]\n\"a.b\" = \"y\"\n")
            << QByteArray("a.toml:4 words.twice");
        QTest::newRow("unknown table") << QByteArray("[prases]\n\"a.b\" = 'x'\n")
                                       << QByteArray("a.toml:2 words.unknown");
        QTest::newRow("empty table") << QByteArray("[prases]\n") << QByteArray("a.toml:1 words.syntax");
        QTest::newRow("unknown part") << QByteArray("[errors]\n\"a.b\" = {what=\"x\", remdy=\"y\"}\n")
                                      << QByteArray("a.toml:2 words.unknown");
        QTest::newRow("no what") << QByteArray("[errors]\n\"a.b\" = {remedy=\"y\"}\n")
                                 << QByteArray("a.toml:2 words.syntax");
        QTest::newRow("a number") << QByteArray("[phrases]\n\"a.b\" = 3\n") << QByteArray("a.toml:2 words.syntax");
        QTest::newRow("no table") << QByteArray("errors = 3\n") << QByteArray("a.toml:1 words.syntax");
        QTest::newRow("no error table") << QByteArray("[errors]\n\"a.b\" = \"x\"\n")
                                        << QByteArray("a.toml:2 words.syntax");
    }
    void damagedFiles()
    {
        QFETCH(QByteArray, bytes);
        QFETCH(QByteArray, refusal);
        const Folder folder;
        folder.write("a.toml", bytes.toStdString());
        QCOMPARE(folder.refusal(), refusal.toStdString());
    }
    void twiceInTwoFiles()
    {
        const Folder folder;
        folder.write("a.toml", sample);
        folder.write("b.toml", "[phrases]\n\"verdict.too-close\" = \"near\"\n");
        QCOMPARE(folder.refusal(), std::string("b.toml:2 words.twice"));
    }
    void tablesMayBeLeftOut()
    {
        const Folder folder;
        folder.write("a.toml", "\"a.b\" = { what = 'broken', remedy = 'Mend it' }\n\"a.c\" = 'phrase'\n");
        const Book book = Book::open(folder.path()).value();
        QCOMPARE(book.sentence({"a.b", "x", {}}), std::string("x: broken. Mend it."));
        QCOMPARE(book.phrase("a.c"), std::string("phrase"));
    }
    void noFolderOrNothingInIt()
    {
        const Folder folder;
        QCOMPARE(folder.refusal(), std::string(" words.empty"));
        QCOMPARE(Book::open(folder.path() / "none").error().code, std::string("file.unreadable"));
    }

    void dates()
    {
        QCOMPARE(words::longDate(base::parseTime("2026-11-25T10:02:00+01:00").value()),
                 std::string("25 November 2026"));
        // At half past midnight in one zone it is still yesterday in another: the place's date counts.
        QCOMPARE(words::longDate(base::parseTime("2026-12-01T00:30:00+01:00").value()), std::string("1 December 2026"));
        QCOMPARE(words::longDate(base::parseTime("2026-11-30T23:30:00Z").value()), std::string("30 November 2026"));
    }
    void counts()
    {
        QCOMPARE(words::countInWords(0), std::string("zero"));
        QCOMPARE(words::countInWords(12), std::string("twelve"));
        QCOMPARE(words::countInWords(19), std::string("nineteen"));
        QCOMPARE(words::countInWords(20), std::string("twenty"));
        QCOMPARE(words::countInWords(60), std::string("sixty"));
        QCOMPARE(words::countInWords(64), std::string("sixty-four"));
        QCOMPARE(words::countInWords(99), std::string("ninety-nine"));
        QCOMPARE(words::countInWords(100), std::string("100"));
        QCOMPARE(words::countInWords(-1), std::string("-1"));
    }

    void theDataFolder()
    {
        QVERIFY(std::filesystem::exists(base::dataFolder() / "words" / "english" / "base.toml"));
        qputenv("PROOFWALK_DATA", "/elsewhere");
        QCOMPARE(base::dataFolder().string(), std::string("/elsewhere"));
        qputenv("PROOFWALK_DATA", "");
        QVERIFY(base::dataFolder() != "/elsewhere");
        qunsetenv("PROOFWALK_DATA");
    }
};

QTEST_GUILESS_MAIN(TestBook)
#include "book.moc"
