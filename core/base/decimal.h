// SPDX-License-Identifier: GPL-3.0-or-later
// A decimal number exactly as it was typed: 3.40 is 340 and -2, and is not 3.4. Readings, uncertainties and
// limits are compared in integers, so that no verdict hangs on the last bit of a float.
#pragma once

#include "core/base/result.h"

#include <compare>
#include <cstdint>
#include <string>
#include <string_view>

namespace proofwalk::base {

/// mantissa x 10^exponent. |mantissa| < 10^15, exponent from -9 to 9, so that sums and products of two fit
/// into 128 bits when brought to one exponent.
struct Decimal {
    std::int64_t mantissa = 0;
    int exponent = 0;

    /// Same digits, same exponent: 3.40 and 3.4 differ here. Use compare() for size.
    friend bool operator==(const Decimal&, const Decimal&) = default;
};

/// Reads "-12.50": an optional minus, digits, at most one full stop with digits on both sides.
/// A minus before zero and zeros in front are not kept: "-0" is 0, "007" is 7.
/// Errors (where is left empty for the caller): base.decimal-form {found}; base.decimal-range {found}.
Result<Decimal> parseDecimal(std::string_view text);

/// The digits as typed: {340,-2} is "3.40"; {34,1} is "340".
std::string toText(const Decimal& number);

/// Which is larger, exactly: 3.40 equals 3.4 here.
std::strong_ordering compare(const Decimal& left, const Decimal& right);

/// Exact sum and difference; the finer exponent is kept. Error: base.decimal-range.
Result<Decimal> add(const Decimal& left, const Decimal& right);
Result<Decimal> subtract(const Decimal& left, const Decimal& right);

/// Exact product. Error: base.decimal-range.
Result<Decimal> multiply(const Decimal& left, const Decimal& right);

/// For drawing and for formulas only; never for a verdict.
double toDouble(const Decimal& number);

/// The nearest decimal with that exponent (halves upwards, floor(x * 10^-exponent + 0.5)), for figures that were
/// computed and not typed. Error: base.decimal-range for what is not finite or does not fit.
Result<Decimal> fromDouble(double value, int exponent);

} // namespace proofwalk::base
