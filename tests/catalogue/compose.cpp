// SPDX-License-Identifier: GPL-3.0-or-later
// The rules of composition of core/catalogue/FORMAT.md, each on the smallest catalogue that shows it. The expected
// orders and figures were written down by hand from that page.
#include "tests/catalogue/sample.h"

#include <QtTest>

using namespace proofwalk;
using namespace proofwalk::catalogue;

namespace {

const std::string header = "format = 1\n";
const std::string kindHeader = sample::kind.substr(0, sample::kind.find("[[before]]"));

std::string see(const std::string& list, const std::string& name, const std::string& more = "")
{
    return sample::step(list, name, "kind = \"see\"\nexpect = \"It shows.\"\n" + more);
}

std::string reading(const std::string& name, const std::string& unit, const std::string& more = "")
{
    return sample::step("before", name,
                        "kind = \"read\"\nexpect = \"It shows.\"\nquantity = \"gap\"\nunit = \"" + unit + "\"\n"
                            + more);
}

std::string figure(const std::string& quantity, const std::string& unit, const std::string& sides,
                   const std::string& more = "")
{
    return "\n[[figures]]\nquantity = \"" + quantity + "\"\nunit = \"" + unit + "\"\n" + sides
         + "\nbinding = \"performance\"\nconfirmed = true\n"
           "source = { basis = \"read\", standard = \"House book\" }\n"
         + more;
}

const std::string rulesHeader = "format = 1\ntitle = \"T\"\njurisdiction = \"here\"\n";

/// The names of a sheet's steps, with a space between.
std::string names(const Result<Sheet>& sheet)
{
    if (!sheet) return sheet.error().where + " " + sheet.error().code;
    std::string all;
    for (const Step& step : sheet->steps) all += (all.empty() ? "" : " ") + step.name;
    return all;
}

Result<Sheet> composed(const Files& files, const Traits& traits)
{
    auto read = Catalogue::read(files);
    if (!read) return std::unexpected(read.error());
    return read->compose(traits);
}

Traits traits()
{
    return {.kind = "letter-box",
            .signals = {"alarm"},
            .feed = "loop",
            .rest = "closed",
            .resistors = "1",
            .purpose = "intrusion",
            .delay = "entry",
            .sounding = "loud",
            .reporting = "yes",
            .rules = {}};
}

const std::string kindPath = "kinds/letter-box.toml";

} // namespace

class CatalogueCompose : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void theOrderIsFixed();
    void aPartThatIsNotThereAddsNothing();
    void anUnknownColumnHoldsNoCondition();
    void everyColumnOfAConditionMustHold();
    void onlySignalsTheDeviceHas();
    void replacesInPlaceOrIsLeftOut();
    void replacesOfTheSameSignalOnly();
    void forbidsWhereverItStands();
    void theSameStepOfTwoParts();
    void ofExcludingConditionsOneIsTaken();
    void kindWithoutASheet();
    void limitsOfTheRules();
    void limitsInTheUnitOfTheStep();
    void limitsThatCannotBeBroughtToTheUnit();
    void limitsOfASequence();
    void theStepSaysWhichFileGaveIt();
};

void CatalogueCompose::theOrderIsFixed()
{
    // Written in another order than they are taken up.
    const Files files{
        {kindPath, kindHeader + see("after", "g") + see("before", "a") + see("before", "b")},
        {"parts/resistors-1.toml", header + see("steps", "f")},
        {"parts/feed-loop.toml", header + see("steps", "e")},
        {"parts/delay-entry.toml", header + see("steps", "d")},
        {"parts/purpose-intrusion.toml", header + see("steps", "c")},
        {"parts/purpose-fire.toml", header + see("steps", "x")},
    };
    QCOMPARE(names(composed(files, traits())), std::string("a b c d e f g"));
}

void CatalogueCompose::aPartThatIsNotThereAddsNothing()
{
    QCOMPARE(names(composed({{kindPath, sample::kind}}, traits())), std::string("flap-lifted"));
}

