// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/measure/spectra.h"

#include <kiss_fftr.h>

#include <algorithm>
#include <cmath>
#include <numbers>

namespace proofwalk::measure {

struct Transform::Plan {
    explicit Plan(int length)
        : state(kiss_fftr_alloc(length, 0, nullptr, nullptr)), bins(static_cast<std::size_t>(length) / 2 + 1)
    {
    }
    Plan(const Plan&) = delete;
    Plan& operator=(const Plan&) = delete;
    ~Plan() { kiss_fftr_free(state); }
    kiss_fftr_cfg state;
    std::vector<kiss_fft_cpx> bins;
};

namespace {

/// Even, and made of twos, threes and fives.
int quickLength(int length)
{
    for (int half = std::max(1, (length + 1) / 2);; ++half) {
        int rest = half;
        for (const int factor : {2, 3, 5})
            while (rest % factor == 0) rest /= factor;
        if (rest == 1) return 2 * half;
    }
}

} // namespace

Transform::Transform(std::size_t length)
    : m_plan(std::make_unique<Plan>(quickLength(static_cast<int>(length)))), m_window(2 * (m_plan->bins.size() - 1)),
      m_windowed(m_window.size()), m_power(m_plan->bins.size())
{
    for (std::size_t i = 0; i < m_window.size(); ++i) {
        const double turn = (static_cast<double>(i) + 0.5) / static_cast<double>(m_window.size());
        m_window[i] = static_cast<float>(0.5 - 0.5 * std::cos(2 * std::numbers::pi * turn));
    }
}

Transform::~Transform() = default;

std::span<const float> Transform::power(const float* samples)
{
    for (std::size_t i = 0; i < m_window.size(); ++i) m_windowed[i] = samples[i] * m_window[i];
    kiss_fftr(m_plan->state, m_windowed.data(), m_plan->bins.data());
    for (std::size_t i = 0; i < m_power.size(); ++i) {
        const kiss_fft_cpx& bin = m_plan->bins[i];
        m_power[i] = bin.r * bin.r + bin.i * bin.i;
    }
    return m_power;
}

Spectra shortSpectra(const Recording& recording)
{
    Transform transform(static_cast<std::size_t>(0.005 * recording.rate_hz));
    const std::size_t length = transform.length();
    Spectra spectra;
    spectra.frame_s = static_cast<double>(length) / recording.rate_hz;
    spectra.bin_hz = 1 / spectra.frame_s;
    const double top_hz = std::min(8000.0, 0.47 * recording.rate_hz);
    spectra.firstBin = static_cast<std::size_t>(std::ceil(250 / spectra.bin_hz));
    spectra.bins = static_cast<std::size_t>(top_hz / spectra.bin_hz) - spectra.firstBin + 1;
    spectra.frames = recording.samples.size() / length;
    spectra.power.reserve(spectra.frames * spectra.bins);
    for (std::size_t frame = 0; frame < spectra.frames; ++frame) {
        const auto power = transform.power(&recording.samples[frame * length]).subspan(spectra.firstBin, spectra.bins);
        spectra.power.insert(spectra.power.end(), power.begin(), power.end());
    }
    return spectra;
}

} // namespace proofwalk::measure
