// SPDX-License-Identifier: GPL-3.0-or-later
// Whether an instrument's data sheet may still be believed: its accuracy is stated for a time after calibration.
//   A year is common practice; what counts is the interval the data sheet or the owner of the instrument states.
#pragma once

#include "core/base/result.h"

#include <string_view>

namespace proofwalk::measure {

struct CalibrationAge {
    int days = 0;        ///< from the calibration to the day of the reading
    bool overdue = false; ///< more days than the interval: the accuracy is then not supported
};

/// Days as "2026-03-02"; the interval from 1 to 36500 days.
/// Errors: measure.not-a-day {input, found}; measure.calibrated-later {found, wanted}: after the day of the reading;
/// measure.out-of-range {input, found, wanted}.
Result<CalibrationAge> calibrationAge(std::string_view calibrated, std::string_view readOn, int interval_days);

} // namespace proofwalk::measure
