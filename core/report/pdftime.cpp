// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/pdftime.h"

#include <fmt/format.h>

#include <algorithm>
#include <cstdlib>

namespace proofwalk::report {
namespace {

/// "2026-11-25T10:02:00" of the place's clock.
std::string localSecond(const base::WallClock& time)
{
    return base::toUtcText(time.utc_ms + std::int64_t{time.offset_min} * 60000).substr(0, 19);
}

std::string digitsOf(std::string text)
{
    std::erase_if(text, [](char c) { return c < '0' || c > '9'; });
    return text;
}

std::string offset(const base::WallClock& time, std::string_view form)
{
    const int minutes = std::abs(time.offset_min);
    return fmt::format(fmt::runtime(form), time.offset_min < 0 ? '-' : '+', minutes / 60, minutes % 60);
}

} // namespace

std::string pdfTime(const base::WallClock& time)
{
    return "D:" + digitsOf(localSecond(time)) + offset(time, "{}{:02}'{:02}'");
}

std::string xmpTime(const base::WallClock& time) { return localSecond(time) + offset(time, "{}{:02}:{:02}"); }

std::string pdfTimeUtc(const base::WallClock& time) { return "D:" + digitsOf(localSecond({time.utc_ms, 0})) + "Z"; }

std::optional<base::WallClock> readPdfTimeUtc(std::string_view text)
{
    if (text.size() != 17 || !text.starts_with("D:")) return std::nullopt;
    const std::string d(text.substr(2));
    const auto time = base::parseTime(d.substr(0, 4) + "-" + d.substr(4, 2) + "-" + d.substr(6, 2) + "T"
                                      + d.substr(8, 2) + ":" + d.substr(10, 2) + ":" + d.substr(12));
    if (!time || pdfTimeUtc(*time) != text) return std::nullopt;
    return *time;
}

} // namespace proofwalk::report
