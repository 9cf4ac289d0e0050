// SPDX-License-Identifier: GPL-3.0-or-later
// Hostile numbers, and how a test asks which input was refused.
#pragma once

#include "core/base/result.h"

#include <QtTest>

#include <cmath>
#include <limits>
#include <string>
#include <vector>

namespace proofwalk::tests {

/// The code of the error and, where it names one, the input: "measure.out-of-range length_m". Empty if all is well.
template <class T>
std::string refused(const Result<T>& result)
{
    if (result) return {};
    std::string text = result.error().code;
    for (const Argument& each : result.error().arguments)
        if (each.name == "input") text += " " + std::get<std::string>(each.value);
    return text;
}

/// The input that was refused, which is the error's first argument; empty if all is well.
template <class T>
std::string inputOf(const Result<T>& result)
{
    return result ? "" : std::get<std::string>(result.error().arguments.at(0).value);
}

/// What no formula takes; `zero` and `negative` add what this one does not.
struct Hostile {
    bool zero = false;
    bool negative = false;
    bool huge = false; ///< 1e308, where the function has an upper bound
};
inline std::vector<double> hostile(const Hostile& kinds)
{
    constexpr double infinity = std::numeric_limits<double>::infinity();
    std::vector<double> all{std::numeric_limits<double>::quiet_NaN(), infinity, -infinity};
    if (kinds.zero) all.push_back(0);
    if (kinds.negative) all.insert(all.end(), {-1, -1e308});
    if (kinds.huge) all.push_back(1e308);
    return all;
}

} // namespace proofwalk::tests
