// SPDX-License-Identifier: GPL-3.0-or-later
// Radio levels and the margin of a link.
//   [1] Definition of the units: dBm in 50 ohm, dB over a microvolt; e.i.r.p. over e.r.p. by the gain of a half-wave
//       dipole, 1.64 in power.
//   [2] ITU-R P.525: free-space loss 20 log10(4 pi d f / c), and the field E = sqrt(30 P) / d.
//   [3] Rayleigh fading: the chance of an outage is 1 - exp(-1 / M) for a margin M in power.
//   [4] 10 dB at least, 20 dB wished, for a fixed link indoors: common practice; [3] says why.
// Levels from -250 to 100 dBm, frequencies 1 to 100000 MHz, distances above 0 to 1e6 m (our limits).
#pragma once

#include "core/base/result.h"

#include <span>

namespace proofwalk::measure {

/// dBm in 50 ohm as dBuV, and back: +- (90 + 10 log10 50), after [1]. Error: measure.out-of-range {input, found,
/// wanted}.
Result<double> dbuvOfDbm(double level_dbm);
Result<double> dbmOfDbuv(double level_dbuv);
/// Microvolts of a level over one: 10^(dBuV / 20). Error: measure.out-of-range.
Result<double> microvoltsOfDbuv(double level_dbuv);
/// And back: 20 log10 of microvolts from 1e-7 to 1e9. Error: measure.out-of-range.
Result<double> dbuvOfMicrovolts(double level_uv);

/// e.i.r.p. of an e.r.p., after [1]: 2.148 dB more. Error: measure.out-of-range.
Result<double> eirpOfErp_dbm(double erp_dbm);

/// The field at a distance in free space, in dBuV/m, after [2]. Errors: measure.out-of-range.
Result<double> freeSpaceField_dbuv(double eirp_dbm, double distance_m);

/// After [2]; further than a wavelength from both antennas. Errors: measure.out-of-range: also nearer than that.
Result<double> freeSpaceLoss_db(double frequency_mhz, double distance_m);

/// A link as planned or as measured.
struct Link {
    double eirp_dbm = 0;
    double receiveGain_dbi = 0;
    double loss_db = 0; ///< of the way
    double sensitivity_dbm = 0; ///< of the receiver
    double demanded_db = 10; ///< margin asked for, from [4] unless a standard or maker says more
};
struct LinkMargin {
    double received_dbm = 0; ///< eirp + gain - loss
    double margin_db = 0; ///< received - sensitivity
    double spare_db = 0; ///< margin - demanded: below zero it is not kept
};
Result<LinkMargin> linkMargin(const Link& link);

/// The margin of a reading: over the sensitivity, and over the noise where that is what limits. The lesser counts.
struct MeasuredLink {
    double received_dbm = 0; ///< the lowest of several, doors shut and people moving
    double sensitivity_dbm = 0;
    double noise_dbm = 0; ///< on the channel with the transmitter silent
    double noiseRatio_db = 0; ///< what the receiver needs over the noise
};
struct MeasuredMargin {
    double overSensitivity_db = 0;
    double overNoise_db = 0; ///< received - noise - ratio
    double margin_db = 0; ///< the lesser
    bool noiseLimits = false;
};
/// Errors: measure.out-of-range.
Result<MeasuredMargin> measuredMargin(const MeasuredLink& link);

/// The margin that keeps a Rayleigh-fading link for that share of places or times: -10 log10(-ln availability), after
/// [3]; availability above 0.5 to below 1. Error: measure.out-of-range.
Result<double> rayleighMargin_db(double availability);
/// The same under log-normal shadowing of a standard deviation: z(share) sigma. Sigma from 0 to 30 dB.
Result<double> shadowingMargin_db(double share, double deviation_db);

/// The mean of levels as power, 10 log10(mean 10^(L / 10)); the mean of the decibels is another, lower thing.
/// Errors: measure.levels-missing; measure.out-of-range.
Result<double> meanPower_dbm(std::span<const double> levels_dbm);

/// By what a distance shrinks when the margin does by `less_db`, for a power law of N dB a decade: 10^(-less / N).
/// N from 10 to 80, less from 0 to 100 dB. Errors: measure.out-of-range.
Result<double> rangeFactor(double less_db, double decadeLoss_db);

constexpr double leastLinkMargin_db = 10; ///< [4]: covers 90 % of Rayleigh fading
constexpr double wishedLinkMargin_db = 20; ///< [4]: covers 99 %

} // namespace proofwalk::measure
