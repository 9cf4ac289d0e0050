// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/catalogue/keys.h"

#include "core/base/text.h"

#include <algorithm>
#include <fmt/format.h>

namespace proofwalk::catalogue {
namespace {

/// One line of text that shows as it is: no control characters, no space at its ends.
bool isOneLine(std::string_view text)
{
    return !text.empty() && base::trimmed(text).size() == text.size()
        && std::ranges::none_of(text, [](char c) { return static_cast<unsigned char>(c) < 0x20 || c == 0x7f; });
}

} // namespace

void Reading::refuse(int line, std::string code, std::vector<Argument> arguments)
{
    if (!problem) problem = Error{std::move(code), place(file, line), std::move(arguments)};
}

bool isName(std::string_view text)
{
    const auto isPlain = [](char c) { return (c >= 'a' && c <= 'z') || (c >= '0' && c <= '9'); };
    if (text.empty() || !isPlain(text.front()) || !isPlain(text.back())) return false;
    return std::ranges::all_of(text, [&](char c) { return isPlain(c) || c == '-'; })
        && text.find("--") == std::string_view::npos;
}

Keys::Keys(const Node& table, Reading& reading, std::initializer_list<std::string_view> known)
    : m_table(table.table()), m_line(table.line), m_reading(reading)
{
    if (m_table == nullptr) {
        reading.refuse(m_line, "catalogue.value",
                       {{"key", "this"}, {"found", std::string(typeOf(table))}, {"wanted", "table"}});
        return;
    }
    for (const auto& [key, value] : *m_table) {
        if (std::ranges::find(known, key) != known.end()) continue;
        const std::vector<std::string> names(known.begin(), known.end());
        reading.refuse(value.line, "catalogue.key-unknown",
                       {{"found", key}, {"nearest", base::nearestWord(key, names)}});
    }
}

const Node* Keys::find(std::string_view key) const
{
    if (m_table == nullptr) return nullptr;
    const auto found = m_table->find(key);
    return found == m_table->end() ? nullptr : &found->second;
}

void Keys::refuse(std::string_view key, std::string code, std::vector<Argument> arguments) const
{
    const Node* node = find(key);
    m_reading.refuse(node == nullptr ? m_line : node->line, std::move(code), std::move(arguments));
}

template <class T>
const T* Keys::typed(std::string_view key, std::string_view wanted, bool required) const
{
    const Node* node = find(key);
    if (node == nullptr) {
        if (required) m_reading.refuse(m_line, "catalogue.key-missing", {{"wanted", std::string(key)}});
        return nullptr;
    }
    const T* value = std::get_if<T>(&node->value);
    if (value == nullptr)
        m_reading.refuse(
            node->line, "catalogue.value",
            {{"key", std::string(key)}, {"found", std::string(typeOf(*node))}, {"wanted", std::string(wanted)}});
    return value;
}

std::string Keys::text(std::string_view key) const
{
    const auto* value = typed<std::string>(key, "text", true);
    if (value == nullptr) return {};
    if (!isOneLine(*value))
        refuse(key, "catalogue.value", {{"key", std::string(key)}, {"found", *value}, {"wanted", "one-line"}});
    return *value;
}

std::string Keys::optionalText(std::string_view key) const { return has(key) ? text(key) : std::string(); }

std::string Keys::name(std::string_view key) const
{
    std::string value = text(key);
    if (!value.empty() && !isName(value))
        refuse(key, "catalogue.value", {{"key", std::string(key)}, {"found", value}, {"wanted", "name"}});
    return value;
}

bool Keys::isWord(std::string_view key, const Node& node, std::span<const std::string> allowed) const
{
    const std::string* found = node.text();
    if (found == nullptr) {
        m_reading.refuse(node.line, "catalogue.value",
                         {{"key", std::string(key)}, {"found", std::string(typeOf(node))}, {"wanted", "text"}});
    } else if (allowed.empty()) {
        if (isName(*found)) return true;
        m_reading.refuse(node.line, "catalogue.value",
                         {{"key", std::string(key)}, {"found", *found}, {"wanted", "name"}});
    } else {
        if (std::ranges::find(allowed, *found) != allowed.end()) return true;
        m_reading.refuse(node.line, "catalogue.word",
                         {{"key", std::string(key)},
                          {"found", *found},
                          {"nearest", base::nearestWord(*found, allowed)},
                          {"wanted", base::join(allowed, ", ")}});
    }
    return false;
}

std::string Keys::word(std::string_view key, std::span<const std::string> allowed,
                       const std::optional<std::string>& fallback) const
{
    const Node* node = find(key);
    if (node == nullptr) {
        if (!fallback) m_reading.refuse(m_line, "catalogue.key-missing", {{"wanted", std::string(key)}});
        return fallback.value_or("");
    }
    return isWord(key, *node, allowed) ? *node->text() : std::string();
}

std::vector<std::string> Keys::words(std::string_view key, std::span<const std::string> allowed) const
{
    const auto* list = typed<Node::List>(key, "list", true);
    if (list == nullptr) return {};
    if (list->empty()) refuse(key, "catalogue.value", {{"key", std::string(key)}, {"found", "[]"}, {"wanted", "word"}});
    std::vector<std::string> words;
    for (const Node& each : *list) {
        if (!isWord(key, each, allowed)) continue;
        if (std::ranges::find(words, *each.text()) != words.end())
            m_reading.refuse(each.line, "catalogue.word-twice", {{"key", std::string(key)}, {"found", *each.text()}});
        words.push_back(*each.text());
    }
    return words;
}

bool Keys::truth(std::string_view key, std::optional<bool> fallback) const
{
    const bool* value = typed<bool>(key, "truth", !fallback);
    return value != nullptr ? *value : fallback.value_or(false);
}

int Keys::wholeNumber(std::string_view key, int least, int greatest) const
{
    const auto* value = typed<std::int64_t>(key, "whole-number", true);
    if (value == nullptr) return 0;
    if (*value >= least && *value <= greatest) return static_cast<int>(*value);
    refuse(key, "catalogue.value",
           {{"key", std::string(key)},
            {"found", std::to_string(*value)},
            {"wanted", fmt::format("{}-{}", least, greatest)}});
    return 0;
}

std::vector<const Node*> Keys::tables(std::string_view key) const
{
    const auto* list = typed<Node::List>(key, "list", false);
    std::vector<const Node*> tables;
    if (list != nullptr)
        for (const Node& each : *list) tables.push_back(&each);
    return tables;
}

} // namespace proofwalk::catalogue
