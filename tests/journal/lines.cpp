// SPDX-License-Identifier: GPL-3.0-or-later
// record.jsonl: out and in again, and everything that is nearly one.
#include "tests/journal/jobs.h"

#include "core/base/digest.h"

using namespace proofwalk;
using namespace proofwalk::journal;

namespace {

std::string sampleLines()
{
    static const std::string lines = [] {
        const Workshop shop;
        {
            auto journal = Journal::create(shop.path("a.walk"), shop.key());
            if (!journal) return std::string();
            Draft start = draft("start");
            start.contents = {"the plan\n\"ä\"", std::string("\0\xff", 2), std::string("a\0b", 3), ""};
            start.privates = {sealPrivate("above the door"), sealPrivate("")};
            start.photographs = {"a picture"};
            (void)journal->append({start, note(1)}, clockAt(0));
        }
        auto journal = Journal::open(shop.path("a.walk"), shop.key());
        if (!journal) return std::string();
        (void)journal->append({note(2)}, clockAt(1));
        return toLines(*journal->record());
    }();
    return lines;
}

} // namespace

class Lines : public QObject {
    Q_OBJECT
private slots:
    void outAndIn();
    void theOrderIsTheOneWritten();
    void commitmentsAreThoseOfTheTool();
    void malformed_data();
    void malformed();
    void linesSwapped();
    void cutAnywhere();
};

void Lines::outAndIn()
{
    auto record = fromLines(sampleLines());
    VERIFY_GOOD(record);
    QCOMPARE(record->events.size(), 4U);
    QCOMPARE(record->contents.size(), 4U);
    QVERIFY(record->contents.contains(base::sha256Hex(std::string_view("\0\xff", 2))));
    QCOMPARE(record->privates.size(), 2U);
    QCOMPARE(record->heads.size(), 2U);
    QVERIFY(checkRecord(*record).sound());
    QCOMPARE(toLines(*record), sampleLines());
    std::ranges::reverse(record->events); // however they came together
    std::ranges::reverse(record->heads);
    QCOMPARE(toLines(*record), sampleLines());
}

void Lines::theOrderIsTheOneWritten()
{
    const QStringList lines = QString::fromStdString(sampleLines()).split('\n');
    QCOMPARE(lines.size(), 1 + 4 + 2 + 4 + 2 + 1);
    QVERIFY(lines.at(0).startsWith("{\"format\":\"proofwalk/record/1\",\"job\":\""));
    for (int i = 1; i <= 4; ++i) QVERIFY(lines.at(i).startsWith("{\"content\":\""));
    for (int i = 5; i <= 6; ++i) QVERIFY(lines.at(i).startsWith("{\"commitment\":\""));
    for (int i = 7; i <= 10; ++i) QVERIFY(lines.at(i).startsWith("{\"alg\":\"sha256\","));
    for (int i = 11; i <= 12; ++i) QVERIFY(lines.at(i).startsWith("{\"chain\":\""));
    QCOMPARE(lines.at(13), QString()); // ended by a newline
}

void Lines::commitmentsAreThoseOfTheTool()
{
    // Source: printf '%s' '["proofwalk/private/1","000102030405060708090a0b0c0d0e0f","Tür \"A\""]' | sha256sum
    // with GNU coreutils. public test source
    QCOMPARE(commitmentOf("000102030405060708090a0b0c0d0e0f", "Tür \"A\""),
             std::string("d227da1ece8edb7e88fe42acf89558152cc1ffaefa8c72d319b274bc36b065d7"));
    const Private sealed = sealPrivate("x"), again = sealPrivate("x");
    QCOMPARE(sealed.salt.size(), 32U);
    QVERIFY(sealed.salt != again.salt && sealed.commitment != again.commitment);
    QCOMPARE(commitmentOf(sealed.salt, "x"), sealed.commitment);
}

