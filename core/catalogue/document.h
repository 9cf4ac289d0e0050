// SPDX-License-Identifier: GPL-3.0-or-later
// A TOML text (v1.0.0) as a tree in which every value knows its line. The only file of this room that knows the
// parser; what a catalogue may hold is narrower than TOML: text, whole numbers, truth, lists and tables.
#pragma once

#include "core/base/result.h"

#include <cstdint>
#include <map>
#include <string>
#include <string_view>
#include <variant>
#include <vector>

namespace proofwalk::catalogue {

/// One value of the tree.
struct Node {
    using List = std::vector<Node>;
    using Table = std::map<std::string, Node, std::less<>>;

    int line = 1; ///< where it was written, the first line being 1
    std::variant<std::string, std::int64_t, bool, List, Table> value;

    const std::string* text() const { return std::get_if<std::string>(&value); }
    const std::int64_t* wholeNumber() const { return std::get_if<std::int64_t>(&value); }
    const bool* truth() const { return std::get_if<bool>(&value); }
    const List* list() const { return std::get_if<List>(&value); }
    const Table* table() const { return std::get_if<Table>(&value); }
};

/// "text", "whole-number", "truth", "list" or "table".
std::string_view typeOf(const Node& node);

/// "kinds/flood.toml:12".
std::string place(const std::string& file, int line);

/// Reads a whole file's text; the result is a table. Errors, with `where` = "FILE:LINE": catalogue.syntax {detail};
/// catalogue.too-deep (over 100 full stops in a line: no sheet needs them, and a key of so many parts is an attack);
/// catalogue.bare-number {found} (a figure must stand in quotation marks, or 2.50 would become 2.5);
/// catalogue.value {key, found, wanted} for dates and times.
Result<Node> parseDocument(std::string_view text, const std::string& file);

} // namespace proofwalk::catalogue
