// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/measure/order.h"

#include "core/measure/inputs.h"
#include "core/measure/walked.h"

#include <algorithm>
#include <limits>
#include <numeric>

namespace proofwalk::measure {
namespace {

constexpr std::size_t mostStops = 5000;
constexpr std::size_t mostExact = 13;
constexpr double longest_s = 1e7;

Result<void> checkStop(const char* input, const Errand& errand, std::size_t stop)
{
    return checkWithin(input, static_cast<double>(stop), 1, static_cast<double>(errand.stops) - 1);
}

Result<void> checkSizes(const Errand& errand)
{
    if (auto ok = checkWithin("stops", static_cast<double>(errand.stops), 1, mostStops); !ok) return ok;
    const auto all = static_cast<double>(errand.stops);
    if (auto ok = checkWithin("leg_s", static_cast<double>(errand.leg_s.size()), all * all, all * all); !ok) return ok;
    for (const double leg : errand.leg_s)
        if (auto ok = checkWithin("leg_s", leg, 0, longest_s); !ok) return ok;
    const auto check = [&](const char* input, std::size_t size) -> Result<void> {
        return size == 0 ? Result<void>{} : checkWithin(input, static_cast<double>(size), all, all);
    };
    if (auto ok = check("stay_s", errand.stay_s.size()); !ok) return ok;
    if (auto ok = check("panel_after", errand.panelAfter.size()); !ok) return ok;
    for (const double stay : errand.stay_s)
        if (auto ok = checkWithin("stay_s", stay, 0, longest_s); !ok) return ok;
    return {};
}

Result<void> checkRules(const Errand& errand)
{
    for (const auto& [first, second] : errand.before) {
        if (auto ok = checkStop("before", errand, first); !ok) return ok;
        if (auto ok = checkStop("before", errand, second); !ok) return ok;
    }
    std::vector<int> groups(errand.stops, 0);
    for (const auto& group : errand.together) {
        if (group.empty()) return outOfRange("together", 0, "one stop or more");
        for (const std::size_t stop : group) {
            if (auto ok = checkStop("together", errand, stop); !ok) return ok;
            // A stop in two groups would tie both into one; say so rather than guess.
            if (++groups[stop] > 1)
                return outOfRange("together", static_cast<double>(stop), "each stop in one group at most");
        }
    }
    for (const std::size_t stop : errand.last)
        if (auto ok = checkStop("last", errand, stop); !ok) return ok;
    for (const Agreed& each : errand.agreed) {
        if (auto ok = checkStop("agreed", errand, each.stop); !ok) return ok;
        if (auto ok = checkWithin("agreed_s", each.at_s, 0, longest_s); !ok) return ok;
    }
    return {};
}

/// Takes away what has nothing left before it; what remains goes round in a circle.
Result<void> checkCircles(const Errand& errand)
{
    std::vector<std::size_t> waiting(errand.stops, 0);
    for (const auto& [first, second] : errand.before) ++waiting[second];
    std::vector<std::size_t> free;
    for (std::size_t stop = 0; stop < errand.stops; ++stop)
        if (waiting[stop] == 0) free.push_back(stop);
    for (std::size_t done = 0; done < free.size(); ++done)
        for (const auto& [first, second] : errand.before)
            if (first == free[done] && --waiting[second] == 0) free.push_back(second);
    if (free.size() == errand.stops) return {};
    const auto stuck = std::ranges::find_if(waiting, [](std::size_t count) { return count > 0; });
    return failure("measure.route-circle", "", {{"found", std::int64_t{stuck - waiting.begin()}}});
}

/// Held and Karp's table: the least time at which a set of stops is done, ending at one of them. Earlier is never
/// worse,
/// since who comes early may wait; so one value a set and end is enough.
class Table {
public:
    explicit Table(const Errand& errand)
        : m_walked(errand), m_count(errand.stops - 1), m_time(m_count << m_count, never), m_from(m_time.size(), 0)
    {
    }
    Result<Route> best()
    {
        for (std::size_t end = 0; end < m_count; ++end) step(0, none, 0, end);
        for (std::size_t set = 1; set < all(); ++set)
            for (std::size_t end = 0; end < m_count; ++end)
                if (m_time[at(set, end)] < never)
                    for (std::size_t next = 0; next < m_count; ++next)
                        if ((set >> next & 1U) == 0) step(set, end, m_time[at(set, end)], next);
        std::size_t last = none;
        double least = never;
        for (std::size_t end = 0; end < m_count; ++end)
            if (const double time = m_time[at(all(), end)] + m_walked.home_s(end + 1); time < least) {
                least = time;
                last = end;
            }
        if (last == none) return failure("measure.route-none", "");
        Route route{{}, least, 0, true};
        for (std::size_t set = all(), end = last; set != 0;) {
            route.order.push_back(end + 1);
            const std::size_t from = m_from[at(set, end)];
            set &= ~(std::size_t{1} << end);
            end = from;
        }
        route.order.push_back(0);
        std::ranges::reverse(route.order);
        return route;
    }

private:
    static constexpr std::size_t none = 99;
    static constexpr double never = std::numeric_limits<double>::infinity();
    std::size_t all() const { return (std::size_t{1} << m_count) - 1; }
    std::size_t at(std::size_t set, std::size_t end) const { return set * m_count + end; }
    void step(std::size_t set, std::size_t end, double time_s, std::size_t next)
    {
        const std::size_t from = end == none ? 0 : end + 1;
        const auto done = [&](std::size_t stop) { return stop == 0 || (set >> (stop - 1) & 1U) != 0; };
        if (!m_walked.mayFollow(from, next + 1, done)) return;
        const double then_s = m_walked.after_s(time_s, from, next + 1);
        double& known = m_time[at(set | std::size_t{1} << next, next)];
        if (then_s >= known) return;
        known = then_s;
        m_from[at(set | std::size_t{1} << next, next)] = end == none ? 0 : end;
    }

