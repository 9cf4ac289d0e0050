// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/catalogue/catalogue.h"

#include "core/base/text.h"
#include "core/catalogue/compose.h"
#include "core/catalogue/procedures.h"

#include <algorithm>

namespace proofwalk::catalogue {

struct Catalogue::Contents {
    Files files;
    std::vector<Kind> kinds;
    std::map<std::string, KindFile, std::less<>> kindFiles;
    Parts parts;
    std::map<std::string, RulesFile, std::less<>> rules;
    std::vector<Sequence> sequences;
    std::vector<Round> rounds;
};

namespace {

/// "kinds/flood.toml" is of folder "kinds" and named "flood".
struct Path {
    std::string folder, name;
};

Result<Path> splitPath(const std::string& path)
{
    constexpr std::string_view ending = ".toml";
    static const std::vector<std::string> folders{"kinds", "parts", "rules", "sequences", "rounds"};
    const auto slash = path.find('/');
    Path split;
    if (slash != std::string::npos && path.ends_with(ending) && slash + 1 + ending.size() < path.size())
        split = {path.substr(0, slash), path.substr(slash + 1, path.size() - slash - 1 - ending.size())};
    if (std::ranges::find(folders, split.folder) == folders.end() || !isName(split.name))
        return failure("catalogue.file-name", path, {{"found", path}});
    if (split.folder == "parts" && !isPartName(split.name))
        return failure("catalogue.part-name", path,
                       {{"found", split.name}, {"nearest", base::nearestWord(split.name, partNames())}});
    return split;
}

std::vector<std::string> keysOf(const auto& map)
{
    std::vector<std::string> names;
    for (const auto& [name, value] : map) names.push_back(name);
    return names;
}

/// The rule sets of those names, in their order.
Result<std::vector<const RulesFile*>> rulesNamed(const std::map<std::string, RulesFile, std::less<>>& known,
                                                 const std::vector<std::string>& names)
{
    std::vector<const RulesFile*> found;
    for (const std::string& name : names) {
        const auto rules = known.find(name);
        if (rules == known.end())
            return failure("catalogue.rules-unknown", "rules/" + name + ".toml",
                           {{"found", name}, {"nearest", base::nearestWord(name, keysOf(known))}});
        found.push_back(&rules->second);
    }
    return found;
}

} // namespace

Result<Catalogue> Catalogue::read(Files files)
{
    auto contents = std::make_shared<Contents>();
    for (const auto& [path, text] : files) {
        auto split = splitPath(path);
        if (!split) return passOn(split);
        auto document = parseDocument(text, path);
        if (!document) return passOn(document);
        Reading reading{path, std::nullopt};
        const std::string& name = split->name;
        if (split->folder == "kinds") {
            const auto& file = contents->kindFiles.emplace(name, readKindFile(*document, name, reading)).first->second;
            contents->kinds.push_back(file.kind);
        } else if (split->folder == "parts") {
            contents->parts.emplace(name, readPartFile(*document, reading));
        } else if (split->folder == "rules") {
            contents->rules.emplace(name, readRulesFile(*document, name, reading));
        } else if (split->folder == "sequences") {
            contents->sequences.push_back(readSequence(*document, name, reading));
        } else {
            contents->rounds.push_back(readRound(*document, name, reading));
        }
        if (reading.problem) return std::unexpected(std::move(*reading.problem));
    }
    contents->files = std::move(files);
    Catalogue catalogue;
    catalogue.m_contents = std::move(contents);
    return catalogue;
}

const Files& Catalogue::files() const { return m_contents->files; }
const std::vector<Kind>& Catalogue::kinds() const { return m_contents->kinds; }
const std::vector<Sequence>& Catalogue::sequences() const { return m_contents->sequences; }
const std::vector<Round>& Catalogue::rounds() const { return m_contents->rounds; }
std::vector<std::string> Catalogue::ruleNames() const { return keysOf(m_contents->rules); }

const Kind* Catalogue::kind(std::string_view name) const
{
    const auto found = m_contents->kindFiles.find(name);
    return found == m_contents->kindFiles.end() ? nullptr : &found->second.kind;
}

const RuleSet* Catalogue::rules(std::string_view name) const
{
    const auto found = m_contents->rules.find(name);
    return found == m_contents->rules.end() ? nullptr : &found->second.rules;
}

Result<Sheet> Catalogue::compose(const Traits& traits) const
{
    const auto kind = m_contents->kindFiles.find(traits.kind);
    if (kind == m_contents->kindFiles.end())
        return failure(
            "catalogue.kind-unknown", "kinds/" + traits.kind + ".toml",
            {{"found", traits.kind}, {"nearest", base::nearestWord(traits.kind, keysOf(m_contents->kindFiles))}});
    const auto rules = rulesNamed(m_contents->rules, traits.rules);
    if (!rules) return std::unexpected(rules.error());
    auto steps = composeSteps(kind->second, m_contents->parts, traits);
    if (!steps) return passOn(steps);
    if (auto done = addLimits(*steps, *rules, traits); !done) return passOn(done);
    return Sheet{traits.kind, std::move(*steps)};
}

Result<Sequence> Catalogue::composeSequence(std::string_view name, const std::vector<std::string>& ruleNames) const
{
    const auto found = std::ranges::find(m_contents->sequences, name, &Sequence::name);
    if (found == m_contents->sequences.end()) {
        std::vector<std::string> known;
        for (const Sequence& each : m_contents->sequences) known.push_back(each.name);
        return failure("catalogue.sequence-unknown", "sequences/" + std::string(name) + ".toml",
                       {{"found", std::string(name)}, {"nearest", base::nearestWord(name, known)}});
    }
    const auto rules = rulesNamed(m_contents->rules, ruleNames);
    if (!rules) return std::unexpected(rules.error());
    Sequence sequence = *found;
    if (auto done = addLimits(sequence.steps, *rules, Traits{}); !done) return passOn(done);
    return sequence;
}

} // namespace proofwalk::catalogue
