// SPDX-License-Identifier: GPL-3.0-or-later
// The units that the names of `proofwalk work` end in: "length_m", "levels_dba". A name, not a UCUM code, since a shell
// must take it as it stands; what is stored keeps its UCUM code (core/base/unit.h).
#pragma once

#include <optional>
#include <string>
#include <string_view>

namespace proofwalk::command::work {

/// One ending. Two endings of one quantity convert: value x scale + offset is in the quantity's first unit.
struct Suffix {
    std::string_view ending; ///< "ft"
    std::string_view written; ///< as people write it: "ft", "Ω", "dB(A)"
    std::string_view quantity; ///< what converts into what: "length"
    double scale = 1;
    double offset = 0;
};

/// The ending of a name, the longest known one after an underscore; nullptr if it carries none.
const Suffix* suffixOf(std::string_view name);

/// "length_m" is "length"; a name without a unit is itself.
std::string_view stemOf(std::string_view name);

/// A value under one ending, brought to another; nothing if they are of different quantities.
std::optional<double> converted(double value, const Suffix& from, const Suffix& to);

/// "m" for "length_m"; empty without a unit.
std::string_view writtenUnit(std::string_view name);

} // namespace proofwalk::command::work
