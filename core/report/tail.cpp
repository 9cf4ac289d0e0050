// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/tail.h"

#include <charconv>

namespace proofwalk::report {
namespace {

/// A decimal number of exactly these digits, without a needless zero before unless `padded`.
template <class T>
bool readNumber(std::string_view digits, T& value, bool padded = false)
{
    const auto [end, error] = std::from_chars(digits.data(), digits.data() + digits.size(), value);
    return error == std::errc{} && end == digits.data() + digits.size() && value >= 0 && digits[0] != '-'
        && (padded || digits.size() == 1 || digits[0] != '0');
}

/// The bytes before the next line feed, which is consumed; nullopt if there is none.
std::optional<std::string_view> takeLine(std::string_view& rest)
{
    const auto end = rest.find('\n');
    if (end == std::string_view::npos) return std::nullopt;
    const auto line = rest.substr(0, end);
    rest.remove_prefix(end + 1);
    return line;
}

/// "0000012345 00000 n " under "17 1".
std::optional<TableEntry> readEntry(std::string_view heading, std::string_view entry)
{
    TableEntry read;
    if (!heading.ends_with(" 1") || !readNumber(heading.substr(0, heading.size() - 2), read.number))
        return std::nullopt;
    if (entry.size() != 19 || entry[10] != ' ' || entry.substr(16) != " n ") return std::nullopt;
    if (!readNumber(entry.substr(0, 10), read.offset, true) || !readNumber(entry.substr(11, 5), read.generation, true))
        return std::nullopt;
    return read;
}

} // namespace

std::optional<std::size_t> tableOffset(std::string_view pdf)
{
    constexpr std::string_view before = "startxref\n", after = "\n%%EOF\n";
    if (!pdf.ends_with(after)) return std::nullopt;
    pdf.remove_suffix(after.size());
    const auto line = pdf.rfind('\n');
    if (line == std::string_view::npos || !pdf.substr(0, line + 1).ends_with(before)) return std::nullopt;
    std::size_t offset = 0;
    if (!readNumber(pdf.substr(line + 1), offset) || offset >= pdf.size()) return std::nullopt;
    return offset;
}

std::optional<std::vector<TableEntry>> updateTable(std::string_view pdf, std::size_t at)
{
    constexpr std::string_view start = "xref\n0 1\n0000000000 65535 f \n";
    if (at > pdf.size() || !pdf.substr(at).starts_with(start)) return std::nullopt;
    std::string_view rest = pdf.substr(at + start.size());
    std::vector<TableEntry> entries;
    while (!rest.starts_with("trailer")) {
        const auto heading = takeLine(rest), line = takeLine(rest);
        const auto entry = heading && line ? readEntry(*heading, *line) : std::nullopt;
        if (!entry || (!entries.empty() && entry->number <= entries.back().number)) return std::nullopt;
        entries.push_back(*entry);
    }
    return entries;
}

} // namespace proofwalk::report
