// SPDX-License-Identifier: GPL-3.0-or-later
// Recordings made up with a known truth: a sounder's rhythm and tone, in noise, echo, clipping, at any rate and depth.
// The rhythms are written down here anew, from ISO 8201 and NFPA 720 as quoted on public pages; nothing here asks the code under test.
#pragma once

#include "core/measure/recording.h"

#include <algorithm>
#include <cmath>
#include <cstdint>
#include <numbers>
#include <string>
#include <vector>

namespace proofwalk::sounds {

/// A small generator with a seed, the same on every machine.
class Chance {
public:
    explicit Chance(std::uint64_t seed) : m_state(seed * 0x9E3779B97F4A7C15U + 0x1234567U) {}
    double unit()
    {
        m_state ^= m_state << 13U;
        m_state ^= m_state >> 7U;
        m_state ^= m_state << 17U;
        return static_cast<double>(m_state >> 11U) / 9007199254740992.0;
    }
    double within(double least, double most) { return least + (most - least) * unit(); }
    std::size_t below(std::size_t count) { return static_cast<std::size_t>(unit() * static_cast<double>(count)); }
    double normal() { return (unit() + unit() + unit() + unit() - 2) * 1.7320508; }

private:
    std::uint64_t m_state;
};

enum class Rhythm { three, four, steady, march, twoBeat, fourBeat, slow, quick, hammer, speech, silence };
enum class Voice { lowSquare, highSquare, sine, sweep, warble, bell };
enum class Noise { white, pink };

struct Made {
    Rhythm rhythm = Rhythm::three;
    Voice voice = Voice::highSquare;
    double frequency_hz = 3100;
    double tempo = 1; ///< all times are this much longer
    double snr_db = 40; ///< of the tone while it sounds over the noise, both over the whole band
    Noise noise = Noise::white;
    double echo_s = 0; ///< reverberation time; 0: none
    bool clipped = false;
    int rate_hz = 16000;
    double length_s = 16;
    double begin_s = 0.7; ///< when the first cycle begins; below 0: within a cycle
    double secondAfter_s = 0; ///< a second sounder of the same rhythm, so much later; 0: none
    double second_hz = 0; ///< its frequency; 0: nearly the same
    std::uint64_t seed = 1;
};

/// Whether a rhythm is on at a time of its cycle.
inline bool isOn(Rhythm rhythm, double at_s)
{
    const auto inCycle = [&](double cycle_s) { return at_s - cycle_s * std::floor(at_s / cycle_s); };
    switch (rhythm) {
    case Rhythm::three: {
        const double t = inCycle(4.0);
        return t < 0.5 || (t >= 1.0 && t < 1.5) || (t >= 2.0 && t < 2.5);
    }
    case Rhythm::four: {
        const double t = inCycle(5.7);
        return t < 0.7 && t - 0.2 * std::floor(t / 0.2) < 0.1;
    }
    case Rhythm::steady: return true;
    case Rhythm::march: return inCycle(1.0) < 0.5;
    case Rhythm::twoBeat: {
        const double t = inCycle(4.0);
        return t < 0.5 || (t >= 1.0 && t < 1.5);
    }
    case Rhythm::fourBeat: {
        const double t = inCycle(5.0);
        return t < 3.5 && t - std::floor(t) < 0.5;
    }
    case Rhythm::slow: return inCycle(3.0) < 1.0;
    case Rhythm::quick: return inCycle(0.25) < 0.125;
    default: break;
    }
    return false;
}

/// The tone at a time, -1 to 1.
inline double toneAt(Voice voice, double frequency_hz, double phase, double at_s)
{
    const double turn = phase - std::floor(phase);
    switch (voice) {
    case Voice::lowSquare:
    case Voice::highSquare: return turn < 0.5 ? 1 : -1;
    case Voice::bell: {
        const double strike = at_s * 12 - std::floor(at_s * 12);
        const double ring = std::sin(2 * std::numbers::pi * phase)
                          + 0.7 * std::sin(2 * std::numbers::pi * 1.58 * frequency_hz * at_s)
                          + 0.5 * std::sin(2 * std::numbers::pi * 2.24 * frequency_hz * at_s);
        return 0.45 * ring * (0.5 + 0.5 * std::exp(-4 * strike));
    }
    default: return std::sin(2 * std::numbers::pi * phase);
    }
}

inline double frequencyAt(const Made& made, double frequency_hz, double at_s)
{
    if (made.voice == Voice::sweep) return frequency_hz * (0.85 + 0.3 * (at_s * 3 - std::floor(at_s * 3)));
    if (made.voice == Voice::warble) return at_s * 4 - std::floor(at_s * 4) < 0.5 ? frequency_hz : 1.25 * frequency_hz;
    return frequency_hz;
}

inline void addSounder(const Made& made, double begin_s, double frequency_hz, double loud, std::vector<float>& into)
{
    double phase = 0;
    for (std::size_t i = 0; i < into.size(); ++i) {
        const double at_s = static_cast<double>(i) / made.rate_hz;
        phase += frequencyAt(made, frequency_hz, at_s) / made.rate_hz;
        if (at_s < begin_s || !isOn(made.rhythm, (at_s - begin_s) / made.tempo)) continue;
        into[i] += static_cast<float>(loud * toneAt(made.voice, frequency_hz, phase, at_s));
    }
}

/// Bursts with no rhythm: knocks of decaying noise, or syllables of a buzzing voice.
inline void addBursts(const Made& made, Chance& chance, std::vector<float>& into)
{
    const bool knocks = made.rhythm == Rhythm::hammer;
    double next_s = 0.3;
    while (next_s < made.length_s) {
        const double lasts_s = knocks ? 0.12 : chance.within(0.08, 0.35);
        const double pitch_hz = chance.within(90, 240);
        const double loud = chance.within(0.3, 1);
        for (auto i = static_cast<std::size_t>(next_s * made.rate_hz);
             i < std::min(into.size(), static_cast<std::size_t>((next_s + lasts_s) * made.rate_hz)); ++i) {
            const double t = static_cast<double>(i) / made.rate_hz - next_s;
            double value = 0;
            if (knocks) value = chance.normal() * std::exp(-40 * t);
            else
                for (int n = 1; n <= 12; ++n)
                    value += std::sin(2 * std::numbers::pi * n * pitch_hz * (1 + 0.15 * t) * t) / n
                           * (n == 4 || n == 9 ? 2.5 : 1);
            into[i] += static_cast<float>(0.5 * loud * value * (knocks ? 1 : std::sin(std::numbers::pi * t / lasts_s)));
        }
        next_s += lasts_s + (knocks ? chance.within(0.15, 1.6) : chance.within(0.03, 0.5));
    }
}

/// A room: what comes straight, and four combs with two all-pass filters after them (M. R. Schroeder, 1962).
inline void addEcho(double echo_s, int rate_hz, std::vector<float>& sound)
{
    std::vector<float> room(sound.size(), 0);
    for (const double delay_s : {0.0297, 0.0371, 0.0411, 0.0437}) {
        const auto delay = static_cast<std::size_t>(delay_s * rate_hz);
        const auto gain = static_cast<float>(std::pow(10, -3 * delay_s / echo_s));
        std::vector<float> comb(sound.size(), 0);
        for (std::size_t i = delay; i < sound.size(); ++i) {
            comb[i] = sound[i - delay] + gain * comb[i - delay];
            room[i] += 0.25F * comb[i];
        }
    }
    for (const double delay_s : {0.005, 0.0017}) {
        const auto delay = static_cast<std::size_t>(delay_s * rate_hz) + 1;
        std::vector<float> passed(sound.size(), 0);
        for (std::size_t i = 0; i < sound.size(); ++i) {
            const float before = i >= delay ? room[i - delay] + 0.7F * passed[i - delay] : 0;
            passed[i] = before - 0.7F * room[i];
        }
        room = std::move(passed);
    }
    for (std::size_t i = 0; i < sound.size(); ++i) sound[i] = 0.7F * sound[i] + 0.7F * room[i];
}

inline void addNoise(const Made& made, double loud, Chance& chance, std::vector<float>& sound)
{
    double slow[3] = {0, 0, 0}; // pink, nearly: three leaky sums of white (P. Kellett's short form)
    for (float& sample : sound) {
        const double white = chance.normal();
        slow[0] = 0.99765 * slow[0] + white * 0.0990460;
        slow[1] = 0.96300 * slow[1] + white * 0.2965164;
        slow[2] = 0.57000 * slow[2] + white * 1.0526913;
        const double pink = (slow[0] + slow[1] + slow[2] + white * 0.1848) / 2.4;
        sample += static_cast<float>(loud * (made.noise == Noise::white ? white : pink));
    }
}

inline measure::Recording make(const Made& made)
{
    Chance chance(made.seed);
    measure::Recording recording{made.rate_hz,
                                 std::vector<float>(static_cast<std::size_t>(made.length_s * made.rate_hz), 0)};
    const bool rhythmic = made.rhythm < Rhythm::hammer;
    if (rhythmic) addSounder(made, made.begin_s, made.frequency_hz, 0.25, recording.samples);
    else if (made.rhythm != Rhythm::silence) addBursts(made, chance, recording.samples);
    if (rhythmic && made.secondAfter_s > 0)
        addSounder(made, made.begin_s + made.secondAfter_s,
                   made.second_hz > 0 ? made.second_hz : 1.003 * made.frequency_hz, 0.2, recording.samples);
    if (made.echo_s > 0) addEcho(made.echo_s, made.rate_hz, recording.samples);
    const bool square = made.voice == Voice::lowSquare || made.voice == Voice::highSquare;
    const double tone = 0.25 * (square ? 1.0 : std::numbers::sqrt2 / 2);
    addNoise(made, tone * std::pow(10, -made.snr_db / 20), chance, recording.samples);
    if (made.clipped)
        for (float& sample : recording.samples) sample = std::clamp(3 * sample, -0.5F, 0.5F);
    return recording;
}

} // namespace proofwalk::sounds
