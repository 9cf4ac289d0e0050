// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/measure/soundlevel.h"

#include "core/measure/inputs.h"

#include <algorithm>
#include <cmath>

namespace proofwalk::measure {
namespace {

Result<void> checkLevel(const char* input, double level_db) { return checkWithin(input, level_db, -50, 200); }

Result<void> checkDistance(const char* input, double distance_m)
{
    if (distance_m > 0 && distance_m <= 1e4) return {};
    return outOfRange(input, distance_m, "above 0 to 10000");
}

Result<void> check(const SoundSource& source)
{
    if (auto sound = checkLevel("rated_db", source.level_db); !sound) return sound;
    return checkDistance("rated_at_m", source.at_m);
}

} // namespace

Result<double> levelAtDistance_db(const SoundSource& source, double distance_m)
{
    if (auto sound = check(source); !sound) return passOn(sound);
    if (auto sound = checkDistance("distance_m", distance_m); !sound) return passOn(sound);
    return source.level_db - 20 * std::log10(distance_m / source.at_m);
}

Result<double> distanceForLevel_m(const SoundSource& source, double level_db)
{
    if (auto sound = check(source); !sound) return passOn(sound);
    if (auto sound = checkLevel("level_db", level_db); !sound) return passOn(sound);
    return source.at_m * std::pow(10, (source.level_db - level_db) / 20);
}

Result<double> sumOfLevels_db(std::span<const double> levels_db)
{
    if (levels_db.empty() || levels_db.size() > 100000) return failure("measure.levels-missing", "");
    double energy = 0;
    for (const double level_db : levels_db) {
        if (auto sound = checkLevel("levels_db", level_db); !sound) return passOn(sound);
        energy += std::pow(10, level_db / 10);
    }
    return 10 * std::log10(energy);
}

Result<double> meanOfLevels_db(std::span<const double> levels_db)
{
    auto sum = sumOfLevels_db(levels_db);
    if (!sum) return passOn(sum);
    return *sum - 10 * std::log10(static_cast<double>(levels_db.size()));
}

Result<double> backgroundCorrection_db(double difference_db)
{
    if (!(difference_db > 0 && difference_db <= 250))
        return outOfRange("difference_db", difference_db, "above 0 to 250");
    return -10 * std::log10(1 - std::pow(10, -0.1 * difference_db));
}

Result<CorrectedLevel> withoutBackground(double with_db, double without_db, BackgroundMethod method)
{
    if (auto sound = checkLevel("with_db", with_db); !sound) return passOn(sound);
    if (auto sound = checkLevel("without_db", without_db); !sound) return passOn(sound);
    const double difference_db = with_db - without_db;
    if (difference_db <= 0)
        return failure("measure.background-louder", "", {{"found", written(without_db)}, {"wanted", written(with_db)}});
    const bool engineering = method == BackgroundMethod::engineering;
    const double least_db = engineering ? 6 : 3;
    // ISO 3744 leaves the correction out from 15 dB on, ISO 3746 above 10 dB.
    if (engineering ? difference_db >= 15 : difference_db > 10) return CorrectedLevel{with_db, 0, false};
    auto correction = backgroundCorrection_db(std::max(difference_db, least_db));
    if (!correction) return passOn(correction);
    return CorrectedLevel{with_db - *correction, *correction, difference_db < least_db};
}

} // namespace proofwalk::measure
