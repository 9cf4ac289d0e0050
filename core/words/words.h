// SPDX-License-Identifier: GPL-3.0-or-later
// Every sentence a person reads, by language. Core speaks in codes and typed arguments; here they become words.
// One language is one folder of TOML files. An error has two parts, a phrase is one text; they may stand in tables
// of those names or plainly, under the code:
//     [errors]
//     "plan.cell-not-a-number" = { what = "\"{found}\" is not a number of {unit}", remedy = "Write {example}" }
//     [phrases]
//     "verdict.too-close" = "too close"
// "what" goes on after "zones.csv:14, column cable_m: " and so begins small; neither part ends in a full stop.
#pragma once

#include "core/base/instant.h"
#include "core/base/result.h"

#include <cstdint>
#include <filesystem>
#include <functional>
#include <map>
#include <string>
#include <string_view>
#include <vector>

namespace proofwalk::words {

/// Every sentence of one language, read from core/words/LANGUAGE/*.toml at start.
class Book {
public:
    /// Reads every .toml file of the folder.
    /// Errors, with `where` = "FILE:LINE" or the folder: words.syntax {detail}; words.twice {found};
    /// words.unknown {found} (a table or key that means nothing here); words.empty (no file); those of base::readFile.
    static Result<Book> open(const std::filesystem::path& languageFolder);

    /// "WHERE: WHAT. REMEDY.", with the error's arguments in their places; without a `where` the first letter is
    /// made large. A code without words gives itself and its arguments in plain form, "WHERE: code (found = 12,5).".
    /// An argument that is wanted and not there stays visible, in its braces.
    std::string sentence(const Error& error) const;

    /// A phrase by its code with {arguments} filled in; the code itself (and arguments) if there is none.
    std::string phrase(std::string_view code, const std::vector<Argument>& arguments = {}) const;

    /// Whether the code has words, as an error or as a phrase.
    bool has(std::string_view code) const;

    /// The codes of all errors and of all phrases, in order: for the tests and for translators.
    std::vector<std::string> codes() const;

private:
    struct ErrorWords {
        std::string what;
        std::string remedy; ///< may be empty
    };
    friend class BookReader;
    std::map<std::string, ErrorWords, std::less<>> m_errors;
    std::map<std::string, std::string, std::less<>> m_phrases;
};

/// "25 November 2026", the date at the place where the clock was read. English.
std::string longDate(const base::WallClock& time);

/// A count for a headline: 0 to 99 in words ("zero", "sixty-four"), everything else in digits. English.
std::string countInWords(std::int64_t count);

} // namespace proofwalk::words
