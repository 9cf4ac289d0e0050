// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/command/work/given.h"

#include "core/base/text.h"

#include <fmt/format.h>

#include <algorithm>
#include <cassert>
#include <charconv>
#include <cmath>

namespace proofwalk::command::work {
namespace {

bool holdsNumbers(const Input& input) { return input.kind != Input::Kind::word && input.kind != Input::Kind::text; }
bool holdsList(const Input& input) { return input.kind == Input::Kind::numbers || input.kind == Input::Kind::wholes; }
bool holdsWhole(const Input& input) { return input.kind == Input::Kind::whole || input.kind == Input::Kind::wholes; }

/// A decimal number or one with an exponent, and nothing else: no "nan", "inf", sign of plus or hexadecimal.
std::optional<double> parsed(std::string_view text)
{
    if (text.find_first_not_of("0123456789.-eE+") != std::string_view::npos) return {};
    double value = 0;
    const auto [end, trouble] = std::from_chars(text.data(), text.data() + text.size(), value);
    if (end != text.data() + text.size()) return {};
    // Beyond what a double holds is beyond every range too; it is told so, not as a slip of the pen.
    if (trouble == std::errc::result_out_of_range) return std::numeric_limits<double>::infinity();
    if (trouble != std::errc()) return {};
    return value;
}

bool within(const Range& range, double value)
{
    return value <= range.most && (range.above ? value > range.least : value >= range.least);
}

/// The number of one piece of text, in the unit of the input's own name.
Result<double> numberOf(const Input& input, const std::string& name, std::string_view piece, const std::string& where)
{
    auto value = parsed(piece);
    if (!value) return failure("work.not-a-number", where, {{"found", std::string(piece)}});
    if (const Suffix* own = suffixOf(input.name); own != nullptr && !input.anyUnit)
        value = converted(*value, *suffixOf(name), *own);
    if (!within(input.range, *value))
        return failure("work.out-of-range", where,
                       {{"input", std::string(input.name)}, {"wanted", rangeText(input.range)}});
    if (holdsWhole(input) && *value != std::floor(*value))
        return failure("work.not-whole", where, {{"found", std::string(piece)}});
    return *value;
}

std::vector<std::string> namesOf(std::span<const Input> inputs)
{
    std::vector<std::string> names;
    for (const Input& input : inputs) names.push_back(std::string(input.name) + (input.anyUnit ? "_UNIT" : ""));
    return names;
}

struct Typed {
    std::string name;
    std::string text;
    std::string whole; ///< as typed
};

Result<std::vector<Typed>> split(std::span<const std::string> words)
{
    std::vector<Typed> all;
    for (const std::string& word : words) {
        const auto at = word.find('=');
        if (at == std::string::npos || at == 0) return failure("work.form", word);
        all.push_back({word.substr(0, at), word.substr(at + 1), word});
    }
    return all;
}

} // namespace

std::string rangeText(const Range& range)
{
    const auto end = [](double value) {
        return std::fabs(value) < 1e6 ? fmt::format("{:g}", value) : fmt::format("{:.0f}", value);
    };
    return (range.above ? "above " : "") + end(range.least) + " to " + end(range.most);
}

Input needed(std::string_view name, Range range) { return {.name = name, .range = range}; }
Input neededList(std::string_view name, Range range)
{
    return {.name = name, .range = range, .kind = Input::Kind::numbers};
}
Input usual(std::string_view name, std::string_view otherwise, Range range)
{
    return {.name = name, .range = range, .required = false, .otherwise = otherwise};
}
Input optional(std::string_view name, Range range) { return {.name = name, .range = range, .required = false}; }
Input optionalList(std::string_view name, Range range)
{
    return {.name = name, .range = range, .kind = Input::Kind::numbers, .required = false};
}
Input word(std::string_view name, std::vector<std::string_view> choices, std::string_view otherwise)
{
    return {.name = name,
            .kind = choices.empty() ? Input::Kind::text : Input::Kind::word,
            .required = otherwise.empty(),
            .otherwise = otherwise,
            .choices = std::move(choices)};
}
Input whole(Input input)
{
    input.kind = holdsList(input) ? Input::Kind::wholes : Input::Kind::whole;
    return input;
}
Input ofAnyUnit(Input input)
{
    input.anyUnit = true;
    return input;
}

bool means(std::string_view typed, const Input& input)
{
    const Suffix* given = suffixOf(typed);
    if (input.anyUnit) return given != nullptr && stemOf(typed) == input.name;
    if (typed == input.name) return true;
    const Suffix* own = suffixOf(input.name);
    return given != nullptr && own != nullptr && stemOf(typed) == stemOf(input.name)
        && given->quantity == own->quantity;
}

Error unknownName(std::string_view typed, std::span<const Input> inputs)
{
    const std::string where(typed);
    for (const Input& input : inputs) {
        const std::string wanted = input.anyUnit ? std::string(input.name) + "_UNIT" : std::string(input.name);
        if (wanted == typed) continue;
        const std::string_view stem = input.anyUnit ? input.name : stemOf(input.name);
        if (typed == stem) return {"work.unit-missing", where, {{"wanted", wanted}}};
        if (typed.starts_with(stem) && typed.substr(stem.size()).starts_with('_')
            && (input.anyUnit || suffixOf(wanted) != nullptr))
            return {"work.unit-other", where, {{"wanted", wanted}}};
    }
    return {"work.unknown", where, {{"nearest", base::nearestWord(typed, namesOf(inputs))}}};
}

std::optional<double> Given::maybe(std::string_view name) const
{
    const auto found = m_numbers.find(name);
    return found == m_numbers.end() ? std::optional<double>() : found->second.front();
}

const std::vector<double>& Given::numbers(std::string_view name) const
{
    const auto found = m_numbers.find(name);
    assert(found != m_numbers.end());
    return found->second;
}

const std::string& Given::word(std::string_view name) const
{
    const auto found = m_words.find(name);
    assert(found != m_words.end());
    return found->second;
}

Result<std::optional<base::Decimal>> Given::decimal(std::string_view name) const
{
    if (!m_numbers.contains(name)) return std::optional<base::Decimal>();
    auto exact = base::parseDecimal(word(name));
    if (!exact) return std::unexpected(std::move(exact.error()).within(std::string(name) + m_ending));
    return std::optional(*exact);
}

Result<void> Given::take(const Input& input, const std::string& name, const std::string& text, bool byDefault)
{
    const std::string where = byDefault ? name : name + "=" + text;
    const std::string key(input.name);
    Taken taken{.name = name,
                .text = text,
                .isNumber = holdsNumbers(input),
                .isList = holdsList(input),
                .byDefault = byDefault,
                .numbers = {}};
    m_words[key] = text;
    if (text.empty()) return failure("work.empty", where);
    if (!holdsNumbers(input)) {
        if (input.kind == Input::Kind::word && std::ranges::find(input.choices, text) == input.choices.end()) {
            const std::vector<std::string> known(input.choices.begin(), input.choices.end());
            return failure("work.choice", where, {{"wanted", base::join(known, ", ")}});
        }
        m_taken.push_back(std::move(taken));
        return {};
    }
    std::vector<std::string> pieces{text};
    if (holdsList(input)) pieces = base::split(text, ',');
    for (const std::string& piece : pieces) {
        auto value = numberOf(input, name, piece, where);
        if (!value) return passOn(value);
        taken.numbers.push_back(*value);
    }
    m_numbers[key] = taken.numbers;
    // Said as it is computed with: in the unit of the table.
    if (!input.anyUnit) taken.name = key;
    m_taken.push_back(std::move(taken));
    return {};
}

Result<Given> Given::read(std::span<const Input> inputs, std::span<const std::string> words)
{
    auto typed = split(words);
    if (!typed) return passOn(typed);
    Given given;
    for (const Typed& each : *typed) {
        const auto input = std::ranges::find_if(inputs, [&](const Input& one) { return means(each.name, one); });
        if (input == inputs.end()) return std::unexpected(unknownName(each.name, inputs));
        if (!input->anyUnit) continue;
        const std::string ending = "_" + std::string(suffixOf(each.name)->ending);
        if (given.m_ending.empty()) given.m_ending = ending;
        if (given.m_ending != ending) return failure("work.unit-differs", each.whole, {{"wanted", given.m_ending}});
    }
    for (const Input& input : inputs) {
        const auto meant = [&](const Typed& each) { return means(each.name, input); };
        const auto first = std::ranges::find_if(*typed, meant);
        const std::string name = std::string(input.name) + (input.anyUnit ? given.m_ending : "");
        if (first == typed->end()) {
            if (input.required)
                return failure("work.missing", "",
                               {{"wanted", input.anyUnit && given.m_ending.empty() ? name + "_UNIT" : name}});
            if (input.otherwise.empty()) continue;
            if (auto taken = given.take(input, name, std::string(input.otherwise), true); !taken) return passOn(taken);
            continue;
        }
        if (const auto second = std::find_if(first + 1, typed->end(), meant); second != typed->end())
            return failure("work.twice", second->whole);
        if (auto taken = given.take(input, first->name, first->text, false); !taken) return passOn(taken);
    }
    return given;
}

} // namespace proofwalk::command::work
