// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/command/work/figures.h"

#include "core/base/json.h"
#include "core/base/text.h"

#include <fmt/format.h>

#include <cassert>
#include <cmath>

namespace proofwalk::command::work {
namespace {

template <class T, class Text>
std::string listed(const std::vector<T>& values, std::string_view between, Text&& text)
{
    std::vector<std::string> texts;
    for (const T& each : values) texts.push_back(text(each));
    return base::join(texts, between);
}

std::string jsonNumber(double number)
{
    assert(std::isfinite(number));
    return fmt::format("{}", number);
}

} // namespace

std::string shown(double number)
{
    const double size = std::fabs(number);
    if (size >= 1e6 && size < 1e12) return fmt::format("{:.0f}", number);
    return fmt::format("{:.6g}", number);
}

std::string shown(std::string_view name, double number) { return shown(number) + unitAfter(name); }

std::string unitAfter(std::string_view name)
{
    const std::string_view unit = writtenUnit(name);
    return unit.empty() ? std::string() : " " + std::string(unit);
}

std::string valueText(std::string_view name, const Value& value)
{
    if (const auto* number = std::get_if<double>(&value)) return shown(name, *number);
    if (const auto* text = std::get_if<std::string>(&value)) return *text;
    if (const auto* texts = std::get_if<std::vector<std::string>>(&value)) return base::join(*texts, ", ");
    return listed(std::get<std::vector<double>>(value), ", ", [](double each) { return shown(each); })
         + unitAfter(name);
}

std::string jsonText(const std::string& text) { return base::canonical(base::Json(text)); }

std::string jsonValue(const Value& value)
{
    if (const auto* number = std::get_if<double>(&value)) return jsonNumber(*number);
    if (const auto* text = std::get_if<std::string>(&value)) return jsonText(*text);
    if (const auto* texts = std::get_if<std::vector<std::string>>(&value))
        return "[" + listed(*texts, ",", jsonText) + "]";
    return "[" + listed(std::get<std::vector<double>>(value), ",", jsonNumber) + "]";
}

} // namespace proofwalk::command::work
