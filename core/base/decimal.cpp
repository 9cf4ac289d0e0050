// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/base/decimal.h"

#include <algorithm>
#include <cmath>
#include <cstdlib>

namespace proofwalk::base {
namespace {

__extension__ typedef __int128 Wide; // NOLINT(modernize-use-using): __extension__ has no place in a using

constexpr std::int64_t mantissaLimit = 1'000'000'000'000'000;
constexpr int exponentLimit = 9;

Wide scaled(const Decimal& number, int exponent)
{
    Wide value = number.mantissa;
    for (int i = number.exponent; i > exponent; --i) value *= 10;
    return value;
}

bool fits(Wide mantissa) { return mantissa < mantissaLimit && mantissa > -mantissaLimit; }

/// Brings a wide mantissa and exponent back into range by dropping or adding zeros only: nothing is rounded.
Result<Decimal> narrowed(Wide mantissa, int exponent)
{
    if (mantissa == 0) return Decimal{0, std::clamp(exponent, -exponentLimit, exponentLimit)};
    while ((!fits(mantissa) || exponent < -exponentLimit) && exponent < exponentLimit && mantissa % 10 == 0) {
        mantissa /= 10;
        ++exponent;
    }
    for (; exponent > exponentLimit && fits(mantissa); --exponent) mantissa *= 10;
    if (!fits(mantissa) || std::abs(exponent) > exponentLimit) return failure("base.decimal-range", "");
    return Decimal{static_cast<std::int64_t>(mantissa), exponent};
}

} // namespace

Result<Decimal> parseDecimal(std::string_view text)
{
    const auto bad = [&](const char* code) { return failure(code, "", {{"found", std::string(text)}}); };
    std::string_view rest = text;
    const bool negative = !rest.empty() && rest.front() == '-';
    if (negative) rest.remove_prefix(1);

    Decimal number;
    bool point = false;
    std::size_t digitsSincePoint = 0;
    if (rest.empty()) return bad("base.decimal-form");
    for (std::size_t i = 0; i < rest.size(); ++i) {
        const char c = rest[i];
        if (c == '.') {
            if (point || i == 0) return bad("base.decimal-form");
            point = true;
        } else if (c >= '0' && c <= '9') {
            if (number.mantissa >= mantissaLimit / 10) return bad("base.decimal-range");
            number.mantissa = number.mantissa * 10 + (c - '0');
            if (point) ++digitsSincePoint;
        } else {
            return bad("base.decimal-form");
        }
    }
    if (point && digitsSincePoint == 0) return bad("base.decimal-form");
    if (digitsSincePoint > exponentLimit) return bad("base.decimal-range");
    if (negative) number.mantissa = -number.mantissa;
    number.exponent = -static_cast<int>(digitsSincePoint);
    return number;
}

std::string toText(const Decimal& number)
{
    std::string digits = std::to_string(std::abs(number.mantissa));
    if (number.exponent > 0) {
        if (number.mantissa != 0) digits.append(static_cast<std::size_t>(number.exponent), '0');
    } else if (number.exponent < 0) {
        const auto places = static_cast<std::size_t>(-number.exponent);
        if (digits.size() <= places) digits.insert(0, places + 1 - digits.size(), '0');
        digits.insert(digits.size() - places, 1, '.');
    }
    return number.mantissa < 0 ? "-" + digits : digits;
}

std::strong_ordering compare(const Decimal& left, const Decimal& right)
{
    const int exponent = std::min(left.exponent, right.exponent);
    const Wide a = scaled(left, exponent);
    const Wide b = scaled(right, exponent);
    return a < b ? std::strong_ordering::less : a > b ? std::strong_ordering::greater : std::strong_ordering::equal;
}

Result<Decimal> add(const Decimal& left, const Decimal& right)
{
    const int exponent = std::min(left.exponent, right.exponent);
    return narrowed(scaled(left, exponent) + scaled(right, exponent), exponent);
}

Result<Decimal> subtract(const Decimal& left, const Decimal& right)
{
    return add(left, {-right.mantissa, right.exponent});
}

Result<Decimal> multiply(const Decimal& left, const Decimal& right)
{
    return narrowed(Wide{left.mantissa} * right.mantissa, left.exponent + right.exponent);
}

double toDouble(const Decimal& number)
{
    // Both are exact in a double, so that the one operation rounds once: 340 and -2 give the double nearest to 3.4.
    const double power = std::pow(10.0, std::abs(number.exponent));
    const auto mantissa = static_cast<double>(number.mantissa);
    return number.exponent < 0 ? mantissa / power : mantissa * power;
}

Result<Decimal> fromDouble(double value, int exponent)
{
    const double mantissa = std::floor(value * std::pow(10.0, -exponent) + 0.5);
    if (!std::isfinite(mantissa) || std::fabs(mantissa) >= static_cast<double>(mantissaLimit)
        || std::abs(exponent) > exponentLimit)
        return failure("base.decimal-range", "");
    return Decimal{static_cast<std::int64_t>(mantissa), exponent};
}

} // namespace proofwalk::base
