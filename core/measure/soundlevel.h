// SPDX-License-Identifier: GPL-3.0-or-later
// Sound levels: how they fall with distance, add up, and stand out of a background.
//   [1] Inverse square law, as in ISO 3744 and the divergence term of ISO 9613-2: common knowledge of acoustics.
//   [2] ISO 3744 (engineering) and ISO 3746 (survey): background correction K1 and its limits, as quoted on public
//       pages.
//   [3] Door losses: commentary of BS 5839-1 as repeated in trade guides; common practice.
// Levels from -50 to 200 dB, distances above 0 to 10000 m: what lies beyond is a slip of the pen (our limits).
#pragma once

#include "core/base/result.h"

#include <span>

namespace proofwalk::measure {

/// A sounder as its data sheet rates it, or as it was read.
struct SoundSource {
    double level_db = 0;
    double at_m = 1; ///< where that level holds
};

/// L(r) = L(r0) - 20 log10(r / r0), in a free field, after [1]: 6.02 dB a doubling. Indoors it stops falling some
/// metres away, so there the figure is a floor to plan with, never evidence. Closer than the sounder's own size it is
/// wrong.
/// Errors: measure.out-of-range {input, found, wanted}.
Result<double> levelAtDistance_db(const SoundSource& source, double distance_m);

/// The inverse: where in a free field the level has fallen (or risen) to `level_db`: r0 10^((L - level) / 20).
/// Errors: measure.out-of-range.
Result<double> distanceForLevel_m(const SoundSource& source, double level_db);

/// 10 log10(sum 10^(L_i / 10)): sources that have nothing to do with each other. Two tones of one frequency interfere;
/// then it is the average over places. From 1 to 100000 levels.
/// Errors: measure.levels-missing; measure.out-of-range.
Result<double> sumOfLevels_db(std::span<const double> levels_db);

/// The energy mean: the sum less 10 log10 n. Errors: as sumOfLevels_db().
Result<double> meanOfLevels_db(std::span<const double> levels_db);

/// K1 = -10 log10(1 - 10^(-0.1 dL)), after [2], with dL the level with the sound minus the level without; above 0.
/// Error: measure.out-of-range.
Result<double> backgroundCorrection_db(double difference_db);

/// How exact the background must be taken off.
enum class BackgroundMethod {
    engineering, ///< ISO 3744: nothing from 15 dB; below 6 dB capped at K1 of 6 dB
    survey ///< ISO 3746: nothing above 10 dB; below 3 dB capped at K1 of 3 dB
};

struct CorrectedLevel {
    double signal_db = 0;
    double correction_db = 0; ///< K1 as applied
    bool isUpperBound = false; ///< the background was too near: the signal is at most this
};

/// After [2]. For comparing with a data sheet only: what people hear is the sum, and alarms are judged with it.
/// Errors: measure.out-of-range; measure.background-louder {found, wanted}: without the sound it is not quieter.
Result<CorrectedLevel> withoutBackground(double with_db, double without_db, BackgroundMethod method);

/// Losses to plan with, from [3]; a partition takes 25 to 45 dB by its make.
constexpr double ordinaryDoorLoss_db = 20;
constexpr double fireDoorLoss_db = 30;

} // namespace proofwalk::measure
