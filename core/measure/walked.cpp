// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/measure/walked.h"

#include <algorithm>
#include <cmath>

namespace proofwalk::measure {

Walked::Walked(const Errand& errand)
    : m_stops(errand.stops), m_step_s(errand.leg_s), m_home_s(errand.stops, 0),
      m_stay_s(errand.stay_s.empty() ? std::vector<double>(errand.stops, 0) : errand.stay_s),
      m_agreed_s(errand.stops, -1), m_before(errand.before), m_needs(errand.stops), m_groups(errand.together),
      m_group(errand.stops, -1), m_isLast(errand.stops, false)
{
    const auto viaPanel = [&](std::size_t stop) {
        return stop != 0 && !errand.panelAfter.empty() && errand.panelAfter[stop];
    };
    for (std::size_t from = 0; from < m_stops; ++from) {
        const double toPanel_s = errand.leg_s[from * m_stops];
        for (std::size_t to = 0; to < m_stops; ++to) {
            double& step = m_step_s[from * m_stops + to];
            if (viaPanel(from) && to != from) step = toPanel_s + errand.leg_s[to];
            step += m_stay_s[to];
        }
        if (errand.back || viaPanel(from)) m_home_s[from] = toPanel_s;
    }
    for (std::size_t a = 0; a < m_stops && m_symmetric; ++a)
        for (std::size_t b = 0; b < a && m_symmetric; ++b)
            m_symmetric = std::fabs(step_s(a, b) - m_stay_s[b] - step_s(b, a) + m_stay_s[a]) < 1e-9;
    for (const auto& [first, second] : errand.before) m_needs[second].push_back(first);
    for (std::size_t group = 0; group < m_groups.size(); ++group) {
        for (const std::size_t stop : m_groups[group]) m_group[stop] = static_cast<int>(group);
        m_largestGroup = std::max(m_largestGroup, m_groups[group].size());
    }
    for (const std::size_t stop : errand.last) m_isLast[stop] = true;
    for (std::size_t stop = 0; stop < m_stops; ++stop)
        if (m_isLast[stop]) m_last.push_back(stop);
    for (const Agreed& each : errand.agreed) m_agreed_s[each.stop] = each.at_s;
    m_hasAgreed = !errand.agreed.empty();
    m_hasRules = m_hasAgreed || !errand.before.empty() || !errand.together.empty() || !errand.last.empty();
}

double Walked::after_s(double time_s, std::size_t from, std::size_t to) const
{
    const double done_s = time_s + step_s(from, to);
    if (m_agreed_s[to] < 0) return done_s;
    const double arrived_s = done_s - m_stay_s[to];
    if (arrived_s > m_agreed_s[to] + 1e-9) return std::numeric_limits<double>::infinity();
    return m_agreed_s[to] + m_stay_s[to];
}

double Walked::time_s(const std::vector<std::size_t>& order, double* waiting_s) const
{
    double time_s = 0;
    double waited_s = 0;
    for (std::size_t i = 1; i < order.size(); ++i) {
        const double then_s = after_s(time_s, order[i - 1], order[i]);
        if (m_agreed_s[order[i]] >= 0) waited_s += std::max(0.0, then_s - time_s - step_s(order[i - 1], order[i]));
        time_s = then_s;
    }
    if (waiting_s != nullptr) *waiting_s = waited_s;
    return time_s + home_s(order.back());
}

std::optional<std::pair<std::string_view, std::size_t>> Walked::broken(const std::vector<std::size_t>& order) const
{
    std::vector<std::size_t> position(m_stops, 0);
    for (std::size_t i = 0; i < order.size(); ++i) position[order[i]] = i;
    for (std::size_t stop = 1; stop < m_stops; ++stop)
        for (const std::size_t first : m_needs[stop])
            if (position[first] > position[stop]) return {{"before", stop}};
    for (std::size_t i = 1; i + 1 < order.size(); ++i)
        if (m_isLast[order[i]] && !m_isLast[order[i + 1]]) return {{"last", order[i]}};
    for (const auto& group : m_groups) {
        const auto [low, high] = std::ranges::minmax(group, {}, [&](std::size_t stop) { return position[stop]; });
        if (position[high] - position[low] + 1 != group.size()) return {{"together", low}};
    }
    double time_s = 0;
    for (std::size_t i = 1; i < order.size(); ++i) {
        time_s = after_s(time_s, order[i - 1], order[i]);
        if (!std::isfinite(time_s)) return {{"agreed", order[i]}};
    }
    return std::nullopt;
}

std::size_t Walked::breaches(const std::vector<std::uint32_t>& position) const
{
    std::size_t count = 0;
    for (const auto& [first, second] : m_before) count += position[first] > position[second] ? 1U : 0U;
    for (const std::size_t stop : m_last) count += position[stop] < m_stops - m_last.size() ? 1U : 0U;
    for (const auto& group : m_groups) {
        std::size_t low = m_stops;
        std::size_t high = 0;
        for (const std::size_t stop : group) {
            low = std::min<std::size_t>(low, position[stop]);
            high = std::max<std::size_t>(high, position[stop]);
        }
        count += std::min(group.size(), high - low + 1 - group.size());
    }
    return count;
}

} // namespace proofwalk::measure
