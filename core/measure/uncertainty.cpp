// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/measure/uncertainty.h"

#include "core/measure/distribution.h"
#include "core/measure/inputs.h"

#include <cmath>
#include <cstdint>
#include <numbers>

namespace proofwalk::measure {
namespace {

constexpr double largest = 1e100; // its fourth power still is a number

Result<double> divisorOf(Shape shape)
{
    switch (shape) {
    case Shape::rectangular: return std::numbers::sqrt3;
    case Shape::triangular: return std::sqrt(6.0);
    case Shape::arcsine: return std::numbers::sqrt2;
    case Shape::normal95: return normalQuantile(0.975);
    }
    return std::numbers::sqrt3;
}

Result<void> check(const UncertaintyPart& part)
{
    if (auto sound = checkWithin("standard", part.standard, 0, largest); !sound) return sound;
    if (!(part.degreesOfFreedom >= 1)) return outOfRange("degrees of freedom", part.degreesOfFreedom, "1 or more");
    return {};
}

} // namespace

Result<double> standardOfHalfWidth(double halfWidth, Shape shape)
{
    if (auto sound = checkNotNegative("half_width", halfWidth); !sound) return passOn(sound);
    auto divisor = divisorOf(shape);
    if (!divisor) return passOn(divisor);
    return halfWidth / *divisor;
}

Result<CombinedUncertainty> combine(std::span<const UncertaintyPart> parts, double coverageProbability)
{
    if (!(coverageProbability >= 0.5 && coverageProbability < 1))
        return outOfRange("coverage probability", coverageProbability, "0.5 to below 1");
    double squares = 0;
    for (const UncertaintyPart& part : parts) {
        if (auto sound = check(part); !sound) return passOn(sound);
        squares += part.standard * part.standard;
    }
    if (squares <= 0) return failure("measure.nothing-to-combine", "");
    CombinedUncertainty all;
    all.standard = std::sqrt(squares);
    double fourths = 0; // in units of u, so that nothing is lost below
    for (const UncertaintyPart& part : parts)
        fourths += std::pow(part.standard / all.standard, 4) / part.degreesOfFreedom;
    all.degreesOfFreedom = fourths > 0 ? 1 / fourths : std::numeric_limits<double>::infinity();
    // A sum of parts that should make a whole number may miss it by a rounding.
    auto coverage = studentQuantile((1 + coverageProbability) / 2, std::floor(all.degreesOfFreedom * (1 + 1e-12)));
    if (!coverage) return passOn(coverage);
    all.coverage = *coverage;
    all.expanded = all.coverage * all.standard;
    return all;
}

Result<Repeated> repeated(std::span<const double> readings)
{
    const std::size_t n = readings.size();
    if (n < 2 || n > 100000) return failure("measure.too-few-readings", "", {{"found", static_cast<std::int64_t>(n)}});
    double sum = 0;
    for (const double each : readings) {
        if (auto sound = checkWithin("readings", each, -largest, largest); !sound) return passOn(sound);
        sum += each;
    }
    Repeated all;
    all.mean = sum / static_cast<double>(n);
    double squares = 0;
    for (const double each : readings) squares += (each - all.mean) * (each - all.mean);
    all.deviation = std::sqrt(squares / static_cast<double>(n - 1));
    all.ofMean = all.deviation / std::sqrt(static_cast<double>(n));
    return all;
}

} // namespace proofwalk::measure
