// SPDX-License-Identifier: GPL-3.0-or-later
// One cell: from the words somebody typed to a value of the column's domain, and back.
#pragma once

#include "core/base/text.h"
#include "core/plan/columns.h"

namespace proofwalk::plan {

/// The cell in its plain form, if it lies in the column's domain: white space around it and around the pieces of a list
/// is passed over, a number keeps its digits. The cell must not be blank.
/// Errors (where is left empty for the caller): plan.cell-word {found, wanted, nearest}; plan.cell-not-a-number {found,
/// example}; plan.cell-range {found, wanted}; plan.cell-code {found}; plan.cell-form {found, wanted}.
Result<std::string> checkedCell(const Column& column, std::string_view cell);

/// Puts a cell into its row: blank leaves the member as it is; a blank truth is "no". Errors: those of checkedCell;
/// plan.cell-empty where a cell is required.
template <class R>
Result<void> putCell(const Field<R>& field, R& row, std::string_view cell);

/// The cell as text, as checkedCell returned it; empty if there is none. A truth is "yes" or "no".
template <class R>
std::string cellText(const Field<R>& field, const R& row);

namespace detail {

inline void put(std::string& member, const std::string& text) { member = text; }
inline void put(std::vector<std::string>& member, const std::string& text) { member = base::split(text, ';'); }
inline void put(std::optional<int>& member, const std::string& text) { member = std::stoi(text); }
inline void put(std::optional<base::Decimal>& member, const std::string& text)
{
    member = base::parseDecimal(text).value();
}
inline void put(bool& member, const std::string& text) { member = text == "yes"; }

inline std::string textOf(const std::string& member) { return member; }
inline std::string textOf(const std::vector<std::string>& member) { return base::join(member, ";"); }
inline std::string textOf(const std::optional<int>& member) { return member ? std::to_string(*member) : std::string(); }
inline std::string textOf(const std::optional<base::Decimal>& member)
{
    return member ? base::toText(*member) : std::string();
}
inline std::string textOf(bool member) { return member ? "yes" : "no"; }

} // namespace detail

template <class R>
Result<void> putCell(const Field<R>& field, R& row, std::string_view cell)
{
    if (base::trimmed(cell).empty()) {
        if (field.column.required) return failure("plan.cell-empty", "");
        return {};
    }
    auto text = checkedCell(field.column, cell);
    if (!text) return passOn(text);
    std::visit([&](auto member) { detail::put(row.*member, *text); }, field.member);
    return {};
}

template <class R>
std::string cellText(const Field<R>& field, const R& row)
{
    return std::visit([&](auto member) { return detail::textOf(row.*member); }, field.member);
}

} // namespace proofwalk::plan
