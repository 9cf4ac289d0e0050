// SPDX-License-Identifier: GPL-3.0-or-later
// One step as it stands in a file, with the condition under which it is taken up.
#pragma once

#include "core/catalogue/condition.h"
#include "core/catalogue/keys.h"
#include "core/catalogue/sheet.h"

#include <span>
#include <vector>

namespace proofwalk::catalogue {

struct StepEntry {
    Step step;
    Condition when;
    bool replaces = false; ///< takes the place of an earlier step of its name and signal, or is left out
    int line = 1;
};

/// Where a step stands decides what it may be of.
enum class StepPlace {
    sheet,    ///< kinds/ and parts/: of a device or its zone, with `when` and `replaces`
    sequence, ///< sequences/: of an area or a timer, always
};

/// Reads the tables under `key` ("before", "steps") in order.
/// Errors: those of Keys and figure.h; catalogue.key-unsuited {found, kind}: the key means nothing for that kind of
/// step; catalogue.proof {found}: input, response and received are proved for a signal.
std::vector<StepEntry> readSteps(const Keys& keys, std::string_view key, StepPlace place);

/// Keeps catalogue.step-twice {found} if two of the steps have one name and signal, neither replaces the other, and
/// their conditions do not exclude each other.
void refuseTwins(std::span<const StepEntry> steps, Reading& reading);

} // namespace proofwalk::catalogue
