// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/measure/pattern.h"

#include "core/measure/inputs.h"

#include <algorithm>
#include <cmath>

namespace proofwalk::measure {
namespace {

constexpr double recognised = 0.2; // common practice
constexpr double held = 0.1;       // [1], [2]
constexpr double rounding_s = 1e-9;
constexpr double steadyLeast_s = 6.5;
constexpr double day_s = 86400;

double median(std::vector<double> values)
{
    const auto middle = values.begin() + static_cast<std::ptrdiff_t>(values.size() / 2);
    std::ranges::nth_element(values, middle);
    return *middle;
}

bool near(double found, double wanted, double share)
{
    return std::fabs(found - wanted) <= share * wanted + rounding_s;
}

Result<void> check(std::span<const Sounding> soundings)
{
    double before = 0;
    for (const Sounding& each : soundings) {
        if (auto ok = checkWithin("from_s", each.from_s, before, day_s); !ok) return ok;
        if (auto ok = checkWithin("to_s", each.to_s, each.from_s, day_s); !ok) return ok;
        before = each.to_s;
    }
    return {};
}

/// Finds the cycles of one shape among beginnings.
class Cycles {
public:
    Cycles(const PatternShape& shape, std::span<const Sounding> soundings)
        : m_shape(shape), m_soundings(soundings), m_belongs(soundings.size(), false)
    {
        for (std::size_t i = 0; i < soundings.size();) i += wholeAt(i) ? pulses() : 1;
        if (m_starts.size() < 2) return;
        std::vector<double> between;
        for (std::size_t k = 0; k + 1 < m_starts.size(); ++k) {
            const double apart = begin(m_starts[k + 1]) - begin(m_starts[k]);
            between.push_back(apart / std::max(1.0, std::round(apart / m_shape.cycle_s())));
        }
        m_period_s = median(between);
        fillBetween();
    }
    std::size_t whole() const { return m_starts.size(); }
    std::size_t seen() const { return m_seen; }
    double period_s() const { return m_period_s; }
    bool missing() const { return m_missing; }
    double explained() const
    {
        return static_cast<double>(std::ranges::count(m_belongs, true)) / static_cast<double>(m_belongs.size());
    }
    PatternTimes times() const
    {
        PatternTimes times;
        for (const std::size_t start : m_starts)
            for (std::size_t i = start; i < start + pulses(); ++i) {
                times.pulses_s.push_back(m_soundings[i].to_s - m_soundings[i].from_s);
                if (i + 1 == m_soundings.size()) break;
                const double off_s = begin(i + 1) - m_soundings[i].to_s;
                if (i + 1 < start + pulses()) times.gaps_s.push_back(off_s);
                else if (isRest(i)) times.pauses_s.push_back(off_s);
            }
        return times;
    }

private:
    std::size_t pulses() const { return static_cast<std::size_t>(m_shape.pulses); }
    double begin(std::size_t i) const { return m_soundings[i].from_s; }
    /// Whether a rest of the right length follows sounding i.
    bool isRest(std::size_t i) const
    {
        const double apart = begin(i + 1) - begin(i);
        return apart >= m_shape.rest_s * (1 - recognised) - rounding_s
            && apart <= m_shape.restMost_s * (1 + recognised) + rounding_s;
    }
    /// A cycle is whole if its steps are right and a rest stands on both sides, or an end of the row on one.
    bool wholeAt(std::size_t i)
    {
        const std::size_t last = i + pulses() - 1;
        if (last >= m_soundings.size()) return false;
        for (std::size_t k = i; k < last; ++k)
            if (!near(begin(k + 1) - begin(k), m_shape.step_s, recognised)) return false;
        const bool first = i == 0;
        const bool end = last + 1 == m_soundings.size();
        if ((first && end) || (!first && !isRest(i - 1) && !followsGap(i)) || (!end && !isRest(last))) return false;
        m_starts.push_back(i);
        for (std::size_t k = i; k <= last; ++k) m_belongs[k] = true;
        return true;
    }
    /// After a cycle that lost its last pulse the rest seems a step longer.
    bool followsGap(std::size_t i) const
    {
        return !m_starts.empty()
            && near(std::remainder(begin(i) - begin(m_starts.back()), m_shape.cycle_s()) + m_shape.cycle_s(),
                    m_shape.cycle_s(), 0.05);
    }
    /// The cycles that should stand between, before and after the whole ones, and what of them is there.
    void fillBetween()
    {
        m_seen = m_starts.size();
        for (std::size_t k = 0; k + 1 < m_starts.size(); ++k) {
            const double apart = begin(m_starts[k + 1]) - begin(m_starts[k]);
            const auto steps = static_cast<int>(std::lround(apart / m_period_s));
            for (int slot = 1; slot < steps; ++slot)
                if (matched(begin(m_starts[k]) + slot * apart / steps) > 0) {
                    ++m_seen;
                    m_missing = true;
                }
        }
        matched(begin(m_starts.front()) - m_period_s); // cut off by the ends of the row
        matched(begin(m_starts.back()) + m_period_s);
    }
    /// How many pulses of a cycle that begins at that time are there.
    int matched(double start_s)
    {
        int count = 0;
        for (int pulse = 0; pulse < m_shape.pulses; ++pulse)
            for (std::size_t i = 0; i < m_soundings.size(); ++i)
                if (!m_belongs[i]
                    && std::fabs(begin(i) - start_s - pulse * m_shape.step_s) <= recognised * m_shape.step_s) {
                    m_belongs[i] = true;
                    ++count;
                }
        return count;
    }

