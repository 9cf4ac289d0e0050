// SPDX-License-Identifier: GPL-3.0-or-later
// proofwalk work timer: how long it was, how surely, and whether that keeps its limits (core/measure/timing.h).
#include "core/command/work/topic.h"

#include "core/measure/conformity.h"
#include "core/measure/guard.h"
#include "core/measure/timing.h"
#include "core/measure/uncertainty.h"

#include <fmt/format.h>

#include <algorithm>

namespace proofwalk::command::work {
namespace {

using measure::HandEnds;

constexpr Range duration{0, 1e6};
constexpr Range step{0, 3600};

HandEnds endsOf(const std::string& word)
{
    if (word == "start") return HandEnds::start;
    if (word == "stop") return HandEnds::stop;
    return word == "none" ? HandEnds::none : HandEnds::both;
}

/// The hand's habit: the published one, twice its spread for an untrained hand, or the person's own.
measure::Reaction reactionOf(const Given& given)
{
    measure::Reaction reaction;
    if (given.word("hand") == "untrained") reaction.spread_s *= 2;
    if (given.has("reaction_spread_s")) reaction.spread_s = given.number("reaction_spread_s");
    if (given.has("reaction_late_s")) reaction.late_s = given.number("reaction_late_s");
    return reaction;
}

std::vector<Input> handInputs()
{
    return {word("hands", {"both", "start", "stop", "none"}, "both"), word("hand", {"trained", "untrained"}, "trained"),
            optional("reaction_spread_s", {0, 10}), optional("reaction_late_s", {-10, 10})};
}

std::vector<Input> limitInputs()
{
    return {optional("least_s", duration), optional("most_s", duration), optional("planned_s", duration),
            optional("tolerance_s", duration)};
}

std::vector<Input> joined(std::vector<Input> first, const std::vector<Input>& second)
{
    first.insert(first.end(), second.begin(), second.end());
    return first;
}

/// What the plan and the rules leave: planned -+ tolerance, cut by the least and the most.
struct Span {
    std::optional<double> least_s;
    std::optional<double> most_s;
};
Result<Span> spanOf(const Given& given)
{
    Span span{given.maybe("least_s"), given.maybe("most_s")};
    if (given.has("planned_s") != given.has("tolerance_s"))
        return failure("work.missing", "", {{"wanted", given.has("planned_s") ? "tolerance_s" : "planned_s"}});
    if (!given.has("planned_s")) return span;
    const double from = given.number("planned_s") - given.number("tolerance_s");
    const double to = given.number("planned_s") + given.number("tolerance_s");
    return Span{std::max(from, span.least_s.value_or(from)), std::min(to, span.most_s.value_or(to))};
}

void addTiming(Worked& worked, const measure::Timing& timing)
{
    worked.lines.push_back(
        {"U = 2 u", "2 × " + shown("standard_s", timing.standard_s), "expanded_s", timing.expanded_s});
}

/// The verdict, where there is a limit.
Result<void> addVerdict(Worked& worked, const Given& given, const measure::Timing& timing)
{
    auto span = spanOf(given);
    if (!span) return passOn(span);
    if (!span->least_s && !span->most_s) return {};
    auto limits = measure::acceptanceLimits(timing.expanded_s, span->least_s, span->most_s);
    if (!limits) return passOn(limits);
    const std::string guard = shown("expanded_s", timing.expanded_s);
    const auto add = [&](const char* formula, const char* sign, const std::optional<double>& limit, const char* name,
                         const std::optional<double>& value) {
        if (value) worked.lines.push_back({formula, shown(*limit) + sign + guard, name, *value});
    };
    add("pass from least + U", " + ", span->least_s, "pass_from_s", limits->passFrom);
    add("pass to most − U", " − ", span->most_s, "pass_to_s", limits->passTo);
    add("fail below least − U", " − ", span->least_s, "fail_below_s", limits->failBelow);
    add("fail above most + U", " + ", span->most_s, "fail_above_s", limits->failAbove);
    auto verdict = measure::judgeComputed(timing.duration_s, timing.expanded_s, span->least_s, span->most_s);
    if (!verdict) return passOn(verdict);
    if (timing.standard_s > 0) {
        auto p = measure::conformanceProbability(timing.duration_s, timing.standard_s, span->least_s, span->most_s);
        if (!p) return passOn(p);
        worked.lines.push_back({"p = Φ((most − t)/u) − Φ((least − t)/u)",
                                "normal errors of u = " + shown("standard_s", timing.standard_s), "p_conform", *p});
    }
    const char* word = *verdict == measure::Conformity::pass ? "pass"
                     : *verdict == measure::Conformity::fail ? "fail"
                                                             : "undecided";
    worked.lines.push_back({"t against these limits", shown("duration_s", timing.duration_s), "verdict", word});
    worked.remarks.push_back({"conformity." + std::string(word), {}});
    worked.sources.emplace_back("work.source.ilac-g8");
    return {};
}

Result<Worked> byHand(const Given& given)
{
    const measure::HandTiming input{.shown_s = given.number("shown_s"),
                                    .ends = endsOf(given.word("hands")),
                                    .reaction = reactionOf(given),
                                    .display_s = given.number("display_s"),
                                    .clock_ppm = given.number("clock_ppm")};
    auto timing = measure::timedByHand(input);
    if (!timing) return passOn(timing);
    Worked worked;
    const int hands = input.ends == HandEnds::both ? 2 : input.ends == HandEnds::none ? 0 : 1;
    const char* formula = input.ends == HandEnds::stop  ? "t = shown − lateness of the stop"
                        : input.ends == HandEnds::start ? "t = shown + lateness of the start"
                                                        : "t = shown: a hand at both ends is late at both";
    worked.lines.push_back({formula,
                            hands == 1 ? shown(input.shown_s) + ", " + shown("late_s", input.reaction.late_s) : "",
                            "duration_s", timing->duration_s});
    worked.lines.push_back({"u = √(n s² + d²/12 + (t e/√3)²)",
                            fmt::format("√({} × {}² + {}²/12 + ({} × {:g}/√3)²)", hands, shown(input.reaction.spread_s),
                                        shown(input.display_s), shown(input.shown_s), input.clock_ppm * 1e-6),
                            "standard_s", timing->standard_s});
    worked.limits = {"work.timer.expected-events"};
    worked.sources = {"work.timer.hands", "work.source.jcgm-100"};
    addTiming(worked, *timing);
    if (auto added = addVerdict(worked, given, *timing); !added) return passOn(added);
    return worked;
}

Result<Worked> bySignals(const Given& given)
{
    const measure::SignalTiming input{.shown_s = given.number("signals_s"),
                                      .start = {given.number("start_step_s"), given.number("start_distance_m")},
                                      .stop = {given.number("stop_step_s"), given.number("stop_distance_m")},
                                      .clock_ppm = given.number("clock_ppm"),
                                      .clocksApart_s = given.number("clocks_apart_s"),
                                      .soundSpeed_m_per_s = given.number("sound_m_per_s")};
    auto timing = measure::timedBySignals(input);
    if (!timing) return passOn(timing);
    Worked worked;
    worked.lines = {{"t = shown − (d_stop − d_start)/c",
                     fmt::format("{} − ({} − {})/{}", shown(input.shown_s), shown(input.stop.distance_m),
                                 shown(input.start.distance_m), shown(input.soundSpeed_m_per_s)),
                     "duration_s", timing->duration_s},
                    {"u = √((a² + b²)/12 + (t e/√3)² + clocks²)",
                     fmt::format("√(({}² + {}²)/12 + ({} × {:g}/√3)² + {}²)", shown(input.start.resolution_s),
                                 shown(input.stop.resolution_s), shown(input.shown_s), input.clock_ppm * 1e-6,
                                 shown(input.clocksApart_s)),
                     "standard_s", timing->standard_s}};
    worked.limits = {"work.timer.stamps"};
    worked.sources = {"work.source.jcgm-100"};
    addTiming(worked, *timing);
    if (auto added = addVerdict(worked, given, *timing); !added) return passOn(added);
    return worked;
}

/// The larger of what the timings show of themselves and what the hand is known for.
Result<Worked> several(const Given& given)
{
    auto all = measure::repeated(given.numbers("timings_s"));
    if (!all) return passOn(all);
    const int count = static_cast<int>(given.numbers("timings_s").size());
    auto model = measure::handMeanUncertainty_s(count, endsOf(given.word("hands")), reactionOf(given));
    if (!model) return passOn(model);
    const double u = std::max(all->ofMean, *model);
    const HandEnds ends = endsOf(given.word("hands"));
    auto one = measure::timedByHand({.shown_s = all->mean, .ends = ends, .reaction = reactionOf(given)});
    if (!one) return passOn(one);
    Worked worked;
    worked.lines = {{"mean of the timings", "", "mean_s", all->mean},
                    {"t = mean, less or plus the lateness of a hand at one end alone", given.word("hands"),
                     "duration_s", one->duration_s},
                    {"s, with n − 1", fmt::format("{} timings", count), "deviation_s", all->deviation},
                    {"u_A = s/√n", fmt::format("{}/√{}", shown(all->deviation), count), "u_readings_s", all->ofMean},
                    {"u_hand = s_hand √ends/√n", given.word("hands"), "u_hand_s", *model},
                    {"u = the larger of the two", "", "standard_s", u}};
    worked.limits = {"work.timer.expected-events", "work.timer.few"};
    worked.sources = {"work.timer.hands", "work.source.jcgm-100"};
    const measure::Timing timing{one->duration_s, u, 2 * u};
    addTiming(worked, timing);
    if (auto added = addVerdict(worked, given, timing); !added) return passOn(added);
    return worked;
}

Result<Worked> ownHand(const Given& given)
{
    const auto& taps = given.numbers("taps_s");
    if (taps.size() < 10) return failure("work.timer.few-taps", "taps_s", {{"found", std::to_string(taps.size())}});
    auto all = measure::repeated(taps);
    if (!all) return passOn(all);
    Worked worked;
    worked.lines = {{"lateness = mean of the taps", fmt::format("{} taps", taps.size()), "reaction_late_s", all->mean},
                    {"spread s, with n − 1", "", "reaction_spread_s", all->deviation}};
    worked.remarks = {{"work.timer.use-own", {}}};
    worked.sources = {"work.source.jcgm-100"};
    return worked;
}

} // namespace

Topic timerTopic()
{
    const auto clock = [] { return usual("clock_ppm", "50", {0, 1e5}); };
    std::vector<Input> hand =
        joined({needed("shown_s", duration), usual("display_s", "0.01", step), clock()}, handInputs());
    std::vector<Input> signals{needed("signals_s", duration),
                               usual("start_step_s", "0", step),
                               usual("stop_step_s", "0", step),
                               usual("start_distance_m", "0", {0, 1000}),
                               usual("stop_distance_m", "0", {0, 1000}),
                               clock(),
                               usual("clocks_apart_s", "0", step),
                               usual("sound_m_per_s", "343.2", {300, 360})};
    return {"timer",
            {{"hand", joined(std::move(hand), limitInputs()), byHand, "shown_s=45.12 display_s=0.01 most_s=45"},
             {"signals", joined(std::move(signals), limitInputs()), bySignals,
              "signals_s=30.2 start_step_s=1 stop_step_s=0.01 stop_distance_m=12 planned_s=30 tolerance_s=3"},
             {"several", joined(joined({neededList("timings_s", duration)}, handInputs()), limitInputs()), several,
              "timings_s=29.81,30.02,29.94 most_s=30"},
             {"own-hand",
              {neededList("taps_s", {-10, 10})},
              ownHand,
              "taps_s=0.12,0.08,0.15,0.03,0.10,0.19,0.07,0.11,0.13,0.09"}}};
}

} // namespace proofwalk::command::work
