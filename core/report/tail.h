// SPDX-License-Identifier: GPL-3.0-or-later
// The last lines of a PDF, read in the one form this program writes.
#pragma once

#include <cstddef>
#include <optional>
#include <string_view>
#include <vector>

namespace proofwalk::report {

/// Where the last table starts: the number in "startxref\nN\n%%EOF\n" at the very end; nullopt if it ends otherwise.
std::optional<std::size_t> tableOffset(std::string_view pdf);

/// An object that an update's table names.
struct TableEntry {
    int number = 0;
    int generation = 0;
    std::size_t offset = 0;
};

/// The table of an update that starts there: "xref", the free entry of object 0, then sections of one object each in
/// rising order, as far as "trailer". nullopt for any other table.
std::optional<std::vector<TableEntry>> updateTable(std::string_view pdf, std::size_t at);

} // namespace proofwalk::report
