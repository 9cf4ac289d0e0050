// SPDX-License-Identifier: GPL-3.0-or-later
// proofwalk where JOB.walk: where the walk stands, what is missing.
#include "core/command/command.h"
#include "core/command/places.h"
#include "core/command/standing.h"

#include "core/journal/journal.h"
#include "core/walk/readiness.h"

namespace proofwalk::command {
namespace {

using base::Json;

Json deviceJson(const walk::DeviceView& view)
{
    Json proofs;
    for (const walk::ProofKind kind : walk::allProofs) {
        const walk::ProofView& proof = view.proof(kind);
        Json each{Json::Object{{"state", walk::wordOf(proof.state)}}};
        if (proof.standIn != nullptr) each["by"] = proof.standIn->device->tag;
        if (proof.state == walk::ProofState::lit || proof.state == walk::ProofState::underWay)
            each["how"] = walk::wordOf(proof.how);
        proofs[walk::wordOf(kind)] = std::move(each);
    }
    return Json::Object{{"tag", view.device->device->tag},
                        {"verdict", walk::wordOf(view.verdict)},
                        {"answered", view.answered},
                        {"steps", view.steps},
                        {"proofs", std::move(proofs)}};
}

Json findingJson(const walk::State& state, const walk::Finding& finding)
{
    return Json::Object{{"subject", walk::nameOfSubject(*state.scope, finding.step)},
                        {"step", finding.step.name},
                        {"status", walk::wordOf(finding.status)},
                        {"grade", walk::wordOf(finding.grade())},
                        {"accepted", finding.accepted},
                        {"life_safety", finding.lifeSafety}};
}

Json rungJson(Face& face, const walk::Rung& rung)
{
    return Json::Object{{"code", rung.code},
                        {"subject", rung.subject},
                        {"blocking", rung.blocking},
                        {"sentence", sentenceOf(face, rung)}};
}

void sayWhere(Face& face, const walk::State& state, const walk::Readiness& readiness)
{
    const auto counts = walk::countVerdicts(state);
    std::string line;
    for (std::size_t i = 0; i < counts.size(); ++i) {
        if (counts[i] == 0) continue;
        const auto verdict = std::string(walk::wordOf(static_cast<walk::Verdict>(i)));
        line += (line.empty() ? "" : ", ") + std::to_string(counts[i]) + " " + face.phrase("verdict." + verdict);
    }
    face.say("where.counts", {{"devices", static_cast<std::int64_t>(state.scope->devices.size())}, {"counts", line}});
    bool blocking = true;
    for (const walk::Rung& rung : readiness.rungs) {
        if (&rung == readiness.rungs.data()) face.say(rung.blocking ? "where.blocking" : "where.told", {});
        else if (blocking && !rung.blocking) face.say("where.told", {});
        blocking = rung.blocking;
        face.say("  " + sentenceOf(face, rung));
    }
    face.say("standing." + std::string(walk::wordOf(readiness.standing)), {});
}

Exit run(Face& face, const Options& options)
{
    auto record = journal::Journal::read(options.words[0]);
    if (!record) return face.cannot(record.error());
    auto judged = walk::judgeRecord(*record);
    if (!judged) return face.cannot(std::move(judged.error()).within(options.words[0]));
    const walk::State& state = judged->state;
    const auto readiness = walk::readinessOf(state, base::now());

    for (const Error& problem : judged->soundness.problems) face.say(face.book().sentence(problem));
    sayWhere(face, state, readiness);
    const auto changed = changedBySheets(*record, *judged, options);
    if (!changed) return face.cannot(changed.error());
    sayChanged(face, *changed);

    Json::Array devices, findings, rungs, differences;
    for (const walk::ScopeDevice& device : state.scope->devices)
        devices.push_back(deviceJson(walk::viewDevice(state, device)));
    for (const walk::Finding& finding : walk::allFindings(state)) findings.push_back(findingJson(state, finding));
    for (const walk::Rung& rung : readiness.rungs) rungs.push_back(rungJson(face, rung));
    for (const std::string& row : changed->differences) differences.emplace_back(row);
    face.answer("where", {{"job", record->job},
                          {"events", state.eventCount},
                          {"standing", walk::wordOf(readiness.standing)},
                          {"sound", judged->soundness.sound()},
                          {"devices", std::move(devices)},
                          {"findings", std::move(findings)},
                          {"rungs", std::move(rungs)},
                          {"under_newer_sheets", std::move(differences)}});
    return readiness.blocked() || !judged->soundness.sound() ? Exit::no : Exit::well;
}

} // namespace

Command whereCommand() { return {{"where", {"JOB.walk"}, {{"--catalogue", "FOLDER"}}}, run}; }

} // namespace proofwalk::command
