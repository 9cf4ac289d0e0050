// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/catalogue/convert.h"

namespace proofwalk::catalogue {

std::optional<base::Decimal> converted(const base::Decimal& value, const base::Unit& from, const base::Unit& to)
{
    if (from.quantity != to.quantity) return std::nullopt;
    if (from.scale == to.scale) return value;
    const auto inBase = base::multiply(value, from.scale);
    if (!inBase) return std::nullopt;

    // Division by the other scale: its power of ten is a shift; its digits must divide, for which the dividend may
    // grow by a power of ten as long as it still fits.
    constexpr std::int64_t greatest = 999'999'999'999'999;
    std::int64_t mantissa = inBase->mantissa;
    int exponent = inBase->exponent - to.scale.exponent;
    while (mantissa % to.scale.mantissa != 0) {
        if (mantissa > greatest / 10 || mantissa < -greatest / 10) return std::nullopt;
        mantissa *= 10;
        --exponent;
    }
    mantissa /= to.scale.mantissa;
    if (exponent < -9 || exponent > 9) return std::nullopt;
    return base::Decimal{mantissa, exponent};
}

} // namespace proofwalk::catalogue
