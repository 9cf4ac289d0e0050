// SPDX-License-Identifier: GPL-3.0-or-later
// What a sound is made of: its lines, the strongest of them, and whether it is the low-frequency signal.
//   [1] NFPA 72, 18.4.6.3 in later and 18.4.5.3 in earlier editions (as quoted on public pages): 520 Hz within 10 %, a
//       square wave or equal in waking power.
//   [2] A square wave of equal halves has odd harmonics only, the n-th with 1/n of the amplitude: -9.5, -14.0 dB
//   (Fourier).
#pragma once

#include "core/measure/pattern.h"
#include "core/measure/recording.h"

#include <optional>
#include <span>
#include <vector>

namespace proofwalk::measure {

/// A narrow line of a spectrum.
struct Line {
    double frequency_hz = 0;
    double power = 0; ///< relative
    double overBackground_db = 0; ///< over the median of its neighbourhood
};

/// Mean power over frequency of pieces of 85 ms taken from stretches of a recording, at most `most` of them, evenly.
struct LineSpectrum {
    double bin_hz = 0;
    std::size_t pieces = 0;
    std::vector<double> power;
    /// Power within 1.5 bins of a frequency; 0 beyond the spectrum.
    double at(double frequency_hz) const;
    /// The median within a sixth of the frequency, or 200 Hz if that is more.
    double background(double frequency_hz) const;
};
LineSpectrum lineSpectrum(const Recording& recording, std::span<const Sounding> stretches, std::size_t most);

/// Lines of 300 Hz to 6 kHz that stand 9 dB or more over their background, the strongest first.
std::vector<Line> linesOf(const LineSpectrum& spectrum, std::size_t most);

/// Share of pieces over the whole recording in which some line stands out, 0 to 1: is a tone there all the time?
/// line_hz: that line; nothing: whichever is strongest in each piece (a tone that wanders).
double shareWithLine(const Recording& recording, std::optional<double> line_hz);

/// Whether the sound is the low-frequency signal of [1], as far as a recording shows.
enum class LowFrequency {
    yes, ///< 468 to 572 Hz with the odd harmonics of a square wave
    no, ///< another frequency, or no such harmonics though they would be heard
    undecided, ///< that frequency, and too much noise or too low a rate to see its harmonics
};
/// "yes", "no", "undecided".
std::string_view wordOf(LowFrequency signal);

struct Tone {
    std::optional<double> dominant_hz; ///< nothing: no line stands out
    std::optional<double> fundamental_hz; ///< of a harmonic row with a line at 468 to 572 Hz
    std::vector<double> harmonics_db; ///< 2nd to 5th against it
    LowFrequency lowFrequency = LowFrequency::undecided;
};

/// The tone in the stretches in which it sounds.
Tone toneOf(const Recording& recording, std::span<const Sounding> stretches);

} // namespace proofwalk::measure
