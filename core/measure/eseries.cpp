// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/measure/eseries.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <span>

namespace proofwalk::measure {
namespace {

using base::Decimal;

// Three digits each. E24 is no rounded formula: eight of its values (2.7 to 4.7, and 8.2) are historical [1].
constexpr std::array e24{100, 110, 120, 130, 150, 160, 180, 200, 220, 240, 270, 300,
                         330, 360, 390, 430, 470, 510, 560, 620, 680, 750, 820, 910};
constexpr std::array e12{100, 120, 150, 180, 220, 270, 330, 390, 470, 560, 680, 820};

/// E96 is 10^(i/96) rounded to three digits, for every i [1].
std::array<int, 96> makeE96()
{
    std::array<int, 96> values{};
    for (std::size_t i = 0; i < values.size(); ++i)
        values[i] = static_cast<int>(std::lround(100 * std::pow(10.0, static_cast<double>(i) / 96)));
    return values;
}

/// The number as m x 10^e with 100 <= m < 1000 where that is exact, else with more digits in m.
Decimal threeDigits(Decimal number)
{
    while (number.mantissa >= 1000 && number.mantissa % 10 == 0) {
        number.mantissa /= 10;
        ++number.exponent;
    }
    while (number.mantissa < 100) {
        number.mantissa *= 10;
        --number.exponent;
    }
    return number;
}

/// |a - b|, both above zero.
Result<Decimal> distance(const Decimal& a, const Decimal& b)
{
    return base::compare(a, b) > 0 ? base::subtract(a, b) : base::subtract(b, a);
}

} // namespace

std::span<const int> digitsOf(Series series)
{
    static const std::array<int, 96> e96 = makeE96();
    switch (series) {
    case Series::E12: return e12;
    case Series::E24: return e24;
    case Series::E96: break;
    }
    return e96;
}

bool isPreferredValue(const Decimal& ohm, Series series)
{
    if (ohm.mantissa <= 0) return false;
    const auto values = digitsOf(series);
    return std::ranges::find(values, threeDigits(ohm).mantissa) != values.end();
}

Result<Decimal> nearestPreferredValue(const Decimal& ohm, Series series)
{
    if (ohm.mantissa <= 0) return failure("measure.resistance-not-positive", "", {{"found", base::toText(ohm)}});
    const Decimal head = threeDigits(ohm);
    int decade = head.exponent;
    for (std::int64_t m = head.mantissa; m >= 1000; m /= 10) ++decade;
    const auto values = digitsOf(series);
    Result<Decimal> best = failure("base.decimal-range", "");
    Result<Decimal> bestDistance = best;
    const auto offer = [&](Decimal candidate) {
        // A value such as 4.70 x 10^-8 may need its zeros dropped to be within a Decimal's exponents.
        while (candidate.mantissa % 10 == 0 && candidate.exponent < 0) {
            candidate.mantissa /= 10;
            ++candidate.exponent;
        }
        if (candidate.exponent > 9 || candidate.exponent < -9) return;
        const auto away = distance(candidate, ohm);
        if (!away || (bestDistance && base::compare(*away, *bestDistance) >= 0)) return;
        best = candidate;
        bestDistance = away;
    };
    for (const int value : values) offer({value, decade});
    offer({values.front(), decade + 1}); // 9.9 is nearer to 10 than to 9.1
    return best;
}

} // namespace proofwalk::measure
