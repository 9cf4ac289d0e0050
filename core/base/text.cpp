// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/base/text.h"

#include <simdjson.h>

#include <algorithm>
#include <numeric>

namespace proofwalk::base {
namespace {

/// Levenshtein's distance, one row at a time.
std::size_t editDistance(std::string_view a, std::string_view b)
{
    std::vector<std::size_t> row(b.size() + 1);
    std::iota(row.begin(), row.end(), std::size_t{0});
    for (std::size_t i = 0; i < a.size(); ++i) {
        std::size_t diagonal = row[0];
        row[0] = i + 1;
        for (std::size_t j = 0; j < b.size(); ++j) {
            const std::size_t change = diagonal + (a[i] == b[j] ? 0 : 1);
            diagonal = row[j + 1];
            row[j + 1] = std::min({row[j] + 1, row[j + 1] + 1, change});
        }
    }
    return row.back();
}

} // namespace

bool isUtf8(std::string_view bytes) { return simdjson::validate_utf8(bytes.data(), bytes.size()); }

std::string nearestWord(std::string_view typed, std::span<const std::string> known)
{
    const auto best =
        std::ranges::min_element(known, {}, [&](const std::string& word) { return editDistance(typed, word); });
    return best == known.end() ? std::string() : *best;
}

std::vector<std::string> split(std::string_view text, char at)
{
    std::vector<std::string> pieces;
    while (!text.empty()) {
        const auto end = text.find(at);
        pieces.emplace_back(text.substr(0, end));
        if (end == std::string_view::npos) break;
        text.remove_prefix(end + 1);
        if (text.empty()) pieces.emplace_back();
    }
    return pieces;
}

std::string_view trimmed(std::string_view text)
{
    constexpr std::string_view white = " \t\r\n";
    const auto first = text.find_first_not_of(white);
    if (first == std::string_view::npos) return {};
    return text.substr(first, text.find_last_not_of(white) - first + 1);
}

std::string join(std::span<const std::string> pieces, std::string_view between)
{
    std::string text;
    for (const std::string& piece : pieces) {
        if (&piece != pieces.data()) text += between;
        text += piece;
    }
    return text;
}

} // namespace proofwalk::base
