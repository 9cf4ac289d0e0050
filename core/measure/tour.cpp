// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/measure/tour.h"

#include "core/measure/descent.h"
#include "core/measure/firstway.h"

#include <algorithm>
#include <optional>

namespace proofwalk::measure {
namespace {

constexpr std::size_t exactStops = 13;
constexpr std::size_t widest = 30; ///< how far a disturbance reaches along the order

class Search {
public:
    Search(const Walked& walked, const std::vector<std::size_t>& order, const Effort& effort)
        : m_walked(walked), m_effort(effort), m_chance(effort.seed)
    {
        m_descent.emplace(walked, order);
    }
    Route run()
    {
        keep(); // obeys every rule; what a descent comes to may not
        m_descent->descend();
        if (m_descent->allowed()) keep();
        bool goOn = tell();
        const std::size_t stops = m_walked.stops();
        const std::size_t rounds = m_effort.rounds > 0 ? m_effort.rounds : usualRounds(stops, m_walked.hasRules());
        // A little worse is accepted at first and ever less, or the search stays in the first valley.
        const double most = 0.25 * m_best / static_cast<double>(stops);
        for (std::size_t round = 0; goOn && stops > 3 && round < rounds; ++round) {
            const double left = 1 - static_cast<double>(round) / static_cast<double>(rounds);
            const double room = most * left * left * static_cast<double>(m_chance.below(1000)) / 1000;
            // Rules that are broken for long get dearer, or the search would stay beyond them; the second half obeys.
            m_descent->scaleFine(m_descent->allowed() ? 0.98 : 1.1);
            if (2 * round >= rounds) m_descent->scaleFine(1e6);
            if (2 * round >= rounds && !m_descent->allowed()) m_descent.emplace(m_walked, m_kept);
            const double before = m_descent->value();
            m_descent->mark();
            disturb();
            m_descent->descend();
            if (m_descent->value() > before + room + tiny) m_descent->undo();
            else if (m_descent->allowed() && m_descent->value() < m_best - tiny) {
                keep();
                goOn = tell();
            }
        }
        return route();
    }

private:
    static constexpr double tiny = 1e-9;
    /// Changes the places of two neighbouring stretches: no descent by turning takes that back in one step.
    void disturb()
    {
        const std::size_t stops = m_walked.stops();
        // Now and then anywhere: the stair that is taken first is not mended from nearby.
        const bool far = m_chance.below(3) == 0;
        const std::size_t reach = far ? stops - 1 : std::min(widest, stops - 1);
        const std::size_t from = 1 + m_chance.below(stops - reach);
        const std::size_t to = from + reach - 1;
        std::size_t first = from + m_chance.below(reach);
        std::size_t second = from + m_chance.below(reach);
        std::size_t third = from + m_chance.below(reach);
        if (first > second) std::swap(first, second);
        if (second > third) std::swap(second, third);
        if (first > second) std::swap(first, second);
        if (first == second || second == third || third > to) return;
        m_descent->exchange(first, second, third);
    }
    Route route() const
    {
        Route route{m_kept, 0, 0, false};
        route.time_s = m_walked.time_s(route.order, &route.waiting_s);
        return route;
    }
    void keep()
    {
        m_best = m_descent->value();
        m_kept = m_descent->order();
    }
    bool tell() const { return !m_effort.better || m_effort.better(route()); }

    const Walked& m_walked;
    std::optional<Descent> m_descent;
    const Effort& m_effort;
    Chance m_chance;
    double m_best = 0;
    std::vector<std::size_t> m_kept;
};

} // namespace

std::size_t usualRounds(std::size_t stops, bool rules)
{
    return rules ? std::max<std::size_t>(4000, 30 * stops) : std::max<std::size_t>(6000, 60 * stops);
}

Result<Route> goodOrder(const Errand& errand, const Effort& effort)
{
    if (auto ok = checkErrand(errand); !ok) return passOn(ok);
    if (errand.stops <= exactStops) {
        auto best = bestOrder(errand);
        if (best && effort.better) effort.better(*best);
        return best;
    }
    const Walked walked(errand);
    auto first = firstWay(walked, effort.seed);
    if (!first) return passOn(first);
    return Search(walked, *first, effort).run();
}

} // namespace proofwalk::measure
