// SPDX-License-Identifier: GPL-3.0-or-later
// Reading is strict: every way of spoiling a file is told by file and line, and nothing is read by halves. The format is
// core/catalogue/FORMAT.md; the lines are counted by hand in the texts below.
#include "tests/catalogue/sample.h"

#include "core/base/file.h"

#include <QTemporaryDir>
#include <QtTest>

using namespace proofwalk;
using namespace proofwalk::catalogue;

// Before the class: g++ that optimises asks for it while it reads the class.
Q_DECLARE_METATYPE(std::string)

namespace {

/// Whether core/words has a sentence for the code (the words room itself is not linked here).
bool hasWords(const std::string& code)
{
    const std::string room = code.substr(0, code.find('.'));
    const auto words = base::readFile(PROOFWALK_SOURCE "/core/words/english/" + room + ".toml");
    return words && words->find("\n\"" + code + "\" = {") != std::string::npos;
}

const std::string kindPath = "kinds/letter-box.toml";

std::string keysOfSee(const std::string& more) { return "kind = \"see\"\nexpect = \"It shows.\"\n" + more; }
std::string keysOfRead(const std::string& more)
{
    return "kind = \"read\"\nexpect = \"It shows.\"\nquantity = \"gap\"\nunit = \"mm\"\n" + more;
}

const std::string limitSource = "binding = \"advice\"\nconfirmed = false\nsource = { basis = \"common practice\" }\n";
const std::string rules = R"(format = 1
title = "House rules"
jurisdiction = "here"

[[figures]]
quantity = "gap"
unit = "mm"
upper = "25"
binding = "advice"
confirmed = false
source = { basis = "from memory" }
)";
const std::string sequence = "format = 1\ntitle = \"T\"\nsummary = \"S\"\n";

} // namespace

class CatalogueRead : public QObject {
    Q_OBJECT

private:
    static void bad(const char* name, const std::string& path, const std::string& text, const char* code, int line,
                    const char* argument = "", const char* value = "")
    {
        QTest::newRow(name) << path << text << QString(code) << line << QString(argument) << QString(value);
    }

private Q_SLOTS:
    void readsTheSample();
    void refuses_data();
    void refuses();
    void keepsTheDigitsOfAFigure();
    void emptyFolder();
    void strayFilesInAFolder();
    void fileTooLarge();
    void unknownSequenceAndRules();
};

void CatalogueRead::readsTheSample()
{
    const auto read = Catalogue::read({{kindPath, sample::kind}});
    QVERIFY(read);
    const Kind* kind = read->kind("letter-box");
    QVERIFY(kind != nullptr);
    QCOMPARE(kind->title, std::string("Letter-box switch"));
    QCOMPARE(kind->group, std::string("openings"));
    QCOMPARE(kind->output, false);
    QCOMPARE(kind->coreSeconds, 12);
    QCOMPARE(kind->purposes, std::vector<std::string>{"intrusion"});
    QCOMPARE(read->kinds().size(), std::size_t{1});
    QVERIFY(read->kind("flood") == nullptr);
    QVERIFY(read->rules("house") == nullptr);
    QCOMPARE(read->files().at(kindPath), sample::kind);
}

