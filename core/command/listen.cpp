// SPDX-License-Identifier: GPL-3.0-or-later
// proofwalk listen WAV: which sounder pattern a recording holds.
#include "core/command/command.h"

#include "core/base/file.h"
#include "core/measure/hearing.h"

#include <fmt/format.h>

namespace proofwalk::command {
namespace {

using base::Json;

/// A time or a level as text: records and answers hold no floating numbers.
std::string digits(double number, int places) { return fmt::format("{:.{}f}", number, places); }

void sayTimes(Face& face, const measure::Hearing& heard, Json::Object& answer)
{
    const auto say = [&](const char* name, const std::vector<double>& times) {
        if (times.empty()) return;
        face.say(std::string("listen.") + name, {{"found", digits(times[0], 3)}});
        answer[std::string(name) + "_s"] = digits(times[0], 3);
    };
    if (heard.sight.period_s) {
        face.say("listen.period", {{"found", digits(*heard.sight.period_s, 2)}});
        answer["period_s"] = digits(*heard.sight.period_s, 2);
    }
    if (heard.sight.cyclesSeen > 0) {
        face.say("listen.cycles",
                 {{"seen", std::int64_t{heard.sight.cyclesSeen}}, {"whole", std::int64_t{heard.sight.cyclesWhole}}});
        answer["cycles_seen"] = std::int64_t{heard.sight.cyclesSeen};
        answer["cycles_whole"] = std::int64_t{heard.sight.cyclesWhole};
    }
    say("pulse", heard.usual.pulses_s);
    say("gap", heard.usual.gaps_s);
    say("pause", heard.usual.pauses_s);
}

/// Whether the times are right, and what is wrong with them.
std::string sayFaults(Face& face, const measure::Hearing& heard, Json::Array& faults)
{
    std::vector<measure::PatternFault> all;
    if (heard.durations) all = heard.durations->faults;
    if (heard.sight.missingPulse) all.push_back(measure::PatternFault::missingPulse);
    if (heard.sight.extraPulse) all.push_back(measure::PatternFault::extraPulse);
    std::string verdict = "undecided";
    if (heard.durations && heard.durations->conform) verdict = *heard.durations->conform ? "pass" : "fail";
    if (heard.sight.missingPulse) verdict = "fail";
    face.say("listen.times." + verdict, {});
    for (const auto fault : all) {
        face.say("listen.fault." + std::string(wordOf(fault)), {});
        faults.emplace_back(wordOf(fault));
    }
    return verdict;
}

void sayTone(Face& face, const measure::Tone& tone, Json::Object& answer)
{
    if (!tone.dominant_hz) {
        face.say("listen.tone.none", {});
        return;
    }
    face.say("listen.tone", {{"found", digits(*tone.dominant_hz, 0)}});
    face.say("listen.low." + std::string(wordOf(tone.lowFrequency)), {});
    answer["dominant_hz"] = digits(*tone.dominant_hz, 1);
    answer["low_frequency"] = std::string(wordOf(tone.lowFrequency));
}

Exit run(Face& face, const Options& options)
{
    auto bytes = base::readFile(options.words[0]);
    if (!bytes) return face.cannot(bytes.error());
    auto recording = measure::readRecording(*bytes);
    if (!recording) return face.cannot(std::move(recording.error()).within(options.words[0]));
    auto heard = measure::listenTo(*recording);
    if (!heard) return face.cannot(std::move(heard.error()).within(options.words[0]));

    const std::string pattern(wordOf(heard->pattern));
    Json::Object answer{{"pattern", pattern},
                        {"confident", heard->confident},
                        {"length_s", digits(heard->length_s, 2)},
                        {"contrast_db", digits(heard->contrast_db, 1)}};
    face.say("listen.pattern." + pattern, {});
    face.say(heard->confident ? "listen.sure" : "listen.unsure", {});
    sayTimes(face, *heard, answer);
    const bool prescribed =
        heard->pattern == measure::Pattern::temporalThree || heard->pattern == measure::Pattern::temporalFour;
    Json::Array faults;
    if (prescribed) answer["times"] = sayFaults(face, *heard, faults);
    answer["faults"] = std::move(faults);
    sayTone(face, heard->tone, answer);
    Json::Array doubts;
    for (const auto doubt : heard->doubts) {
        face.say("listen.doubt." + std::string(wordOf(doubt)), {});
        doubts.emplace_back(wordOf(doubt));
    }
    answer["doubts"] = std::move(doubts);
    face.say("listen.relative", {});
    face.answer("listen", std::move(answer));
    return heard->pattern == measure::Pattern::undecided ? Exit::no : Exit::well;
}

} // namespace

Command listenCommand() { return {{"listen", {"WAV"}, {}}, run}; }

} // namespace proofwalk::command
