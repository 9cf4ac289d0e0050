// SPDX-License-Identifier: GPL-3.0-or-later
// A recording cut into short pieces, each as power over frequency. Transforms are kissfft's.
#pragma once

#include "core/measure/recording.h"

#include <memory>
#include <span>

namespace proofwalk::measure {

/// The power of one piece of sound at whole multiples of 1 / its length; a Hann window against leakage.
class Transform {
public:
    /// At least `length` samples, the next length the library does quickly.
    explicit Transform(std::size_t length);
    ~Transform();
    Transform(const Transform&) = delete;
    Transform& operator=(const Transform&) = delete;

    std::size_t length() const { return m_window.size(); }
    /// length() / 2 + 1 powers of length() samples; valid until the next call.
    std::span<const float> power(const float* samples);

private:
    struct Plan;
    std::unique_ptr<Plan> m_plan;
    std::vector<float> m_window;
    std::vector<float> m_windowed;
    std::vector<float> m_power;
};

/// Power over time and frequency, piece after piece without overlap.
struct Spectra {
    double frame_s = 0;         ///< length of a piece
    double bin_hz = 0;          ///< between two frequencies
    std::size_t firstBin = 0;   ///< number of the first kept frequency
    std::size_t bins = 0;       ///< kept of each piece
    std::size_t frames = 0;
    std::vector<float> power;   ///< frames x bins
    std::span<const float> frame(std::size_t index) const { return {&power[index * bins], bins}; }
};

/// Pieces of about 5 ms, from 250 Hz to 8 kHz or to nearly half the rate: where sounders sound (our choice).
Spectra shortSpectra(const Recording& recording);

} // namespace proofwalk::measure
