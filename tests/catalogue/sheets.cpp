// SPDX-License-Identifier: GPL-3.0-or-later
// The sheets themselves: that every kind, wiring and zone behaviour composes to something a person can work from, that
// every promise is served, that nothing dangerous stands without its caution, and that no sheet is another with the noun
// changed.
#include "tests/catalogue/sample.h"

#include "core/base/file.h"
#include "core/catalogue/vocabulary.h"

#include <QTemporaryDir>
#include <QtTest>
#include <map>
#include <set>

using namespace proofwalk;
using namespace proofwalk::catalogue;

namespace {

std::string lower(std::string text)
{
    std::ranges::transform(text, text.begin(), [](unsigned char c) { return static_cast<char>(std::tolower(c)); });
    return text;
}

bool mentions(const std::string& text, const char* word) { return lower(text).find(word) != std::string::npos; }

/// The words of a text, in lower case.
std::vector<std::string> wordsOf(const std::string& text)
{
    std::vector<std::string> words(1);
    for (const char c : lower(text)) {
        if ((c >= 'a' && c <= 'z') || c == '\'' || c == '-') words.back() += c;
        else if (!words.back().empty()) words.emplace_back();
    }
    if (words.back().empty()) words.pop_back();
    return words;
}

/// All that a person is told by a sheet's own steps.
std::vector<std::string> wordsOf(const std::vector<Step>& steps)
{
    std::string all;
    for (const Step& step : steps) all += step.act + " " + step.expect + " " + step.caution + " " + step.never + " ";
    return wordsOf(all);
}

/// Length of the longest common subsequence over the length of the shorter: 1 for a sheet and itself; stays near 1
/// when only nouns are changed.
double alikeness(const std::vector<std::string>& one, const std::vector<std::string>& other)
{
    std::vector<std::size_t> before(other.size() + 1), row(other.size() + 1);
    for (const std::string& word : one) {
        for (std::size_t j = 0; j < other.size(); ++j)
            row[j + 1] = word == other[j] ? before[j] + 1 : std::max(row[j], before[j + 1]);
        std::swap(before, row);
    }
    return static_cast<double>(before.back()) / static_cast<double>(std::min(one.size(), other.size()));
}

/// By value: a loop over a part of a temporary would outlive it.
std::vector<Step> stepsFor(const Catalogue& catalogue, const Traits& traits)
{
    auto sheet = catalogue.compose(traits);
    if (!sheet) qFatal("%s: %s", sheet.error().where.c_str(), sheet.error().code.c_str());
    return std::move(sheet->steps);
}

/// The kind's own steps: no column known but the kind and its signals.
std::vector<Step> ownSteps(const Catalogue& catalogue, const Kind& kind, const std::vector<std::string>& signals)
{
    Traits traits;
    traits.kind = kind.name;
    traits.signals = signals;
    return stepsFor(catalogue, traits);
}

bool isServed(const Sheet& sheet, Proof proof, const std::string& signal)
{
    return std::ranges::any_of(sheet.steps, [&](const Step& step) {
        return step.core && step.proves == proof && (proof == Proof::output || step.signal == signal);
    });
}

/// What the sheet leaves unproved of what could be promised; empty if nothing. (A device promises input for each of
/// its signals that has a zone; response if its zone sounds or causes an effect, which any zone may; received if its
/// zone reports; output if it is driven.)
std::string unserved(const Sheet& sheet, const Kind& kind, const Traits& traits)
{
    for (const std::string& signal : kind.signals)
        if (!isServed(sheet, Proof::input, signal)) return "input of " + signal;
    if (!traits.purpose.empty() && !isServed(sheet, Proof::response, "alarm")) return "response";
    if (!traits.purpose.empty() && traits.reporting == "yes" && !isServed(sheet, Proof::received, "alarm"))
        return "received";
    if (kind.output && !isServed(sheet, Proof::output, "-")) return "output";
    return {};
}

/// What makes a composed sheet useless or dangerous; empty if nothing does.
std::string unsound(const Sheet& sheet, const Traits& traits)
{
    if (sheet.steps.empty()) return "no step";
    for (const Step& step : sheet.steps) {
        const bool sets = step.states == std::vector{SystemState::set};
        if (sets && step.core && step.caution.empty()) return step.name + ": an alarm without a caution";
        if (step.name == "loop-short") {
            if (traits.feed == "two-wire") return "a powered pair is to be shorted";
            if (step.caution.empty()) return "a short without a caution";
        }
    }
    return {};
}

/// The word of a column, and unknown.
std::vector<std::string> choices(const char* column, bool withUnknown)
{
    std::vector<std::string> words = columnWords(column);
    if (withUnknown) words.emplace_back();
    return words;
}

std::string describe(const Traits& traits)
{
    return traits.kind + " feed=" + traits.feed + " rest=" + traits.rest + " resistors=" + traits.resistors
         + " purpose=" + traits.purpose + " delay=" + traits.delay + " sounding=" + traits.sounding
         + " reporting=" + traits.reporting;
}

} // namespace

