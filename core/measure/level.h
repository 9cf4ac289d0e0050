// SPDX-License-Identifier: GPL-3.0-or-later
// How loud a sound is from moment to moment, taken only at the frequencies at which something goes on and off, so
// that a
// tone as loud as all the noise together stands well above it. Relative only.
#pragma once

#include "core/measure/pattern.h"
#include "core/measure/spectra.h"

namespace proofwalk::measure {

/// A level over time.
struct Level {
    double frame_s = 0;
    double smooth_s = 0; ///< over how long each value is the mean
    std::vector<float> level_db; ///< over the floor
    double floor_db = 0; ///< what it has when the sound is off
    double contrast_db = 0; ///< how far it rises when the sound is on
};

/// The row of pieces at some frequencies, each counted over its own floor; not yet smoothed.
struct Strength {
    double frame_s = 0;
    std::vector<float> overFloor; ///< power, 1 at the floor
};

/// How each frequency behaves: what power it has when nothing sounds, and when something does.
struct BinHabit {
    double floor = 0;
    double high = 0;
};
std::vector<BinHabit> habitsOf(const Spectra& spectra);

/// The frequencies with the greatest contrast, each counted by how far it exceeds that of noise.
Strength strengthByContrast(const Spectra& spectra, const std::vector<BinHabit>& habits);

/// The frequencies next to one line.
Strength strengthAt(const Spectra& spectra, const std::vector<BinHabit>& habits, double line_hz);

/// The level over a running mean of that many pieces (odd).
Level levelOf(const Strength& strength, std::size_t pieces);

} // namespace proofwalk::measure
