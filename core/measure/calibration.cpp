// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/measure/calibration.h"

#include "core/base/instant.h"
#include "core/measure/inputs.h"

namespace proofwalk::measure {
namespace {

constexpr std::int64_t day_ms = 86'400'000;

Result<std::int64_t> dayNumber(const char* input, std::string_view text)
{
    const auto time = base::parseTime(std::string(text) + "T00:00:00Z");
    if (text.size() == 10 && time) return time->utc_ms / day_ms;
    return failure("measure.not-a-day", "", {{"input", std::string(input)}, {"found", std::string(text)}});
}

} // namespace

Result<CalibrationAge> calibrationAge(std::string_view calibrated, std::string_view readOn, int interval_days)
{
    auto from = dayNumber("calibrated", calibrated);
    if (!from) return passOn(from);
    auto to = dayNumber("read_on", readOn);
    if (!to) return passOn(to);
    if (auto sound = checkWithin("interval_days", interval_days, 1, 36500); !sound) return passOn(sound);
    if (*from > *to)
        return failure("measure.calibrated-later", "",
                       {{"found", std::string(calibrated)}, {"wanted", std::string(readOn)}});
    const int days = static_cast<int>(*to - *from);
    return CalibrationAge{days, days > interval_days};
}

} // namespace proofwalk::measure