void CatalogueRead::refuses_data()
{
    using sample::kind;
    using sample::step;
    using sample::with;
    QTest::addColumn<std::string>("path");
    QTest::addColumn<std::string>("text");
    QTest::addColumn<QString>("code");
    QTest::addColumn<int>("line"); // 0: the error is of the file as a whole
    QTest::addColumn<QString>("argument");
    QTest::addColumn<QString>("value");

    // The file.
    bad("not toml", kindPath, with(kind, "[[before]]", "[[before"), "catalogue.syntax", 9);
    bad("quotation mark left open", kindPath, with(kind, "\"see\"", "\"see"), "catalogue.syntax", 11);
    bad("key given twice", kindPath, with(kind, "seconds = 7", "seconds = 7\nseconds = 8"), "catalogue.syntax", 15);
    bad("bytes that are not UTF-8", kindPath, with(kind, "Push", "P\xff"), "catalogue.syntax", 15);
    std::string endless = "a";
    for (int i = 0; i < 200'000; ++i) endless += ".a";
    bad("a key of 200,000 parts", kindPath, kind + endless + " = 1\n", "catalogue.too-deep", 18);
    bad("a header of 200,000 parts", kindPath, kind + "[" + endless + "]\n", "catalogue.too-deep", 18);
    bad("lists in lists without end", kindPath, kind + "a = " + std::string(200'000, '['), "catalogue.syntax", 18);
    bad("empty file", kindPath, "", "catalogue.key-missing", 1, "wanted", "format");
    bad("format missing", kindPath, with(kind, "format = 1\n", ""), "catalogue.key-missing", 1, "wanted", "format");
    bad("format of tomorrow", kindPath, with(kind, "format = 1", "format = 2"), "catalogue.format", 1, "found", "2");
    bad("format as text", kindPath, with(kind, "format = 1", "format = \"1\""), "catalogue.value", 1, "found", "text");
    bad("folder unknown", "kind/letter-box.toml", kind, "catalogue.file-name", 0);
    bad("no folder", "letter-box.toml", kind, "catalogue.file-name", 0);
    bad("capital letters in the name", "kinds/LetterBox.toml", kind, "catalogue.file-name", 0);
    bad("a way out of the folder", "kinds/../letter-box.toml", kind, "catalogue.file-name", 0);
    bad("part for a word no plan has", "parts/purpose-fires.toml", "format = 1\n", "catalogue.part-name", 0, "nearest",
        "purpose-fire");

    // The kind's own keys.
    bad("unknown key", kindPath, with(kind, "title", "tilte"), "catalogue.key-unknown", 2, "nearest", "title");
    bad("title missing", kindPath, with(kind, "title = \"Letter-box switch\"\n", ""), "catalogue.key-missing", 1,
        "wanted", "title");
    bad("title empty", kindPath, with(kind, "Letter-box switch", ""), "catalogue.value", 2);
    bad("title with a space before", kindPath, with(kind, "Letter-box", " Letter-box"), "catalogue.value", 2);
    bad("title over two lines", kindPath, with(kind, "Letter-box", "Letter\\nbox"), "catalogue.value", 2);
    bad("title a number", kindPath, with(kind, "\"Letter-box switch\"", "7"), "catalogue.value", 2, "found",
        "whole-number");
    bad("group unknown", kindPath, with(kind, "openings", "opening"), "catalogue.word", 3, "nearest", "openings");
    bad("purpose unknown", kindPath, with(kind, "[\"intrusion\"]", "[\"intruson\"]"), "catalogue.word", 4, "nearest",
        "intrusion");
    bad("purposes as text", kindPath, with(kind, "[\"intrusion\"]", "\"intrusion\""), "catalogue.value", 4, "wanted",
        "list");
    bad("purposes empty", kindPath, with(kind, "[\"intrusion\"]", "[]"), "catalogue.value", 4);
    bad("purpose twice", kindPath, with(kind, "[\"intrusion\"]", "[\"intrusion\", \"intrusion\"]"),
        "catalogue.word-twice", 4, "found", "intrusion");
    bad("signal with a space", kindPath, with(kind, "[\"alarm\"]", "[\"the alarm\"]"), "catalogue.value", 5, "wanted",
        "name");
    bad("no seconds", kindPath, with(kind, "core-seconds = 12", "core-seconds = 0"), "catalogue.value", 6, "found",
        "0");
    bad("seconds with a full stop", kindPath, with(kind, "core-seconds = 12", "core-seconds = 12.5"),
        "catalogue.bare-number", 6, "found", "12.5");
    bad("a date", kindPath, with(kind, "core-seconds = 12", "core-seconds = 2026-11-25"), "catalogue.value", 6);
    bad("no step at all", kindPath, kind.substr(0, kind.find("[[before]]")), "catalogue.key-missing", 1, "wanted",
        "before");
    bad("before is text", kindPath, kind.substr(0, kind.find("[[before]]")) + "before = \"x\"\n", "catalogue.value", 9);
    bad("before holds text", kindPath, kind.substr(0, kind.find("[[before]]")) + "before = [\"x\"]\n",
        "catalogue.value", 9, "wanted", "table");
    bad("forbids its own step", kindPath, with(kind, "\n[[before]]", "forbid = [\"flap-lifted\"]\n[[before]]"),
        "catalogue.forbid-own", 8, "found", "flap-lifted");

    // A step.
    bad("unknown key in a step", kindPath, with(kind, "seconds = 7", "secnds = 7"), "catalogue.key-unknown", 14,
        "nearest", "seconds");
    bad("step without a name", kindPath, with(kind, "step = \"flap-lifted\"\n", ""), "catalogue.key-missing", 9,
        "wanted", "step");
    bad("step name in capitals", kindPath, with(kind, "flap-lifted", "Flap lifted"), "catalogue.value", 10, "wanted",
        "name");
    bad("kind of step unknown", kindPath, with(kind, "\"see\"", "\"seen\""), "catalogue.word", 11, "nearest", "see");
    bad("proof unknown", kindPath, with(kind, "\"input\"", "\"imput\""), "catalogue.word", 12, "nearest", "input");
    bad("state unknown", kindPath, with(kind, "\"walk-test\"", "\"walktest\""), "catalogue.word", 13, "nearest",
        "walk-test");
    bad("states missing", kindPath, with(kind, "states = [\"unset\", \"walk-test\"]\n", ""), "catalogue.key-missing", 9,
        "wanted", "states");
    bad("act missing", kindPath, with(kind, "act = \"Push the flap in.\"\n", ""), "catalogue.key-missing", 9, "wanted",
        "act");
    bad("expect missing", kindPath, with(kind, "expect = \"The zone shows open.\"\n", ""), "catalogue.key-missing", 9,
        "wanted", "expect");
    bad("source missing", kindPath, with(kind, "source = { basis = \"common practice\" }\n", ""),
        "catalogue.key-missing", 9, "wanted", "source");
    bad("a step of an hour and more", kindPath, with(kind, "seconds = 7", "seconds = 3601"), "catalogue.value", 14);
    bad("signal the kind does not have", kindPath, with(kind, "proves = \"input\"", "signal = \"tamper\""),
        "catalogue.signal-unlisted", 9, "found", "tamper");
    bad("subject of a sequence", kindPath, with(kind, "proves = \"input\"", "subject = \"area\""), "catalogue.word",
        12);
    bad("input of no signal", kindPath, with(kind, "proves = \"input\"", "signal = \"-\"\nproves = \"input\""),
        "catalogue.proof", 13, "found", "input");
    bad("the same step twice", kindPath, kind + step("after", "flap-lifted", keysOfSee("")), "catalogue.step-twice", 19,
        "found", "flap-lifted");
    bad("the same step twice, conditions that overlap", kindPath,
        kind + step("after", "x", keysOfSee("when = { delay = [\"none\", \"entry\"] }\n"))
            + step("after", "x", keysOfSee("when = { delay = [\"entry\"], rest = [\"open\"] }\n")),
        "catalogue.step-twice", 29, "found", "x");

    // Keys that only some kinds of step have. The first step ends in line 17; the added one's keys begin in line 24.
    bad("a do that expects", kindPath, kind + step("after", "x", "kind = \"do\"\nexpect = \"It shows.\"\n"),
        "catalogue.key-unsuited", 26, "kind", "do");
    bad("a do that proves", kindPath, kind + step("after", "x", "kind = \"do\"\nproves = \"input\"\n"),
        "catalogue.key-unsuited", 26, "found", "proves");
    bad("a see with a unit", kindPath, kind + step("after", "x", keysOfSee("unit = \"mm\"\n")),
        "catalogue.key-unsuited", 27, "found", "unit");
    bad("a see with a pattern", kindPath, kind + step("after", "x", keysOfSee("pattern = \"steady\"\n")),
        "catalogue.key-unsuited", 27, "found", "pattern");
    bad("a reading without a unit", kindPath,
        kind + step("after", "x", "kind = \"read\"\nexpect = \"It shows.\"\nquantity = \"gap\"\n"),
        "catalogue.key-missing", 19, "wanted", "unit");
    bad("a unit nobody knows", kindPath, kind + step("after", "x", sample::with(keysOfRead(""), "mm", "inch")),
        "base.unit-unknown", 28, "found", "inch");
    bad("a time in millimetres", kindPath, kind + step("after", "x", sample::with(keysOfRead(""), "read", "time")),
        "catalogue.unit-mismatch", 28, "found", "mm");
    bad("a trial without tries", kindPath,
        kind + step("after", "x", "kind = \"trial\"\nexpect = \"It.\"\nneeded = 3\n"), "catalogue.key-missing", 19,
        "wanted", "tries");
    bad("more needed than tried", kindPath,
        kind + step("after", "x", "kind = \"trial\"\nexpect = \"It.\"\ntries = 3\nneeded = 5\n"),
        "catalogue.limit-crossed", 28);
    bad("a plan limit nobody fills", kindPath, kind + step("after", "x", keysOfRead("plan-limit = \"loop-norm\"\n")),
        "catalogue.word", 29, "nearest", "loop-normal");

    // Conditions.
    bad("column unknown", kindPath, kind + step("after", "x", keysOfSee("when = { feeds = [\"loop\"] }\n")),
        "catalogue.key-unknown", 27, "nearest", "feed");
    bad("word unknown", kindPath, kind + step("after", "x", keysOfSee("when = { feed = [\"lop\"] }\n")),
        "catalogue.word", 27, "nearest", "loop");
    bad("resistors as a number", kindPath, kind + step("after", "x", keysOfSee("when = { resistors = [1] }\n")),
        "catalogue.value", 27, "found", "whole-number");
    bad("condition without a column", kindPath, kind + step("after", "x", keysOfSee("when = {}\n")), "catalogue.value",
        27);

    // Limits and sources.
    const std::string limited =
        kind + step("after", "x", keysOfRead("[[after.limits]]\nupper = \"25\"\n" + limitSource));
    bad("a bare figure", kindPath, with(limited, "\"25\"", "25.5"), "catalogue.bare-number", 30);
    bad("a figure that is a whole number", kindPath, with(limited, "\"25\"", "25"), "catalogue.value", 30, "wanted",
        "text");
    bad("a figure with a comma", kindPath, with(limited, "\"25\"", "\"2,5\""), "base.decimal-form", 30, "found", "2,5");
    bad("a limit without a side", kindPath, with(limited, "upper = \"25\"\n", ""), "catalogue.limit-empty", 29);
    bad("a limit turned round", kindPath, with(limited, "upper", "lower = \"25.1\"\nupper"), "catalogue.limit-crossed",
        31, "found", "25");
    bad("confirmed and not read", kindPath, with(limited, "confirmed = false", "confirmed = true"),
        "catalogue.confirmed-unread", 32, "found", "common practice");
    bad("confirmed left out", kindPath, with(limited, "confirmed = false\n", ""), "catalogue.key-missing", 29, "wanted",
        "confirmed");
    bad("binding unknown", kindPath, with(limited, "\"advice\"", "\"advise\""), "catalogue.word", 31, "nearest",
        "advice");
    bad("a limit in a unit of its own", kindPath, with(limited, "upper", "unit = \"m\"\nupper"),
        "catalogue.key-unknown", 30, "found", "unit");
    bad("basis unknown", kindPath, with(kind, "common practice", "hearsay"), "catalogue.word", 17, "key", "basis");
    bad("read in no standard", kindPath, with(kind, "common practice", "read"), "catalogue.source", 17, "wanted",
        "standard");
    bad("a clause that says not how it is known", kindPath,
        with(kind, "basis =", "standard = \"A\", clause = \"1\", basis ="), "catalogue.source", 17, "wanted",
        "clause-basis");
    bad("source as text", kindPath, with(kind, "{ basis = \"common practice\" }", "\"a book\""), "catalogue.value", 17,
        "wanted", "table");

    // The other folders.
    bad("a part that says nothing", "parts/feed-loop.toml", "format = 1\n", "catalogue.key-missing", 1, "wanted",
        "steps");
    bad("a part with a title", "parts/feed-loop.toml", "format = 1\ntitle = \"Loop\"\nforbid = [\"x\"]\n",
        "catalogue.key-unknown", 2, "found", "title");
    bad("rules without figures", "rules/house.toml", rules.substr(0, rules.find("[[figures]]")),
        "catalogue.key-missing", 1, "wanted", "figures");
    bad("a figure without a quantity", "rules/house.toml", with(rules, "quantity = \"gap\"\n", ""),
        "catalogue.key-missing", 5, "wanted", "quantity");
    bad("a figure confirmed from memory", "rules/house.toml", with(rules, "confirmed = false", "confirmed = true"),
        "catalogue.confirmed-unread", 10);
    bad("a sequence without steps", "sequences/s.toml", sequence, "catalogue.key-missing", 1, "wanted", "steps");
    bad("a sequence's step of a device", "sequences/s.toml",
        sequence + step("steps", "x", keysOfSee("subject = \"device\"\n")), "catalogue.word", 13);
    bad("a sequence's step of nothing", "sequences/s.toml", sequence + step("steps", "x", keysOfSee("")),
        "catalogue.key-missing", 5, "wanted", "subject");
    bad("a sequence's step under a condition", "sequences/s.toml",
        sequence + step("steps", "x", keysOfSee("subject = \"area\"\nwhen = { rest = [\"open\"] }\n")),
        "catalogue.key-unsuited", 14, "found", "when");
    bad("a timer no plan has", "sequences/s.toml",
        sequence
            + step("steps", "x",
                   "subject = \"timer\"\nkind = \"time\"\nexpect = \"It.\"\nunit = \"s\"\nquantity = \"entry-dely\"\n"),
        "catalogue.word", 15, "nearest", "entry-delay");
    bad("a round of no step", "rounds/r.toml", "format = 1\ntitle = \"T\"\nsummary = \"S\"\nsubject = \"zone\"\n",
        "catalogue.key-missing", 1, "wanted", "step");
    bad("a round of rooms", "rounds/r.toml",
        "format = 1\ntitle = \"T\"\nsummary = \"S\"\nstep = \"x\"\nsubject = \"room\"\n", "catalogue.word", 5, "found",
        "room");
}

void CatalogueRead::refuses()
{
    QFETCH(std::string, path);
    QFETCH(std::string, text);
    QFETCH(QString, code);
    QFETCH(int, line);
    QFETCH(QString, argument);
    QFETCH(QString, value);
    const auto read = Catalogue::read({{path, text}});
    QVERIFY2(!read, "it was read without complaint");
    QCOMPARE(QString::fromStdString(read.error().code), code);
    QVERIFY2(hasWords(read.error().code), "the code has no sentence");
    const std::string where = line == 0 ? path : path + ":" + std::to_string(line);
    QCOMPARE(QString::fromStdString(read.error().where), QString::fromStdString(where));
    if (!argument.isEmpty())
        QCOMPARE(QString::fromStdString(sample::argument(read.error(), argument.toStdString())), value);
}

void CatalogueRead::keepsTheDigitsOfAFigure()
{
    const auto read = Catalogue::read({{"rules/house.toml", sample::with(rules, "\"25\"", "\"25.0\"")}});
    QVERIFY(read);
    const Limit& limit = read->rules("house")->limits.at(0);
    QCOMPARE(base::toText(*limit.upper), std::string("25.0"));
    QVERIFY(!limit.lower);
    QCOMPARE(limit.rules, std::string("house"));
    QCOMPARE(read->ruleNames(), std::vector<std::string>{"house"});
}

void CatalogueRead::emptyFolder()
{
    const QTemporaryDir folder;
    const auto files = readFolder(folder.path().toStdString());
    QVERIFY(!files);
    QCOMPARE(files.error().code, std::string("catalogue.empty"));
    QVERIFY(!readFolder("/nowhere/at/all"));
}

namespace {

void write(const QTemporaryDir& folder, const QString& path, const QByteArray& bytes)
{
    QVERIFY(QDir(folder.path()).mkpath(QFileInfo(path).path()));
    QFile file(folder.filePath(path));
    QVERIFY(file.open(QIODevice::WriteOnly));
    QCOMPARE(file.write(bytes), bytes.size());
}

} // namespace

void CatalogueRead::strayFilesInAFolder()
{
    const QTemporaryDir folder;
    write(folder, "kinds/letter-box.toml", QByteArray::fromStdString(sample::kind));
    write(folder, "kinds/letter-box.toml~", "an editor's copy");
    write(folder, "kinds/.hidden", "a file manager's");
    write(folder, "FORMAT.md", "beside the folders");
    auto files = readFolder(folder.path().toStdString());
    QVERIFY(files);
    QCOMPARE(files->size(), std::size_t{1});
    QVERIFY(Catalogue::read(*files));

    // A sheet saved under a wrong name must not silently be missing.
    write(folder, "kinds/flood.tml", QByteArray::fromStdString(sample::kind));
    files = readFolder(folder.path().toStdString());
    QVERIFY(files);
    const auto read = Catalogue::read(*files);
    QVERIFY(!read);
    QCOMPARE(read.error().code, std::string("catalogue.file-name"));
}

void CatalogueRead::fileTooLarge()
{
    const QTemporaryDir folder;
    write(folder, "kinds/letter-box.toml", QByteArray((1 << 20) + 1, '#'));
    const auto files = readFolder(folder.path().toStdString());
    QVERIFY(!files);
    QCOMPARE(files.error().code, std::string("file.too-large"));
}

void CatalogueRead::unknownSequenceAndRules()
{
    const std::string text = sequence + sample::step("steps", "leave", "kind = \"do\"\nsubject = \"area\"\n");
    const auto read = Catalogue::read({{"sequences/leaving.toml", text}, {"rules/house.toml", rules}});
    QVERIFY(read);
    QCOMPARE(read->sequences().at(0).steps.at(0).signal, std::string("-"));
    const auto unknown = read->composeSequence("leavin", {});
    QVERIFY(!unknown);
    QCOMPARE(unknown.error().code, std::string("catalogue.sequence-unknown"));
    QCOMPARE(sample::argument(unknown.error(), "nearest"), std::string("leaving"));
    const auto ruled = read->composeSequence("leaving", {"hous"});
    QVERIFY(!ruled);
    QCOMPARE(ruled.error().code, std::string("catalogue.rules-unknown"));
    QCOMPARE(sample::argument(ruled.error(), "nearest"), std::string("house"));
}

QTEST_GUILESS_MAIN(CatalogueRead)
#include "read.moc"
