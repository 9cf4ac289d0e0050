// SPDX-License-Identifier: GPL-3.0-or-later
// proofwalk work [TOPIC] [NAME=VALUE ...]: one computation, worked and shown. Reads and writes no file.
#include "core/command/command.h"
#include "core/command/work/print.h"

#include "core/base/text.h"

#include <algorithm>

namespace proofwalk::command {
namespace {

Result<work::Topic> topicOf(const std::string& name)
{
    auto all = work::topics();
    const auto found = std::ranges::find(all, name, &work::Topic::name);
    if (found != all.end()) return std::move(*found);
    std::vector<std::string> known;
    for (const work::Topic& each : all) known.emplace_back(each.name);
    return failure("work.unknown-topic", name, {{"nearest", base::nearestWord(name, known)}});
}

Exit run(Face& face, const Options& options)
{
    if (options.words.empty()) {
        work::printTopics(face);
        return Exit::well;
    }
    auto topic = topicOf(options.words.front());
    if (!topic) return face.cannot(topic.error());
    return work::answer(face, *topic, std::span(options.words).subspan(1));
}

/// The help of the topic named; without one that of the command.
std::optional<Exit> help(Face& face, const Options& options)
{
    if (options.words.empty()) return {};
    auto topic = topicOf(options.words.front());
    if (!topic) return face.cannot(topic.error());
    work::printHelp(face, *topic);
    return Exit::well;
}

} // namespace

Command workCommand() { return {{"work", {"[TOPIC]", "[NAME=VALUE ...]"}, {}}, run, help}; }

} // namespace proofwalk::command
