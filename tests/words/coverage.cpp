// SPDX-License-Identifier: GPL-3.0-or-later
// Every code that core may utter has its words, and every template is well made. Reads the sources as text: a failure
// or Error that begins with a literal, and any other call that begins with one on a subject known from those.
#include "core/base/file.h"
#include "core/words/words.h"

#include <QtTest>

#include <algorithm>
#include <map>
#include <regex>
#include <set>

using namespace proofwalk;

namespace {

struct Use {
    std::string place; ///< "core/base/csv.cpp:41"
    std::string code;
};

/// Literals that begin a call or an Error, in code. A name with one of these endings is a file's.
const std::string literal = "\\s*(?:[^\"(){};]*\\?\\s*)?\"([a-z][a-z0-9-]*(?:\\.[a-z0-9-]+)+)\""
                            "(?:\\s*:\\s*\"([a-z][a-z0-9-]*(?:\\.[a-z0-9-]+)+)\")?";
const std::regex failures("(?:\\bfailure\\s*\\(|\\bError\\s*\\{)" + literal);
const std::regex anyCall("(?:[A-Za-z_]\\w*\\s*\\(|\\bError\\s*\\{)" + literal);
const std::regex fileName(".*\\.(csv|json|jsonl|toml|pdf|walk|png|jpg|svg|ttf|otf|xml|icc|txt|db|html|pem|key|p12)");

std::vector<Use> usesIn(const std::string& text, const std::string& name, const std::regex& form)
{
    std::vector<Use> uses;
    for (auto match = std::sregex_iterator(text.begin(), text.end(), form); match != std::sregex_iterator(); ++match) {
        for (const std::size_t group : {1U, 2U}) { // the second is the other side of "late ? ... : ..."
            const std::string code = (*match)[group];
            if (code.empty() || std::regex_match(code, fileName)) continue;
            const auto line = 1 + std::count(text.begin(), text.begin() + match->position(group), '\n');
            uses.push_back({name + ":" + std::to_string(line), code});
        }
    }
    return uses;
}

std::string subjectOf(const std::string& code) { return code.substr(0, code.find('.')); }

/// The sources of core, by name.
std::map<std::string, std::string> sources()
{
    std::map<std::string, std::string> texts;
    const std::filesystem::path root = PROOFWALK_SOURCE;
    for (const auto& entry : std::filesystem::recursive_directory_iterator(root / "core")) {
        const auto ending = entry.path().extension();
        if (ending == ".cpp" || ending == ".h")
            texts[std::filesystem::relative(entry.path(), root).string()] = base::readFile(entry.path()).value();
    }
    return texts;
}

std::vector<Use> everyUse(const std::map<std::string, std::string>& texts)
{
    std::set<std::string> subjects;
    std::vector<Use> uses;
    for (const auto& [name, text] : texts)
        for (Use& use : usesIn(text, name, failures)) {
            subjects.insert(subjectOf(use.code));
            uses.push_back(std::move(use));
        }
    for (const auto& [name, text] : texts)
        for (Use& use : usesIn(text, name, anyCall)) {
            const auto same = [&](const Use& other) { return other.place == use.place && other.code == use.code; };
            if (subjects.contains(subjectOf(use.code)) && std::ranges::none_of(uses, same))
                uses.push_back(std::move(use));
        }
    return uses;
}

/// Ends the program with the reason if the words cannot be read.
words::Book english()
{
    auto book = words::Book::open(PROOFWALK_SOURCE "/core/words/english");
    if (!book) qFatal("%s", words::Book().sentence(book.error()).c_str());
    return *book;
}

} // namespace

class Coverage : public QObject {
    Q_OBJECT

private slots:
    void theSearchFindsWhatItShould()
    {
        const auto found =
            everyUse({{"t", "return failure(\"plan.a-b\", x);\n"
                            "failure(\n    \"walk.c\", y); Error{\"csv.d\", z}\n"
                            "bad(late ? \"plan.e\" : \"plan.f\"); open(\"plan.csv\"); f(\"other.g\");\n"}});
        std::string all;
        for (const Use& use : found) all += use.place + " " + use.code + ";";
        QCOMPARE(all, std::string("t:1 plan.a-b;t:3 walk.c;t:3 csv.d;t:4 plan.e;t:4 plan.f;"));
    }
    void everyCodeHasWords()
    {
        const words::Book book = english();
        const auto uses = everyUse(sources());
        QVERIFY(uses.size() > 30); // the search does find the ground's own
        int missing = 0;
        for (const Use& use : uses) {
            if (book.has(use.code)) continue;
            ++missing;
            qWarning("%s: %s has no words", use.place.c_str(), use.code.c_str());
        }
        QCOMPARE(missing, 0);
    }
    void templatesAreWellMade()
    {
        const words::Book book = english();
        for (const std::string& code : book.codes()) {
            const std::string sentence = book.sentence({code, "w", {}});
            QVERIFY2(sentence.find("..") == std::string::npos, (code + " ends in a full stop of its own").c_str());
            const auto text = book.phrase(code) + sentence;
            QVERIFY2(std::ranges::count(text, '{') == std::ranges::count(text, '}'), code.c_str());
        }
    }
    // A name in braces that no source ever writes is a slip of the pen: the reader would see the braces.
    void everyNameInBracesIsGivenSomewhere()
    {
        std::string all;
        for (const auto& [name, text] : sources()) all += text;
        const words::Book book = english();
        const std::regex braces("\\{([a-z_]+)\\}");
        for (const std::string& code : book.codes()) {
            const std::string sentence = book.sentence({code, "w", {}});
            for (auto match = std::sregex_iterator(sentence.begin(), sentence.end(), braces);
                 match != std::sregex_iterator(); ++match)
                QVERIFY2(all.find('"' + match->str(1) + '"') != std::string::npos,
                         (code + " " + match->str(0)).c_str());
        }
    }
};

QTEST_GUILESS_MAIN(Coverage)
#include "coverage.moc"
