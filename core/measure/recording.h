// SPDX-License-Identifier: GPL-3.0-or-later
// A recording of sound, as bytes of a WAV file.
#pragma once

#include "core/base/result.h"

#include <string_view>
#include <vector>

namespace proofwalk::measure {

/// One channel of sound. Full scale is 1; nothing is known of its level in the room.
struct Recording {
    int rate_hz = 0;
    std::vector<float> samples;
    double length_s() const { return static_cast<double>(samples.size()) / rate_hz; }
};

/// Reads WAV (RIFF, RF64, any depth, whole numbers or floating): of several channels the loudest, since a sum could
/// cancel. Rates from 4000 to 384 000 Hz, up to 8 channels, 1 s to 20 minutes, 120 million samples in all.
/// Errors: measure.recording-kind (no WAV), measure.recording-damaged {detail}, measure.out-of-range {input rate_hz,
/// channels, length_s or samples: too many, or not finite}.
Result<Recording> readRecording(std::string_view bytes);

/// The bounds on a recording, wherever it is from: rate_hz, length_s (1 s to 20 minutes), samples finite.
Result<void> checkRecording(const Recording& recording);

} // namespace proofwalk::measure
