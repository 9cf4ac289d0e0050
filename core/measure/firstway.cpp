// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/measure/firstway.h"

#include <algorithm>
#include <cmath>

namespace proofwalk::measure {
namespace {

constexpr int tries = 60;
constexpr double never = std::numeric_limits<double>::infinity();

/// The latest time at which each stop may be done: its own agreed time, or that of a stop that needs it, less the way.
std::vector<double> latest(const Walked& walked)
{
    std::vector<double> latest_s(walked.stops(), never);
    for (std::size_t stop = 1; stop < walked.stops(); ++stop)
        if (walked.agreed_s(stop) >= 0) latest_s[stop] = walked.agreed_s(stop);
    for (bool changed = true; changed;) {
        changed = false;
        for (std::size_t stop = 1; stop < walked.stops(); ++stop)
            for (const std::size_t first : walked.needs(stop))
                if (const double by_s = latest_s[stop] - walked.step_s(first, stop); by_s < latest_s[first] - 1e-9) {
                    latest_s[first] = by_s;
                    changed = true;
                }
    }
    return latest_s;
}

class Way {
public:
    Way(const Walked& walked, const std::vector<double>& latest_s, Chance& chance, double spread)
        : m_walked(walked), m_latest_s(latest_s), m_chance(chance), m_spread(spread), m_done(walked.stops(), false)
    {
        m_done[0] = true;
    }
    bool find()
    {
        while (m_order.size() < m_walked.stops()) {
            const std::size_t next = choose();
            if (next == 0) return false;
            m_time_s = m_walked.after_s(m_time_s, m_order.back(), next);
            m_done[next] = true;
            m_order.push_back(next);
        }
        return true;
    }
    std::vector<std::size_t> take() { return std::move(m_order); }

private:
    bool leavesTime(std::size_t next, double then_s) const
    {
        if (!m_walked.hasAgreed()) return true;
        for (std::size_t stop = 1; stop < m_walked.stops(); ++stop)
            if (!m_done[stop] && stop != next && m_latest_s[stop] < never
                && then_s + m_walked.step_s(next, stop) > m_latest_s[stop])
                return false;
        return true;
    }
    /// A group once begun is gone through: what its stops need must be done, or stand in it.
    bool groupIsReady(std::size_t next) const
    {
        const auto group = m_walked.groupOf(next);
        for (const std::size_t stop : group)
            for (const std::size_t first : m_walked.needs(stop))
                if (!m_done[first] && std::ranges::find(group, first) == group.end()) return false;
        return true;
    }
    /// The next stop; 0: none may come.
    std::size_t choose()
    {
        std::size_t best = 0;
        double least = never;
        for (std::size_t stop = 1; stop < m_walked.stops(); ++stop) {
            if (m_done[stop]) continue;
            if (!m_walked.mayFollow(m_order.back(), stop, [&](std::size_t each) { return m_done[each]; })) continue;
            if (!groupIsReady(stop)) continue;
            const double then_s = m_walked.after_s(m_time_s, m_order.back(), stop);
            if (!std::isfinite(then_s) || then_s > m_latest_s[stop] + 1e-6 + m_walked.step_s(m_order.back(), stop))
                continue;
            const double wait = 1 + m_spread * static_cast<double>(m_chance.below(1000)) / 1000;
            if (const double cost = (then_s - m_time_s) * wait; cost < least && leavesTime(stop, then_s)) {
                least = cost;
                best = stop;
            }
        }
        return best;
    }

    const Walked& m_walked;
    const std::vector<double>& m_latest_s;
    Chance& m_chance;
    double m_spread;
    std::vector<bool> m_done;
    std::vector<std::size_t> m_order{0};
    double m_time_s = 0;
};

} // namespace

Result<std::vector<std::size_t>> firstWay(const Walked& walked, std::uint64_t seed)
{
    const auto latest_s = latest(walked);
    Chance chance(seed);
    for (int i = 0; i < tries; ++i) {
        Way way(walked, latest_s, chance, 0.2 * i);
        if (way.find()) return way.take();
        if (!walked.hasRules()) break;
    }
    return failure("measure.route-not-found", "");
}

} // namespace proofwalk::measure
