// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/measure/level.h"

#include <algorithm>
#include <cmath>

namespace proofwalk::measure {
namespace {

constexpr std::size_t block = 4; // pieces of a mean that the habits are taken from
constexpr double selected = 16; // a sixteenth of the greatest contrast still counts
constexpr double noiseRatio = 4; // of high to floor, means of four pieces of white noise
constexpr double deepest_db = 60; // silence in a file is no measure of contrast

/// The value that a share of them lies under.
double quantile(std::vector<float>& values, double share)
{
    if (values.empty()) return 0;
    const auto at = static_cast<std::ptrdiff_t>(share * static_cast<double>(values.size() - 1));
    std::ranges::nth_element(values, values.begin() + at);
    return double{values[static_cast<std::size_t>(at)]};
}

/// The share that is not exceeded for longer than a short pattern sounds: 3 %, and 0.5 s to 1.5 s in all.
double highShare(double length_s) { return 1 - std::clamp(0.03, 0.5 / length_s, std::max(0.5, 1.5) / length_s); }

constexpr double floorShare = 0.15;

double decibel(double ratio) { return 10 * std::log10(ratio); }

/// One frequency and how much it counts.
struct Chosen {
    std::size_t bin = 0;
    double weight = 0;
};

Strength sum(const Spectra& spectra, const std::vector<BinHabit>& habits, const std::vector<Chosen>& chosen)
{
    Strength strength{spectra.frame_s, {}};
    strength.overFloor.reserve(spectra.frames);
    double all = 0;
    for (const Chosen& each : chosen) all += each.weight;
    std::vector<float> weights;
    for (const Chosen& each : chosen)
        weights.push_back(static_cast<float>(each.weight / (all * habits[each.bin].floor)));
    for (std::size_t frame = 0; frame < spectra.frames; ++frame) {
        const float* const power = &spectra.power[frame * spectra.bins];
        float total = 0;
        for (std::size_t i = 0; i < chosen.size(); ++i) total += power[chosen[i].bin] * weights[i];
        strength.overFloor.push_back(total);
    }
    return strength;
}

} // namespace

std::vector<BinHabit> habitsOf(const Spectra& spectra)
{
    const std::size_t blocks = spectra.frames / block;
    const double length_s = static_cast<double>(spectra.frames) * spectra.frame_s;
    std::vector<BinHabit> habits(spectra.bins);
    std::vector<float> means(blocks);
    double loudest = 0;
    for (std::size_t bin = 0; bin < spectra.bins; ++bin) {
        const float* power = &spectra.power[bin];
        for (std::size_t i = 0; i < blocks; ++i) {
            float total = 0;
            for (std::size_t k = 0; k < block; ++k, power += spectra.bins) total += *power;
            means[i] = total / block;
        }
        habits[bin].high = quantile(means, highShare(length_s));
        habits[bin].floor = quantile(means, floorShare);
        loudest = std::max(loudest, habits[bin].high);
    }
    const double least = std::max(loudest * std::pow(10, -deepest_db / 10), 1e-30);
    for (BinHabit& habit : habits) {
        habit.floor = std::max(habit.floor, least);
        habit.high = std::max(habit.high, habit.floor);
    }
    return habits;
}

Strength strengthByContrast(const Spectra& spectra, const std::vector<BinHabit>& habits)
{
    // What noise alone makes of it; where everything goes on and off, the median is no noise.
    std::vector<float> ratios;
    for (const BinHabit& habit : habits) ratios.push_back(static_cast<float>(habit.high / habit.floor));
    const double noise = std::min(noiseRatio, quantile(ratios, 0.5));
    double best = 0;
    for (const BinHabit& habit : habits) best = std::max(best, habit.high / habit.floor - noise);
    std::vector<Chosen> chosen;
    for (std::size_t bin = 0; bin < habits.size(); ++bin)
        if (const double over = habits[bin].high / habits[bin].floor - noise; over >= best / selected && over > 0)
            chosen.push_back(
                {bin, over}); // the weight that lifts a signal best out of noise: its power over the noise's
    if (chosen.empty()) chosen.push_back({0, 1});
    return sum(spectra, habits, chosen);
}

Strength strengthAt(const Spectra& spectra, const std::vector<BinHabit>& habits, double line_hz)
{
    std::vector<Chosen> chosen;
    for (std::size_t bin = 0; bin < spectra.bins; ++bin)
        if (std::fabs(static_cast<double>(bin + spectra.firstBin) * spectra.bin_hz - line_hz) < 1.1 * spectra.bin_hz)
            chosen.push_back({bin, 1});
    if (chosen.empty()) chosen.push_back({0, 1});
    return sum(spectra, habits, chosen);
}

Level levelOf(const Strength& strength, std::size_t pieces)
{
    Level level{strength.frame_s, strength.frame_s * static_cast<double>(pieces), {}, 0, 0};
    const std::size_t count = strength.overFloor.size();
    const std::size_t half = pieces / 2;
    level.level_db.reserve(count);
    double total = 0;
    for (std::size_t i = 0; i < std::min(half, count); ++i) total += double{strength.overFloor[i]};
    for (std::size_t i = 0; i < count; ++i) {
        if (i + half < count) total += double{strength.overFloor[i + half]};
        if (i > half) total -= double{strength.overFloor[i - half - 1]};
        const std::size_t within = std::min(i + half, count - 1) - (i > half ? i - half : 0) + 1;
        level.level_db.push_back(static_cast<float>(decibel(std::max(total / static_cast<double>(within), 1e-3))));
    }
    std::vector<float> values = level.level_db;
    level.floor_db = quantile(values, floorShare);
    level.contrast_db = quantile(values, highShare(static_cast<double>(count) * strength.frame_s)) - level.floor_db;
    return level;
}

} // namespace proofwalk::measure
