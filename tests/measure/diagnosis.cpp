// SPDX-License-Identifier: GPL-3.0-or-later
// Mistakes made in a loop by Ohm's law worked by hand, and found again from what a meter would read. What a mistake looks
// like is common practice. The loop, unless said otherwise: 12 ohm of cable at the most, tamper and alarm contact resting
// closed, 4.7 kilohm beside the alarm contact, 2.2 kilohm at the end, 1 %; the meter 0.5 % + 0.5 ohm.
#include "core/measure/diagnosis.h"
#include "core/measure/mistake.h"
#include "core/measure/networktext.h"
#include "core/measure/partsize.h"

#include <QtTest>

#include <cmath>
#include <random>

using namespace proofwalk;
using measure::FarEnd;
using measure::Finding;
using measure::Handling;
using measure::LoopQuestion;
using measure::LoopReading;
using measure::Mistake;

namespace {

constexpr double infinity = std::numeric_limits<double>::infinity();

measure::Network made(std::string_view text) { return measure::readNetwork(text, 1).value(); }

const measure::Network& loop()
{
    static const measure::Network network = made("cable=12 + tamper:nc + (alarm:nc | zone=4700) + eol=2200");
    return network;
}

measure::Parts bit(const measure::Network& network, std::string_view name)
{
    return measure::partBit(network.find(name).value());
}

LoopReading read(Handling handling, double ohm) { return {handling, ohm, std::isinf(ohm) ? 0 : 0.005 * ohm + 0.5}; }

Handling atRest() { return {}; }
Handling alarmed() { return {.acted = bit(loop(), "alarm")}; }
Handling uncovered() { return {.acted = bit(loop(), "tamper")}; }
Handling shortedAtDevice() { return {.end = FarEnd::shorted}; }
Handling openedAtDevice() { return {.end = FarEnd::opened}; }

std::vector<Finding> diagnose(const measure::Network& network, std::vector<LoopReading> readings)
{
    LoopQuestion question;
    question.readings = std::move(readings);
    return measure::diagnose(network, question).value();
}

/// Where among the findings, or -1.
int placeOf(const measure::Network& network, const std::vector<Finding>& findings, Mistake what,
            std::string_view part = "")
{
    for (std::size_t i = 0; i < findings.size(); ++i)
        if (findings[i].suspicion.what == what
            && (part.empty() || network.parts()[findings[i].suspicion.part].name == part))
            return static_cast<int>(i);
    return -1;
}

/// The four readings of a loop that reads so: at rest, in alarm, cover off, shorted at the device.
std::vector<LoopReading> fourReadings(double rest, double alarm, double cover, double shorted)
{
    return {read(atRest(), rest), read(alarmed(), alarm), read(uncovered(), cover), read(shortedAtDevice(), shorted)};
}

} // namespace

