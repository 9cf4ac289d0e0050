// SPDX-License-Identifier: GPL-3.0-or-later
// A failure is a value that must be looked at. Core speaks in codes and typed arguments; core/words makes
// "WHERE: WHAT. REMEDY." of an Error in the reader's language.
#pragma once

#include <cstdint>
#include <expected>
#include <initializer_list>
#include <string>
#include <utility>
#include <variant>
#include <vector>

namespace proofwalk {

/// One typed argument of an Error or of a message: named, so that a sentence in any language can place it.
struct Argument {
    std::string name; ///< ASCII, as it stands in braces in the sentence: "found", "wanted"
    std::variant<std::string, std::int64_t> value;

    friend bool operator==(const Argument&, const Argument&) = default;
};

/// What went wrong, told to the person who must put it right.
struct [[nodiscard]] Error {
    std::string code;                ///< stable, for programs and for core/words: "plan.cell-not-a-number"
    std::string where;               ///< "zones.csv:14, column cable_m"; a device's tag; an option as typed
    std::vector<Argument> arguments; ///< what was found, what was wanted

    /// The same error seen from further out: the place grows as it rises ("job.walk, event 3 of chain 9f3a").
    [[nodiscard]] Error within(const std::string& outer) &&
    {
        where = where.empty() ? outer : outer + ", " + where;
        return std::move(*this);
    }

    friend bool operator==(const Error&, const Error&) = default;
};

template <class T>
using Result = std::expected<T, Error>;

/// Shorthand for the failing side of a Result.
inline std::unexpected<Error> failure(std::string code, std::string where, std::vector<Argument> arguments = {})
{
    return std::unexpected(Error{std::move(code), std::move(where), std::move(arguments)});
}

/// Hands an error of one Result on as the error of another.
template <class T>
std::unexpected<Error> passOn(Result<T>& failed)
{
    return std::unexpected(std::move(failed.error()));
}

} // namespace proofwalk
