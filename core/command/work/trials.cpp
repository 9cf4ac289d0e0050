// SPDX-License-Identifier: GPL-3.0-or-later
// proofwalk work trials: what k of n proves, and what a sample says of the rest (core/measure/trials.h, sample.h,
// sequential.h).
#include "core/command/work/topic.h"

#include "core/measure/distribution.h"
#include "core/measure/sample.h"
#include "core/measure/sequential.h"
#include "core/measure/trials.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

namespace proofwalk::command::work {
namespace {

constexpr Range counts{0, 1e6};
constexpr Range someTries{1, 1e6};
constexpr Range confidences{0.5, 0.999999};

Input confidence() { return usual("confidence", "0.95", confidences); }

/// "54.9 %": rounded down, for what is claimed.
std::string percentDown(double share) { return fmt::format("{:.1f} %", std::floor(share * 1000 + 1e-9) / 10); }
/// Rounded up, for what is still possible.
std::string percentUp(double share) { return fmt::format("{:.1f} %", std::ceil(share * 1000 - 1e-9) / 10); }
std::string percent(double share) { return fmt::format("{:.4g} %", share * 100); }

Result<Worked> proved(const Given& given)
{
    const measure::TrialCount count{given.count("hits"), given.count("tries")};
    const double sure = given.number("confidence");
    auto exact = measure::clopperPearson(count, sure);
    if (!exact) return passOn(exact);
    auto score = measure::wilson(count, sure);
    if (!score) return passOn(score);
    auto least = measure::provedAtLeast(count, sure);
    if (!least) return passOn(least);
    auto missAtMost = measure::provedAtMost({count.tries - count.hits, count.tries}, sure);
    if (!missAtMost) return passOn(missAtMost);
    const std::string kn = fmt::format("k = {}, n = {}, C = {}", count.hits, count.tries, shown(sure));
    Worked worked;
    worked.lines = {
        {"at least, one-sided: the beta quantile of 1 − C with k and n − k + 1", kn, "at_least", *least},
        {"misses at most, one-sided: 1 − at least", "1 − " + shown(*least), "misses_at_most", *missAtMost},
        {"two-sided (Clopper and Pearson), lower: the beta quantile of (1 − C)/2", kn, "exact_lower", exact->lower},
        {"upper: the beta quantile of 1 − (1 − C)/2 with k + 1 and n − k", kn, "exact_upper", exact->upper},
        {"two-sided (Wilson): (k + z²/2 ∓ z √(k (n − k)/n + z²/4))/(n + z²), lower", kn, "wilson_lower", score->lower},
        {"the same, upper", kn, "wilson_upper", score->upper}};
    worked.remarks.push_back({count.hits == 0 ? "work.trials.proves-nothing" : "work.trials.proves",
                              {{"hits", std::to_string(count.hits)},
                               {"tries", std::to_string(count.tries)},
                               {"confidence", percent(sure)},
                               {"share", percentDown(*least)}}});
    worked.limits = {"work.trials.one-path"};
    worked.sources = {"work.trials.clopper-pearson", "work.trials.wilson"};
    return worked;
}

Result<Worked> run(const Given& given)
{
    const double sure = given.number("confidence");
    auto n = measure::successRun(given.number("reliability"), sure);
    if (!n) return passOn(n);
    auto least = measure::provedAtLeast({*n, *n}, sure);
    if (!least) return passOn(least);
    Worked worked;
    worked.lines = {{"n = the least whole number from ln(1 − C)/ln R",
                     fmt::format("ln(1 − {})/ln {}", shown(sure), shown(given.number("reliability"))), "tries",
                     static_cast<double>(*n)},
                    {"they prove (1 − C)^(1/n)", fmt::format("(1 − {})^(1/{})", shown(sure), *n), "at_least", *least}};
    worked.remarks.push_back({"work.trials.no-miss", {{"tries", std::to_string(*n)}}});
    worked.limits = {"work.trials.one-path"};
    worked.sources = {"work.trials.success-run"};
    return worked;
}

Result<Worked> rule(const Given& given)
{
    const int needed = given.count("needed");
    const int tries = given.count("tries");
    auto kept = measure::chanceToKeepRule(needed, tries, given.number("chance"));
    if (!kept) return passOn(kept);
    Worked worked;
    worked.lines = {{"P(at least k of n) = Σ C(n, i) p^i (1 − p)^(n − i), i = k to n",
                     fmt::format("{} of {}, p = {}", needed, tries, shown(given.number("chance"))), "kept", *kept}};
    worked.limits = {"work.trials.one-path"};
    worked.sources = {"work.trials.binomial"};
    return worked;
}

Result<Worked> retest(const Given& given)
{
    const int lot = given.count("lot");
    const double sure = given.number("confidence");
    Worked worked;
    int drawn = 0;
    if (given.has("drawn")) {
        drawn = given.count("drawn");
    } else {
        auto size = measure::retestSample(lot);
        if (!size) return passOn(size);
        drawn = *size;
        worked.lines.push_back({"sample = a tenth of the rest, rounded up, at most 50",
                                std::to_string(lot) + " devices", "drawn", static_cast<double>(drawn)});
        worked.sources.emplace_back("work.trials.nfpa-sample");
    }
    const measure::Sample sample{lot, drawn, given.count("faulty")};
    auto miss = measure::chanceToMissAll(sample);
    if (!miss) return passOn(miss);
    auto most = measure::faultyAtMost(lot, drawn, sure);
    if (!most) return passOn(most);
    auto enough = measure::sampleToMeetOne(lot, std::max(1, sample.faulty), sure);
    if (!enough) return passOn(enough);
    worked.lines.push_back({"P(miss all) = C(N − D, n)/C(N, n)",
                            fmt::format("C({} − {}, {})/C({}, {})", lot, sample.faulty, drawn, lot, drawn), "miss_all",
                            *miss});
    worked.lines.push_back({"P(meet at least one) = 1 − P(miss all)", "1 − " + shown(*miss), "meet_one", 1 - *miss});
    worked.lines.push_back(
        {"least sample that meets one of them with this confidence", "", "enough", static_cast<double>(*enough)});
    worked.lines.push_back({"a clean sample proves: at most so many of the rest are faulty", "", "faulty_at_most",
                            static_cast<double>(*most)});
    worked.remarks = {{"work.trials.sample-says",
                       {{"drawn", std::to_string(drawn)},
                        {"lot", std::to_string(lot)},
                        {"faulty", std::to_string(sample.faulty)},
                        {"chance", percentUp(*miss)}}}};
    worked.limits = {"work.trials.drawn-at-random"};
    worked.sources.emplace_back("work.trials.hypergeometric");
    return worked;
}

Result<Worked> sequential(const Given& given)
{
    std::vector<bool> hits;
    for (const double each : given.numbers("outcomes")) hits.push_back(each != 0);
    const measure::SequentialRule rule{given.number("bad"), given.number("good"), given.number("wrong_good"),
                                       given.number("wrong_bad")};
    auto now = measure::sequentialStanding(rule, hits);
    if (!now) return passOn(now);
    const char* word = now->verdict == measure::Enough::good ? "good"
                     : now->verdict == measure::Enough::bad  ? "bad"
                                                             : "go-on";
    Worked worked;
    worked.lines = {
        {"each hit counts ln(good/bad), each miss ln((1 − good)/(1 − bad))",
         fmt::format("ln({}/{}), ln({}/{})", shown(rule.good), shown(rule.bad), shown(1 - rule.good),
                     shown(1 - rule.bad)),
         "evidence", now->evidence},
        {"enough for good: ln((1 − b)/a)", fmt::format("ln((1 − {})/{})", shown(rule.wrongBad), shown(rule.wrongGood)),
         "good_from", now->goodFrom},
        {"enough for bad: ln(b/(1 − a))", fmt::format("ln({}/(1 − {}))", shown(rule.wrongBad), shown(rule.wrongGood)),
         "bad_from", now->badFrom},
        {"standing after these trials, in their order", fmt::format("{} trials", hits.size()), "verdict", word}};
    if (now->decidedAt > 0)
        worked.lines.push_back({"decided at trial", "", "decided_at", static_cast<double>(now->decidedAt)});
    else
        worked.lines.push_back(
            {"without a miss so many more are enough", "", "more_hits", static_cast<double>(now->moreHits)});
    worked.remarks = {{"work.trials.said." + std::string(word), {{"more", std::to_string(now->moreHits)}}}};
    worked.limits = {"work.trials.one-path", "work.trials.decided-beforehand"};
    worked.sources = {"work.trials.wald"};
    return worked;
}

Result<Worked> acceptance(const Given& given)
{
    auto p = measure::binomialAtMost(given.count("allowed"), given.count("drawn"), given.number("faulty_share"));
    if (!p) return passOn(p);
    Worked worked;
    worked.lines = {{"P(at most c faulty of n) = Σ C(n, i) p^i (1 − p)^(n − i), i = 0 to c",
                     fmt::format("c = {}, n = {}, p = {}", given.count("allowed"), given.count("drawn"),
                                 shown(given.number("faulty_share"))),
                     "accepted", *p}};
    worked.limits = {"work.trials.stream"};
    worked.sources = {"work.trials.binomial"};
    return worked;
}

} // namespace

Topic trialsTopic()
{
    const Input tries = whole(needed("tries", someTries));
    Input outcomes = whole(neededList("outcomes", {0, 1}));
    return {"trials",
            {{"proved", {whole(needed("hits", counts)), tries, confidence()}, proved, "hits=5 tries=5"},
             {"run", {needed("reliability", {0, 0.99999, true}), confidence()}, run, "reliability=0.90"},
             {"rule",
              {whole(needed("needed", someTries)), tries, needed("chance", fraction)},
              rule,
              "needed=4 tries=5 chance=0.9"},
             {"sample",
              {whole(needed("lot", someTries)), whole(needed("faulty", counts)), whole(optional("drawn", counts)),
               confidence()},
              retest,
              "lot=100 faulty=3"},
             {"sequential",
              {outcomes, usual("bad", "0.70", {0, 0.98, true}), usual("good", "0.95", {0.01, 0.9999}),
               usual("wrong_good", "0.05", {1e-6, 0.49}), usual("wrong_bad", "0.05", {1e-6, 0.49})},
              sequential,
              "outcomes=1,1,1,1,0,1,1"},
             {"acceptance",
              {whole(needed("allowed", counts)), whole(needed("drawn", someTries)), needed("faulty_share", fraction)},
              acceptance,
              "allowed=2 drawn=80 faulty_share=0.05"}}};
}

} // namespace proofwalk::command::work