class CatalogueSheets : public QObject {
    Q_OBJECT

private:
    const Catalogue m_catalogue = sample::whole();

    /// Calls with every combination of wiring and zone behaviour.
    template <class Do>
    static void forEveryZone(const Kind& kind, Do visit)
    {
        Traits traits;
        traits.kind = kind.name;
        traits.signals = kind.signals;
        for (const auto& feed : choices("feed", true))
            for (const auto& rest : choices("rest", false))
                for (const auto& resistors : choices("resistors", true))
                    for (const auto& purpose : choices("purpose", true))
                        for (const auto& delay : choices("delay", false))
                            for (const auto& sounding : choices("sounding", true))
                                for (const auto& reporting : choices("reporting", false)) {
                                    traits.feed = feed;
                                    traits.rest = rest;
                                    traits.resistors = resistors;
                                    traits.purpose = purpose;
                                    traits.delay = delay;
                                    traits.sounding = sounding;
                                    traits.reporting = reporting;
                                    visit(traits);
                                }
    }

private Q_SLOTS:
    void theSevenKindsAreThere();
    void everyKindWiringAndBehaviour();
    void aPromiseWithoutAStepIsNoticed();
    void coreFitsItsBudget();
    void everySourceIsSound();
    void textsAreSentences();
    void cautionsWhereTheKindNeedsThem();
    void neverAFlame();
    void noTwoAreAlike();
    void aChangedNounIsNoticed();
    void everyFigureIsUsed();
    void roundsAndSequences();
    void theExampleOfTheFormatPage();
    void theEighthKindIsOneFile();
};

void CatalogueSheets::theSevenKindsAreThere()
{
    for (const char* name : {"contact-surface", "motion-infrared", "smoke-four-wire", "heat-fixed", "flood",
                             "sounder-inside", "holdup-button"})
        QVERIFY2(m_catalogue.kind(name) != nullptr, name);
    for (const char* name : {"intruder-eu", "fire-uk"}) QVERIFY2(m_catalogue.rules(name) != nullptr, name);
}

void CatalogueSheets::everyKindWiringAndBehaviour()
{
    int sheets = 0;
    QStringList problems;
    const auto note = [&](const Traits& traits, const std::string& what) {
        if (!what.empty() && problems.size() < 10) problems << QString::fromStdString(describe(traits) + ": " + what);
    };
    for (const Kind& kind : m_catalogue.kinds())
        forEveryZone(kind, [&](Traits& traits) {
            // The rules change limits only; now and then is enough.
            traits.rules = sheets % 7 == 0 ? m_catalogue.ruleNames() : std::vector<std::string>{};
            ++sheets;
            const auto sheet = m_catalogue.compose(traits);
            if (!sheet) return note(traits, sheet.error().where + " " + sheet.error().code);
            if (const std::string what = unserved(*sheet, kind, traits); !what.empty())
                note(traits, "nothing proves " + what);
            note(traits, unsound(*sheet, traits));
        });
    QVERIFY2(problems.isEmpty(), qPrintable(problems.join("\n")));
    QCOMPARE(sheets, static_cast<int>(m_catalogue.kinds().size()) * 6 * 2 * 5 * 10 * 3 * 5 * 2);
}

