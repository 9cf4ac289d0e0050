// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/command/work/choose.h"

#include "core/base/text.h"

#include <algorithm>

namespace proofwalk::command::work {
namespace {

constexpr std::string_view whatEquals = "what=";

std::string nameOf(const std::string& word) { return word.substr(0, word.find('=')); }

std::vector<std::string> whatsOf(const Topic& topic)
{
    std::vector<std::string> whats;
    for (const Computation& each : topic.computations) whats.emplace_back(each.what);
    return whats;
}

bool knowsAll(const Computation& computation, std::span<const std::string> words)
{
    return std::ranges::all_of(words, [&](const std::string& word) {
        return std::ranges::any_of(computation.inputs, [&](const Input& input) { return means(nameOf(word), input); });
    });
}

bool lacksNone(const Computation& computation, std::span<const std::string> words)
{
    return std::ranges::all_of(computation.inputs, [&](const Input& input) {
        return !input.required
            || std::ranges::any_of(words, [&](const std::string& word) { return means(nameOf(word), input); });
    });
}

Result<Chosen> read(const Computation& computation, std::span<const std::string> words)
{
    auto given = Given::read(computation.inputs, words);
    if (!given) return passOn(given);
    return Chosen{&computation, std::move(*given)};
}

/// No computation takes all the names: a name that none knows, or names of two computations.
Error misfit(const Topic& topic, std::span<const std::string> words)
{
    std::vector<Input> all;
    for (const Computation& each : topic.computations) all.insert(all.end(), each.inputs.begin(), each.inputs.end());
    for (const std::string& word : words) {
        if (word.find('=') == std::string::npos || word.front() == '=') return {"work.form", word, {}};
        const auto known = [&](const Input& input) { return means(nameOf(word), input); };
        if (std::ranges::none_of(all, known)) return unknownName(nameOf(word), all);
    }
    return {"work.not-together", "", {{"wanted", base::join(whatsOf(topic), ", ")}}};
}

} // namespace

Result<Chosen> choose(const Topic& topic, std::span<const std::string> words)
{
    std::vector<std::string> rest;
    std::string what;
    for (const std::string& word : words) {
        if (!word.starts_with(whatEquals)) rest.push_back(word);
        else if (!what.empty()) return failure("work.twice", word);
        else what = word;
    }
    if (!what.empty()) {
        const std::string wanted = what.substr(whatEquals.size());
        const auto found = std::ranges::find(topic.computations, wanted, &Computation::what);
        if (found != topic.computations.end()) return read(*found, rest);
        const auto whats = whatsOf(topic);
        return failure("work.unknown-what", what,
                       {{"nearest", base::nearestWord(wanted, whats)}, {"wanted", base::join(whats, ", ")}});
    }
    const Computation* first = nullptr;
    for (const Computation& each : topic.computations) {
        if (!knowsAll(each, rest)) continue;
        if (lacksNone(each, rest)) return read(each, rest);
        if (first == nullptr) first = &each;
    }
    if (first != nullptr) return read(*first, rest);
    return std::unexpected(misfit(topic, rest));
}

} // namespace proofwalk::command::work
