// SPDX-License-Identifier: GPL-3.0-or-later
// What English needs code for: dates and counts.
#include "core/base/text.h"
#include "core/words/words.h"

#include <array>
#include <string>

namespace proofwalk::words {
namespace {

constexpr std::array months{"January", "February", "March",     "April",   "May",      "June",
                            "July",    "August",   "September", "October", "November", "December"};
constexpr std::array small{"zero",     "one",     "two",     "three",     "four",     "five",    "six",
                           "seven",    "eight",   "nine",    "ten",       "eleven",   "twelve",  "thirteen",
                           "fourteen", "fifteen", "sixteen", "seventeen", "eighteen", "nineteen"};
constexpr std::array tens{"twenty", "thirty", "forty", "fifty", "sixty", "seventy", "eighty", "ninety"};

} // namespace

std::string longDate(const base::WallClock& time)
{
    const std::vector<std::string> parts = base::split(base::localDate(time), '-');
    const std::size_t month = std::stoul(parts[1]);
    return std::to_string(std::stoi(parts[2])) + " " + months[month - 1] + " " + parts[0];
}

std::string countInWords(std::int64_t count)
{
    if (count < 0 || count > 99) return std::to_string(count);
    const auto number = static_cast<std::size_t>(count);
    if (number < small.size()) return small[number];
    const std::string ten = tens[number / 10 - 2];
    return number % 10 == 0 ? ten : ten + "-" + small[number % 10];
}

} // namespace proofwalk::words
