// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/measure/overlap.h"

#include <algorithm>
#include <cmath>

namespace proofwalk::measure {
namespace {

constexpr std::size_t phases = 160; // 25 ms of temporal-three, 36 ms of temporal-four

/// On or off, softly: 0 at the floor, 1 at the top, one value every `pieces` pieces.
std::vector<double> share(const Level& level, std::size_t pieces)
{
    std::vector<double> shares;
    for (std::size_t i = 0; i < level.level_db.size(); i += pieces)
        shares.push_back(std::clamp((double{level.level_db[i]} - level.floor_db) / level.contrast_db, 0.0, 1.0));
    return shares;
}

struct Fold {
    std::vector<double> mean;
    double repeats = 0;
};

Fold foldAt(const std::vector<double>& shares, double frames)
{
    Fold fold{std::vector<double>(phases, 0), 0};
    std::vector<double> count(phases, 0);
    double sum = 0;
    double squares = 0;
    const double step = phases / frames;
    double at = 0;
    for (const double each : shares) {
        const auto phase = std::min(phases - 1, static_cast<std::size_t>(at));
        fold.mean[phase] += each;
        count[phase] += 1;
        sum += each;
        squares += each * each;
        at += step;
        if (at >= phases) at -= phases;
    }
    const auto n = static_cast<double>(shares.size());
    const double middle = sum / n;
    double between = 0;
    for (std::size_t p = 0; p < phases; ++p) {
        if (count[p] > 0) fold.mean[p] /= count[p];
        between += count[p] * (fold.mean[p] - middle) * (fold.mean[p] - middle);
    }
    const double variance = squares - n * middle * middle;
    fold.repeats = variance > 0 ? between / variance : 0;
    return fold;
}

/// The cycle as on (1) or off (0) over its phases.
std::vector<double> cycleOf(const PatternShape& shape)
{
    std::vector<double> cycle(phases, 0);
    for (std::size_t p = 0; p < phases; ++p) {
        const double at_s = (static_cast<double>(p) + 0.5) / phases * shape.cycle_s();
        for (int pulse = 0; pulse < shape.pulses; ++pulse)
            if (at_s >= pulse * shape.step_s && at_s < pulse * shape.step_s + shape.pulse_s) cycle[p] = 1;
    }
    return cycle;
}

/// One pulse that lasts a share of the cycle, `times` in a cycle.
std::vector<double> beat(double on, int times)
{
    std::vector<double> cycle(phases, 0);
    for (std::size_t p = 0; p < phases; ++p) {
        const double turn = (static_cast<double>(p) + 0.5) / phases * times;
        cycle[p] = turn - std::floor(turn) < on ? 1 : 0;
    }
    return cycle;
}

/// The best correlation over all turns of one against the other.
double correlation(const std::vector<double>& fold, const std::vector<double>& cycle)
{
    double meanFold = 0;
    double meanCycle = 0;
    for (std::size_t p = 0; p < phases; ++p) {
        meanFold += fold[p] / phases;
        meanCycle += cycle[p] / phases;
    }
    double squaresFold = 0;
    double squaresCycle = 0;
    for (std::size_t p = 0; p < phases; ++p) {
        squaresFold += (fold[p] - meanFold) * (fold[p] - meanFold);
        squaresCycle += (cycle[p] - meanCycle) * (cycle[p] - meanCycle);
    }
    if (squaresFold <= 0 || squaresCycle <= 0) return 0;
    double best = -1;
    for (std::size_t turn = 0; turn < phases; ++turn) {
        double sum = 0;
        for (std::size_t p = 0; p < phases; ++p) sum += (fold[(p + turn) % phases] - meanFold) * (cycle[p] - meanCycle);
        best = std::max(best, sum / std::sqrt(squaresFold * squaresCycle));
    }
    return best;
}

} // namespace

std::optional<Folded> foldedOver(const Level& level, Pattern pattern)
{
    const PatternShape shape = shapeOf(pattern);
    const double length_s = static_cast<double>(level.level_db.size()) * level.frame_s;
    if (level.contrast_db < 1 || shape.pulses == 0 || length_s < 2.2 * shape.cycle_s()) return std::nullopt;
    constexpr std::size_t pieces = 3; // about 15 ms
    const double value_s = level.frame_s * pieces;
    const auto shares = share(level, pieces);
    Fold best;
    Folded folded;
    const double step_s = std::max(0.004, 0.15 * shape.cycle_s() * shape.pulse_s / length_s);
    for (double period_s = 0.9 * shape.cycle_s(); period_s <= 1.1 * shape.cycle_s(); period_s += step_s)
        if (Fold fold = foldAt(shares, period_s / value_s); fold.repeats > best.repeats) {
            best = std::move(fold);
            folded.period_s = period_s;
        }
    if (best.mean.empty()) return std::nullopt;
    folded.repeats = best.repeats;
    for (const double on : {0.1, 0.15, 0.25, 0.4, 0.55, 0.7, 0.85})
        folded.block = std::max(folded.block, correlation(best.mean, beat(on, 1)));
    if (pattern == Pattern::temporalThree)
        for (const double on : {0.2, 0.35, 0.5, 0.6, 0.75})
            folded.march = std::max(folded.march, correlation(best.mean, beat(on, 4)));
    const auto one = cycleOf(shape);
    folded.one = correlation(best.mean, one);
    for (std::size_t offset = 1; offset <= phases / 2; ++offset) {
        std::vector<double> two = one;
        for (std::size_t p = 0; p < phases; ++p) two[p] = std::max(two[p], one[(p + offset) % phases]);
        if (const double found = correlation(best.mean, two); found > folded.two) {
            folded.two = found;
            folded.offset_s = static_cast<double>(offset) / phases * folded.period_s;
        }
    }
    return folded;
}

} // namespace proofwalk::measure