void CatalogueSheets::aPromiseWithoutAStepIsNoticed()
{
    // The same walk over a catalogue with the hold-up part's confirmation taken out of the core.
    Files files = m_catalogue.files();
    std::string& part = files.at("parts/purpose-hold-up.toml");
    part = sample::with(part, "proves = \"received\"", "proves = \"received\"\ncore = false");
    const auto spoiled = Catalogue::read(files);
    QVERIFY(spoiled);
    Traits traits;
    traits.kind = "holdup-button";
    traits.signals = {"alarm", "tamper"};
    traits.purpose = "hold-up";
    traits.reporting = "yes";
    const Kind& kind = *spoiled->kind("holdup-button");
    QCOMPARE(unserved(*spoiled->compose(traits), kind, traits), std::string("received"));
    QCOMPARE(unserved(*m_catalogue.compose(traits), kind, traits), std::string());
}

void CatalogueSheets::coreFitsItsBudget()
{
    // What a walk can spend at each device: project choice, counted from the actions of each step.
    const std::map<std::string, int> asked{{"contact-surface", 15}, {"motion-infrared", 90}, {"smoke-four-wire", 120}};
    for (const Kind& kind : m_catalogue.kinds()) {
        int sum = 0;
        for (const Step& step : ownSteps(m_catalogue, kind, {"alarm"}))
            if (step.core) sum += step.seconds;
        QVERIFY2(sum > 0 && sum <= kind.coreSeconds,
                 qPrintable(QString("%1: %2 s of %3 s").arg(kind.name.c_str()).arg(sum).arg(kind.coreSeconds)));
        if (asked.contains(kind.name)) QCOMPARE(kind.coreSeconds, asked.at(kind.name));
    }
}

void CatalogueSheets::everySourceIsSound()
{
    const auto check = [](const Source& source, const std::string& where) {
        QVERIFY2(!source.basis.empty(), where.c_str());
        // A clause is printed only if it was itself read, so no other may stand here at all.
        QVERIFY2(source.clause.empty() || source.clauseBasis == "read", where.c_str());
        for (const std::string* text : {&source.standard, &source.note})
            QVERIFY2(!mentions(*text, "http") && !mentions(*text, "www."), where.c_str());
        // Read, but not in the standard itself: it says so.
        if (source.basis == "read") QVERIFY2(mentions(source.note, "as quoted on a public page"), where.c_str());
    };
    const auto checkSteps = [&](const std::vector<Step>& steps) {
        for (const Step& step : steps) {
            check(step.source, step.part + " " + step.name);
            for (const Limit& limit : step.limits) {
                check(limit.source, step.part + " " + step.name);
                QVERIFY2(!limit.confirmed || limit.source.basis == "read", step.name.c_str());
            }
        }
    };
    for (const Kind& kind : m_catalogue.kinds()) checkSteps(ownSteps(m_catalogue, kind, kind.signals));
    for (const Sequence& sequence : m_catalogue.sequences()) checkSteps(sequence.steps);
    for (const std::string& name : m_catalogue.ruleNames())
        for (const Limit& limit : m_catalogue.rules(name)->limits) check(limit.source, name + " " + limit.quantity);
    // The steps of the parts, by every zone of one kind.
    std::set<std::string> seen;
    forEveryZone(*m_catalogue.kind("contact-surface"), [&](const Traits& traits) {
        for (const Step& step : stepsFor(m_catalogue, traits))
            if (seen.insert(step.part + step.name + step.act).second) checkSteps({step});
    });
    QVERIFY(seen.size() > 60);
}

void CatalogueSheets::textsAreSentences()
{
    for (const Kind& kind : m_catalogue.kinds())
        for (const Step& step : ownSteps(m_catalogue, kind, kind.signals))
            for (const std::string* text : {&step.act, &step.expect, &step.caution, &step.never}) {
                if (text->empty()) continue;
                const std::string where = step.part + " " + step.name + ": " + *text;
                QVERIFY2(text->ends_with('.'), where.c_str());
                QVERIFY2(std::isupper(static_cast<unsigned char>(text->front())) != 0, where.c_str());
                QVERIFY2(text->size() <= 280, where.c_str()); // more is not read on a ladder
            }
}

