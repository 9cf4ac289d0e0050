// SPDX-License-Identifier: GPL-3.0-or-later
// Small helpers on UTF-8 text that several rooms need.
#pragma once

#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace proofwalk::base {

/// Whether the bytes are well-formed UTF-8 (RFC 3629: no surrogates, nothing overlong, nothing above U+10FFFF).
bool isUtf8(std::string_view bytes);

/// The word of `known` with the least edit distance to `typed` (the first of equals); empty if `known` is empty.
std::string nearestWord(std::string_view typed, std::span<const std::string> known);

/// Splits at the character; keeps empty pieces; an empty text gives no piece.
std::vector<std::string> split(std::string_view text, char at);

/// Without white space (space, tab, CR, LF) at both ends.
std::string_view trimmed(std::string_view text);

/// The pieces with `between` between them.
std::string join(std::span<const std::string> pieces, std::string_view between);

} // namespace proofwalk::base