    Walked m_walked;
    std::size_t m_count;
    std::vector<double> m_time;
    std::vector<std::size_t> m_from;
};

} // namespace

Result<void> checkErrand(const Errand& errand)
{
    if (auto ok = checkSizes(errand); !ok) return ok;
    if (auto ok = checkRules(errand); !ok) return ok;
    return checkCircles(errand);
}

Result<Route> timeOf(const Errand& errand, const std::vector<std::size_t>& order)
{
    if (auto ok = checkErrand(errand); !ok) return passOn(ok);
    std::vector<bool> seen(errand.stops, false);
    const bool begins = order.size() == errand.stops && order.front() == 0;
    for (const std::size_t stop : order) {
        if (!begins || stop >= errand.stops || seen[stop])
            return failure("measure.route-order", "", {{"found", static_cast<std::int64_t>(stop)}});
        seen[stop] = true;
    }
    if (order.size() != errand.stops) return failure("measure.route-order", "", {{"found", std::int64_t{0}}});
    const Walked walked(errand);
    if (const auto broken = walked.broken(order))
        return failure("measure.route-breaks", "",
                       {{"rule", std::string(broken->first)}, {"found", static_cast<std::int64_t>(broken->second)}});
    Route route{order, 0, 0, false};
    route.time_s = walked.time_s(order, &route.waiting_s);
    return route;
}

Result<Route> bestOrder(const Errand& errand)
{
    if (auto ok = checkErrand(errand); !ok) return passOn(ok);
    if (auto ok = checkWithin("stops", static_cast<double>(errand.stops), 1, mostExact); !ok) return passOn(ok);
    if (errand.stops == 1) return Route{{0}, 0, 0, true};
    auto best = Table(errand).best();
    if (!best) return best;
    auto route = timeOf(errand, best->order);
    if (!route) return route;
    route->exact = true;
    return route;
}

std::vector<std::size_t> nearestNeighbour(const Errand& errand)
{
    std::vector<std::size_t> order{0};
    std::vector<bool> seen(errand.stops, false);
    seen[0] = true;
    while (order.size() < errand.stops) {
        const double* const legs = &errand.leg_s[order.back() * errand.stops];
        std::size_t nearest = 0;
        for (std::size_t stop = 1; stop < errand.stops; ++stop)
            if (!seen[stop] && (nearest == 0 || legs[stop] < legs[nearest])) nearest = stop;
        seen[nearest] = true;
        order.push_back(nearest);
    }
    return order;
}

} // namespace proofwalk::measure
