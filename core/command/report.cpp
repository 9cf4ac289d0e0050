// SPDX-License-Identifier: GPL-3.0-or-later
// proofwalk report JOB.walk --out R.pdf --signed-by DIR [--interim]: the signed completion report.
#include "core/command/command.h"
#include "core/command/places.h"
#include "core/command/standing.h"

#include "core/journal/home.h"
#include "core/report/application.h"
#include "core/report/handing.h"
#include "core/walk/job.h"

namespace proofwalk::command {
namespace {

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
    const report::Handing handing{options.value("--out"), options.has("--interim")};
    const report::DrawingApplication application;
    auto handed = report::handOver(job, machine, identity, face.book(), handing);
    if (!handed && handed.error().code == "report.refused")
        return refuse(face, job, std::move(handed.error()).within(options.words[0]));
    if (!handed && handed.error().where.empty()) return face.cannot(std::move(handed.error()).within(options.words[0]));
    if (!handed) return face.cannot(handed.error());

    const std::string standing(walk::wordOf(handed->standing));
    face.say(handing.interim ? "report.interim-done" : "report.done",
             {{"file", handing.out.string()},
              {"standing", face.phrase("standing." + standing + ".short")},
              {"record", handed->recordFingerprint}});
    face.answer("report", {{"file", handing.out.string()},
                           {"form", handing.interim ? "interim" : "final"},
                           {"standing", standing},
                           {"record", handed->recordFingerprint},
                           {"sha256", handed->sha256}});
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
