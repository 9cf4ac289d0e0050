// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/measure/conformity.h"

#include "core/measure/inputs.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <numbers>

namespace proofwalk::measure {
namespace {

using base::Decimal;

enum class Side { inside, outside, near };

/// How far `room` (the distance from the limit into the permitted range) stands against U.
Result<Side> sideOf(Result<Decimal> room, const Decimal& expanded)
{
    if (!room) return passOn(room);
    if (base::compare(*room, expanded) >= 0) return Side::inside;
    const Decimal beyond{-room->mantissa, room->exponent};
    return base::compare(beyond, expanded) > 0 ? Side::outside : Side::near;
}

/// The upper tail of the standard normal distribution, right also where it is tiny.
double upperTail(double z) { return 0.5 * std::erfc(z / std::numbers::sqrt2); }

Result<void> checkProbabilityInputs(double value, double u, std::optional<double> lower, std::optional<double> upper)
{
    if (auto sound = checkFinite("value", value); !sound) return sound;
    if (auto sound = checkAbove("standard uncertainty", u, 0); !sound) return sound;
    return checkLimits(lower, upper);
}

} // namespace

Result<Conformity> judge(const Decimal& value, const std::optional<Decimal>& expanded, const Tolerance& tolerance)
{
    const auto& [lower, upper] = tolerance;
    if (!lower && !upper) return failure("measure.tolerance-missing", "");
    if (lower && upper && base::compare(*lower, *upper) > 0)
        return failure("measure.tolerance-empty", "",
                       {{"lower", base::toText(*lower)}, {"upper", base::toText(*upper)}});
    const Decimal guard = expanded.value_or(Decimal{});
    if (guard.mantissa < 0) return failure("measure.uncertainty-negative", "", {{"found", base::toText(guard)}});

    Conformity verdict = Conformity::pass;
    for (const bool below : {true, false}) {
        const auto& limit = below ? lower : upper;
        if (!limit) continue;
        auto side = sideOf(below ? base::subtract(value, *limit) : base::subtract(*limit, value), guard);
        if (!side) return passOn(side);
        if (*side == Side::outside) return Conformity::fail;
        if (*side == Side::near) verdict = Conformity::undecided;
    }
    return verdict;
}

Result<double> conformanceProbability(double value, double standardUncertainty, std::optional<double> lower,
                                      std::optional<double> upper)
{
    if (auto sound = checkProbabilityInputs(value, standardUncertainty, lower, upper); !sound) return passOn(sound);
    constexpr double infinity = std::numeric_limits<double>::infinity();
    const double a = lower ? (*lower - value) / standardUncertainty : -infinity;
    const double b = upper ? (*upper - value) / standardUncertainty : infinity;
    // The difference is taken in the tail where both terms are small, or it would drown in rounding.
    return a > 0 ? upperTail(a) - upperTail(b) : upperTail(-b) - upperTail(-a);
}

Result<double> conformanceProbabilityRectangular(double value, double halfWidth, std::optional<double> lower,
                                                 std::optional<double> upper)
{
    if (auto sound = checkProbabilityInputs(value, halfWidth, lower, upper); !sound) return passOn(sound);
    const double from = std::max(value - halfWidth, lower.value_or(value - halfWidth));
    const double to = std::min(value + halfWidth, upper.value_or(value + halfWidth));
    return std::max(0.0, (to - from) / (2 * halfWidth));
}

} // namespace proofwalk::measure
