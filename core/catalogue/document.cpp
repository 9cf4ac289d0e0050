// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/catalogue/document.h"

#include <toml++/toml.h>

#include <algorithm>
#include <fmt/format.h>

namespace proofwalk::catalogue {
namespace {

// The parser bounds how deep lists and tables nest, but not how many parts a dotted key has; each part is a table
// inside another, and some ten thousand of them would exhaust the stack. A key cannot go over a line's end.
constexpr int mostStopsInALine = 100;

/// The first line with more full stops than that; 0 if there is none.
int lineWithTooManyStops(std::string_view text)
{
    int line = 1;
    int stops = 0;
    for (const char c : text) {
        if (c == '.' && ++stops > mostStopsInALine) return line;
        if (c != '\n') continue;
        ++line;
        stops = 0;
    }
    return 0;
}

int lineOf(const toml::node& node) { return std::max(1, static_cast<int>(node.source().begin.line)); }

Result<Node> convert(const toml::node& from, const std::string& file);

Result<Node> convertList(const toml::array& from, const std::string& file)
{
    Node::List list;
    for (const toml::node& each : from) {
        auto node = convert(each, file);
        if (!node) return node;
        list.push_back(std::move(*node));
    }
    return Node{lineOf(from), std::move(list)};
}

Result<Node> convertTable(const toml::table& from, const std::string& file)
{
    Node::Table table;
    for (const auto& [key, value] : from) {
        auto node = convert(value, file);
        if (!node) return node;
        table.emplace(std::string(key.str()), std::move(*node));
    }
    return Node{lineOf(from), std::move(table)};
}

Result<Node> convert(const toml::node& from, const std::string& file)
{
    const int line = lineOf(from);
    if (const auto* text = from.as_string()) return Node{line, text->get()};
    if (const auto* number = from.as_integer()) return Node{line, number->get()};
    if (const auto* truth = from.as_boolean()) return Node{line, truth->get()};
    if (const auto* list = from.as_array()) return convertList(*list, file);
    if (const auto* table = from.as_table()) return convertTable(*table, file);
    if (const auto* number = from.as_floating_point())
        return failure("catalogue.bare-number", place(file, line), {{"found", fmt::format("{}", number->get())}});
    return failure("catalogue.value", place(file, line), {{"key", "this"}, {"found", "time"}, {"wanted", "text"}});
}

} // namespace

std::string_view typeOf(const Node& node)
{
    constexpr std::string_view names[]{"text", "whole-number", "truth", "list", "table"};
    return names[node.value.index()];
}

std::string place(const std::string& file, int line) { return fmt::format("{}:{}", file, line); }

Result<Node> parseDocument(std::string_view text, const std::string& file)
{
    if (const int line = lineWithTooManyStops(text); line != 0) return failure("catalogue.too-deep", place(file, line));
    // The library as Debian builds it throws; its errors become values here and go no further.
    try {
        return convertTable(toml::parse(text), file);
    } catch (const toml::parse_error& error) {
        return failure("catalogue.syntax", place(file, std::max(1, static_cast<int>(error.source().begin.line))),
                       {{"detail", std::string(error.description())}});
    }
}

} // namespace proofwalk::catalogue
