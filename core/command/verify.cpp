// SPDX-License-Identifier: GPL-3.0-or-later
// proofwalk verify FILE: a report or a job, from its bytes upward.
#include "core/command/command.h"
#include "core/command/standing.h"

#include "core/report/examine.h"
#include "core/report/examinedwords.h"

namespace proofwalk::command {
namespace {

using base::Json;

Json answerOf(Face& face, const report::Examined& examined, const SheetChange& change)
{
    Json::Array problems, differences, vouched, unvouched;
    for (const Error& problem : examined.problems) problems.push_back(face.errorJson(problem));
    for (const std::string& difference : change.differences) differences.emplace_back(difference);
    for (const auto& each : examined.vouched)
        vouched.push_back(Json::Object{{"chain", each.chain}, {"name", each.name}});
    for (const std::string& chain : report::unvouchedChains(examined)) unvouched.emplace_back(chain);
    Json answer{Json::Object{{"sound", examined.sound()},
                             {"problems", std::move(problems)},
                             {"vouched", std::move(vouched)},
                             {"unvouched", std::move(unvouched)},
                             {"under_newer_sheets", std::move(differences)},
                             {"events", static_cast<std::int64_t>(examined.record.events.size())}}};
    if (!examined.record.job.empty()) answer["job"] = examined.record.job;
    if (!examined.recordFingerprint.empty()) answer["record"] = examined.recordFingerprint;
    if (examined.judged) {
        Json sound;
        for (const auto& [chain, count] : examined.judged->soundness.soundEvents) sound[chain] = count;
        answer["sound_events"] = std::move(sound);
    }
    if (examined.seal) {
        answer["signer"] = examined.seal->signerName;
        answer["root"] = examined.seal->rootFingerprint;
        answer["signed_at"] = base::toUtcText(examined.seal->signedAt.utc_ms);
    }
    return answer;
}

Exit run(Face& face, const Options& options)
{
    const std::string& file = options.words[0];
    auto examined = report::examine(file);
    if (!examined) return face.cannot(examined.error());
    SheetChange change;
    if (examined->judged) {
        auto changed = changedBySheets(examined->record, *examined->judged, options);
        if (!changed) return face.cannot(changed.error());
        change = std::move(*changed);
    }
    for (const std::string& line : report::tellContents(*examined, face.book(), file)) face.say(line);
    sayChanged(face, change);
    for (const std::string& line : report::tellSoundness(*examined, face.book())) face.say(line);
    face.answer("verify", *answerOf(face, *examined, change).object());
    return examined->sound() ? Exit::well : Exit::no;
}

} // namespace

Command verifyCommand() { return {{"verify", {"FILE"}, {{"--catalogue", "FOLDER"}}}, run}; }

} // namespace proofwalk::command
