// SPDX-License-Identifier: GPL-3.0-or-later
// The closed list of units a reading may have, with their UCUM codes (The Unified Code for Units of Measure).
#pragma once

#include "core/base/decimal.h"

#include <span>
#include <string_view>

namespace proofwalk::base {

/// One unit. Units with the same `quantity` convert into each other exactly: value x scale is in the base unit.
struct Unit {
    std::string_view code;     ///< UCUM, case sensitive: "kOhm", "Cel", "dB[SPL]"
    std::string_view written;  ///< as people write it: "kΩ", "°C", "dB(A)"
    std::string_view quantity; ///< what can be compared with what: "resistance"
    Decimal scale;             ///< to the base unit of the quantity
};

/// All units, in the order in which help texts list them.
std::span<const Unit> units();

/// The unit with that UCUM code, or nullptr.
const Unit* findUnit(std::string_view code);

/// A value with its unit.
struct Quantity {
    Decimal value;
    const Unit* unit = nullptr; ///< of units(), never nullptr in a checked value

    friend bool operator==(const Quantity&, const Quantity&) = default;
};

/// Reads "3.40 kOhm": a decimal, one space, a UCUM code of the list.
/// Errors: base.quantity-form {found}; base.unit-unknown {found, nearest}; those of parseDecimal.
Result<Quantity> parseQuantity(std::string_view text);

/// The value brought to the base unit of its quantity, exactly. Error: base.decimal-range.
Result<Decimal> inBaseUnit(const Quantity& quantity);

/// "3.40 kΩ", for people.
std::string toText(const Quantity& quantity);

} // namespace proofwalk::base
