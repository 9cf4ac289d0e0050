// SPDX-License-Identifier: GPL-3.0-or-later
// proofwalk start JOB.walk --plan FOLDER: a new job.
#include "core/command/command.h"
#include "core/command/places.h"
#include "core/command/planning.h"

#include "core/journal/home.h"

namespace proofwalk::command {
namespace {

Exit run(Face& face, const Options& options)
{
    auto reviewed = readAndReview(face, options);
    if (!reviewed) return reviewed.error();
    if (reviewed->errors > 0) {
        sayRemarks(face, *reviewed);
        return face.cannot(
            {"start.plan-has-errors", options.value("--plan"), {{"count", std::int64_t{reviewed->errors}}}});
    }
    auto files = catalogueFiles(options);
    if (!files) return face.cannot(files.error());
    auto key = journal::machineKey();
    if (!key) return face.cannot(key.error());
    const std::size_t devices = reviewed->plan.devices.size();
    const std::size_t zones = reviewed->plan.zones.size();
    auto ground = walk::groundFor(std::move(reviewed->plan), std::move(*files));
    if (!ground) return face.cannot(ground.error());
    auto job = walk::Job::start(options.words[0], std::move(*ground), *key, base::now());
    if (!job) return face.cannot(job.error());

    std::int64_t withoutSheet = 0;
    for (const walk::ScopeDevice& device : job->state().scope->devices) withoutSheet += device.kind == nullptr ? 1 : 0;
    face.say("start.done", {{"job", options.words[0]},
                            {"devices", static_cast<std::int64_t>(devices)},
                            {"zones", static_cast<std::int64_t>(zones)}});
    if (withoutSheet > 0) face.say("start.without-sheet", {{"count", withoutSheet}});
    face.answer("start", {{"job", job->id()},
                          {"devices", static_cast<std::int64_t>(devices)},
                          {"zones", static_cast<std::int64_t>(zones)},
                          {"without_sheet", withoutSheet}});
    return Exit::well;
}

} // namespace

Command startCommand()
{
    return {{"start", {"JOB.walk"}, {{"--plan", "FOLDER", true}, {"--catalogue", "FOLDER"}}}, run};
}

} // namespace proofwalk::command