class TestDiagnosis : public QObject {
    Q_OBJECT

private slots:
    void fourReadingsTell_data()
    {
        QTest::addColumn<double>("rest");
        QTest::addColumn<double>("alarm");
        QTest::addColumn<double>("cover");
        QTest::addColumn<double>("shorted");
        QTest::addColumn<int>("mistake");
        QTest::addColumn<QString>("part");
        const auto row = [](const char* name, double rest, double alarm, double cover, double shorted, Mistake what,
                            const char* part = "") {
            QTest::newRow(name) << rest << alarm << cover << shorted << static_cast<int>(what) << QString(part);
        };
        // 10 ohm of cable: 2210, 6910, open, 10.
        row("sound", 2210, 6910, infinity, 10, Mistake::none);
        row("resistor at the panel", 2210, 6910, infinity, 2210, Mistake::resistorAtPanel, "eol");
        row("swapped", 4710, 6910, infinity, 10, Mistake::resistorsSwapped);
        row("eol bridged", 10, 4710, infinity, 10, Mistake::resistorBridged, "eol");
        row("zone resistor missing", 2210, infinity, infinity, 10, Mistake::resistorMissing, "zone");
        row("two in parallel at the end", 1110, 5810, infinity, 10, Mistake::resistorHalved, "eol");
        row("two in series at the end", 4410, 9110, infinity, 10, Mistake::resistorDoubled, "eol");
        row("3.3 kilohm instead of 2.2", 3310, 8010, infinity, 10, Mistake::resistorWrong, "eol");
        row("5.6 kilohm instead of 4.7", 2210, 7810, infinity, 10, Mistake::resistorWrong, "zone");
        row("alarm contact rests open", 6910, 2210, infinity, 10, Mistake::contactReversed, "alarm");
        row("alarm contact never opens", 2210, 2210, infinity, 10, Mistake::contactStaysClosed, "alarm");
        row("alarm contact never closes", 6910, 6910, infinity, 10, Mistake::contactStaysOpen, "alarm");
        row("tamper contact bridged", 2210, 6910, 2210, 10, Mistake::contactStaysClosed, "tamper");
        row("tamper contact reversed", infinity, infinity, 2210, 10, Mistake::contactReversed, "tamper");
        row("bad joint of 150 ohm in the cable", 2360, 7060, infinity, 160, Mistake::joint);
        row("150 ohm in the alarm contact", 2210 + 150 * 4700.0 / 4850, 6910, infinity, 10, Mistake::contactResistance,
            "alarm");
        // 10 kilohm across the terminals: 2210 || 10000, 6910 || 10000, 10000, 10 || 10000.
        row("leak of 10 kilohm", 2210.0 * 10000 / 12210, 6910.0 * 10000 / 16910, 10000, 10.0 * 10000 / 10010,
            Mistake::leakage);
        row("short on the way", 6, 6, 6, 6, Mistake::shorted);
        row("cut on the way", infinity, infinity, infinity, infinity, Mistake::cut);
    }
    void fourReadingsTell()
    {
        QFETCH(double, rest);
        QFETCH(double, alarm);
        QFETCH(double, cover);
        QFETCH(double, shorted);
        QFETCH(int, mistake);
        QFETCH(QString, part);
        const auto findings = diagnose(loop(), fourReadings(rest, alarm, cover, shorted));
        for (const Finding& each : findings)
            qInfo("%d part %zu share %.3f", static_cast<int>(each.suspicion.what), each.suspicion.part, each.share);
        QCOMPARE(placeOf(loop(), findings, static_cast<Mistake>(mistake), part.toStdString()), 0);
    }
    // The mistake that one resistance cannot show: named beside "sound", and what would tell is the short at the device.
    void resistorAtThePanelIsInvisibleToOneReading()
    {
        const auto findings = diagnose(loop(), {read(atRest(), 2205)});
        QCOMPARE(placeOf(loop(), findings, Mistake::none), 0);
        const int place = placeOf(loop(), findings, Mistake::resistorAtPanel, "eol");
        QVERIFY(place > 0);
        const auto telling =
            measure::handlingThatTells(loop(), findings[0], findings[static_cast<std::size_t>(place)], 0.005);
        QVERIFY(telling == shortedAtDevice());
        QVERIFY(findings[0].share > 0.5 && findings[0].share < 1);
    }
    // Across the pair the short at the device reads the cable either way; opening there tells.
    void resistorAcrossThePanelIsFoundByOpening()
    {
        const auto network = made("cable=12 + (call:no + ra=680 | eol=3900)");
        const auto seen = diagnose(network, {read({}, 3905), read({.end = FarEnd::shorted}, 8)});
        const int place = placeOf(network, seen, Mistake::resistorAtPanel, "eol");
        QVERIFY(place > 0);
        QVERIFY(measure::handlingThatTells(network, seen[0], seen[static_cast<std::size_t>(place)], 0.005)
                == openedAtDevice());
        const auto told = diagnose(network, {read({}, 3905), read({.end = FarEnd::opened}, 3905)});
        QCOMPARE(placeOf(network, told, Mistake::resistorAtPanel, "eol"), 0);
        QCOMPARE(placeOf(network, told, Mistake::none), -1);
    }
    // A second resistor left in the panel's terminals: half at rest, like two at the end; opened at the device it stays.
    void secondResistorAtThePanel()
    {
        const auto rest = diagnose(loop(), {read(atRest(), 1102)});
        QVERIFY(placeOf(loop(), rest, Mistake::secondAtPanel) >= 0);
        QVERIFY(placeOf(loop(), rest, Mistake::resistorHalved, "eol") >= 0);
        const auto opened = diagnose(loop(), {read(atRest(), 1102), read(openedAtDevice(), 2200)});
        QCOMPARE(placeOf(loop(), opened, Mistake::secondAtPanel, "eol"), 0);
        QCOMPARE(placeOf(loop(), opened, Mistake::resistorHalved), -1);
    }
    void wrongValueWithItsPreferredNeighbour()
    {
        const auto findings = diagnose(loop(), fourReadings(3310, 8010, infinity, 10));
        const Finding& first = findings.at(0);
        QVERIFY(*first.size->lower_ohm <= 3300 && *first.size->upper_ohm >= 3300);
        QVERIFY(std::fabs(*first.preferred_ohm - 3300) < 1e-6);
    }
    void sizesHoldTheTruth()
    {
        const auto joint = diagnose(loop(), fourReadings(2360, 7060, infinity, 160)).at(0);
        QVERIFY(*joint.size->lower_ohm <= 150 && *joint.size->upper_ohm >= 150);
        const auto leak =
            diagnose(loop(), fourReadings(2210.0 * 10000 / 12210, 6910.0 * 10000 / 16910, 10000, 9.99)).at(0);
        QVERIFY(*leak.size->lower_ohm <= 10000 && *leak.size->upper_ohm >= 10000);
        QVERIFY(*leak.size->upper_ohm - *leak.size->lower_ohm < 0.02 * 10000); // the cover's reading fixes it
    }
    void oneReadingInAlarm()
    {
        const auto findings = diagnose(loop(), {read(atRest(), 6905)});
        QCOMPARE(placeOf(loop(), findings, Mistake::none), -1);
        QVERIFY(placeOf(loop(), findings, Mistake::contactStaysOpen, "alarm") >= 0);
        QVERIFY(placeOf(loop(), findings, Mistake::contactReversed, "alarm") >= 0);
        QVERIFY(placeOf(loop(), findings, Mistake::resistorWrong, "eol") > 0);
    }
    // R1 + 2 R2: two detectors open in one loop.
    void twoContactsInAChain()
    {
        const auto network = made("cable=12 + (a:nc | ra=4700) + (b:nc | rb=4700) + (c:nc | rc=4700) + eol=2200");
        const auto findings = diagnose(network, {read({}, 11605)});
        QVERIFY(placeOf(network, findings, Mistake::contactsBothActed) >= 0);
        QCOMPARE(placeOf(network, findings, Mistake::contactStaysOpen), -1);
    }
    void earth()
    {
        LoopQuestion question;
        question.readings = {read(atRest(), 2205)};
        question.toEarth_ohm = 20000;
        auto findings = measure::diagnose(loop(), question).value();
        QCOMPARE(placeOf(loop(), findings, Mistake::earthFault), 0);
        question.toEarth_ohm = infinity;
        findings = measure::diagnose(loop(), question).value();
        QCOMPARE(placeOf(loop(), findings, Mistake::earthFault), -1);
        QCOMPARE(placeOf(loop(), findings, Mistake::none), 0);
        question.toEarth_ohm.reset(); // not measured: not excluded
        findings = measure::diagnose(loop(), question).value();
        QVERIFY(placeOf(loop(), findings, Mistake::earthFault) > 0);
    }
    // A short with a little resistance of its own, more than the cable has: told as a leak of that size, not as nothing.
    void shortWithAResistance()
    {
        const auto findings = diagnose(loop(), {read(atRest(), 30)});
        const int place = placeOf(loop(), findings, Mistake::leakage);
        QVERIFY(place >= 0);
        const Finding& leak = findings[static_cast<std::size_t>(place)];
        QVERIFY(*leak.size->lower_ohm < 31 && *leak.size->upper_ohm > 29);
        QCOMPARE(placeOf(loop(), findings, Mistake::shorted), -1);
    }
    void nothingExplainsIt()
    {
        // Readings that contradict each other: open at rest, short in alarm, and a loop with the cover off.
        QVERIFY(diagnose(loop(), fourReadings(infinity, 3, 5000, 900)).empty());
    }
    // Whatever mistake is made, with whatever parts and cable within their tolerances, is among what is found.
    void theTruthIsAmongWhatIsFound_data()
    {
        QTest::addColumn<QString>("wiring"); // {0} cable, {1} and {2} resistors near 4700 and 2200
        QTest::newRow("two resistors") << "cable={0}..{0} + tamper:nc + (alarm:nc | zone={1}) + eol={2}";
        QTest::newRow("one, resting closed") << "cable={0}..{0} + tamper:nc + alarm:nc + eol={2}";
        QTest::newRow("one, resting open") << "cable={0}..{0} + tamper:nc + (alarm:no | eol={2})";
        QTest::newRow("fire style") << "cable={0}..{0} + tamper:nc + (alarm:no + ra={2} | eol={1})";
        QTest::newRow("two zones") << "cable={0}..{0} + tamper:nc + (alarm:nc | ra={1}) + (b:nc | rb={2}) + eol={1}";
        QTest::newRow("parallel at rest") << "cable={0}..{0} + tamper:nc + (alarm:nc + ra={2} | eol={1})";
    }
    void theTruthIsAmongWhatIsFound()
    {
        QFETCH(QString, wiring);
        const auto filled = [&](double cable_ohm, double first_ohm, double second_ohm) {
            QString text = wiring;
            for (const auto& [mark, ohm] : {std::pair{"{0}", cable_ohm}, {"{1}", first_ohm}, {"{2}", second_ohm}})
                text.replace(mark, QString::number(ohm, 'f', 6));
            return text.toStdString();
        };
        const std::string plan =
            QString::fromStdString(filled(12, 4700, 2200)).replace("12.000000..", "0..").toStdString();
        const auto network = measure::readNetwork(plan, 1).value();
        const Handling alarm{.acted = bit(network, "alarm")}, cover{.acted = bit(network, "tamper")};
        std::mt19937 engine(20261125);
        const auto uniform = [&](double from, double to) {
            return from + (to - from) * std::generate_canonical<double, 32>(engine);
        };
        int tried = 0, first = 0;
        for (int round = 0; round < 40; ++round) {
            const auto truth =
                measure::readNetwork(filled(uniform(0, 12), 4700 * uniform(0.991, 1.009), 2200 * uniform(0.991, 1.009)),
                                     0)
                    .value();
            for (measure::Suspicion each : measure::mistakesOf(network)) {
                if (each.what == Mistake::shorted) continue;
                const double size = each.what == Mistake::leakage       ? uniform(2000, 20000)
                                  : each.what == Mistake::resistorWrong ? uniform(5200, 9000)
                                                                        : uniform(80, 900);
                each.size = {size, size, size};
                std::vector<LoopReading> readings;
                for (const Handling& handling : {atRest(), alarm, cover, shortedAtDevice(), openedAtDevice()}) {
                    const double ohm = measure::spanOf(truth, measure::withMistake(truth, each, handling)).nominal_ohm;
                    const LoopReading exact = read(handling, ohm);
                    readings.push_back(exact);
                    if (std::isfinite(ohm)) readings.back().ohm += uniform(-1, 1) * std::min(exact.expanded_ohm, ohm);
                }
                const auto findings = diagnose(network, readings);
                const auto isIt = [&](const Finding& finding) {
                    return finding.suspicion.what == each.what && finding.suspicion.part == each.part;
                };
                const bool found = std::ranges::any_of(findings, isIt);
                const bool asPlanned = placeOf(network, findings, Mistake::none) == 0;
                QVERIFY2(found || (asPlanned && measure::hasSize(each.what)),
                         qPrintable(QString("mistake %1 at %2").arg(static_cast<int>(each.what)).arg(each.part)));
                ++tried;
                if (isIt(findings.front())) ++first;
            }
        }
        qInfo("%d mistakes made, %d of them named first", tried, first);
        QVERIFY(tried > 500);
        QVERIFY(2 * first > tried); // the rest reads the same as a likelier one
    }
    // The solved size against a search by halving, for a part deep in a network.
    void sizesAgainstASlowSearch()
    {
        const auto network = made("cable=12 + a=1000 + (b=2000 + c=500 | d=3000) + e=700");
        const measure::Suspicion wrong{Mistake::resistorWrong, *network.find("c")};
        const LoopReading reading{{}, 2990, 10};
        const auto sizes = measure::sizesFor(network, wrong, reading, 1e7);
        const auto at = [&](double size_ohm) {
            measure::Suspicion trial = wrong;
            trial.size = {size_ohm, size_ohm, size_ohm};
            return measure::spanOf(network, measure::withMistake(network, trial, {}));
        };
        const auto search = [&](auto reached) {
            double low = 0, high = 1e6;
            for (int i = 0; i < 200; ++i) (reached(at((low + high) / 2)) ? high : low) = (low + high) / 2;
            return high;
        };
        const double least = search([](const measure::Span& span) { return span.most_ohm >= 2980; });
        const double most = search([](const measure::Span& span) { return span.least_ohm >= 3000; });
        QVERIFY(std::fabs(sizes.least_ohm / least - 1) < 1e-6);
        QVERIFY(std::fabs(sizes.most_ohm / most - 1) < 1e-6);
    }
    void sharesAddUp()
    {
        double sum = 0;
        for (const Finding& each : diagnose(loop(), {read(atRest(), 2205)})) sum += each.share;
        QVERIFY(std::fabs(sum - 1) < 1e-9);
    }
    void refused()
    {
        const auto codeOf = [](const LoopQuestion& question, const measure::Network& network) {
            const auto findings = measure::diagnose(network, question);
            return findings ? std::string() : findings.error().code;
        };
        const auto asked = [&](LoopReading reading) {
            LoopQuestion question;
            question.readings = {reading};
            return codeOf(question, loop());
        };
        QCOMPARE(codeOf({}, loop()), std::string("measure.readings"));
        LoopQuestion many;
        many.readings.assign(17, read(atRest(), 2200));
        QCOMPARE(codeOf(many, loop()), std::string("measure.readings"));
        for (const double bad : {-1.0, std::nan(""), 1e308, -infinity})
            QCOMPARE(asked({{}, bad, 1}), std::string("measure.out-of-range"));
        for (const double bad : {-1.0, std::nan(""), infinity})
            QCOMPARE(asked({{}, 2200, bad}), std::string("measure.out-of-range"));
        LoopQuestion question;
        question.readings = {read(atRest(), 2200)};
        question.toEarth_ohm = -1;
        QCOMPARE(codeOf(question, loop()), std::string("measure.out-of-range"));
        question.toEarth_ohm.reset();
        question.range_ohm = 0;
        QCOMPARE(codeOf(question, loop()), std::string("measure.out-of-range"));
        question.range_ohm = 1e7;
        question.readings = {read(shortedAtDevice(), 10)};
        QCOMPARE(codeOf(question, made("eol=2200 + cable=5")), std::string("measure.far-end"));
    }
};

QTEST_GUILESS_MAIN(TestDiagnosis)
#include "diagnosis.moc"
