// SPDX-License-Identifier: GPL-3.0-or-later
// The keys of one table, read strictly. The first thing that is wrong is kept; after it every answer is empty, so that
// a reader can ask for all it needs in a row and look at the problem once.
#pragma once

#include "core/catalogue/document.h"

#include <initializer_list>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace proofwalk::catalogue {

/// Where reading stands in one file.
struct Reading {
    std::string file;             ///< "kinds/flood.toml"
    std::optional<Error> problem; ///< the first

    /// Keeps the error unless there is an earlier one.
    void refuse(int line, std::string code, std::vector<Argument> arguments);
};

/// Lower-case words joined by dashes, digits allowed: "smoke-four-wire".
bool isName(std::string_view text);

/// Whatever is asked for must be among the known keys; whatever is found must be too (catalogue.key-unknown).
class Keys {
public:
    Keys(const Node& table, Reading& reading, std::initializer_list<std::string_view> known);

    int line() const { return m_line; }
    Reading& reading() const { return m_reading; }
    bool has(std::string_view key) const { return find(key) != nullptr; }
    /// The value, or nullptr.
    const Node* find(std::string_view key) const;

    /// One line of text, not empty, without white space at its ends.
    std::string text(std::string_view key) const;         ///< catalogue.key-missing if it is not there
    std::string optionalText(std::string_view key) const; ///< empty if it is not there
    /// A name (isName).
    std::string name(std::string_view key) const;
    /// A word of the list: catalogue.word {found, nearest, wanted}. `fallback` stands if the key is not there; without
    /// one it is missing.
    std::string word(std::string_view key, std::span<const std::string> allowed,
                     const std::optional<std::string>& fallback = std::nullopt) const;
    /// A list of different words, not empty; any names if `allowed` is empty.
    std::vector<std::string> words(std::string_view key, std::span<const std::string> allowed) const;
    bool truth(std::string_view key, std::optional<bool> fallback = std::nullopt) const;
    int wholeNumber(std::string_view key, int least, int greatest) const;
    /// The tables of a list of tables; empty if the key is not there.
    std::vector<const Node*> tables(std::string_view key) const;

    /// Keeps an error at the line of that key's value, or of the table.
    void refuse(std::string_view key, std::string code, std::vector<Argument> arguments) const;

private:
    template <class T>
    const T* typed(std::string_view key, std::string_view wanted, bool required) const;
    bool isWord(std::string_view key, const Node& node, std::span<const std::string> allowed) const;

    const Node::Table* m_table = nullptr; ///< nullptr if the value was no table
    int m_line;
    Reading& m_reading;
};

} // namespace proofwalk::catalogue
