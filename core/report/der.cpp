// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/der.h"

#include <cstddef>

namespace proofwalk::report {
namespace {

/// Header and content; both 0 if there is no DER.
struct Extent {
    std::size_t header = 0;
    std::size_t content = 0;
};

Extent extentOf(std::string_view bytes)
{
    const auto octet = [&](std::size_t at) { return static_cast<unsigned char>(bytes[at]); };
    if (bytes.size() < 2 || (octet(0) & 0x1FU) == 0x1FU) return {};
    if (octet(1) < 0x80U) return {2, octet(1)};
    const std::size_t count = octet(1) & 0x7FU;
    if (count == 0 || count > 4 || bytes.size() < 2 + count || octet(2) == 0) return {};
    std::size_t length = 0;
    for (std::size_t i = 0; i < count; ++i) length = length << 8U | octet(2 + i);
    return length < 0x80U ? Extent{} : Extent{2 + count, length};
}

} // namespace

std::optional<DerValue> DerReader::next()
{
    const auto [header, content] = extentOf(m_rest);
    if (header == 0 || content > m_rest.size() - header) return std::nullopt;
    const DerValue value{static_cast<unsigned char>(m_rest[0]), m_rest.substr(header, content),
                         m_rest.substr(0, header + content)};
    m_rest.remove_prefix(value.whole.size());
    return value;
}

std::optional<DerValue> DerReader::next(unsigned char tag)
{
    if (m_rest.empty() || static_cast<unsigned char>(m_rest[0]) != tag) return std::nullopt;
    return next();
}

bool DerReader::skip(std::string_view bytes)
{
    if (!m_rest.starts_with(bytes)) return false;
    m_rest.remove_prefix(bytes.size());
    return true;
}

} // namespace proofwalk::report
