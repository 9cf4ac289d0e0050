// SPDX-License-Identifier: GPL-3.0-or-later
// Numbers as text: for people with six digits and a unit, for programs with all of them.
#pragma once

#include "core/command/work/topic.h"

#include <string>
#include <string_view>

namespace proofwalk::command::work {

/// " m" for "length_m", "" without a unit.
std::string unitAfter(std::string_view name);

/// "0.726 V", "1, 2, 3 m", a word as it is.
std::string valueText(std::string_view name, const Value& value);

/// A JSON string, number or array. The numbers must be finite; they have the fewest digits that read back the same.
std::string jsonText(const std::string& text);
std::string jsonValue(const Value& value);

} // namespace proofwalk::command::work
