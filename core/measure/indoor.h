// SPDX-License-Identifier: GPL-3.0-or-later
// What a radio link indoors is likely to lose, to flag a reading that does not fit its distance.
//   [1] ITU-R P.1238, editions 1 to 9: L = 20 log10 f + N log10 d + Lf(n) - 28 dB, f in MHz, d in m, n floors between.
//       The row of 1.8 to 2 GHz was met in the source of an open network simulator (public test source); all others are
//       from memory.
//   [2] ITU-R P.1238, editions 10 and 11: L = 10 a log10 d + b + 10 g log10 f with f in GHz, normal with a deviation;
//       its coefficients met in an open repository (public test source).
// Nothing is given for 433 MHz by [1]; for it the office and the in-sight rows of [2] reach down to 300 MHz.
#pragma once

#include "core/base/result.h"

#include <string_view>

namespace proofwalk::measure {

enum class Building { residential, office, commercial };

/// After [1]. Bands 900 MHz (825 to 975; offices and shops), 1800 to 2200 MHz, 2400 to 2500 MHz (homes and offices) and
/// 5150 to 5850 MHz (homes and offices): what lies between is refused, not extrapolated. The edges of the bands about
/// the printed frequency are our choice. More than 1 m to 1000 m; floors from 0, at 900 MHz to 3, above 2.2 GHz at most
/// 1. Homes are taken as flats. With no floor between Lf is 0.
/// Errors: measure.out-of-range {input, found, wanted}; measure.no-coefficients {found, wanted}.
Result<double> indoorLoss_db(Building building, double frequency_mhz, double distance_m, int floors);

/// N, the loss of a decade of distance, and the loss of the floors alone; refusals as indoorLoss_db().
struct IndoorCoefficients {
    double decadeLoss_db = 0;
    double floorLoss_db = 0;
};
Result<IndoorCoefficients> indoorCoefficients(Building building, double frequency_mhz, int floors);

/// A row of [2].
struct Surroundings {
    std::string_view name; ///< "office-not-in-sight"
    double a = 0;
    double b = 0;
    double g = 0;
    double deviation_db = 0;
    double least_ghz = 0;
    double most_ghz = 0;
    double least_m = 0;
    double most_m = 0;
};
/// By its name: office-in-sight, office-not-in-sight, corridor-in-sight, corridor-not-in-sight, industrial-in-sight,
/// industrial-not-in-sight; nullptr for another.
const Surroundings* surroundings(std::string_view name);

struct IndoorPrediction {
    double median_db = 0;
    double deviation_db = 0;
};
/// After [2], inside the row's frequencies and distances. Errors: measure.out-of-range.
Result<IndoorPrediction> indoorPrediction(const Surroundings& row, double frequency_ghz, double distance_m);

/// How likely a loss as measured or a worse one is by the prediction: 1 - Phi((loss - median) / deviation). Under 5 %
/// the reading does not fit its distance: an antenna, a metal door, a wrong device, or the plan. Errors:
/// measure.out-of-range.
Result<double> chanceOfSuchLoss(const IndoorPrediction& prediction, double loss_db);

} // namespace proofwalk::measure
