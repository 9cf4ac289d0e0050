// SPDX-License-Identifier: GPL-3.0-or-later
// proofwalk work temporal: which pattern a row of soundings makes, and whether its times are right
// (core/measure/pattern.h).
#include "core/command/work/topic.h"

#include "core/measure/pattern.h"

#include <fmt/format.h>

#include <algorithm>

namespace proofwalk::command::work {
namespace {

Result<std::vector<measure::Sounding>> soundingsOf(const Given& given)
{
    const auto& from = given.numbers("from_s");
    const auto& to = given.numbers("to_s");
    if (from.size() != to.size())
        return failure(
            "work.temporal.uneven", "",
            {{"found", static_cast<std::int64_t>(to.size())}, {"wanted", static_cast<std::int64_t>(from.size())}});
    std::vector<measure::Sounding> soundings;
    for (std::size_t i = 0; i < from.size(); ++i) soundings.push_back({from[i], to[i]});
    return soundings;
}

/// A row of times of whole cycles against what is prescribed.
void judgeRow(Worked& worked, const char* name, const std::vector<double>& times, double by_s, double wanted_s)
{
    if (times.empty()) return;
    std::vector<double> corrected;
    for (const double each : times) corrected.push_back(each + by_s);
    worked.lines.push_back(
        {fmt::format("{} {} decay, within 10 % of {} s", name, by_s < 0 ? "-" : "+", shown(wanted_s)),
         fmt::format("decay = {} s", shown(std::abs(by_s))), fmt::format("{}_s", name), corrected});
}

Result<void> judge(Worked& worked, const measure::PatternSight& sight, double decay_s)
{
    const auto shape = measure::shapeOf(sight.pattern);
    auto judged = measure::judgeDurations(sight.pattern, sight.times, decay_s, 0);
    if (!judged) return passOn(judged);
    judgeRow(worked, "pulses", sight.times.pulses_s, -decay_s, shape.pulse_s);
    judgeRow(worked, "gaps", sight.times.gaps_s, decay_s, shape.step_s - shape.pulse_s);
    judgeRow(worked, "pauses", sight.times.pauses_s, decay_s, shape.pause_s);
    std::vector<std::string> faults;
    for (const auto fault : judged->faults) faults.emplace_back(wordOf(fault));
    if (sight.missingPulse) faults.emplace_back(wordOf(measure::PatternFault::missingPulse));
    if (sight.extraPulse) faults.emplace_back(wordOf(measure::PatternFault::extraPulse));
    worked.lines.push_back({"every time of a whole cycle within 10 %", "", "durations_ok",
                            std::string(judged->conform.value_or(false) ? "yes" : "no")});
    if (!faults.empty()) worked.lines.push_back({"what is wrong", "", "faults", faults});
    return {};
}

Result<Worked> pattern(const Given& given)
{
    auto soundings = soundingsOf(given);
    if (!soundings) return passOn(soundings);
    auto sight = measure::sightOfPattern(*soundings);
    if (!sight) return passOn(sight);
    Worked worked;
    worked.lines.push_back({"d_i = from_(i+1) - from_i", fmt::format("{} soundings", soundings->size()),
                            "onset_intervals_s", sight->onsetIntervals_s});
    worked.lines.push_back(
        {"1.0, 1.0, 2.0 s: temporal-three; 0.2, 0.2, 0.2, 5.1 to 5.2 s: temporal-four; each within 20 %", "", "pattern",
         std::string(wordOf(sight->pattern))});
    if (sight->period_s) worked.lines.push_back({"the sum of one cycle's d", "", "period_s", *sight->period_s});
    if (sight->cyclesSeen > 0) {
        worked.lines.push_back({"cycles, whole or not", "", "cycles_seen", static_cast<double>(sight->cyclesSeen)});
        worked.lines.push_back(
            {"cycles with every pulse", "", "cycles_whole", static_cast<double>(sight->cyclesWhole)});
        if (auto ok = judge(worked, *sight, given.number("decay_s")); !ok) return passOn(ok);
    }
    worked.limits = {"work.limit.two-cycles", "work.limit.decay"};
    worked.sources = {"work.source.iso-8201", "work.source.temporal-four"};
    return worked;
}

} // namespace

Topic temporalTopic()
{
    constexpr Range day{0, 86400};
    return {"temporal",
            {{"pattern",
              {neededList("from_s", day), neededList("to_s", day), usual("decay_s", "0", {0, 60})},
              pattern,
              "from_s=0,1,2,4,5,6 to_s=0.62,1.62,2.62,4.62,5.62,6.62 decay_s=0.12"}}};
}

} // namespace proofwalk::command::work
