// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/measure/colourcode.h"

#include "core/base/text.h"

#include <algorithm>
#include <array>
#include <optional>

namespace proofwalk::measure {
namespace {

using base::Decimal;

/// One colour and what it means in each place; nothing where it may not stand [1].
struct Colour {
    std::string_view name;
    std::optional<int> digit;
    std::optional<int> power;
    std::optional<Decimal> tolerance_pct;
};

const std::array<Colour, 13> colours{{
    {"black", 0, 0, std::nullopt},
    {"brown", 1, 1, Decimal{1, 0}},
    {"red", 2, 2, Decimal{2, 0}},
    {"orange", 3, 3, Decimal{5, -2}},
    {"yellow", 4, 4, Decimal{2, -2}},
    {"green", 5, 5, Decimal{5, -1}},
    {"blue", 6, 6, Decimal{25, -2}},
    {"violet", 7, 7, Decimal{1, -1}},
    {"grey", 8, 8, Decimal{1, -2}},
    {"white", 9, 9, std::nullopt},
    {"gold", std::nullopt, -1, Decimal{5, 0}},
    {"silver", std::nullopt, -2, Decimal{10, 0}},
    {"pink", std::nullopt, -3, std::nullopt},
}};

constexpr Decimal withoutRing_pct{20, 0};

/// The names of the colours that may stand in that place.
template <class T>
std::string allowed(std::optional<T> Colour::* place)
{
    std::vector<std::string> names;
    for (const Colour& each : colours)
        if (each.*place) names.emplace_back(each.name);
    return base::join(names, ", ");
}

template <class T>
Result<T> meaning(const std::string& ring, std::optional<T> Colour::* place)
{
    const std::string_view name = ring == "gray" ? std::string_view("grey") : std::string_view(ring);
    const auto found = std::ranges::find(colours, name, &Colour::name);
    if (found != colours.end() && (*found).*place) return *((*found).*place);
    return failure("measure.ring", "", {{"found", ring}, {"wanted", allowed(place)}});
}

template <class T, class Same>
std::optional<std::string> colourOf(std::optional<T> Colour::* place, Same same)
{
    for (const Colour& each : colours)
        if (each.*place && same(*(each.*place))) return std::string(each.name);
    return std::nullopt;
}

} // namespace

Result<Coded> readRings(std::span<const std::string> rings)
{
    if (rings.size() < 3 || rings.size() > 5)
        return failure("measure.rings", "", {{"found", static_cast<std::int64_t>(rings.size())}});
    const std::size_t digits = rings.size() == 5 ? 3 : 2;
    std::int64_t mantissa = 0;
    for (std::size_t i = 0; i < digits; ++i) {
        auto digit = meaning(rings[i], &Colour::digit);
        if (!digit) return passOn(digit);
        mantissa = 10 * mantissa + *digit;
    }
    auto power = meaning(rings[digits], &Colour::power);
    if (!power) return passOn(power);
    if (rings.size() == 3) return Coded{{mantissa, *power}, withoutRing_pct};
    auto tolerance = meaning(rings.back(), &Colour::tolerance_pct);
    if (!tolerance) return passOn(tolerance);
    return Coded{{mantissa, *power}, *tolerance};
}

Result<std::vector<std::string>> ringsOf(const Decimal& ohm, const Decimal& tolerance_pct)
{
    if (ohm.mantissa <= 0) return failure("measure.resistance-not-positive", "", {{"found", base::toText(ohm)}});
    Decimal digits = ohm;
    while (digits.mantissa >= 100 && digits.mantissa % 10 == 0) {
        digits.mantissa /= 10;
        ++digits.exponent;
    }
    while (digits.mantissa < 10) {
        digits.mantissa *= 10;
        --digits.exponent;
    }
    const auto none = [&] { return failure("measure.rings-none", "", {{"found", base::toText(ohm)}}); };
    if (digits.mantissa > 999) return none();
    std::vector<std::string> rings;
    for (const char digit : std::to_string(digits.mantissa))
        rings.push_back(*colourOf(&Colour::digit, [&](int value) { return value == digit - '0'; }));
    const auto power = colourOf(&Colour::power, [&](int value) { return value == digits.exponent; });
    if (!power) return none();
    rings.push_back(*power);
    const auto same = [&](const Decimal& value) { return base::compare(value, tolerance_pct) == 0; };
    if (base::compare(tolerance_pct, withoutRing_pct) == 0 && rings.size() == 3) return rings;
    const auto last = colourOf(&Colour::tolerance_pct, same);
    if (!last)
        return failure("measure.ring-tolerance", "",
                       {{"found", base::toText(tolerance_pct)}, {"wanted", allowed(&Colour::tolerance_pct)}});
    rings.push_back(*last);
    return rings;
}

Result<std::vector<Decimal>> misreadingsOf(const Decimal& ohm, const Decimal& tolerance_pct)
{
    auto four = ringsOf(ohm, tolerance_pct);
    if (!four) return passOn(four);
    std::vector<std::vector<std::string>> ways{*four};
    if (four->size() == 4) {
        // The same value with three digits: 47 x 10^2 is 470 x 10^1.
        const auto power = meaning((*four)[2], &Colour::power);
        const auto lower = colourOf(&Colour::power, [&](int value) { return power && value == *power - 1; });
        if (lower) ways.push_back({(*four)[0], (*four)[1], "black", *lower, (*four)[3]});
    }
    std::vector<Decimal> values;
    const auto add = [&](const std::vector<std::string>& rings) {
        const auto coded = readRings(rings);
        if (!coded || coded->ohm.mantissa == 0 || base::compare(coded->ohm, ohm) == 0) return;
        values.push_back(coded->ohm);
    };
    for (const auto& rings : ways) {
        add({rings.rbegin(), rings.rend()});
        for (std::size_t i = 0; i + 1 < rings.size(); ++i)
            for (const char* other : {"brown", "red", "orange"}) {
                if (rings[i] != "brown" && rings[i] != "red" && rings[i] != "orange") continue;
                auto misread = rings;
                misread[i] = other;
                add(misread);
            }
    }
    const auto same = [](const Decimal& a, const Decimal& b) { return base::compare(a, b) == 0; };
    std::ranges::sort(values, [](const Decimal& a, const Decimal& b) { return base::compare(a, b) < 0; });
    values.erase(std::ranges::unique(values, same).begin(), values.end());
    return values;
}

} // namespace proofwalk::measure
