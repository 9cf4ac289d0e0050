// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/measure/pulses.h"

#include <algorithm>
#include <cmath>

namespace proofwalk::measure {
namespace {

constexpr double leastContrast_db = 5;
constexpr double shortest_s = 0.03;
constexpr double half_db = 3.0103;

/// A stretch of values that is on, by index: begun at the rise, ended at the fall.
struct Stretch {
    std::size_t from = 0;
    std::size_t to = 0;
};

/// Turns of the level: on after a rise by `turn_db` over the lowest since the last fall, off after such a fall.
std::vector<Stretch> turns(const std::vector<float>& level, double turn_db)
{
    std::vector<Stretch> stretches;
    const auto turn = static_cast<float>(turn_db);
    float lowest = level.front();
    float highest = level.front();
    bool on = false;
    bool begun = false; // on from the start, as far as is known
    for (std::size_t i = 0; i < level.size(); ++i) {
        lowest = std::min(lowest, level[i]);
        highest = std::max(highest, level[i]);
        if (!on && level[i] >= lowest + turn) {
            stretches.push_back({i, level.size() - 1});
            on = true;
            highest = level[i];
        } else if ((on || !begun) && level[i] <= highest - turn) {
            if (!on) stretches.push_back({0, i});
            stretches.back().to = i;
            on = false;
            lowest = level[i];
        } else {
            continue;
        }
        begun = true;
    }
    return stretches;
}

/// Where, as a fraction of an index, the level passes `wanted` between index i and i + 1.
double crossing(const std::vector<float>& level, std::size_t i, double wanted)
{
    const double step = double{level[i + 1]} - double{level[i]};
    return static_cast<double>(i) + (step == 0 ? 0 : std::clamp((wanted - double{level[i]}) / step, 0.0, 1.0));
}

/// Measures the edges of one stretch.
class Edges {
public:
    Edges(const Level& level, const Stretch& stretch, std::size_t before, std::size_t after)
        : m_level(level), m_values(level.level_db), m_from(stretch.from), m_to(stretch.to), m_before(before),
          m_after(after)
    {
        std::vector<float> on(m_values.begin() + static_cast<std::ptrdiff_t>(m_from),
                              m_values.begin() + static_cast<std::ptrdiff_t>(m_to) + 1);
        const auto at = on.begin() + static_cast<std::ptrdiff_t>(on.size() * 6 / 10);
        std::ranges::nth_element(on, at);
        m_plateau_db = double{*at};
    }
    Pulse pulse() const
    {
        Pulse pulse;
        const double half = m_plateau_db - half_db;
        std::size_t rise = m_from;
        while (rise > m_before && double{m_values[rise]} > half) --rise;
        while (rise + 1 < m_to && double{m_values[rise + 1]} < half) ++rise;
        pulse.from_s = time(m_from == 0 ? 0 : crossing(m_values, rise, half));
        std::size_t fall = m_to;
        while (fall > rise + 1 && double{m_values[fall - 1]} < half) --fall;
        pulse.to_s = time(m_to + 1 == m_values.size() ? static_cast<double>(m_to) : crossing(m_values, fall - 1, half));
        pulse.decay_s = decay_s(fall, half);
        pulse.level_db = m_plateau_db - m_level.floor_db;
        return pulse;
    }

private:
    /// The middle of piece i lies half a piece after its beginning.
    double time(double index) const { return (index + 0.5) * m_level.frame_s; }
    /// From how long the level takes to fall further: a sharp end falls as fast as the running mean lets it.
    double decay_s(std::size_t fall, double half) const
    {
        double lowest = half;
        for (std::size_t i = fall; i < m_after; ++i) lowest = std::min(lowest, double{m_values[i]});
        const double depth = std::min(10.0, 0.6 * (half - lowest));
        if (depth < 2) return 0;
        std::size_t further = fall;
        while (further<m_after&& double{m_values[further]}> half - depth) ++further;
        const double taken_s = static_cast<double>(further - fall) * m_level.frame_s;
        const double sharp_s = m_level.smooth_s * (0.5 - std::pow(10, -(half_db + depth) / 10)) + m_level.frame_s;
        return std::max(0.0, taken_s - sharp_s) / depth * half_db;
    }

    const Level& m_level;
    const std::vector<float>& m_values;
    std::size_t m_from;
    std::size_t m_to;
    std::size_t m_before;
    std::size_t m_after;
    double m_plateau_db = 0;
};

/// Joins what is parted by less than the shortest gap, drops what is shorter than the shortest pulse.
std::vector<Pulse> tidied(const std::vector<Pulse>& pulses)
{
    std::vector<Pulse> joined;
    for (const Pulse& pulse : pulses) {
        if (!joined.empty() && pulse.from_s - joined.back().to_s < shortest_s) {
            joined.back().to_s = std::max(joined.back().to_s, pulse.to_s);
            joined.back().decay_s = pulse.decay_s;
            joined.back().level_db = std::max(joined.back().level_db, pulse.level_db);
        } else {
            joined.push_back(pulse);
        }
    }
    std::erase_if(joined, [](const Pulse& pulse) { return pulse.to_s - pulse.from_s < shortest_s; });
    return joined;
}

} // namespace

std::vector<Pulse> pulsesOf(const Level& level, double turn_db)
{
    if (level.contrast_db < leastContrast_db || level.level_db.size() < 8) return {};
    // What dips under the floor or shoots over the top is chance, and would make turns of its own.
    std::vector<float> clipped = level.level_db;
    const auto least = static_cast<float>(level.floor_db);
    const auto most = static_cast<float>(level.floor_db + level.contrast_db);
    for (float& value : clipped) value = std::clamp(value, least, most);
    std::vector<Stretch> stretches = turns(clipped, std::min(turn_db, 0.4 * level.contrast_db));
    std::erase_if(stretches, [&](const Stretch& stretch) {
        const auto top = std::max_element(clipped.begin() + static_cast<std::ptrdiff_t>(stretch.from),
                                          clipped.begin() + static_cast<std::ptrdiff_t>(stretch.to) + 1);
        return double{*top} < level.floor_db + 0.5 * level.contrast_db;
    });
    std::vector<Pulse> pulses;
    for (std::size_t i = 0; i < stretches.size(); ++i) {
        const std::size_t before = i == 0 ? 0 : stretches[i - 1].to;
        const std::size_t after = i + 1 < stretches.size() ? stretches[i + 1].from : clipped.size() - 1;
        pulses.push_back(Edges(level, stretches[i], before, after).pulse());
    }
    return tidied(pulses);
}

} // namespace proofwalk::measure
