// SPDX-License-Identifier: GPL-3.0-or-later
// The frame of `proofwalk work`, and of every topic: its words are there, its examples run, and hostile input is
// refused by the input's name. The values are held against their sources in tests/reference.
#include "core/base/json.h"
#include "core/command/command.h"
#include "core/command/work/print.h"
#include "core/words/words.h"

#include <QJsonDocument>
#include <QJsonObject>
#include <QtTest>

#include <sstream>

using namespace proofwalk;
using namespace proofwalk::command::work;

namespace {

words::Book english()
{
    auto book = words::Book::open(PROOFWALK_SOURCE "/core/words/english");
    if (!book) qFatal("the words cannot be read");
    return *book;
}

std::vector<std::string> pieces(std::string_view example)
{
    std::istringstream stream{std::string(example)};
    std::vector<std::string> words;
    for (std::string word; stream >> word;) words.push_back(word);
    return words;
}

struct Ran {
    int status = 0;
    std::string out;
    std::string err;
};

Ran ran(std::vector<std::string> words)
{
    words.insert(words.begin(), "work");
    std::ostringstream out;
    std::ostringstream err;
    const auto status = static_cast<int>(command::runWords(words, out, err));
    return {status, out.str(), err.str()};
}

Ran ranLine(const std::string& line) { return ran(pieces(line)); }

/// The code of the error that the line ends in.
std::string codeOf(const std::string& line)
{
    const auto error = QJsonDocument::fromJson(QByteArray::fromStdString(ranLine(line + " --json").err)).object();
    return error["error"].toObject()["code"].toString().toStdString();
}

/// The example's words with the value of one input replaced.
std::vector<std::string> withValue(const Computation& computation, const std::string& name, const std::string& value)
{
    std::vector<std::string> words{"what=" + std::string(computation.what)};
    for (const std::string& word : pieces(computation.example))
        if (!word.starts_with("what=")) words.push_back(word.starts_with(name + "=") ? name + "=" + value : word);
    return words;
}

/// As ran(), without reading the sentences again for each of thousands of runs.
Ran answered(const words::Book& book, const Topic& topic, const std::vector<std::string>& words, bool json = false)
{
    std::ostringstream out;
    std::ostringstream err;
    command::Face face(out, err, book, json);
    const auto status = static_cast<int>(answer(face, topic, words));
    return {status, out.str(), err.str()};
}

bool isNumber(const Input& input) { return input.kind != Input::Kind::word && input.kind != Input::Kind::text; }

} // namespace

class TestWork : public QObject {
    Q_OBJECT

private slots:
    void initTestCase() { qputenv("PROOFWALK_DATA", PROOFWALK_SOURCE "/core"); }

    void everyTopicHasItsWords()
    {
        const words::Book book = english();
        int missing = 0;
        const auto need = [&](const std::string& code) {
            if (book.has(code)) return;
            ++missing;
            qWarning("%s has no words", code.c_str());
        };
        for (const Topic& topic : topics()) {
            const std::string code = "work." + std::string(topic.name);
            need(code);
            for (const Computation& each : topic.computations) {
                need(code + ".as." + std::string(each.what));
                for (const Input& input : each.inputs) need(code + ".in." + std::string(input.name));
            }
        }
        QCOMPARE(missing, 0);
    }

    void everyExampleRunsAndHasSourcesAndWords()
    {
        const words::Book book = english();
        for (const Topic& topic : topics())
            for (const Computation& each : topic.computations) {
                const std::string line = std::string(topic.name) + " " + std::string(each.example);
                const auto chosen = choose(topic, pieces(each.example));
                QVERIFY2(chosen.has_value(), line.c_str());
                QVERIFY2(chosen->computation->what == each.what, line.c_str());
                const auto worked = each.run(chosen->given);
                QVERIFY2(worked.has_value(), (line + (worked ? "" : book.sentence(worked.error()))).c_str());
                QVERIFY2(!worked->lines.empty() && !worked->sources.empty(), line.c_str());
                for (const auto& codes : {worked->limits, worked->sources})
                    for (const std::string& code : codes) QVERIFY2(book.has(code), code.c_str());
                for (const Remark& remark : worked->remarks) QVERIFY2(book.has(remark.code), remark.code.c_str());
                const Ran people = answered(book, topic, pieces(each.example));
                QVERIFY2(people.status == 0 && people.err.empty(), (line + people.err).c_str());
                QVERIFY2(people.out.find("work.") == std::string::npos, people.out.c_str());
                QVERIFY2(people.out.find('{') == std::string::npos, people.out.c_str());
            }
    }

    void asJsonTheResultsBearTheirNames()
    {
        const words::Book book = english();
        for (const Topic& topic : topics())
            for (const Computation& each : topic.computations) {
                const Ran json = answered(book, topic, pieces(each.example), true);
                QJsonParseError trouble;
                const auto answer = QJsonDocument::fromJson(QByteArray::fromStdString(json.out), &trouble).object();
                QVERIFY2(trouble.error == QJsonParseError::NoError, json.out.c_str());
                QCOMPARE(answer["topic"].toString().toStdString(), std::string(topic.name));
                QCOMPARE(answer["what"].toString().toStdString(), std::string(each.what));
                QVERIFY2(!answer["results"].toObject().isEmpty(), json.out.c_str());
                QVERIFY2(!answer["sources"].toArray().isEmpty(), json.out.c_str());
                const auto results = answer["results"].toObject();
                QCOMPARE(results.size(), answer["formulas"].toArray().size()); // none overwrote another
            }
    }

