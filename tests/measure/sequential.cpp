// SPDX-License-Identifier: GPL-3.0-or-later
// Source of the bounds on the errors: Wald, 1945 (from memory): a wrong "good" in at most a / (1 - b) of the bad, a
// wrong "bad" in at most b / (1 - a) of the good, both together at most a + b. Here they are counted out, path by path.
#include "core/measure/sequential.h"

#include "tests/measure/refusal.h"

#include <map>

using namespace proofwalk;
using namespace proofwalk::measure;
using proofwalk::tests::hostile;
using proofwalk::tests::refused;

namespace {

std::vector<bool> run(int hits, int misses)
{
    std::vector<bool> all(static_cast<std::size_t>(hits), true);
    all.insert(all.end(), static_cast<std::size_t>(misses), false);
    return all;
}

struct Outcome {
    double good = 0;
    double bad = 0;
};

/// The slow, obvious way: the chance of every count of hits after every trial, taken out where the test stops.
Outcome countedOut(const SequentialRule& rule, double chance)
{
    Outcome outcome;
    std::map<int, double> open{{0, 1.0}}; // hits so far: its chance
    for (int tried = 1; tried <= 400 && !open.empty(); ++tried) {
        std::map<int, double> next;
        for (const auto& [hits, weight] : open) {
            next[hits + 1] += weight * chance;
            next[hits] += weight * (1 - chance);
        }
        for (auto each = next.begin(); each != next.end();) {
            // The standing hangs on the counts alone while nothing has been decided before.
            const double evidence = each->first * std::log(rule.good / rule.bad)
                                  + (tried - each->first) * std::log((1 - rule.good) / (1 - rule.bad));
            const bool isGood = evidence >= std::log((1 - rule.wrongBad) / rule.wrongGood);
            const bool isBad = evidence <= std::log(rule.wrongBad / (1 - rule.wrongGood));
            (isGood ? outcome.good : outcome.bad) += isGood || isBad ? each->second : 0;
            each = isGood || isBad ? next.erase(each) : std::next(each);
        }
        open = std::move(next);
    }
    return outcome;
}

} // namespace

class TestSequential : public QObject {
    Q_OBJECT

private slots:
    // Bad 0.70, good 0.95: a hit counts ln(0.95 / 0.70) = 0.3054, wanted ln 19 = 2.9444: ten hits, not nine. Three
    // misses of ln(0.05 / 0.30) = -1.7918 each are too many, two are.
    void straightRuns()
    {
        const SequentialRule rule;
        QVERIFY(sequentialStanding(rule, run(9, 0)).value().verdict == Enough::goOn);
        QCOMPARE(sequentialStanding(rule, run(9, 0)).value().moreHits, 1);
        const auto ten = sequentialStanding(rule, run(12, 0)).value();
        QVERIFY(ten.verdict == Enough::good);
        QCOMPARE(ten.decidedAt, 10);
        QCOMPARE(ten.moreHits, 0);
        QVERIFY(sequentialStanding(rule, run(0, 1)).value().verdict == Enough::goOn);
        QVERIFY(sequentialStanding(rule, run(0, 2)).value().verdict == Enough::bad);
        QCOMPARE(sequentialStanding(rule, {}).value().moreHits, 10);
    }
    // What comes after the decision changes nothing.
    void decidedIsDecided()
    {
        const auto now = sequentialStanding({}, run(10, 30)).value();
        QVERIFY(now.verdict == Enough::good);
        QCOMPARE(now.decidedAt, 10);
    }
    // What it asks for is enough, and one less is not.
    void theMoreItAsksForIsEnough()
    {
        for (const SequentialRule& rule : {SequentialRule{}, {0.5, 0.9, 0.01, 0.1}, {0.9, 0.99, 0.05, 0.05}})
            for (const int before : {0, 3, 7}) {
                auto trials = run(before, 1);
                const auto now = sequentialStanding(rule, trials).value();
                if (now.verdict != Enough::goOn) continue;
                trials.insert(trials.end(), static_cast<std::size_t>(now.moreHits), true);
                QVERIFY(sequentialStanding(rule, trials).value().verdict == Enough::good);
                trials.pop_back();
                QVERIFY(sequentialStanding(rule, trials).value().verdict == Enough::goOn);
            }
    }
    // Every path of ten trials, gone through by hand with the same evidence: it stops where that crosses first.
    void everyPathStopsAtItsFirstCrossing()
    {
        const SequentialRule rule{0.5, 0.9, 0.1, 0.1};
        const double enough = std::log(9); // (1 - 0.1) / 0.1
        for (unsigned path = 0; path < 1024; ++path) {
            std::vector<bool> trials;
            double evidence = 0;
            int stopped = 0;
            for (unsigned i = 0; i < 10; ++i) {
                trials.push_back((path >> i & 1) != 0);
                if (stopped != 0) continue;
                evidence += trials.back() ? std::log(1.8) : std::log(0.2); // 0.9 / 0.5 and 0.1 / 0.5
                if (std::fabs(evidence) >= enough) stopped = static_cast<int>(i) + 1;
            }
            const auto now = sequentialStanding(rule, trials).value();
            QCOMPARE(now.decidedAt, stopped);
            if (stopped != 0) QVERIFY((now.verdict == Enough::good) == (evidence > 0));
        }
    }
    void itErrsNoMoreThanItMay()
    {
        for (const SequentialRule& rule :
             {SequentialRule{}, {0.5, 0.9, 0.05, 0.05}, {0.6, 0.95, 0.01, 0.1}, {0.7, 0.98, 0.1, 0.1}}) {
            const Outcome ofBad = countedOut(rule, rule.bad);
            const Outcome ofGood = countedOut(rule, rule.good);
            QVERIFY(ofBad.good + ofBad.bad > 0.9999 && ofGood.good + ofGood.bad > 0.9999); // it comes to an end
            QVERIFY(ofBad.good <= rule.wrongGood / (1 - rule.wrongBad));
            QVERIFY(ofGood.bad <= rule.wrongBad / (1 - rule.wrongGood));
            QVERIFY(ofBad.good + ofGood.bad <= rule.wrongGood + rule.wrongBad);
        }
    }
    void badInput()
    {
        for (const double bad : hostile({.zero = true, .negative = true, .huge = true})) {
            QCOMPARE(refused(sequentialStanding({bad, 0.9, 0.05, 0.05}, {})), std::string("measure.out-of-range bad"));
            QCOMPARE(refused(sequentialStanding({0.7, bad, 0.05, 0.05}, {})), std::string("measure.out-of-range good"));
            QCOMPARE(refused(sequentialStanding({0.7, 0.9, bad, 0.05}, {})),
                     std::string("measure.out-of-range wrong_good"));
            QCOMPARE(refused(sequentialStanding({0.7, 0.9, 0.05, bad}, {})),
                     std::string("measure.out-of-range wrong_bad"));
        }
        QCOMPARE(refused(sequentialStanding({0.9, 0.9, 0.05, 0.05}, {})), std::string("measure.out-of-range good"));
        QCOMPARE(refused(sequentialStanding({0.9, 1, 0.05, 0.05}, {})), std::string("measure.out-of-range good"));
    }
};

QTEST_GUILESS_MAIN(TestSequential)
#include "sequential.moc"
