// SPDX-License-Identifier: GPL-3.0-or-later
// proofwalk take JOB.walk --from FILE: observations as JSON lines, each durable before the next is read.
#include "core/command/command.h"
#include "core/command/places.h"

#include "core/base/text.h"
#include "core/journal/home.h"
#include "core/walk/job.h"

#include <fstream>
#include <iostream>

namespace proofwalk::command {
namespace {

constexpr std::size_t longestLine = 1U << 20U;

bool isPassedOver(std::string_view line)
{
    const auto text = base::trimmed(line);
    return text.empty() || text.front() == '#';
}

struct Tally {
    std::int64_t line = 0, taken = 0, events = 0;
};

Result<void> takeAll(Face& face, walk::Job& job, std::istream& lines, const std::string& name,
                     const std::filesystem::path& folder, Tally& tally)
{
    std::string line;
    while (std::getline(lines, line)) {
        ++tally.line;
        const std::string where = name + ":" + std::to_string(tally.line);
        if (line.size() > longestLine)
            return failure("json.too-long", where, {{"bytes", static_cast<std::int64_t>(longestLine)}});
        if (isPassedOver(line)) continue;
        auto taken = job.take(line, folder, base::now());
        if (!taken) return std::unexpected(std::move(taken.error()).within(where));
        ++tally.taken;
        tally.events += *taken;
        // Said line by line and flushed: whoever reads along knows what is durable.
        if (face.json())
            std::cout << base::canonical(base::Json::Object{{"line", tally.line}, {"events", *taken}}) << std::endl;
    }
    return {};
}

Exit run(Face& face, const Options& options)
{
    const std::string from = options.value("--from");
    std::ifstream file;
    if (from != "-") {
        file.open(from);
        if (!file || !std::filesystem::is_regular_file(from)) return face.cannot({"file.missing", from, {}});
    }
    auto key = journal::machineKey();
    if (!key) return face.cannot(key.error());
    auto job = walk::Job::open(options.words[0], *key);
    if (!job) return face.cannot(job.error());

    Tally tally;
    const std::string name = from == "-" ? std::string("-") : std::filesystem::path(from).filename().string();
    const auto folder = from == "-" ? std::filesystem::path(".") : std::filesystem::absolute(from).parent_path();
    auto taken = takeAll(face, *job, from == "-" ? std::cin : file, name, folder, tally);
    face.say("take.done", {{"lines", tally.taken}, {"events", tally.events}, {"job", options.words[0]}});
    if (!taken) return face.cannot(taken.error());
    face.answer("take", {{"lines", tally.taken}, {"events", tally.events}});
    return Exit::well;
}

} // namespace

Command takeCommand() { return {{"take", {"JOB.walk"}, {{"--from", "FILE", true}}}, run}; }

} // namespace proofwalk::command
