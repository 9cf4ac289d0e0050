// SPDX-License-Identifier: GPL-3.0-or-later
// proofwalk report JOB.walk --out R.pdf --signed-by DIR [--interim]: the signed completion report.
#include "core/command/command.h"
#include "core/command/places.h"
#include "core/command/standing.h"

#include "core/base/digest.h"
#include "core/base/file.h"
#include "core/journal/home.h"
#include "core/journal/vouch.h"
#include "core/report/application.h"
#include "core/report/issue.h"
#include "core/walk/job.h"

#include <algorithm>

namespace proofwalk::command {
namespace {

/// The signer answers for this machine's key, once a job.
Result<void> vouchOnce(walk::Job& job, const journal::SigningKey& machine, const journal::Identity& identity)
{
    const std::string key = base::toHex(machine.publicKeyDer());
    const std::string certificate = base::toHex(identity.signerDer);
    const auto& vouches = job.state().vouches;
    if (std::ranges::any_of(
            vouches, [&](const auto& told) { return told.body.key == key && told.body.certificate == certificate; }))
        return {};
    auto vouching = journal::vouchFor(job.id(), key, identity);
    if (!vouching) return passOn(vouching);
    const walk::Body body =
        walk::VouchBody{vouching->machineKey, vouching->certificate, vouching->root, vouching->signature};
    std::vector<journal::Draft> drafts(1);
    drafts.front().kind = walk::kindOf(body);
    drafts.front().body = walk::toJson(body, {});
    return job.append(std::move(drafts), base::now());
}

Result<void> recordHandover(walk::Job& job, const std::string& pdf, bool interim)
{
    const walk::Body body = walk::HandedOverBody{base::sha256Hex(pdf), interim ? "interim" : "final"};
    std::vector<journal::Draft> drafts(1);
    drafts.front().kind = walk::kindOf(body);
    drafts.front().body = walk::toJson(body, {});
    return job.append(std::move(drafts), base::now());
}

Exit refuse(Face& face, const walk::Job& job, const Error& error)
{
    const auto readiness = walk::readinessOf(job.state(), base::now());
    for (const walk::Rung& rung : readiness.rungs)
        if (rung.blocking) face.say("  " + sentenceOf(face, rung));
    (void)face.cannot(error);
    return Exit::no;
}

Exit issueInto(Face& face, const Options& options, walk::Job& job, const journal::Identity& identity,
               const journal::SigningKey& machine)
{
    const bool interim = options.has("--interim");
    const std::string out = options.value("--out");
    if (!interim && walk::readinessOf(job.state(), base::now()).blocked()) {
        const auto readiness = walk::readinessOf(job.state(), base::now());
        const auto count = std::ranges::count(readiness.rungs, true, &walk::Rung::blocking);
        return refuse(face, job, {"report.refused", options.words[0], {{"count", static_cast<std::int64_t>(count)}}});
    }
    if (auto vouched = vouchOnce(job, machine, identity); !vouched) return face.cannot(vouched.error());
    auto record = job.record();
    if (!record) return face.cannot(record.error());
    const report::DrawingApplication application;
    auto issued = report::issueReport(*record, face.book(), identity, {base::now(), interim});
    if (!issued) return face.cannot(std::move(issued.error()).within(options.words[0]));
    if (auto written = base::writeFile(out, issued->pdf); !written) return face.cannot(written.error());
    if (auto noted = recordHandover(job, issued->pdf, interim); !noted) return face.cannot(noted.error());

    const std::string standing(walk::wordOf(issued->readiness.standing));
    const std::string fingerprint = issued->recordFingerprint;
    face.say(interim ? "report.interim-done" : "report.done",
             {{"file", out}, {"standing", face.phrase("standing." + standing + ".short")}, {"record", fingerprint}});
    face.answer("report", {{"file", out},
                           {"form", interim ? "interim" : "final"},
                           {"standing", standing},
                           {"record", fingerprint},
                           {"sha256", base::sha256Hex(issued->pdf)}});
    return Exit::well;
}

Exit run(Face& face, const Options& options)
{
    if (std::filesystem::exists(options.value("--out")))
        return face.cannot({"report.exists", options.value("--out"), {}});
    // Everything that can be wrong is looked at before the passphrase is asked for.
    const std::string folder = options.value("--signed-by");
    if (auto facts = journal::describeIdentity(folder); !facts) return face.cannot(facts.error());
    auto machine = journal::machineKey();
    if (!machine) return face.cannot(machine.error());
    auto job = walk::Job::open(options.words[0], *machine);
    if (!job) return face.cannot(job.error());
    auto words = passphrase(options, face.phrase("signer.prompt"));
    if (!words) return face.cannot(words.error());
    auto identity = journal::openIdentity(folder, *words);
    if (!identity) return face.cannot(identity.error());
    return issueInto(face, options, *job, *identity, **machine);
}

} // namespace

Command reportCommand()
{
    return {
        {"report",
         {"JOB.walk"},
         {{"--out", "R.pdf", true}, {"--signed-by", "DIR", true}, {"--interim", ""}, {"--passphrase-file", "FILE"}}},
        run};
}

} // namespace proofwalk::command
