// SPDX-License-Identifier: GPL-3.0-or-later
// An errand made ready to be asked many times: what a step costs, and whether an order obeys the rules.
#pragma once

#include "core/measure/order.h"

#include <limits>
#include <optional>
#include <span>
#include <string_view>
#include <utility>

namespace proofwalk::measure {

class Walked {
public:
    /// The errand must be one that checkErrand passes.
    explicit Walked(const Errand& errand);

    std::size_t stops() const { return m_stops; }
    bool symmetric() const { return m_symmetric; }
    bool hasRules() const { return m_hasRules; }
    bool hasAgreed() const { return m_hasAgreed; }
    std::size_t largestGroup() const { return m_largestGroup; }

    /// From done at `from` to done at `to`, waiting left out: the way, by the panel if `from` asks for it, and the
    /// stay.
    double step_s(std::size_t from, std::size_t to) const { return m_step_s[from * m_stops + to]; }
    /// From done at the last stop to the end of the walk.
    double home_s(std::size_t last) const { return m_home_s[last]; }
    double stay_s(std::size_t stop) const { return m_stay_s[stop]; }
    /// When `to` is done, if `from` was at that time; infinite if an agreed time is missed.
    double after_s(double time_s, std::size_t from, std::size_t to) const;
    /// The whole time of an order; infinite if an agreed time is missed.
    double time_s(const std::vector<std::size_t>& order, double* waiting_s = nullptr) const;

    /// Whether `to` may come right after `from`, of which `done` tells what was visited (with `from`).
    template <class Done>
    bool mayFollow(std::size_t from, std::size_t to, Done&& done) const
    {
        for (const std::size_t first : m_needs[to])
            if (!done(first)) return false;
        if (const int group = m_group[from]; group >= 0 && group != m_group[to])
            for (const std::size_t stop : m_groups[static_cast<std::size_t>(group)])
                if (!done(stop)) return false;
        if (!m_isLast[to]) return true;
        for (std::size_t stop = 1; stop < m_stops; ++stop)
            if (!m_isLast[stop] && !done(stop)) return false;
        return true;
    }

    /// The first rule an order breaks and the stop at which it does.
    std::optional<std::pair<std::string_view, std::size_t>> broken(const std::vector<std::size_t>& order) const;
    /// How often an order breaks a rule, agreed times apart; a group torn apart counts by how far, its size at most.
    /// `position` is where each stop stands.
    std::size_t breaches(const std::vector<std::uint32_t>& position) const;
    /// The agreed time of a stop; below zero: none.
    double agreed_s(std::size_t stop) const { return m_agreed_s[stop]; }
    /// The stops that belong together with one, itself among them; empty if it stands alone.
    std::span<const std::size_t> groupOf(std::size_t stop) const
    {
        if (m_group[stop] < 0) return {};
        return m_groups[static_cast<std::size_t>(m_group[stop])];
    }
    const std::vector<std::size_t>& needs(std::size_t stop) const { return m_needs[stop]; }

private:
    std::size_t m_stops;
    std::vector<double> m_step_s;
    std::vector<double> m_home_s;
    std::vector<double> m_stay_s;
    std::vector<double> m_agreed_s;
    std::vector<std::pair<std::size_t, std::size_t>> m_before;
    std::vector<std::vector<std::size_t>> m_needs;
    std::vector<std::vector<std::size_t>> m_groups;
    std::vector<int> m_group;
    std::vector<bool> m_isLast;
    std::vector<std::size_t> m_last;
    std::size_t m_largestGroup = 1;
    bool m_symmetric = true;
    bool m_hasRules = false;
    bool m_hasAgreed = false;
};

} // namespace proofwalk::measure
