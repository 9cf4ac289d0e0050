// SPDX-License-Identifier: GPL-3.0-or-later
// SHA-256 (FIPS 180-4) as 64 lower-case hexadecimal digits, the only digest of the record.
#pragma once

#include <span>
#include <string>
#include <string_view>

namespace proofwalk::base {

/// SHA-256 of the bytes, as 64 lower-case hexadecimal digits.
std::string sha256Hex(std::string_view bytes);

/// Bytes as lower-case hexadecimal digits, and back (empty if `hex` is not an even run of lower-case digits).
std::string toHex(std::string_view bytes);
std::string fromHex(std::string_view hex);

/// Whether the text is exactly `digits` lower-case hexadecimal digits.
bool isLowerHex(std::string_view text, std::size_t digits);

/// Fresh random bytes from the operating system, as hex: 16 bytes give 32 digits.
std::string randomHex(std::size_t bytes);

} // namespace proofwalk::base
