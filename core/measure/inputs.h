// SPDX-License-Identifier: GPL-3.0-or-later
// How the functions of this room refuse an input: by its name, with what was found and what was wanted.
#pragma once

#include "core/base/result.h"

#include <fmt/format.h>

#include <cmath>
#include <optional>
#include <string>

namespace proofwalk::measure {

/// A number for an error's argument: the shortest digits that read back the same.
inline std::string written(double number) { return fmt::format("{}", number); }

/// measure.out-of-range {input, found, wanted}, for numbers outside the range of a formula.
inline std::unexpected<Error> outOfRange(const char* input, double found, std::string wanted)
{
    return failure("measure.out-of-range", "",
                   {{"input", std::string(input)}, {"found", written(found)}, {"wanted", std::move(wanted)}});
}

inline Result<void> checkFinite(const char* input, double found)
{
    if (std::isfinite(found)) return {};
    return outOfRange(input, found, "a finite number");
}

inline Result<void> checkAbove(const char* input, double found, double limit)
{
    if (std::isfinite(found) && found > limit) return {};
    return outOfRange(input, found, fmt::format("above {}", limit));
}

inline Result<void> checkWithin(const char* input, double found, double least, double most)
{
    if (found >= least && found <= most) return {};
    return outOfRange(input, found, fmt::format("{} to {}", least, most));
}

inline Result<void> checkNotNegative(const char* input, double found)
{
    if (std::isfinite(found) && found >= 0) return {};
    return outOfRange(input, found, "zero or more");
}

/// At least one side, each finite, not crossed: measure.tolerance-missing, measure.tolerance-empty {lower, upper}.
inline Result<void> checkLimits(std::optional<double> lower, std::optional<double> upper)
{
    if (!lower && !upper) return failure("measure.tolerance-missing", "");
    if (lower) {
        if (auto sound = checkFinite("lower", *lower); !sound) return sound;
    }
    if (upper) {
        if (auto sound = checkFinite("upper", *upper); !sound) return sound;
    }
    if (lower && upper && *lower > *upper)
        return failure("measure.tolerance-empty", "", {{"lower", written(*lower)}, {"upper", written(*upper)}});
    return {};
}

} // namespace proofwalk::measure
