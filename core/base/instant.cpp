// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/base/instant.h"

#include <fmt/format.h>

#include <chrono>
#include <ctime>

namespace proofwalk::base {
namespace {

using std::chrono::days;
using std::chrono::milliseconds;
using std::chrono::sys_days;
using std::chrono::year_month_day;

constexpr std::int64_t latest_ms = 253'402'300'799'999; // 9999-12-31T23:59:59.999Z

struct Fields {
    year_month_day date;
    std::int64_t ofDay_ms;
};

Fields fieldsOf(std::int64_t ms)
{
    const std::chrono::sys_time<milliseconds> point{milliseconds{ms}};
    const auto day = std::chrono::floor<days>(point);
    return {year_month_day{day}, (point - day).count()};
}

/// Reads exactly `count` digits at `text[at...]`; -1 if they are not digits.
int digitsAt(std::string_view text, std::size_t at, std::size_t count)
{
    if (at + count > text.size()) return -1;
    int value = 0;
    for (std::size_t i = at; i < at + count; ++i) {
        if (text[i] < '0' || text[i] > '9') return -1;
        value = value * 10 + (text[i] - '0');
    }
    return value;
}

/// Thousandths from as many digits as there are at `text[at...]`; moves `at` behind them; -1 if there is none.
int thousandthsAt(std::string_view text, std::size_t& at)
{
    int value = 0;
    int place = 100;
    const std::size_t first = at;
    for (; at < text.size() && text[at] >= '0' && text[at] <= '9'; ++at) {
        value += (text[at] - '0') * place;
        place /= 10;
    }
    return at == first ? -1 : value;
}

/// "Z" or "+hh:mm"; false if it is neither.
bool readOffset(std::string_view text, int& offset_min)
{
    if (text == "Z" || text == "z") {
        offset_min = 0;
        return true;
    }
    if (text.size() != 6 || (text[0] != '+' && text[0] != '-') || text[3] != ':') return false;
    const int hours = digitsAt(text, 1, 2);
    const int minutes = digitsAt(text, 4, 2);
    if (hours < 0 || hours > 23 || minutes < 0 || minutes > 59) return false;
    offset_min = (text[0] == '-' ? -1 : 1) * (hours * 60 + minutes);
    return true;
}

} // namespace

WallClock now()
{
    const auto point = std::chrono::system_clock::now();
    const std::time_t seconds = std::chrono::system_clock::to_time_t(point);
    std::tm local{};
    localtime_r(&seconds, &local);
    return {std::chrono::duration_cast<milliseconds>(point.time_since_epoch()).count(),
            static_cast<int>(local.tm_gmtoff / 60)};
}

Result<WallClock> parseTime(std::string_view text)
{
    const auto bad = [&] { return failure("base.time-form", "", {{"found", std::string(text)}}); };
    const int year = digitsAt(text, 0, 4), month = digitsAt(text, 5, 2), day = digitsAt(text, 8, 2);
    const int hour = digitsAt(text, 11, 2), minute = digitsAt(text, 14, 2), second = digitsAt(text, 17, 2);
    if (text.size() < 20 || text[4] != '-' || text[7] != '-' || (text[10] != 'T' && text[10] != 't') || text[13] != ':'
        || text[16] != ':')
        return bad();
    if (year < 1970 || month < 1 || day < 1 || hour < 0 || hour > 23 || minute < 0 || minute > 59 || second < 0
        || second > 59)
        return bad();
    const year_month_day date{std::chrono::year{year}, std::chrono::month{static_cast<unsigned>(month)},
                              std::chrono::day{static_cast<unsigned>(day)}};
    if (!date.ok()) return bad();

    std::size_t rest = 19;
    int fraction_ms = 0;
    if (text[rest] == '.') {
        fraction_ms = thousandthsAt(text, ++rest);
        if (fraction_ms < 0) return bad();
    }
    int offset_min = 0;
    if (!readOffset(text.substr(rest), offset_min)) return bad();

    const std::int64_t days_ms = std::chrono::duration_cast<milliseconds>(sys_days{date}.time_since_epoch()).count();
    const std::int64_t local_ms = days_ms + ((hour * 60LL + minute) * 60 + second) * 1000 + fraction_ms;
    const std::int64_t utc_ms = local_ms - offset_min * 60'000LL;
    if (utc_ms < 0 || utc_ms > latest_ms) return bad();
    return WallClock{utc_ms, offset_min};
}

std::string toUtcText(std::int64_t utc_ms)
{
    const auto [date, ms] = fieldsOf(utc_ms);
    return fmt::format("{:04}-{:02}-{:02}T{:02}:{:02}:{:02}.{:03}Z", static_cast<int>(date.year()),
                       static_cast<unsigned>(date.month()), static_cast<unsigned>(date.day()), ms / 3'600'000,
                       ms / 60'000 % 60, ms / 1000 % 60, ms % 1000);
}

std::string localTime(const WallClock& time)
{
    const auto ms = fieldsOf(time.utc_ms + time.offset_min * 60'000LL).ofDay_ms;
    return fmt::format("{:02}:{:02}", ms / 3'600'000, ms / 60'000 % 60);
}

std::string localDate(const WallClock& time)
{
    const auto date = fieldsOf(time.utc_ms + time.offset_min * 60'000LL).date;
    return fmt::format("{:04}-{:02}-{:02}", static_cast<int>(date.year()), static_cast<unsigned>(date.month()),
                       static_cast<unsigned>(date.day()));
}

} // namespace proofwalk::base
