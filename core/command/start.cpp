// SPDX-License-Identifier: GPL-3.0-or-later
// proofwalk start JOB.walk --plan FOLDER: a new job.
#include "core/command/command.h"
#include "core/command/places.h"
#include "core/command/planning.h"

#include "core/base/datafolder.h"
#include "core/base/file.h"
#include "core/walk/job.h"

namespace proofwalk::command {
namespace {

/// The sentences the job is told in, to be embedded with it.
Result<std::map<std::string, std::string>> wordFiles()
{
    std::map<std::string, std::string> files;
    const auto folder = base::dataFolder() / "words" / "english";
    std::error_code trouble;
    for (const auto& entry : std::filesystem::directory_iterator(folder, trouble)) {
        if (entry.path().extension() != ".toml") continue;
        auto bytes = base::readFile(entry.path());
        if (!bytes) return passOn(bytes);
        files["english/" + entry.path().filename().string()] = std::move(*bytes);
    }
    if (trouble) return failure("file.unreadable", folder.string(), {{"detail", trouble.message()}});
    return files;
}

Result<walk::StartGround> groundFor(plan::Plan plan, const Options& options)
{
    walk::StartGround ground;
    ground.plan = std::move(plan);
    auto catalogue = catalogueFiles(options);
    if (!catalogue) return passOn(catalogue);
    auto conductors = base::readFile(base::dataFolder() / "measure" / "conductors.csv");
    if (!conductors) return passOn(conductors);
    auto words = wordFiles();
    if (!words) return passOn(words);
    ground.catalogue = std::move(*catalogue);
    ground.conductors = std::move(*conductors);
    ground.words = std::move(*words);
    return ground;
}

Exit run(Face& face, const Options& options)
{
    auto reviewed = readAndReview(face, options);
    if (!reviewed) return reviewed.error();
    if (reviewed->errors > 0) {
        sayRemarks(face, *reviewed);
        return face.cannot(
            {"start.plan-has-errors", options.value("--plan"), {{"count", std::int64_t{reviewed->errors}}}});
    }
    auto key = machineKey();
    if (!key) return face.cannot(key.error());
    const std::size_t devices = reviewed->plan.devices.size();
    const std::size_t zones = reviewed->plan.zones.size();
    auto ground = groundFor(std::move(reviewed->plan), options);
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
