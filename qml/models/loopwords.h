// SPDX-License-Identifier: GPL-3.0-or-later
// What core/measure can tell of a reading that is not as it should be, in words.
#pragma once

#include "core/base/unit.h"
#include "core/measure/loop.h"
#include "core/walk/scope.h"
#include "qml/models/snapshot.h"

#include <QString>

#include <optional>

namespace proofwalk::models {

struct LoopWords {
    QString line; ///< "0.8 too high: joint or resistor?"
    QString sentences; ///< what it reads, where that stands, what it may be
    QString tell; ///< what to measure at the device to tell
};

/// The wiring of the zone whose step this is; nothing if the plan does not give it, or the subject is no zone.
std::optional<measure::LoopWiring> wiringOf(const Snapshot& job, const walk::StepKey& step);

/// Empty where nothing can be told.
LoopWords loopWords(const Snapshot& job, const walk::StepKey& step, const base::Quantity& reading);

/// A reading and its limits, in one unit; NaN where there is none.
struct Whisker {
    double value, uncertainty, lower, upper;
};

/// "± 0.5 reaches 2.9, through the limit at 3.0"; empty if it reaches through none.
QString whiskerWords(const Whisker& whisker);

} // namespace proofwalk::models
