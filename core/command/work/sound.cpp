// SPDX-License-Identifier: GPL-3.0-or-later
// proofwalk work sound: levels, distances and audibility (core/measure/soundlevel.h, audibility.h, weighting.h).
#include "core/command/work/topic.h"

#include "core/measure/audibility.h"
#include "core/measure/conformity.h"
#include "core/measure/guard.h"
#include "core/measure/weighting.h"

#include <fmt/format.h>

namespace proofwalk::command::work {
namespace {

constexpr Range levels{-50, 200};
constexpr Range heard{0, 140};
constexpr Range distances{0, 1e4, true};
constexpr Range losses{0, 80};

measure::SoundSource sourceOf(const Given& given) { return {given.number("rated_db"), given.number("rated_at_m")}; }

std::vector<Input> sounder() { return {needed("rated_db", levels), usual("rated_at_m", "1", distances)}; }

std::vector<Input> withSounder(std::vector<Input> more)
{
    auto all = sounder();
    all.insert(all.end(), more.begin(), more.end());
    return all;
}

Result<Worked> distance(const Given& given)
{
    auto there = measure::levelAtDistance_db(sourceOf(given), given.number("distance_m"));
    if (!there) return passOn(there);
    const double loss = given.number("loss_db");
    Worked worked;
    worked.lines = {
        {"L = L0 − 20 log10(r/r0)",
         fmt::format("{} − 20 log10({}/{})", shown(given.number("rated_db")), shown(given.number("distance_m")),
                     shown(given.number("rated_at_m"))),
         "free_field_db", *there},
        {"less what lies between", fmt::format("{} − {}", shown(*there), shown(loss)), "level_db", *there - loss}};
    worked.limits = {"work.sound.planning"};
    worked.sources = {"work.sound.inverse-square", "work.sound.doors"};
    return worked;
}

Result<Worked> reach(const Given& given)
{
    auto there = measure::distanceForLevel_m(sourceOf(given), given.number("level_db") + given.number("loss_db"));
    if (!there) return passOn(there);
    Worked worked;
    worked.lines = {
        {"r = r0 10^((L0 − loss − L)/20)",
         fmt::format("{} × 10^(({} − {} − {})/20)", shown(given.number("rated_at_m")), shown(given.number("rated_db")),
                     shown(given.number("loss_db")), shown(given.number("level_db"))),
         "distance_m", *there}};
    worked.limits = {"work.sound.planning"};
    worked.sources = {"work.sound.inverse-square", "work.sound.doors"};
    return worked;
}

Result<Worked> add(const Given& given)
{
    const auto& all = given.numbers("levels_db");
    auto sum = measure::sumOfLevels_db(all);
    auto mean = measure::meanOfLevels_db(all);
    if (!sum) return passOn(sum);
    if (!mean) return passOn(mean);
    Worked worked;
    worked.lines = {
        {"L = 10 log10(Σ 10^(L_i/10))", fmt::format("{} levels", all.size()), "sum_db", *sum},
        {"energy mean: L − 10 log10 n", fmt::format("{} − 10 log10 {}", shown(*sum), all.size()), "mean_db", *mean}};
    worked.limits = {"work.sound.incoherent"};
    worked.sources = {"work.sound.energy"};
    return worked;
}

Result<Worked> background(const Given& given)
{
    const bool survey = given.word("method") == "survey";
    auto found =
        measure::withoutBackground(given.number("with_db"), given.number("without_db"),
                                   survey ? measure::BackgroundMethod::survey : measure::BackgroundMethod::engineering);
    if (!found) return passOn(found);
    Worked worked;
    worked.lines = {
        {"K1 = −10 log10(1 − 10^(−0.1 (with − without)))",
         fmt::format("{} − {} = {} dB apart", shown(given.number("with_db")), shown(given.number("without_db")),
                     shown(given.number("with_db") - given.number("without_db"))),
         "correction_db", found->correction_db},
        {"L = with − K1", fmt::format("{} − {}", shown(given.number("with_db")), shown(found->correction_db)),
         "signal_db", found->signal_db}};
    if (found->isUpperBound) worked.remarks.push_back({"work.sound.upper-bound", {}});
    worked.limits = {"work.sound.data-sheet-only"};
    worked.sources = {survey ? "work.sound.iso-3746" : "work.sound.iso-3744"};
    return worked;
}

measure::AudibilityRule ruleOf(const std::string& word)
{
    using enum measure::AudibilityRule;
    if (word == "nfpa-private") return nfpaPrivate;
    if (word == "nfpa-sleeping") return nfpaSleeping;
    if (word == "bs-general") return bsGeneral;
    if (word == "bs-reduced") return bsReduced;
    return word == "bs-bedhead" ? bsBedhead : nfpaPublic;
}

const char* formulaOf(measure::AudibilityRule rule)
{
    switch (rule) {
    case measure::AudibilityRule::nfpaPublic: return "max(average + 15, loudest + 5)";
    case measure::AudibilityRule::nfpaPrivate: return "max(average + 10, loudest + 5)";
    case measure::AudibilityRule::nfpaSleeping: return "max(average + 15, loudest + 5, 75)";
    case measure::AudibilityRule::bsGeneral: return "max(65, background + 5)";
    case measure::AudibilityRule::bsReduced: return "max(60, background + 5)";
    case measure::AudibilityRule::bsBedhead: return "max(75, background + 5)";
    }
    return "";
}

/// The verdict on a reading, and what to do where it does not pass.
Result<void> judgeReading(Worked& worked, const Given& given, const measure::AudibilityLimits& limits)
{
    const double level = given.number("measured_dba");
    const double u = given.number("expanded_dba");
    auto verdict = measure::judgeComputed(level, u, limits.least_dba, limits.most_dba);
    if (!verdict) return passOn(verdict);
    worked.lines.push_back({"margin = measured − least", shown(level) + " − " + shown(limits.least_dba), "margin_dba",
                            level - limits.least_dba});
    worked.lines.push_back(
        {"pass from least + U", shown(limits.least_dba) + " + " + shown(u), "pass_from_dba", limits.least_dba + u});
    if (u > 0) {
        auto p = measure::conformanceProbability(level, u / 2, limits.least_dba, limits.most_dba);
        if (!p) return passOn(p);
        worked.lines.push_back(
            {"p = Φ((most − L)/u) − Φ((least − L)/u)", "u = U/2 = " + shown("u_dba", u / 2), "p_conform", *p});
    }
    const char* word = *verdict == measure::Conformity::pass ? "pass"
                     : *verdict == measure::Conformity::fail ? "fail"
                                                             : "undecided";
    worked.lines.push_back({"the reading against these limits", "", "verdict", word});
    worked.remarks.push_back({"conformity." + std::string(word), {}});
    if (u == 0) worked.remarks.push_back({"work.conformity.as-it-stands", {}});
    return {};
}

Result<Worked> audibility(const Given& given)
{
    const auto rule = ruleOf(given.word("rule"));
    auto limits = measure::audibilityLimits(rule, {given.number("ambient_dba"), given.maybe("loudest_dba")});
    if (!limits) return passOn(limits);
    Worked worked;
    worked.lines = {{std::string("least = ") + formulaOf(rule),
                     "average or background " + shown(given.number("ambient_dba"))
                         + (given.has("loudest_dba") ? ", loudest " + shown(given.number("loudest_dba")) : ""),
                     "least_dba", limits->least_dba},
                    {"most, wherever people can hear it", "", "most_dba", limits->most_dba}};
    worked.limits = {"work.sound.adopted-edition", "work.sound.where-measured"};
    const bool nfpa = given.word("rule").starts_with("nfpa");
    worked.sources = {nfpa ? "work.sound.nfpa-72" : "work.sound.bs-5839"};
    if (!given.has("measured_dba")) return worked;
    if (auto judged = judgeReading(worked, given, *limits); !judged) return passOn(judged);
    worked.sources.emplace_back("work.source.ilac-g8");
    return worked;
}

Result<Worked> more(const Given& given)
{
    const double wanted = given.number("wanted_dba") + given.number("expanded_dba");
    auto advice =
        measure::soundersNeeded(given.number("measured_dba"), wanted, sourceOf(given), given.number("loss_db"));
    if (!advice) return passOn(advice);
    Worked worked;
    worked.lines = {
        {"lacking = wanted + U − measured",
         fmt::format("{} + {} − {}", shown(given.number("wanted_dba")), shown(given.number("expanded_dba")),
                     shown(given.number("measured_dba"))),
         "lacking_dba", advice->lacking_dba},
        {"as many more of what is heard now: n ≥ 10^(lacking/10) − 1", "", "more_of_the_same",
         static_cast<double>(advice->moreOfTheSame)},
        {"or one more that brings 10 log10(10^((wanted + U)/10) − 10^(measured/10))", "", "added_dba",
         advice->added_dba},
        {"which stands nearer than r0 10^((L0 − loss − added)/20)",
         fmt::format("{} × 10^(({} − {} − {})/20)", shown(given.number("rated_at_m")), shown(given.number("rated_db")),
                     shown(given.number("loss_db")), shown(advice->added_dba)),
         "one_more_within_m", advice->oneMoreWithin_m}};
    worked.remarks.push_back({advice->lacking_dba > 0 ? "work.sound.measure-again" : "work.sound.enough", {}});
    worked.limits = {"work.sound.planning", "work.sound.incoherent"};
    worked.sources = {"work.sound.inverse-square", "work.sound.energy", "work.sound.doors"};
    return worked;
}

Result<Worked> weighting(const Given& given)
{
    auto a = measure::aWeighting_db(given.number("frequency_hz"));
    if (!a) return passOn(a);
    Worked worked;
    worked.lines = {{"A(f) = 20 log10(f4² f⁴/((f² + f1²) √(f² + f2²) √(f² + f3²) (f² + f4²))) + 2.000",
                     "f = " + shown("frequency_hz", given.number("frequency_hz")), "weighting_db", *a}};
    worked.sources = {"work.sound.iec-61672"};
    return worked;
}

Result<Worked> bands(const Given& given)
{
    const auto& at = given.numbers("bands_hz");
    const auto& level = given.numbers("levels_db");
    if (at.size() != level.size())
        return failure("work.sound.unlike-lists", "levels_db",
                       {{"found", std::to_string(level.size())}, {"wanted", std::to_string(at.size())}});
    std::vector<measure::Band> all;
    for (std::size_t i = 0; i < at.size(); ++i) all.push_back({at[i], level[i]});
    auto total = measure::weightedTotal_dba(all);
    if (!total) return passOn(total);
    Worked worked;
    worked.lines = {{"L_A = 10 log10(Σ 10^((L_i + A_i)/10))", fmt::format("{} bands, A_i of the table", all.size()),
                     "total_dba", *total}};
    worked.limits = {"work.sound.bands-given"};
    worked.sources = {"work.sound.iec-61672"};
    return worked;
}

Result<Worked> square(const Given& given)
{
    auto wave = measure::squareWave(given.number("fundamental_hz"), given.count("lines"));
    if (!wave) return passOn(wave);
    std::vector<double> at;
    std::vector<double> level;
    std::vector<double> weight;
    for (const measure::Harmonic& each : wave->harmonics) {
        at.push_back(given.number("fundamental_hz") * each.order);
        level.push_back(each.level_db);
        weight.push_back(each.weighting_db);
    }
    Worked worked;
    worked.lines = {{"odd harmonics at n f", "", "harmonics_hz", at},
                    {"−20 log10 n against the first", "", "levels_db", level},
                    {"A-weighting of each", "", "weightings_db", weight},
                    {"10 log10(Σ 10^(L_n/10))", "", "total_db", wave->total_db},
                    {"10 log10(Σ 10^((L_n + A_n)/10))", "", "weighted_total_dba", wave->weightedTotal_dba}};
    worked.limits = {"work.sound.lines-given"};
    worked.sources = {"work.sound.fourier", "work.sound.iec-61672"};
    return worked;
}

} // namespace

Topic soundTopic()
{
    const Input loss = usual("loss_db", "0", losses);
    return {"sound",
            {{"distance", withSounder({needed("distance_m", distances), loss}), distance,
              "rated_db=95 rated_at_m=1 distance_m=11 loss_db=20"},
             {"reach", withSounder({needed("level_db", levels), loss}), reach, "rated_db=85 rated_at_m=3 level_db=65"},
             {"add", {neededList("levels_db", levels)}, add, "levels_db=77,77,83"},
             {"background",
              {needed("with_db", levels), needed("without_db", levels),
               word("method", {"engineering", "survey"}, "engineering")},
              background,
              "with_db=70 without_db=63"},
             {"audibility",
              {word("rule", {"nfpa-public", "nfpa-private", "nfpa-sleeping", "bs-general", "bs-reduced", "bs-bedhead"}),
               needed("ambient_dba", heard), optional("loudest_dba", heard), optional("measured_dba", heard),
               usual("expanded_dba", "0", {0, 20})},
              audibility,
              "rule=bs-general ambient_dba=58 measured_dba=66.2 expanded_dba=1.9"},
             {"more",
              withSounder({needed("measured_dba", heard), needed("wanted_dba", heard),
                           usual("expanded_dba", "0", {0, 20}), loss}),
              more, "measured_dba=61 wanted_dba=65 expanded_dba=1.9 rated_db=97 loss_db=20"},
             {"weighting", {needed("frequency_hz", {10, 20000})}, weighting, "frequency_hz=520"},
             {"bands",
              {neededList("bands_hz", {10, 20000}), neededList("levels_db", levels)},
              bands,
              "bands_hz=125,250,500,1000,2000,4000 levels_db=60,62,64,61,58,52"},
             {"square",
              {needed("fundamental_hz", {10, 20000}), whole(usual("lines", "4", {1, 100}))},
              square,
              "fundamental_hz=520 lines=4"}}};
}

} // namespace proofwalk::command::work
