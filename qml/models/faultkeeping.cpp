// SPDX-License-Identifier: GPL-3.0-or-later
// A fault as events. Run again after a refusal or a kill, it adds only what is not there.
#include "qml/models/faultdraft.h"

#include "core/base/digest.h"
#include "core/base/file.h"
#include "core/walk/findings.h"
#include "qml/models/findingtelling.h"

#include <algorithm>

namespace proofwalk::models {
namespace {

using base::Json;

std::string valueOf(const walk::Job& job, const walk::PrivateRef& ref)
{
    const auto value = job.privates()->find(ref.commitment);
    return value == job.privates()->end() ? std::string() : value->second;
}

Result<void> take(walk::Job& job, Json::Object command, const std::filesystem::path& folder = {})
{
    auto taken = job.take(base::canonical(Json(std::move(command))), folder, base::now());
    if (!taken) return passOn(taken);
    return {};
}

/// The newest standing answer says the same already. One that a repair has put in doubt since does not count: that it
/// failed again must be recorded.
bool isAnswered(const walk::Job& job, const Fault& fault)
{
    if (walk::viewStep(job.state(), fault.step).verdict != walk::Verdict::fail) return false;
    const auto attempts = walk::standingAttempts(job.state(), fault.step);
    if (attempts.empty()) return false;
    const walk::Attempt& last = *attempts.back();
    return last.answer.outcome == walk::Outcome::notAsPlanned && valueOf(job, last.answer.seen) == fault.seen;
}

bool isDescribed(const walk::Job& job, const Fault& fault)
{
    const auto finding = walk::findingOf(job.state(), fault.step);
    if (!finding || finding->described.empty()) return false;
    const auto& [fact, last] = *finding->described.back();
    if (finding->lastFail != nullptr && !job.state().hasSeen(fact, finding->lastFail->fact)) return false;
    return valueOf(job, last.words) == fault.words && last.due == fault.due;
}

bool hasPhotograph(const walk::Job& job, const Fault& fault)
{
    const auto finding = walk::findingOf(job.state(), fault.step);
    if (!finding) return false;
    auto bytes = base::readFile(fault.photograph);
    auto picture = bytes ? journal::preparePhotograph(*bytes) : bytes;
    if (!picture) return false; // the command says why
    const std::string hash = base::sha256Hex(*picture);
    return std::ranges::any_of(finding->photographs,
                               [&](const auto* told) { return valueOf(job, told->body.photograph) == hash; });
}

} // namespace

Result<void> keepFault(walk::Job& job, const Fault& fault)
{
    const walk::Scope& scope = *job.state().scope;
    if (fault.deficiency && !isAnswered(job, fault)) {
        Json::Object answer = commandOn(scope, fault.step, "answer");
        answer["result"] = "not-as-planned";
        answer["seen"] = fault.seen;
        if (auto taken = take(job, std::move(answer)); !taken) return taken;
    }
    if (!isDescribed(job, fault)) {
        Json::Object finding = commandOn(scope, fault.step, "finding");
        finding["grade"] = fault.deficiency ? "deficiency" : "recommendation";
        finding["words"] = fault.words;
        if (!fault.due.empty()) finding["due"] = fault.due;
        if (auto taken = take(job, std::move(finding)); !taken) return taken;
    }
    if (fault.photograph.empty() || hasPhotograph(job, fault)) return {};
    Json::Object photograph = commandOn(scope, fault.step, "photograph");
    photograph["file"] = fault.photograph.filename().string();
    return take(job, std::move(photograph), fault.photograph.parent_path());
}

} // namespace proofwalk::models