    // Whatever is no number, or lies beyond every range, is refused with the input's name in the sentence.
    void hostileNumbersAreRefusedByName()
    {
        const words::Book book = english();
        for (const Topic& topic : topics())
            for (const Computation& each : topic.computations)
                for (const std::string& typed : pieces(each.example)) {
                    const std::string name = typed.substr(0, typed.find('='));
                    const auto input = std::ranges::find_if(each.inputs, [&](const auto& i) { return means(name, i); });
                    if (input == each.inputs.end() || !isNumber(*input)) continue;
                    for (const char* value :
                         {"nan", "inf", "-inf", "1e308", "-1e308", "1e999", "", "12,", "0x10", "abc"}) {
                        const Ran hostile = answered(book, topic, withValue(each, name, value));
                        const std::string what = std::string(topic.name) + " " + name + "=" + value;
                        QVERIFY2(hostile.status == 2, what.c_str());
                        QVERIFY2(hostile.err.find(name) != std::string::npos, (what + ": " + hostile.err).c_str());
                    }
                    // Zero, less and the very small may be in order; if not, the name is told, and nothing breaks.
                    for (const char* value : {"0", "-1", "1e-300", "-5e-324"}) {
                        const Ran odd = answered(book, topic, withValue(each, name, value));
                        const std::string what = std::string(topic.name) + " " + name + "=" + value + ": " + odd.err;
                        QVERIFY2(odd.status == 0 || odd.status == 2, what.c_str());
                        QVERIFY2(odd.out.find("nan") == std::string::npos, odd.out.c_str());
                    }
                }
    }

    // A length in volts, a voltage in metres: refused with the name as it should be.
    void swappedUnitsAreRefusedByName()
    {
        const words::Book book = english();
        int tried = 0;
        for (const Topic& topic : topics())
            for (const Computation& each : topic.computations)
                for (const Input& input : each.inputs) {
                    const Suffix* own = suffixOf(input.name);
                    if (own == nullptr || input.anyUnit) continue;
                    const std::string other =
                        std::string(stemOf(input.name)) + (own->quantity == "voltage" ? "_m" : "_v");
                    // Some topics know the stem under both units.
                    if (std::ranges::any_of(each.inputs, [&](const Input& one) { return means(other, one); })) continue;
                    std::vector<std::string> words{"what=" + std::string(each.what), other + "=1"};
                    const Ran swapped = answered(book, topic, words);
                    const std::string what = std::string(topic.name) + " " + other + ": " + swapped.err;
                    QVERIFY2(swapped.status == 2, what.c_str());
                    QVERIFY2(swapped.err.find(std::string(stemOf(input.name))) != std::string::npos, what.c_str());
                    ++tried;
                }
        QVERIFY(tried > 100);
    }

    void mistakes_data()
    {
        QTest::addColumn<QString>("line");
        QTest::addColumn<QString>("code");
        QTest::addColumn<QString>("named");
        const auto row = [](const char* line, const char* code, const char* named) {
            QTest::newRow(line) << line << code << named;
        };
        row("confrmity", "work.unknown-topic", "conformity");
        row("conformity value_db=3 uper_db=4", "work.unknown", "upper");
        row("conformity value_db=3 upper=4", "work.unit-missing", "upper_UNIT");
        row("conformity value_db=3 upper_furlong=4", "work.unit-other", "upper_UNIT");
        row("conformity value_db=3 upper_dba=4", "work.unit-differs", "_db");
        row("conformity upper_db=3", "work.missing", "value_db");
        row("conformity value_db=3 value_db=3", "work.twice", "value_db");
        row("conformity value_db", "work.form", "name=value");
        row("conformity =3", "work.form", "name=value");
        row("conformity value_db=12,5 upper_db=13", "work.not-a-number", "12,5");
        row("conformity value_db=3", "measure.tolerance-missing", "limit");
        row("sound rated_db=90 with_db=80", "work.not-together", "what=");
        row("sound with_db=70 without_db=63 method=survay", "work.choice", "survey");
        row("sound with_db=70 without_db=", "work.empty", "without_db");
        row("trials hits=5.5 tries=6", "work.not-whole", "5.5");
        row("trials hits=6 tries=5", "measure.out-of-range", "hits");
        row("conformity what=verdict what=guard value_v=1", "work.twice", "what");
        row("conformity what=judgement value_db=3", "work.unknown-what", "verdict");
    }
    void mistakes()
    {
        QFETCH(QString, line);
        QFETCH(QString, code);
        QFETCH(QString, named);
        QCOMPARE(codeOf(line.toStdString()), code.toStdString());
        const Ran told = ranLine(line.toStdString());
        QCOMPARE(told.status, 2);
        QVERIFY2(told.err.find(named.toStdString()) != std::string::npos, told.err.c_str());
        QVERIFY(told.out.empty());
    }

    void topicsAndHelp()
    {
        const Ran list = ran({});
        QCOMPARE(list.status, 0);
        for (const Topic& topic : topics()) {
            QVERIFY(list.out.find("  " + std::string(topic.name) + "  ") != std::string::npos);
            const Ran help = ran({std::string(topic.name), "--help"});
            QCOMPARE(help.status, 0);
            for (const Computation& each : topic.computations)
                for (const Input& input : each.inputs)
                    QVERIFY2(help.out.find("  " + std::string(input.name)) != std::string::npos, help.out.c_str());
        }
        QCOMPARE(ran({"nothing-such", "--help"}).status, 2);
    }
};

QTEST_GUILESS_MAIN(TestWork)
#include "work.moc"