void Lines::malformed_data()
{
    QTest::addColumn<int>("line"); // from 1
    QTest::addColumn<QString>("text");
    QTest::addColumn<QString>("code");
    const QString hash(64, 'f'), id(32, 'f');
    const auto row = [](const char* name, int line, const QString& text, const char* code) {
        QTest::newRow(name) << line << text << QString(code);
    };
    row("another format", 1, R"({"format":"proofwalk/record/2","job":")" + id + "\"}", "record.format");
    row("no format", 1, R"({"job":")" + id + "\"}", "record.format");
    row("job is no id", 1, R"({"format":"proofwalk/record/1","job":"mine"})", "record.line");
    row("not JSON", 3, "{", "json.syntax");
    row("empty line", 3, "", "json.syntax");
    row("a space", 2, R"({"content": ")" + hash + R"(","text":""})", "json.not-canonical");
    row("content without bytes", 5, R"({"content":")" + hash + "\"}", "record.line");
    row("content with both", 5, R"({"content":")" + hash + R"(","hex":"ff","text":""})", "record.line");
    row("content as hex that is text", 5, R"({"content":")" + hash + R"(","hex":"61"})", "record.line");
    row("content in half hex", 5, R"({"content":")" + hash + R"(","hex":"fff"})", "record.line");
    row("content under no hash", 5, R"({"content":"x","text":""})", "record.line");
    row("private without a salt", 7, R"({"commitment":")" + hash + R"(","value":""})", "record.line");
    row("private with a number", 7, R"({"commitment":")" + hash + R"(","salt":")" + id + R"(","value":1})",
        "record.line");
    row("private with more", 7, R"({"commitment":")" + hash + R"(","salt":")" + id + R"(","value":"","w":1})",
        "record.line");
    row("event with less", 9, R"({"alg":"sha256"})", "event.missing");
    row("event of another algorithm", 9, R"({"alg":"md5"})", "event.alg");
    row("head without a number", 13, R"({"chain":")" + id + R"(","hash":")" + hash + R"(","signature":"ff"})",
        "record.line");
    row("head without a signature", 13, R"({"chain":")" + id + R"(","hash":")" + hash + R"(","n":1,"signature":""})",
        "record.line");
    row("a kind of line unknown", 9, R"({"zebra":1})", "record.line");
    row("a list", 9, "[]", "record.line");
}

void Lines::malformed()
{
    QFETCH(int, line);
    QFETCH(QString, text);
    QFETCH(QString, code);
    QStringList lines = QString::fromStdString(sampleLines()).split('\n');
    lines[line - 1] = text;
    auto record = fromLines(lines.join('\n').toStdString());
    QVERIFY(!record.has_value());
    QCOMPARE(QString::fromStdString(record.error().code), code);
    QCOMPARE(QString::fromStdString(record.error().where), QString("record.jsonl:%1").arg(line));
}

void Lines::linesSwapped()
{
    const QStringList lines = QString::fromStdString(sampleLines()).split('\n', Qt::SkipEmptyParts);
    for (int i = 0; i + 1 < lines.size(); ++i) {
        QStringList swapped = lines, twice = lines;
        swapped.swapItemsAt(i, i + 1);
        twice.insert(i, lines.at(i));
        QCOMPARE(codeOf(fromLines((swapped.join('\n') + '\n').toStdString())),
                 std::string(i == 0 ? "record.format" : "record.line")); // the first line is no other
        QCOMPARE(codeOf(fromLines((twice.join('\n') + '\n').toStdString())), std::string("record.line"));
    }
}

void Lines::cutAnywhere()
{
    const std::string whole = sampleLines();
    QCOMPARE(codeOf(fromLines("")), std::string("record.format"));
    for (std::size_t size = 1; size < whole.size(); ++size) {
        auto record = fromLines(whole.substr(0, size));
        if (record) QVERIFY(!checkRecord(*record).sound()); // at the end of a line: then a signature is missing
        else QCOMPARE(record.error().code, std::string("record.line"));
    }
}

QTEST_GUILESS_MAIN(Lines)
#include "lines.moc"
