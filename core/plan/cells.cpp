// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/plan/cells.h"

#include "core/base/text.h"

#include <fmt/format.h>

#include <algorithm>
#include <charconv>
#include <chrono>

namespace proofwalk::plan {
namespace {

constexpr std::size_t nameLimit = 64, lineLimit = 200, textLimit = 4000; // our choice: what a label or a page can hold

using Checked = Result<std::string>;

Checked refuseForm(const Column& column, std::string_view cell)
{
    return failure("plan.cell-form", "", {{"found", std::string(cell)}, {"wanted", domainOf(column)}});
}

bool isOneLine(std::string_view cell)
{
    return std::ranges::all_of(cell, [](char c) { return static_cast<unsigned char>(c) >= 0x20 && c != 0x7f; });
}

/// Characters, not bytes: continuation bytes of UTF-8 are not counted.
std::size_t lengthOf(std::string_view cell)
{
    return static_cast<std::size_t>(
        std::ranges::count_if(cell, [](char c) { return (static_cast<unsigned char>(c) & 0xC0U) != 0x80U; }));
}

bool isName(std::string_view cell)
{
    return !cell.empty() && isOneLine(cell) && lengthOf(cell) <= nameLimit && cell.find(';') == std::string_view::npos;
}

bool isTag(std::string_view cell) { return isName(cell) && cell.find(':') == std::string_view::npos; }

Checked word(const Column& column, std::string_view cell)
{
    const auto known = base::split(column.list, ';');
    if (std::ranges::find(known, cell) != known.end()) return std::string(cell);
    return failure("plan.cell-word", "",
                   {{"found", std::string(cell)},
                    {"wanted", base::join(known, ", ")},
                    {"nearest", base::nearestWord(cell, known)}});
}

Checked truth(std::string_view cell)
{
    if (cell == "yes" || cell == "no") return std::string(cell);
    const std::vector<std::string> known{"yes", "no"};
    return failure("plan.cell-word", "",
                   {{"found", std::string(cell)}, {"wanted", "yes, no"}, {"nearest", base::nearestWord(cell, known)}});
}

/// Each piece of a list; the same piece twice is one too many.
template <class Piece>
Checked list(const Column& column, std::string_view cell, Piece piece)
{
    std::vector<std::string> pieces;
    for (const std::string& each : base::split(cell, ';')) {
        const std::string_view bare = base::trimmed(each);
        if (bare.empty()) return refuseForm(column, cell);
        auto checked = piece(bare);
        if (!checked) return checked;
        if (std::ranges::find(pieces, *checked) != pieces.end()) return refuseForm(column, cell);
        pieces.push_back(std::move(*checked));
    }
    return base::join(pieces, ";");
}

Checked inRange(const Column& column, std::string_view cell, const base::Decimal& number)
{
    const auto lower = base::parseDecimal(column.lower);
    const auto upper = base::parseDecimal(column.upper);
    if (base::compare(number, *lower) < 0 || base::compare(number, *upper) > 0)
        return failure("plan.cell-range", "",
                       {{"found", std::string(cell)}, {"wanted", fmt::format("{} to {}", column.lower, column.upper)}});
    return base::toText(number);
}

Checked number(const Column& column, std::string_view cell)
{
    const auto parsed = base::parseDecimal(cell);
    const bool whole = column.form == Form::whole;
    if (!parsed || (whole && cell.find('.') != std::string_view::npos)) {
        const bool tooLong = !parsed && parsed.error().code == "base.decimal-range";
        if (tooLong)
            return failure(
                "plan.cell-range", "",
                {{"found", std::string(cell)}, {"wanted", fmt::format("{} to {}", column.lower, column.upper)}});
        return failure("plan.cell-not-a-number", "",
                       {{"found", std::string(cell)}, {"example", std::string(column.example)}});
    }
    return inRange(column, cell, *parsed);
}

/// 2026, 2026-11 or 2026-11-25, of the Gregorian calendar.
bool isDate(std::string_view cell)
{
    const auto pieces = base::split(cell, '-');
    if (pieces.empty() || pieces.size() > 3 || pieces[0].size() != 4) return false;
    std::array<unsigned, 3> part{1, 1, 1};
    for (std::size_t i = 0; i < pieces.size(); ++i) {
        if (i > 0 && pieces[i].size() != 2) return false;
        const auto* end = pieces[i].data() + pieces[i].size();
        if (const auto read = std::from_chars(pieces[i].data(), end, part[i]);
            read.ec != std::errc() || read.ptr != end)
            return false;
    }
    const std::chrono::year_month_day day{std::chrono::year(static_cast<int>(part[0])), std::chrono::month(part[1]),
                                          std::chrono::day(part[2])};
    return part[0] >= 1900 && day.ok();
}

/// Form only: whether such a code exists is a question for core/signals.
bool isCode(std::string_view cell)
{
    const auto all = [&](char first, char last) {
        return std::ranges::all_of(cell, [&](char c) { return c >= first && c <= last; });
    };
    return (cell.size() == 3 && all('0', '9')) || (cell.size() == 2 && all('A', 'Z'));
}

/// "zone:07": one of the prefixes and a name after it, or a bare tag.
bool isTagOr(std::string_view cell, std::initializer_list<std::string_view> prefixes)
{
    const auto colon = cell.find(':');
    if (colon == std::string_view::npos) return isTag(cell);
    return std::ranges::find(prefixes, cell.substr(0, colon)) != prefixes.end() && isTag(cell.substr(colon + 1));
}

Checked formed(const Column& column, std::string_view cell, bool sound)
{
    if (!sound) return refuseForm(column, cell);
    return std::string(cell);
}

} // namespace

Result<std::string> checkedCell(const Column& column, std::string_view cell)
{
    cell = base::trimmed(cell);
    switch (column.form) {
    case Form::name: return formed(column, cell, isName(cell));
    case Form::tag: return formed(column, cell, isTag(cell));
    case Form::names:
        return list(column, cell, [&](std::string_view piece) { return formed(column, piece, isTag(piece)); });
    case Form::line: return formed(column, cell, isOneLine(cell) && lengthOf(cell) <= lineLimit);
    case Form::text: return formed(column, cell, lengthOf(cell) <= textLimit);
    case Form::word: return word(column, cell);
    case Form::words: return list(column, cell, [&](std::string_view piece) { return word(column, piece); });
    case Form::truth: return truth(cell);
    case Form::number:
    case Form::whole: return number(column, cell);
    case Form::date: return formed(column, cell, isDate(cell));
    case Form::code:
        if (!isCode(cell)) return failure("plan.cell-code", "", {{"found", std::string(cell)}});
        return std::string(cell);
    case Form::cause: return formed(column, cell, isTagOr(cell, {"zone", "purpose", "mode"}));
    case Form::effect: return formed(column, cell, isTagOr(cell, {"path"}));
    }
    return refuseForm(column, cell);
}

} // namespace proofwalk::plan