void CatalogueCompose::anUnknownColumnHoldsNoCondition()
{
    const Files files{
        {kindPath, kindHeader + see("before", "a") + see("before", "b", "when = { rest = [\"open\", \"closed\"] }\n")},
        {"parts/feed-loop.toml", header + see("steps", "c")}};
    Traits blank = traits();
    QCOMPARE(names(composed(files, blank)), std::string("a b c"));
    blank.rest = blank.feed = "";
    QCOMPARE(names(composed(files, blank)), std::string("a"));
}

void CatalogueCompose::everyColumnOfAConditionMustHold()
{
    const Files files{{kindPath, kindHeader
                                     + see("before", "a",
                                           "when = { kind = [\"letter-box\"], signals = [\"tamper\", \"alarm\"], "
                                           "feed = [\"loop\"], rest = [\"closed\"], resistors = [\"0\", \"1\"], "
                                           "purpose = [\"intrusion\"], delay = [\"entry\"], sounding = [\"loud\"], "
                                           "reporting = [\"yes\"] }\n")}};
    QCOMPARE(names(composed(files, traits())), std::string("a"));
    // Each column spoiled alone must be enough to leave the step out.
    const std::vector<std::pair<std::string Traits::*, std::string>> spoiled{
        {&Traits::feed, "radio"}, {&Traits::rest, "open"},       {&Traits::resistors, "2"}, {&Traits::purpose, "fire"},
        {&Traits::delay, "none"}, {&Traits::sounding, "silent"}, {&Traits::reporting, "no"}};
    for (const auto& [column, word] : spoiled) {
        Traits other = traits();
        other.*column = word;
        QCOMPARE(names(composed(files, other)), std::string());
    }
}

void CatalogueCompose::onlySignalsTheDeviceHas()
{
    const std::string kind = sample::with(kindHeader, "[\"alarm\"]", "[\"alarm\", \"tamper\"]") + see("before", "a")
                           + see("before", "b", "signal = \"tamper\"\n") + see("before", "c", "signal = \"-\"\n");
    Traits device = traits();
    QCOMPARE(names(composed({{kindPath, kind}}, device)), std::string("a c"));
    device.signals = {"tamper"};
    QCOMPARE(names(composed({{kindPath, kind}}, device)), std::string("b c"));
    device.signals = {};
    QCOMPARE(names(composed({{kindPath, kind}}, device)), std::string("c"));
}

void CatalogueCompose::replacesInPlaceOrIsLeftOut()
{
    const Files files{{kindPath, kindHeader + see("before", "a") + see("before", "b")},
                      {"parts/delay-entry.toml", header + see("steps", "a", "replaces = true\ncaution = \"Mind it.\"\n")
                                                     + see("steps", "z", "replaces = true\n")}};
    const auto sheet = composed(files, traits());
    QCOMPARE(names(sheet), std::string("a b"));
    QCOMPARE(sheet->steps.at(0).caution, std::string("Mind it."));
    QCOMPARE(sheet->steps.at(0).part, std::string("parts/delay-entry.toml"));
}

void CatalogueCompose::replacesOfTheSameSignalOnly()
{
    const std::string kind = sample::with(kindHeader, "[\"alarm\"]", "[\"alarm\", \"tamper\"]") + see("before", "a")
                           + see("before", "a", "signal = \"tamper\"\n");
    const Files files{{kindPath, kind},
                      {"parts/delay-entry.toml",
                       header + see("steps", "a", "signal = \"tamper\"\nreplaces = true\ncaution = \"Mind it.\"\n")}};
    Traits device = traits();
    device.signals = {"alarm", "tamper"};
    const auto sheet = composed(files, device);
    QCOMPARE(names(sheet), std::string("a a"));
    QCOMPARE(sheet->steps.at(0).caution, std::string());
    QCOMPARE(sheet->steps.at(1).caution, std::string("Mind it."));
}