void CatalogueSheets::cautionsWhereTheKindNeedsThem()
{
    // Fire and hold-up begin with people and linked effects, before anything is caused.
    for (const char* name : {"smoke-four-wire", "heat-fixed", "holdup-button", "sounder-inside"}) {
        const Kind& kind = *m_catalogue.kind(name);
        const Step first = ownSteps(m_catalogue, kind, kind.signals).front();
        QCOMPARE(first.kind, StepKind::confirm);
        QVERIFY2(!first.caution.empty() && first.core, name);
    }
    // A kind on which life depends: what proves its input is never answered in bulk, and carries a caution.
    for (const Kind& kind : m_catalogue.kinds()) {
        if (!kind.lifeSafety || kind.output) continue;
        const auto steps = ownSteps(m_catalogue, kind, {"alarm"});
        const auto first = std::ranges::find(steps, Proof::input, &Step::proves);
        QVERIFY2(first != steps.end() && first->lifeSafety && !first->caution.empty(), kind.name.c_str());
    }
    const std::map<std::string, const char*> named{{"flood", "electric"},
                                                   {"contact-surface", "finger"},
                                                   {"motion-infrared", "floor"},
                                                   {"sounder-inside", "hearing"}};
    for (const auto& [name, word] : named) {
        const auto steps = ownSteps(m_catalogue, *m_catalogue.kind(name), {"alarm"});
        QVERIFY2(std::ranges::any_of(steps, [&](const Step& step) { return mentions(step.caution, word); }),
                 name.c_str());
    }
}

void CatalogueSheets::neverAFlame()
{
    for (const char* name : {"smoke-four-wire", "heat-fixed"}) {
        const auto steps = ownSteps(m_catalogue, *m_catalogue.kind(name), {"alarm"});
        const auto seen = std::ranges::find(steps, "alarm-seen", &Step::name);
        QVERIFY(seen != steps.end());
        QVERIFY2(mentions(seen->never, "never a flame"), name);
    }
    // And nowhere is one asked for, nor a safety device to be bridged.
    for (const Kind& kind : m_catalogue.kinds())
        for (const Step& step : ownSteps(m_catalogue, kind, kind.signals))
            for (const char* word : {"flame", "lighter", "candle", "smoke bomb", "defeat"})
                QVERIFY2(!mentions(step.act, word), (kind.name + " " + step.name).c_str());
}

void CatalogueSheets::noTwoAreAlike()
{
    std::map<std::string, std::vector<std::string>> texts;
    for (const Kind& kind : m_catalogue.kinds()) texts[kind.name] = wordsOf(ownSteps(m_catalogue, kind, kind.signals));
    for (auto one = texts.begin(); one != texts.end(); ++one)
        for (auto other = std::next(one); other != texts.end(); ++other) {
            const double alike = alikeness(one->second, other->second);
            QVERIFY2(alike < 0.55,
                     qPrintable(QString("%1 and %2: %3").arg(one->first.c_str(), other->first.c_str()).arg(alike)));
        }
    // Nor is a sentence used twice among the kinds.
    std::map<std::string, std::string> owner;
    for (const Kind& kind : m_catalogue.kinds())
        for (const Step& step : ownSteps(m_catalogue, kind, kind.signals))
            for (const std::string* text : {&step.act, &step.expect}) {
                if (text->empty()) continue;
                const auto [first, fresh] = owner.emplace(*text, kind.name + " " + step.name);
                QVERIFY2(fresh || first->second == kind.name + " " + step.name, (first->second + ": " + *text).c_str());
            }
}

void CatalogueSheets::aChangedNounIsNoticed()
{
    const auto flood = wordsOf(ownSteps(m_catalogue, *m_catalogue.kind("flood"), {"alarm", "tamper"}));
    auto changed = flood;
    for (std::string& word : changed) {
        if (word == "water") word = "gas";
        if (word == "probe") word = "sensor";
        if (word == "floor") word = "ceiling";
    }
    QVERIFY(changed != flood);
    QVERIFY2(alikeness(flood, changed) > 0.55, "the measure must be able to tell a copy");
    QCOMPARE(alikeness(flood, flood), 1.0);
}

void CatalogueSheets::everyFigureIsUsed()
{
    // A limit on a quantity that no step reads would never be applied, and nobody would notice.
    std::set<std::string> read;
    for (const Kind& kind : m_catalogue.kinds())
        forEveryZone(kind, [&](const Traits& traits) {
            if (traits.delay != "none" || traits.sounding != "loud" || traits.reporting != "no") return;
            for (const Step& step : stepsFor(m_catalogue, traits)) read.insert(step.quantity);
        });
    for (const Sequence& sequence : m_catalogue.sequences())
        for (const Step& step : sequence.steps) read.insert(step.quantity);
    for (const std::string& name : m_catalogue.ruleNames())
        for (const Limit& limit : m_catalogue.rules(name)->limits)
            QVERIFY2(read.contains(limit.quantity), (name + ": " + limit.quantity).c_str());
}

