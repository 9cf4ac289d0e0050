// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/review/roomtypes.h"

#include <toml++/toml.h>

#include <algorithm>

namespace proofwalk::review {
namespace {

/// Small letters, of ASCII and of the accented letters of Latin-1 in UTF-8 (C3 80 to C3 9E, 32 below their small ones).
std::string small(std::string_view text)
{
    std::string out(text);
    for (std::size_t i = 0; i < out.size(); ++i) {
        const auto c = static_cast<unsigned char>(out[i]);
        const bool ascii = c >= 'A' && c <= 'Z';
        const bool accented =
            i > 0 && static_cast<unsigned char>(out[i - 1]) == 0xC3 && c >= 0x80 && c <= 0x9E && c != 0x97;
        if (ascii || accented) out[i] = static_cast<char>(c + 0x20);
    }
    return out;
}

bool isLetter(char c) { return (c >= 'a' && c <= 'z') || static_cast<unsigned char>(c) >= 0x80; }

bool holdsWord(std::string_view text, std::string_view word)
{
    for (auto at = text.find(word); at != std::string_view::npos; at = text.find(word, at + 1)) {
        const auto end = at + word.size();
        if ((at == 0 || !isLetter(text[at - 1])) && (end == text.size() || !isLetter(text[end]))) return true;
    }
    return false;
}

} // namespace

Result<RoomTypes> RoomTypes::read(std::string_view text, const std::string& name)
{
    RoomTypes types;
    toml::table document;
    try {
        document = toml::parse(text);
    } catch (const toml::parse_error& error) {
        return failure("review.rooms-syntax", name + ":" + std::to_string(error.source().begin.line),
                       {{"detail", std::string(error.description())}});
    }
    for (const auto& [type, value] : document) {
        const std::string found(type.str());
        const toml::array* words = value.is_table() ? (*value.as_table())["words"].as_array() : nullptr;
        if (!words || words->empty()) return failure("review.rooms-value", name, {{"found", found}});
        for (const auto& word : *words) {
            const auto* spelled = word.as_string();
            if (!spelled || spelled->get().empty()) return failure("review.rooms-value", name, {{"found", found}});
            types.m_words[found].push_back(small(spelled->get()));
        }
    }
    return types;
}

std::vector<std::string> RoomTypes::typesOf(std::string_view room) const
{
    const std::string text = small(room);
    std::vector<std::string> types;
    for (const auto& [type, words] : m_words) {
        if (std::ranges::any_of(words, [&](const std::string& word) { return holdsWord(text, word); }))
            types.push_back(type);
    }
    return types;
}

} // namespace proofwalk::review