void CatalogueCompose::forbidsWhereverItStands()
{
    const std::string kind =
        kindHeader + "forbid = [\"e\"]\n" + see("before", "a") + see("before", "b") + see("after", "g");
    Files files{{kindPath, kind},
                {"parts/purpose-intrusion.toml", header + "forbid = [\"a\", \"g\", \"nothing-of-the-sort\"]\n"},
                {"parts/feed-loop.toml", header + see("steps", "e") + see("steps", "f")}};
    QCOMPARE(names(composed(files, traits())), std::string("b f"));
    // What is forbidden cannot be brought back by replacing it.
    files["parts/resistors-1.toml"] = header + see("steps", "e", "replaces = true\n");
    QCOMPARE(names(composed(files, traits())), std::string("b f"));
}

void CatalogueCompose::theSameStepOfTwoParts()
{
    const Files files{{kindPath, kindHeader + see("before", "a")},
                      {"parts/feed-loop.toml", header + see("steps", "a")}};
    const auto sheet = composed(files, traits());
    QVERIFY(!sheet);
    QCOMPARE(sheet.error().code, std::string("catalogue.step-twice"));
    QCOMPARE(sheet.error().where, std::string("parts/feed-loop.toml:3"));
}

void CatalogueCompose::ofExcludingConditionsOneIsTaken()
{
    const Files files{
        {kindPath, kindHeader + see("before", "a", "when = { delay = [\"entry\"] }\ncaution = \"One.\"\n")
                       + see("before", "a", "when = { delay = [\"none\", \"on-route\"] }\ncaution = \"Two.\"\n")}};
    Traits device = traits();
    QCOMPARE(composed(files, device)->steps.at(0).caution, std::string("One."));
    device.delay = "on-route";
    QCOMPARE(composed(files, device)->steps.at(0).caution, std::string("Two."));
}

void CatalogueCompose::kindWithoutASheet()
{
    Traits device = traits();
    device.kind = "letter-bx";
    const auto sheet = composed({{kindPath, sample::kind}}, device);
    QVERIFY(!sheet);
    QCOMPARE(sheet.error().code, std::string("catalogue.kind-unknown"));
    QCOMPARE(sheet.error().where, std::string("kinds/letter-bx.toml"));
    QCOMPARE(sample::argument(sheet.error(), "nearest"), std::string("letter-box"));
}

void CatalogueCompose::limitsOfTheRules()
{
    const std::string own = "[[before.limits]]\nlower = \"1\"\nbinding = \"advice\"\nconfirmed = false\n"
                            "source = { basis = \"common practice\" }\n";
    const Files files{
        {kindPath, kindHeader + reading("a", "mm", own) + see("before", "b")},
        {"rules/one.toml", rulesHeader + figure("gap", "mm", "upper = \"25\"")
                               + figure("gap", "mm", "upper = \"10\"", "when = { purpose = [\"fire\"] }\n")
                               + figure("width", "mm", "upper = \"5\"")},
        {"rules/two.toml", rulesHeader + figure("gap", "mm", "lower = \"2\"\nupper = \"20.0\"")}};
    Traits device = traits();
    device.rules = {"two", "one"};
    const auto sheet = composed(files, device);
    QVERIFY(sheet);
    const auto& limits = sheet->steps.at(0).limits;
    QCOMPARE(limits.size(), std::size_t{3}); // its own, then those of the sets in the order the plan names them
    QCOMPARE(limits.at(0).rules, std::string());
    QCOMPARE(base::toText(*limits.at(0).lower), std::string("1"));
    QCOMPARE(limits.at(1).rules, std::string("two"));
    QCOMPARE(base::toText(*limits.at(1).upper), std::string("20.0"));
    QCOMPARE(limits.at(2).rules, std::string("one"));
    QVERIFY(limits.at(2).confirmed);
    QVERIFY(sheet->steps.at(1).limits.empty());

    device.rules = {"three"};
    const auto unknown = composed(files, device);
    QVERIFY(!unknown);
    QCOMPARE(unknown.error().code, std::string("catalogue.rules-unknown"));
}

