// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/measure/tone.h"

#include "core/measure/spectra.h"

#include <algorithm>
#include <cmath>

namespace proofwalk::measure {
namespace {

constexpr double piece_s = 0.085;
constexpr double least_hz = 300;
constexpr double most_hz = 6000;
constexpr double line_db = 9;       // a mean of many pieces of noise stays within 3 dB of its median
constexpr double lineInPiece_db = 11; // one piece of noise: four bins exceed it once in 500
constexpr double wandering_db = 14;   // and the strongest of all its bins once in 100

double decibel(double ratio) { return 10 * std::log10(std::max(ratio, 1e-30)); }

double median(std::vector<double>& values)
{
    if (values.empty()) return 0;
    const auto middle = values.begin() + static_cast<std::ptrdiff_t>(values.size() / 2);
    std::ranges::nth_element(values, middle);
    return *middle;
}

/// Where pieces of `length` samples begin: within the stretches, at most `most` of them, evenly.
std::vector<std::size_t> beginnings(const Recording& recording, std::span<const Sounding> stretches, std::size_t length,
                                    std::size_t most)
{
    std::vector<std::size_t> all;
    for (const Sounding& stretch : stretches) {
        auto at = static_cast<std::size_t>(std::max(0.0, stretch.from_s) * recording.rate_hz);
        const auto to = std::min(static_cast<std::size_t>(std::max(0.0, stretch.to_s) * recording.rate_hz),
                                 recording.samples.size());
        // A pulse a little shorter than a piece is still heard by one piece.
        if (to > at && to - at < length && to - at > length / 2 && at + length <= recording.samples.size())
            all.push_back(at);
        for (; at + length <= to; at += length) all.push_back(at);
    }
    if (all.size() <= most) return all;
    std::vector<std::size_t> some;
    for (std::size_t i = 0; i < most; ++i) some.push_back(all[i * all.size() / most]);
    return some;
}

Sounding whole(const Recording& recording) { return {0, recording.length_s()}; }

LineSpectrum pieceAt(Transform& transform, const Recording& recording, std::size_t begin)
{
    LineSpectrum piece{static_cast<double>(recording.rate_hz) / static_cast<double>(transform.length()), 1, {}};
    for (const float power : transform.power(&recording.samples[begin])) piece.power.push_back(double{power});
    return piece;
}

double top_hz(const LineSpectrum& spectrum)
{
    return std::min(most_hz, 0.95 * spectrum.bin_hz * static_cast<double>(spectrum.power.size()));
}

/// The middle of a peak at bin k, by the parabola through its logarithm and its neighbours'.
double peak_hz(const LineSpectrum& spectrum, std::size_t k)
{
    const double left = decibel(spectrum.power[k - 1]);
    const double middle = decibel(spectrum.power[k]);
    const double right = decibel(spectrum.power[k + 1]);
    const double bend = left - 2 * middle + right;
    const double shift = bend < 0 ? std::clamp(0.5 * (left - right) / bend, -0.5, 0.5) : 0;
    return (static_cast<double>(k) + shift) * spectrum.bin_hz;
}

} // namespace

double LineSpectrum::at(double frequency_hz) const
{
    double total = 0;
    const auto from = static_cast<std::size_t>(std::max(1.0, std::ceil(frequency_hz / bin_hz - 1.5)));
    for (std::size_t k = from; k < power.size() && static_cast<double>(k) <= frequency_hz / bin_hz + 1.5; ++k)
        total += power[k];
    return total;
}

double LineSpectrum::background(double frequency_hz) const
{
    const double aside_hz = std::max(200.0, frequency_hz / 6);
    std::vector<double> around;
    const auto from = static_cast<std::size_t>(std::max(2.0, (frequency_hz - aside_hz) / bin_hz));
    for (std::size_t k = from; k < power.size() && static_cast<double>(k) * bin_hz <= frequency_hz + aside_hz; ++k)
        around.push_back(power[k]);
    return median(around);
}

LineSpectrum lineSpectrum(const Recording& recording, std::span<const Sounding> stretches, std::size_t most)
{
    Transform transform(static_cast<std::size_t>(piece_s * recording.rate_hz));
    LineSpectrum mean{static_cast<double>(recording.rate_hz) / static_cast<double>(transform.length()), 0,
                      std::vector<double>(transform.length() / 2 + 1, 0)};
    for (const std::size_t begin : beginnings(recording, stretches, transform.length(), most)) {
        const auto power = transform.power(&recording.samples[begin]);
        for (std::size_t k = 0; k < power.size(); ++k) mean.power[k] += double{power[k]};
        ++mean.pieces;
    }
    return mean;
}

std::vector<Line> linesOf(const LineSpectrum& spectrum, std::size_t most)
{
    std::vector<Line> lines;
    const double top = top_hz(spectrum);
    for (std::size_t k = 2; k + 2 < spectrum.power.size(); ++k) {
        const double frequency_hz = static_cast<double>(k) * spectrum.bin_hz;
        const auto& power = spectrum.power;
        if (frequency_hz < least_hz || frequency_hz > top || power[k] <= 0) continue;
        if (power[k] < power[k - 1] || power[k] < power[k - 2] || power[k] <= power[k + 1] || power[k] <= power[k + 2])
            continue;
        lines.push_back({peak_hz(spectrum, k), power[k], 0});
    }
    std::ranges::sort(lines, std::greater{}, &Line::power);
    lines.resize(std::min(lines.size(), 4 * most));
    for (Line& line : lines)
        line.overBackground_db = decibel(line.power / std::max(spectrum.background(line.frequency_hz), 1e-30));
    std::erase_if(lines, [](const Line& line) { return line.overBackground_db < line_db; });
    lines.resize(std::min(lines.size(), most));
    return lines;
}

double shareWithLine(const Recording& recording, std::optional<double> line_hz)
{
    Transform transform(static_cast<std::size_t>(piece_s * recording.rate_hz));
    const Sounding all = whole(recording);
    std::size_t with = 0;
    const auto begins = beginnings(recording, {&all, 1}, transform.length(), 120);
    for (const std::size_t begin : begins) {
        const LineSpectrum piece = pieceAt(transform, recording, begin);
        if (line_hz) {
            const double background = std::max(piece.background(*line_hz), 1e-12);
            with += decibel(piece.at(*line_hz) / background) >= lineInPiece_db ? 1U : 0U;
            continue;
        }
        const auto lines = linesOf(piece, 1);
        with += !lines.empty() && lines[0].overBackground_db >= wandering_db && lines[0].power > 1e-12 ? 1U : 0U;
    }
    return begins.empty() ? 0 : static_cast<double>(with) / static_cast<double>(begins.size());
}

std::string_view wordOf(LowFrequency signal)
{
    switch (signal) {
    case LowFrequency::yes: return "yes";
    case LowFrequency::no: return "no";
    case LowFrequency::undecided: break;
    }
    return "undecided";
}

Tone toneOf(const Recording& recording, std::span<const Sounding> stretches)
{
    const LineSpectrum spectrum = lineSpectrum(recording, stretches, 100);
    const auto lines = linesOf(spectrum, 6);
    Tone tone;
    if (lines.empty()) return tone;
    tone.dominant_hz = lines[0].frequency_hz;
    const auto low = std::ranges::find_if(
        lines, [](const Line& line) { return line.frequency_hz >= 468 && line.frequency_hz <= 572; });
    // A microphone may weaken the fundamental below its own third or fifth; under any other line it is another sound's.
    const double times = low == lines.end() ? 0 : lines[0].frequency_hz / low->frequency_hz;
    const bool ownHarmonic = std::fabs(times - 1) < 0.02 || std::fabs(times - 3) < 0.05 || std::fabs(times - 5) < 0.08;
    if (!ownHarmonic || decibel(low->power / lines[0].power) < -20) {
        tone.lowFrequency = LowFrequency::no;
        return tone;
    }
    tone.fundamental_hz = low->frequency_hz;
    const double first = spectrum.at(low->frequency_hz);
    std::vector<bool> heard;
    std::vector<bool> wouldBeHeard;
    for (int n = 2; n <= 5; ++n) {
        const double frequency_hz = n * low->frequency_hz;
        const double power = spectrum.at(frequency_hz);
        const double noise = 4 * spectrum.background(frequency_hz);
        tone.harmonics_db.push_back(decibel(power / first));
        heard.push_back(power > 2 * noise && decibel(power / first) > -26);
        wouldBeHeard.push_back(frequency_hz < 0.45 * recording.rate_hz && decibel(2 * noise / first) < -24);
    }
    const bool odd = heard[1]; // the third
    const bool even = heard[0] && tone.harmonics_db[0] > -16 && tone.harmonics_db[0] > tone.harmonics_db[1] - 3;
    if (odd && !even) tone.lowFrequency = LowFrequency::yes;
    else if (even || wouldBeHeard[1]) tone.lowFrequency = LowFrequency::no;
    return tone;
}

} // namespace proofwalk::measure