void CatalogueSheets::roundsAndSequences()
{
    std::set<std::string> steps;
    forEveryZone(*m_catalogue.kind("contact-surface"), [&](const Traits& traits) {
        for (const Step& step : stepsFor(m_catalogue, traits))
            steps.insert(step.name + " " + std::string(wordOf(step.subject)));
    });
    QCOMPARE(m_catalogue.rounds().size(), std::size_t{1});
    for (const Round& round : m_catalogue.rounds())
        QVERIFY2(steps.contains(round.step + " " + std::string(wordOf(round.subject))), round.name.c_str());

    const auto sequence = m_catalogue.composeSequence("entry-exit", {"intruder-eu"});
    QVERIFY(sequence);
    std::map<std::string, Step> byName;
    for (const Step& step : sequence->steps) byName[step.name] = step;
    QCOMPARE(byName.at("exit-delay").planLimit, PlanLimit::timer);
    QCOMPARE(byName.at("entry-delay").planLimit, PlanLimit::timer);
    QCOMPARE(byName.at("entry-delay").subject, Subject::timer);
    QCOMPARE(byName.at("entry-delay").limits.size(), std::size_t{1});
    QVERIFY(!byName.at("entry-delay").caution.empty());
    QCOMPARE(byName.at("really-set").states, std::vector{SystemState::set});
}

void CatalogueSheets::theExampleOfTheFormatPage()
{
    const auto page = base::readFile(PROOFWALK_SOURCE "/core/catalogue/FORMAT.md");
    QVERIFY(page);
    const auto begin = page->find("```toml\n");
    QVERIFY(begin != std::string::npos);
    const std::string example = page->substr(begin + 8, page->find("```", begin + 8) - begin - 8);
    const auto read = Catalogue::read({{"kinds/letter-box-switch.toml", example}});
    QVERIFY2(read, read ? "" : (read.error().where + " " + read.error().code).c_str());
    QCOMPARE(read->kinds().at(0).title, std::string("Letter-box switch"));
}

void CatalogueSheets::theEighthKindIsOneFile()
{
    // A copy of the catalogue's folder, and one more file in it.
    const QTemporaryDir folder;
    const std::filesystem::path root = folder.path().toStdString();
    for (const char* part : {"kinds", "parts", "rules", "sequences", "rounds"})
        std::filesystem::copy(std::filesystem::path(PROOFWALK_SOURCE "/core/catalogue") / part, root / part);
    std::string eighth = sample::kind
                       + sample::step("before", "flap-fallen",
                                      "kind = \"see\"\nproves = \"input\"\nexpect = \"The zone shows closed.\"\n");
    QVERIFY(base::writeFile(root / "kinds/letter-box-switch.toml", eighth));

    auto files = readFolder(root);
    QVERIFY(files);
    const auto catalogue = Catalogue::read(std::move(*files));
    QVERIFY(catalogue);
    QCOMPARE(catalogue->kinds().size(), m_catalogue.kinds().size() + 1);
    const Kind& kind = *catalogue->kind("letter-box-switch");
    const Traits traits{.kind = kind.name,
                        .signals = {"alarm"},
                        .feed = "loop",
                        .rest = "closed",
                        .resistors = "0",
                        .purpose = "intrusion",
                        .delay = "entry",
                        .sounding = "loud",
                        .reporting = "yes",
                        .rules = {"intruder-eu"}};
    const auto sheet = catalogue->compose(traits);
    QVERIFY(sheet);
    QCOMPARE(unserved(*sheet, kind, traits), std::string());
    std::vector<std::string> names;
    for (const Step& step : sheet->steps) names.push_back(step.name);
    const std::vector<std::string> expected{"flap-lifted", "flap-fallen", "response",    "received",
                                            "loop-ohms",   "loop-open",   "short-unseen"};
    QCOMPARE(names, expected);
    // The way in waits: the entry part's trip has taken the place of the ordinary one.
    QCOMPARE(sheet->steps.at(2).part, std::string("parts/delay-entry.toml"));
}

QTEST_GUILESS_MAIN(CatalogueSheets)
#include "sheets.moc"