    PatternShape m_shape;
    std::span<const Sounding> m_soundings;
    std::vector<bool> m_belongs;
    std::vector<std::size_t> m_starts;
    double m_period_s = 0;
    std::size_t m_seen = 0;
    bool m_missing = false;
};

/// The shortest rhythm that repeats through all intervals within 10 %, at least twice over.
std::optional<double> rhythm(const std::vector<double>& intervals)
{
    for (std::size_t length = 1; 2 * length <= intervals.size() + 1 && length < intervals.size(); ++length) {
        bool repeats = true;
        for (std::size_t i = 0; repeats && i + length < intervals.size(); ++i)
            repeats = near(intervals[i + length], intervals[i], held);
        if (!repeats) continue;
        double sum = 0;
        for (std::size_t i = 0; i < length; ++i) sum += intervals[i];
        return sum;
    }
    return std::nullopt;
}

} // namespace

std::string_view wordOf(Pattern pattern)
{
    switch (pattern) {
    case Pattern::temporalThree: return "temporal-three";
    case Pattern::temporalFour: return "temporal-four";
    case Pattern::steady: return "steady";
    case Pattern::pulsed: return "pulsed";
    case Pattern::none: return "none";
    case Pattern::undecided: break;
    }
    return "undecided";
}

std::string_view wordOf(PatternFault fault)
{
    switch (fault) {
    case PatternFault::pulse: return "pulse";
    case PatternFault::gap: return "gap";
    case PatternFault::pause: return "pause";
    case PatternFault::missingPulse: return "missing-pulse";
    case PatternFault::extraPulse: break;
    }
    return "extra-pulse";
}

PatternShape shapeOf(Pattern pattern)
{
    if (pattern == Pattern::temporalThree) return {3, 1.0, 2.0, 2.0, 0.5, 1.5};
    if (pattern == Pattern::temporalFour) return {4, 0.2, 5.1, 5.2, 0.1, 5.0};
    return {};
}

Result<PatternSight> sightOfPattern(std::span<const Sounding> soundings)
{
    if (auto ok = check(soundings); !ok) return passOn(ok);
    PatternSight sight;
    for (std::size_t i = 0; i + 1 < soundings.size(); ++i)
        sight.onsetIntervals_s.push_back(soundings[i + 1].from_s - soundings[i].from_s);
    if (soundings.size() == 1 && soundings[0].to_s - soundings[0].from_s >= steadyLeast_s) {
        sight.pattern = Pattern::steady;
        sight.explained = 1;
        return sight;
    }
    for (const Pattern pattern : {Pattern::temporalThree, Pattern::temporalFour}) {
        const Cycles cycles(shapeOf(pattern), soundings);
        if (cycles.whole() < 2 || cycles.explained() < 0.75 || 2 * cycles.whole() < cycles.seen()) continue;
        sight.pattern = pattern;
        sight.period_s = cycles.period_s();
        sight.cyclesSeen = static_cast<int>(cycles.seen());
        sight.cyclesWhole = static_cast<int>(cycles.whole());
        sight.explained = cycles.explained();
        sight.times = cycles.times();
        sight.missingPulse = cycles.missing();
        sight.extraPulse = cycles.explained() < 1;
        return sight;
    }
    sight.period_s = rhythm(sight.onsetIntervals_s);
    if (sight.period_s) {
        sight.pattern = Pattern::pulsed;
        sight.explained = 1;
    }
    return sight;
}

Result<PatternDurations> judgeDurations(Pattern pattern, const PatternTimes& times, double decay_s,
                                        double uncertainty_s)
{
    if (auto ok = checkWithin("decay_s", decay_s, 0, day_s); !ok) return passOn(ok);
    if (auto ok = checkWithin("uncertainty_s", uncertainty_s, 0, day_s); !ok) return passOn(ok);
    const PatternShape shape = shapeOf(pattern);
    if (shape.pulses == 0 || times.pulses_s.empty())
        return outOfRange("pulses_s", static_cast<double>(times.pulses_s.size()),
                          "one or more, of temporal-three or temporal-four");
    PatternDurations judged;
    bool close = false;
    const auto judge = [&](const std::vector<double>& found, double wanted_s, double by_s, PatternFault fault) {
        double worst_s = 0;
        for (const double each : found) worst_s = std::max(worst_s, std::fabs(each + by_s - wanted_s));
        const double room_s = held * wanted_s + rounding_s;
        if (worst_s > room_s + uncertainty_s) judged.faults.push_back(fault);
        else close = close || worst_s > room_s - uncertainty_s;
    };
    judge(times.pulses_s, shape.pulse_s, -decay_s, PatternFault::pulse);
    judge(times.gaps_s, shape.step_s - shape.pulse_s, decay_s, PatternFault::gap);
    judge(times.pauses_s, shape.pause_s, decay_s, PatternFault::pause);
    if (!judged.faults.empty()) judged.conform = false;
    else if (!close) judged.conform = true;
    return judged;
}

} // namespace proofwalk::measure
