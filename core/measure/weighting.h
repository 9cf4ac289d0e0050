// SPDX-License-Identifier: GPL-3.0-or-later
// The A-weighting, as people hear quiet sounds, and what a tone is worth in dB(A).
//   [1] IEC 61672-1, annex E: the formula with its four frequencies; the table holds at the exact frequencies 10^(n/10)
//       Hz, as printed in a national adoption of the 2002 edition (public).
//   [2] Fourier series of a square wave: odd harmonics of amplitude 1 / n.
#pragma once

#include "core/base/result.h"

#include <span>
#include <vector>

namespace proofwalk::measure {

/// A(f) = 20 log10(f4^2 f^4 / ((f^2 + f1^2) sqrt(f^2 + f2^2) sqrt(f^2 + f3^2) (f^2 + f4^2))) + 2.000 dB, after [1];
/// 0.0003 dB at 1 kHz. From 10 Hz to 20 kHz, where the table goes. Error: measure.out-of-range {input, found, wanted}.
Result<double> aWeighting_db(double frequency_hz);

/// The table's figure for a nominal third-octave band (10, 12.5, 16 ... 20000 Hz), to a tenth as printed. Error:
/// measure.not-a-band {found, wanted}.
Result<double> aWeightingOfBand_db(double nominal_hz);

/// A band's level as a meter shows it.
struct Band {
    double nominal_hz = 0;
    double level_db = 0;
};

/// 10 log10(sum 10^((L_i + A_i) / 10)) with the table's weightings, in dB(A). What lies outside the bands given is left
/// out.
/// Errors: measure.levels-missing; measure.not-a-band; measure.out-of-range.
Result<double> weightedTotal_dba(std::span<const Band> bands);

/// One line of a tone's spectrum.
struct Harmonic {
    int order = 1;
    double level_db = 0; ///< against the first
    double weighting_db = 0; ///< of its frequency
};
struct SquareWave {
    std::vector<Harmonic> harmonics; ///< 1, 3, 5, ...
    double total_db = 0; ///< of these lines, unweighted, against the first
    double weightedTotal_dba = 0; ///< A-weighted, against the first unweighted
};

/// The first `lines` odd harmonics of a symmetric square wave, after [2]: -20 log10 n each. All must lie within 10 Hz
/// to 20 kHz; 1 to 100 lines. Errors: measure.out-of-range.
Result<SquareWave> squareWave(double fundamental_hz, int lines);

} // namespace proofwalk::measure
