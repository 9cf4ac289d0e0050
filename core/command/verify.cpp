// SPDX-License-Identifier: GPL-3.0-or-later
// proofwalk verify FILE: a report or a job, from its bytes upward.
#include "core/command/command.h"
#include "core/command/standing.h"

#include "core/report/examine.h"
#include "core/walk/readiness.h"

#include <algorithm>

namespace proofwalk::command {
namespace {

using base::Json;

std::string countsOf(const Face& face, const walk::State& state)
{
    const auto counts = walk::countVerdicts(state);
    std::string line;
    for (std::size_t i = 0; i < counts.size(); ++i) {
        if (counts[i] == 0) continue;
        line += (line.empty() ? "" : ", ") + std::to_string(counts[i]) + " "
              + face.phrase("verdict." + std::string(walk::wordOf(static_cast<walk::Verdict>(i))));
    }
    return line;
}

void saySeal(Face& face, const report::Examined& examined, const std::string& file)
{
    if (!examined.seal) return;
    const report::SealFindings& seal = *examined.seal;
    face.say("verify.report", {{"file", file},
                               {"name", seal.signerName},
                               {"firm", seal.firm},
                               {"day", words::longDate(seal.signedAt)},
                               {"time", base::localTime(seal.signedAt)}});
    face.say("verify.root", {{"root", seal.rootFingerprint}});
    if (!examined.recordFingerprint.empty()) face.say("verify.record", {{"record", examined.recordFingerprint}});
}

/// The chains of machines for which no person answers.
std::vector<std::string> unvouchedChains(const report::Examined& examined)
{
    std::vector<std::string> chains;
    if (!examined.judged) return chains;
    for (const auto& [chain, count] : examined.judged->soundness.soundEvents)
        if (std::ranges::find(examined.vouched, chain, &report::VouchedChain::chain) == examined.vouched.end())
            chains.push_back(chain);
    return chains;
}

void sayRecord(Face& face, const report::Examined& examined)
{
    if (!examined.judged) return;
    const auto& sound = examined.judged->soundness.soundEvents;
    face.say("verify.chains", {{"events", static_cast<std::int64_t>(examined.record.events.size())},
                               {"chains", static_cast<std::int64_t>(sound.size())}});
    for (const auto& [chain, count] : sound)
        if (!examined.sound()) face.say("verify.chain-sound", {{"chain", chain.substr(0, 12)}, {"count", count}});
    for (const report::VouchedChain& vouched : examined.vouched)
        face.say("verify.vouched", {{"name", vouched.name}, {"chain", vouched.chain.substr(0, 12)}});
    for (const std::string& chain : unvouchedChains(examined))
        face.say("verify.unvouched", {{"chain", chain.substr(0, 12)}});
    face.say("verify.counts", {{"counts", countsOf(face, examined.judged->state)}});
}

Json answerOf(Face& face, const report::Examined& examined, const SheetChange& change)
{
    Json::Array problems, differences, vouched, unvouched;
    for (const Error& problem : examined.problems) problems.push_back(face.errorJson(problem));
    for (const std::string& difference : change.differences) differences.emplace_back(difference);
    for (const auto& each : examined.vouched)
        vouched.push_back(Json::Object{{"chain", each.chain}, {"name", each.name}});
    for (const std::string& chain : unvouchedChains(examined)) unvouched.emplace_back(chain);
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
    saySeal(face, *examined, file);
    sayRecord(face, *examined);
    sayChanged(face, change);
    if (examined->sound()) {
        face.say(examined->seal ? "verify.sound.report" : "verify.sound.job", {});
        if (!examined->seal) face.say("verify.nobody-knows", {});
    } else {
        face.say("verify.not-sound", {});
        for (const Error& problem : examined->problems) face.say("  " + face.book().sentence(problem));
    }
    face.answer("verify", *answerOf(face, *examined, change).object());
    return examined->sound() ? Exit::well : Exit::no;
}

} // namespace

Command verifyCommand() { return {{"verify", {"FILE"}, {{"--catalogue", "FOLDER"}}}, run}; }

} // namespace proofwalk::command
