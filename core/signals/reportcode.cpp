// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/signals/reportcode.h"

#include "core/base/csv.h"
#include "core/base/datafolder.h"
#include "core/base/file.h"
#include "core/base/text.h"

#include <algorithm>
#include <array>

namespace proofwalk::signals {
namespace {

constexpr std::array<std::string_view, 6> columns{"system", "code", "event", "group", "purposes", "basis"};

/// Where each column stands in the table.
Result<std::array<std::size_t, columns.size()>> placesOf(const base::CsvTable& table, const std::string& name)
{
    std::array<std::size_t, columns.size()> places{};
    for (std::size_t i = 0; i < columns.size(); ++i) {
        const auto found = std::ranges::find(table.header, columns[i]);
        if (found == table.header.end())
            return failure("signals.column-missing", name, {{"wanted", std::string(columns[i])}});
        places[i] = static_cast<std::size_t>(found - table.header.begin());
    }
    return places;
}

bool isSound(std::string_view system, std::string_view code)
{
    const auto all = [&](char first, char last) {
        return std::ranges::all_of(code, [&](char c) { return c >= first && c <= last; });
    };
    return (system == "DC-05" && code.size() == 3 && all('0', '9'))
        || (system == "DC-04" && code.size() == 2 && all('A', 'Z'));
}

} // namespace

bool fitsPurpose(const ReportCode& code, std::string_view purpose)
{
    return std::ranges::find(code.purposes, purpose) != code.purposes.end();
}

Result<ReportCodes> ReportCodes::read(std::string_view bytes, const std::string& name)
{
    const auto table = base::readCsv(bytes, name);
    if (!table) return std::unexpected(table.error());
    const auto places = placesOf(*table, name);
    if (!places) return std::unexpected(places.error());

    ReportCodes codes;
    for (const auto& row : table->rows) {
        const auto cell = [&](std::size_t column) { return row.cells[(*places)[column]]; };
        const std::string where = name + ":" + std::to_string(row.line);
        if (!isSound(cell(0), cell(1))) return failure("signals.code-form", where, {{"found", cell(1)}});
        const ReportCode code{cell(0), cell(1), cell(2), cell(3), base::split(cell(4), ';'), cell(5)};
        if (!codes.m_codes.emplace(code.code, code).second)
            return failure("signals.code-twice", where, {{"found", code.code}});
    }
    return codes;
}

Result<ReportCodes> ReportCodes::open(const std::filesystem::path& dataFolder)
{
    const auto path = dataFolder / "signals" / "event-codes.csv";
    auto bytes = base::readFile(path);
    if (!bytes) return passOn(bytes);
    return read(*bytes, path.string());
}

Result<ReportCode> ReportCodes::find(std::string_view code) const
{
    const auto found = m_codes.find(code);
    if (found == m_codes.end()) return failure("signals.code-unknown", "", {{"found", std::string(code)}});
    return found->second;
}

Result<ReportCode> findReportCode(std::string_view text)
{
    static const Result<ReportCodes> codes = ReportCodes::open(base::dataFolder());
    if (!codes) return std::unexpected(codes.error());
    return codes->find(text);
}

} // namespace proofwalk::signals
