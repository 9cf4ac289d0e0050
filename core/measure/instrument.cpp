// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/measure/instrument.h"

#include "core/measure/inputs.h"

#include <cmath>
#include <cstdint>
#include <numbers>
#include <string>

namespace proofwalk::measure {
namespace {

using base::Decimal;

/// The smallest m x 10^e with two digits in m that is not below `value` (above zero).
Result<Decimal> roundedUp(double value)
{
    int exponent = static_cast<int>(std::floor(std::log10(value))) - 1;
    double mantissa = std::ceil(value / std::pow(10.0, exponent));
    if (mantissa > 99) { // 99.2 rounds up to three digits
        ++exponent;
        mantissa = std::ceil(value / std::pow(10.0, exponent));
    }
    if (exponent < -9 || exponent > 9) return failure("base.decimal-range", "");
    return Decimal{static_cast<std::int64_t>(mantissa), exponent};
}

Result<void> check(const base::Quantity& reading, const Accuracy& accuracy)
{
    const auto negative = [](const char* input, std::string found) {
        return failure("measure.accuracy-negative", "", {{"input", std::string(input)}, {"found", std::move(found)}});
    };
    if (accuracy.percentOfReading.mantissa < 0) return negative("percent", base::toText(accuracy.percentOfReading));
    if (accuracy.digits < 0) return negative("digits", std::to_string(accuracy.digits));
    if (!accuracy.fixed) return {};
    if (accuracy.fixed->value.mantissa < 0) return negative("fixed", base::toText(accuracy.fixed->value));
    if (accuracy.fixed->unit->quantity != reading.unit->quantity)
        return failure(
            "measure.unit-mismatch", "",
            {{"found", std::string(accuracy.fixed->unit->code)}, {"wanted", std::string(reading.unit->code)}});
    return {};
}

} // namespace

Result<Decimal> expandedUncertainty(const base::Quantity& reading, const Accuracy& accuracy)
{
    if (auto sound = check(reading, accuracy); !sound) return passOn(sound);
    const double lastPlace = std::pow(10.0, reading.value.exponent);
    double halfWidth = std::fabs(base::toDouble(reading.value)) * base::toDouble(accuracy.percentOfReading) / 100
                     + accuracy.digits * lastPlace;
    if (accuracy.fixed)
        halfWidth += base::toDouble(accuracy.fixed->value) * base::toDouble(accuracy.fixed->unit->scale)
                   / base::toDouble(reading.unit->scale);
    // (2 a)^2 / 3 + d^2 / 3 is never the square of a two-digit figure (x^2 + y^2 = 3 z^2 has no whole solution), so
    // that no last bit of a float decides whether the figure is exact.
    return roundedUp(std::sqrt((4 * halfWidth * halfWidth + lastPlace * lastPlace) / 3));
}

Result<ReadingUncertainty> readingUncertainty(const ReadingAccuracy& accuracy)
{
    if (auto sound = checkFinite("reading", accuracy.reading); !sound) return passOn(sound);
    if (auto sound = checkNotNegative("accuracy_pct", accuracy.percentOfReading); !sound) return passOn(sound);
    if (auto sound = checkNotNegative("digits", accuracy.digits); !sound) return passOn(sound);
    if (auto sound = checkNotNegative("last_place", accuracy.lastPlace); !sound) return passOn(sound);
    if (auto sound = checkNotNegative("fixed", accuracy.fixed); !sound) return passOn(sound);
    ReadingUncertainty u;
    u.halfWidth = std::fabs(accuracy.reading) * accuracy.percentOfReading / 100 + accuracy.digits * accuracy.lastPlace
                + accuracy.fixed;
    u.specification = u.halfWidth / std::numbers::sqrt3;
    u.resolution = accuracy.lastPlace / std::sqrt(12.0);
    u.standard = std::hypot(u.specification, u.resolution);
    u.expanded = 2 * u.standard;
    return u;
}

} // namespace proofwalk::measure