void CatalogueCompose::limitsInTheUnitOfTheStep()
{
    // 0.025 m is 25 mm; 1.5 cm is 15 mm; 90 s is 1.5 min (SI brochure, tables 7 and 8).
    const Files files{
        {kindPath,
         kindHeader + reading("a", "mm")
             + sample::step("before", "b", "kind = \"time\"\nexpect = \"It.\"\nquantity = \"wait\"\nunit = \"min\"\n")},
        {"rules/one.toml", rulesHeader + figure("gap", "m", "upper = \"0.025\"")
                               + figure("gap", "cm", "lower = \"1.5\"") + figure("wait", "s", "upper = \"90\"")}};
    Traits device = traits();
    device.rules = {"one"};
    const auto sheet = composed(files, device);
    QVERIFY(sheet);
    const auto& gap = sheet->steps.at(0).limits;
    QCOMPARE(gap.at(0).unit, std::string("mm"));
    QVERIFY(base::compare(*gap.at(0).upper, {25, 0}) == 0);
    QVERIFY(base::compare(*gap.at(1).lower, {15, 0}) == 0);
    const auto& wait = sheet->steps.at(1).limits;
    QCOMPARE(wait.at(0).unit, std::string("min"));
    QVERIFY(base::compare(*wait.at(0).upper, {15, -1}) == 0);
}

void CatalogueCompose::limitsThatCannotBeBroughtToTheUnit()
{
    const auto refused = [](const std::string& stepUnit, const std::string& unit, const std::string& upper) {
        const std::string kind =
            stepUnit == "min"
                ? kindHeader
                      + sample::step("before", "a",
                                     "kind = \"time\"\nexpect = \"It.\"\nquantity = \"gap\"\nunit = \"min\"\n")
                : kindHeader + reading("a", stepUnit);
        Traits device = traits();
        device.rules = {"one"};
        const auto sheet = composed(
            {{kindPath, kind}, {"rules/one.toml", rulesHeader + figure("gap", unit, "upper = \"" + upper + "\"")}},
            device);
        return sheet ? std::string("composed") : sheet.error().where + " " + sheet.error().code;
    };
    QCOMPARE(refused("mm", "V", "25"), std::string("rules/one.toml catalogue.unit-mismatch"));
    QCOMPARE(refused("min", "s", "100"), std::string("rules/one.toml catalogue.unit-mismatch")); // 1.666… min
    QCOMPARE(refused("min", "s", "99"), std::string("composed"));                                // 1.65 min
    QCOMPARE(refused("mm", "mm", "25"), std::string("composed"));
}

void CatalogueCompose::limitsOfASequence()
{
    const std::string text = "format = 1\ntitle = \"T\"\nsummary = \"S\"\n"
                           + sample::step("steps", "way-in",
                                          "subject = \"timer\"\nkind = \"time\"\nexpect = \"It.\"\n"
                                          "quantity = \"entry-delay\"\nunit = \"s\"\nplan-limit = \"timer\"\n");
    const auto read = Catalogue::read(
        {{"sequences/in.toml", text}, {"rules/one.toml", rulesHeader + figure("entry-delay", "s", "upper = \"45\"")}});
    QVERIFY(read);
    QVERIFY(read->sequences().at(0).steps.at(0).limits.empty());
    QVERIFY(read->composeSequence("in", {})->steps.at(0).limits.empty());
    const auto sequence = read->composeSequence("in", {"one"});
    QVERIFY(sequence);
    QCOMPARE(base::toText(*sequence->steps.at(0).limits.at(0).upper), std::string("45"));
    QCOMPARE(sequence->steps.at(0).planLimit, PlanLimit::timer);
}

void CatalogueCompose::theStepSaysWhichFileGaveIt()
{
    const auto sheet =
        composed({{kindPath, sample::kind}, {"parts/feed-loop.toml", header + see("steps", "a")}}, traits());
    QCOMPARE(sheet->kind, std::string("letter-box"));
    QCOMPARE(sheet->steps.at(0).part, kindPath);
    QCOMPARE(sheet->steps.at(1).part, std::string("parts/feed-loop.toml"));
}

QTEST_GUILESS_MAIN(CatalogueCompose)
#include "compose.moc"
