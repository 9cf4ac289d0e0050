// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/command/options.h"

#include "core/base/text.h"

#include <algorithm>

namespace proofwalk::command {
namespace {

std::vector<OptionSpec> allOptions(const Usage& usage)
{
    std::vector<OptionSpec> options = usage.options;
    options.push_back({"--json", "", false});
    options.push_back({"--help", "", false});
    return options;
}

Result<void> takeOption(const std::vector<OptionSpec>& specs, std::span<const std::string>& rest, Options& options)
{
    const std::string name = rest.front();
    const auto spec = std::ranges::find(specs, name, &OptionSpec::name);
    if (spec == specs.end()) {
        std::vector<std::string> known;
        for (const OptionSpec& each : specs) known.emplace_back(each.name);
        return failure("option.unknown", name, {{"nearest", base::nearestWord(name, known)}});
    }
    if (options.has(name)) return failure("option.twice", name);
    rest = rest.subspan(1);
    if (spec->value.empty()) {
        options.values[name] = "";
        return {};
    }
    if (rest.empty() || (rest.front().starts_with("--") && rest.front().size() > 2))
        return failure("option.value-missing", name, {{"wanted", std::string(spec->value)}});
    options.values[name] = rest.front();
    rest = rest.subspan(1);
    return {};
}

} // namespace

std::string Options::value(std::string_view name) const
{
    const auto found = values.find(name);
    return found == values.end() ? std::string() : found->second;
}

Result<Options> parseOptions(const Usage& usage, std::span<const std::string> arguments)
{
    const auto specs = allOptions(usage);
    Options options;
    while (!arguments.empty()) {
        const std::string& next = arguments.front();
        if (next.starts_with("-") && next != "-") {
            if (auto taken = takeOption(specs, arguments, options); !taken) return passOn(taken);
            continue;
        }
        const bool anyNumber = !usage.words.empty() && usage.words.back().find("...") != std::string_view::npos;
        if (options.words.size() >= usage.words.size() && !anyNumber) return failure("word.extra", next);
        options.words.push_back(next);
        arguments = arguments.subspan(1);
    }
    if (options.has("--help")) return options;
    for (std::size_t i = options.words.size(); i < usage.words.size(); ++i)
        if (!usage.words[i].starts_with("["))
            return failure("word.missing", std::string(usage.command), {{"wanted", std::string(usage.words[i])}});
    for (const OptionSpec& spec : usage.options)
        if (spec.required && !options.has(spec.name))
            return failure("option.missing", std::string(usage.command),
                           {{"wanted", std::string(spec.name) + " " + std::string(spec.value)}});
    return options;
}

std::string usageLine(const Usage& usage)
{
    std::string line = "proofwalk " + std::string(usage.command);
    for (const std::string_view word : usage.words) line.append(" ").append(word);
    for (const OptionSpec& option : usage.options) {
        std::string text(option.name);
        if (!option.value.empty()) text.append(" ").append(option.value);
        line += option.required ? " " + text : " [" + text + "]";
    }
    return line;
}

} // namespace proofwalk::command
