// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/base/digest.h"

#include <openssl/evp.h>
#include <openssl/rand.h>

#include <algorithm>
#include <array>
#include <cstdlib>

namespace proofwalk::base {
namespace {

constexpr std::string_view digits = "0123456789abcdef";

} // namespace

std::string toHex(std::string_view bytes)
{
    std::string hex;
    hex.reserve(bytes.size() * 2);
    for (const char c : bytes) {
        const auto byte = static_cast<unsigned char>(c);
        hex += digits[byte >> 4U];
        hex += digits[byte & 15U];
    }
    return hex;
}

std::string fromHex(std::string_view hex)
{
    if (hex.size() % 2 != 0 || !isLowerHex(hex, hex.size())) return {};
    std::string bytes;
    bytes.reserve(hex.size() / 2);
    for (std::size_t i = 0; i < hex.size(); i += 2)
        bytes += static_cast<char>(digits.find(hex[i]) * 16 + digits.find(hex[i + 1]));
    return bytes;
}

bool isLowerHex(std::string_view text, std::size_t count)
{
    return text.size() == count
        && std::ranges::all_of(text, [](char c) { return digits.find(c) != std::string_view::npos; });
}

std::string sha256Hex(std::string_view bytes)
{
    std::array<unsigned char, 32> hash{};
    unsigned int length = 0;
    // Fails only if the library has no SHA-256 at all: nothing this program does would be sound then.
    if (EVP_Digest(bytes.data(), bytes.size(), hash.data(), &length, EVP_sha256(), nullptr) != 1) std::abort();
    return toHex({reinterpret_cast<const char*>(hash.data()), hash.size()});
}

std::string randomHex(std::size_t bytes)
{
    std::string raw(bytes, '\0');
    if (RAND_bytes(reinterpret_cast<unsigned char*>(raw.data()), static_cast<int>(bytes)) != 1) std::abort();
    return toHex(raw);
}

} // namespace proofwalk::base
