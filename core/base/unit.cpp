// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/base/unit.h"

#include "core/base/text.h"

#include <algorithm>
#include <array>

namespace proofwalk::base {
namespace {

constexpr Decimal one{1, 0};

// UCUM codes from memory, but for the SI units; "dB" alone stands for a ratio (a radio margin), "dBm" is not in
// UCUM and is kept as the trade writes it.
constexpr std::array unitList{
    Unit{"Ohm", "Ω", "resistance", one},
    Unit{"kOhm", "kΩ", "resistance", {1, 3}},
    Unit{"MOhm", "MΩ", "resistance", {1, 6}},
    Unit{"V", "V", "voltage", one},
    Unit{"mV", "mV", "voltage", {1, -3}},
    Unit{"A", "A", "current", one},
    Unit{"mA", "mA", "current", {1, -3}},
    Unit{"A.h", "Ah", "charge", one},
    Unit{"ms", "ms", "time", {1, -3}},
    Unit{"s", "s", "time", one},
    Unit{"min", "min", "time", {60, 0}},
    Unit{"h", "h", "time", {3600, 0}},
    Unit{"mm", "mm", "length", {1, -3}},
    Unit{"cm", "cm", "length", {1, -2}},
    Unit{"m", "m", "length", one},
    Unit{"Cel", "°C", "temperature", one},
    Unit{"dB", "dB", "level-ratio", one},
    Unit{"dBm", "dBm", "radio-level", one},
    Unit{"dB[SPL]", "dB(A)", "sound-level", one},
    Unit{"%", "%", "ratio", one},
    Unit{"[ppm]", "ppm", "concentration", one},
    Unit{"%{LEL}", "% LEL", "flammable-ratio", one},
    Unit{"1", "", "count", one},
    Unit{"lx", "lx", "illuminance", one},
};

} // namespace

std::span<const Unit> units() { return unitList; }

const Unit* findUnit(std::string_view code)
{
    const auto found = std::ranges::find(unitList, code, &Unit::code);
    return found == unitList.end() ? nullptr : &*found;
}

Result<Quantity> parseQuantity(std::string_view text)
{
    const auto space = text.find(' ');
    if (space == std::string_view::npos) return failure("base.quantity-form", "", {{"found", std::string(text)}});
    auto value = parseDecimal(text.substr(0, space));
    if (!value) return passOn(value);
    const std::string_view code = text.substr(space + 1);
    const Unit* unit = findUnit(code);
    if (unit == nullptr) {
        std::vector<std::string> known;
        for (const Unit& each : unitList) known.emplace_back(each.code);
        return failure("base.unit-unknown", "", {{"found", std::string(code)}, {"nearest", nearestWord(code, known)}});
    }
    return Quantity{*value, unit};
}

Result<Decimal> inBaseUnit(const Quantity& quantity) { return multiply(quantity.value, quantity.unit->scale); }

std::string toText(const Quantity& quantity)
{
    std::string text = toText(quantity.value);
    if (!quantity.unit->written.empty()) text.append(" ").append(quantity.unit->written);
    return text;
}

} // namespace proofwalk::base
