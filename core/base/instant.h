// SPDX-License-Identifier: GPL-3.0-or-later
// Points in time: milliseconds since 1970-01-01T00:00:00Z, leap seconds ignored as in POSIX.
#pragma once

#include "core/base/result.h"

#include <cstdint>
#include <string>
#include <string_view>

namespace proofwalk::base {

/// A wall-clock reading with the offset of the place where it was taken.
struct WallClock {
    std::int64_t utc_ms = 0; ///< since 1970-01-01T00:00:00Z; from year 1970 to 9999
    int offset_min = 0;      ///< local minus UTC, -1439 to 1439

    friend bool operator==(const WallClock&, const WallClock&) = default;
};

/// Now, by this machine's clock and time zone.
WallClock now();

/// Reads an RFC 3339 time: "2026-11-25T10:02:00+01:00", "…T10:02:00.250Z". Of a fraction what is finer than a
/// millisecond is dropped. A leap second (":60") and what lies outside 1970 to 9999 UTC are refused.
/// Error: base.time-form {found}.
Result<WallClock> parseTime(std::string_view text);

/// RFC 3339 in UTC with milliseconds: "2026-11-25T09:02:00.000Z", the form events hold.
std::string toUtcText(std::int64_t utc_ms);

/// Local time and date: "10:02" and "2026-11-25"; longer forms are made in core/words.
std::string localTime(const WallClock& time);
std::string localDate(const WallClock& time);

} // namespace proofwalk::base
