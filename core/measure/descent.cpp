// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/measure/descent.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <span>

namespace proofwalk::measure {
namespace {

constexpr double tiny = 1e-7;
constexpr std::size_t nearest = 5;
constexpr std::size_t nearInAll = 9;
constexpr std::size_t lookedAt = 80;
constexpr double wayShare = 0.01;

} // namespace

Descent::Descent(const Walked& walked, const std::vector<std::size_t>& order)
    : m_walked(walked), m_count(walked.stops()), m_width(m_count + 1), m_cost(m_width * m_width, 0),
      m_oneWay(!walked.symmetric()), m_longest(std::clamp<std::size_t>(walked.largestGroup(), 3, 8)),
      m_position(m_width, 0), m_nearCount(std::min(nearInAll, m_count - 1)), m_queued(m_width, false)
{
    for (std::size_t from = 0; from < m_count; ++from) {
        for (std::size_t to = 0; to < m_count; ++to)
            if (from != to) m_cost[from * m_width + to] = walked.step_s(from, to) - walked.stay_s(to);
        m_cost[from * m_width + m_count] = walked.home_s(from);
    }
    for (const std::size_t stop : order) m_order.push_back(static_cast<std::uint32_t>(stop));
    m_order.push_back(static_cast<std::uint32_t>(m_count));
    for (std::size_t i = 0; i < m_width; ++i) m_position[m_order[i]] = static_cast<std::uint32_t>(i);
    m_there.resize(m_width, 0);
    m_return.resize(m_width, 0);
    sumFrom(1);
    for (std::size_t stop = 0; stop < m_count; ++stop) findNear(static_cast<std::uint32_t>(stop));
    for (std::size_t stop = 0; stop < m_count; ++stop)
        if (walked.agreed_s(stop) >= 0) m_agreed.push_back(stop);
    for (std::size_t i = 0; i < m_count; ++i) m_walk += cost(m_order[i], m_order[i + 1]);
    m_fine = 2.0 * m_walk / static_cast<double>(m_count);
    m_leastFine = m_fine / 4;
    m_value = valueOf(m_walk);
    for (std::size_t i = m_count; i-- > 0;) push(m_order[i]);
}

/// The nearest few, and beyond them those that are nearer to this stop than to any already taken: the next room's, when
/// all of the nearest stand in one room.
void Descent::findNear(std::uint32_t stop)
{
    const auto apart = [&](std::uint32_t a, std::uint32_t b) { return cost(a, b) + cost(b, a); };
    std::vector<std::pair<double, std::uint32_t>> others;
    for (std::uint32_t other = 0; other < m_count; ++other)
        if (other != stop) others.emplace_back(apart(stop, other), other);
    const auto looked = static_cast<std::ptrdiff_t>(std::min(others.size(), lookedAt));
    std::partial_sort(others.begin(), others.begin() + looked, others.end());
    std::vector<std::uint32_t> taken;
    for (const auto& [away, other] : std::span(others).first(static_cast<std::size_t>(looked))) {
        if (taken.size() == m_nearCount) break;
        if (taken.size() < nearest
            || std::ranges::none_of(taken, [&](std::uint32_t each) { return apart(each, other) < away; }))
            taken.push_back(other);
    }
    for (std::size_t i = 0; taken.size() < m_nearCount; ++i)
        if (std::ranges::find(taken, others[i].second) == taken.end()) taken.push_back(others[i].second);
    std::ranges::sort(taken, {}, [&](std::uint32_t other) { return apart(stop, other); });
    m_near.insert(m_near.end(), taken.begin(), taken.end());
}

std::vector<std::size_t> Descent::order() const { return {m_order.begin(), m_order.end() - 1}; }

void Descent::push(std::uint32_t stop)
{
    if (stop >= m_count || m_queued[stop]) return;
    m_queued[stop] = true;
    m_queue.push_back(stop);
}

void Descent::descend()
{
    while (!m_queue.empty()) {
        const std::uint32_t stop = m_queue.back();
        m_queue.pop_back();
        m_queued[stop] = false;
        while (improve(stop)) {
        }
    }
}

void Descent::scaleFine(double by)
{
    const double fine = std::clamp(by * m_fine, m_leastFine, 400 * m_leastFine);
    m_value += (fine - m_fine) * static_cast<double>(m_breaches);
    m_fine = fine;
}

void Descent::mark()
{
    m_log.clear();
    m_marked = m_value;
    m_markedWaiting = m_waiting;
    m_markedWalk = m_walk;
    m_markedBreaches = m_breaches;
}

void Descent::undo()
{
    std::size_t least = m_width;
    for (std::size_t i = m_log.size(); i-- > 0;) {
        apply(m_log[i]);
        least = std::min<std::size_t>(least, m_log[i].from);
    }
    if (least < m_width) sumFrom(least);
    m_log.clear();
    m_value = m_marked;
    m_waiting = m_markedWaiting;
    m_walk = m_markedWalk;
    m_breaches = m_markedBreaches;
}

void Descent::apply(Turn turn)
{
    std::size_t low = turn.from;
    std::size_t high = turn.to;
    while (low < high) {
        std::swap(m_order[low], m_order[high]);
        m_position[m_order[low]] = static_cast<std::uint32_t>(low);
        m_position[m_order[high]] = static_cast<std::uint32_t>(high);
        ++low;
        --high;
    }
}

/// Only where a way back differs from the way there are the sums needed.
void Descent::sumFrom(std::size_t position)
{
    if (!m_oneWay) return;
    for (std::size_t i = std::max<std::size_t>(position, 1); i < m_count; ++i) {
        m_there[i] = m_there[i - 1] + cost(m_order[i - 1], m_order[i]);
        m_return[i] = m_return[i - 1] + cost(m_order[i], m_order[i - 1]);
    }
}

/// With agreed times: when all is done, and a little of the way, since a shorter way makes room for more while waiting.
double Descent::valueOf(double walk)
{
    m_waiting = 0;
    m_breaches = m_walked.hasRules() ? m_walked.breaches(m_position) : 0;
    const double fine = m_fine * static_cast<double>(m_breaches);
    if (!m_walked.hasAgreed()) return walk + fine;
    m_plain.assign(m_order.begin(), m_order.end() - 1);
    return m_walked.time_s(m_plain, &m_waiting) + wayShare * walk + fine;
}

/// Whether a change of these positions may use the time that is now waited: an agreed stop stands among or after them.
bool Descent::usesWaiting(std::size_t low, std::size_t high) const
{
    return std::ranges::any_of(
        m_agreed, [&](std::size_t stop) { return m_position[stop] >= low && m_position[stop] <= high + 1; });
}

/// What the steps within a stretch cost more once it is turned.
double Descent::turnedWithin(std::size_t from, std::size_t to) const
{
    return m_oneWay ? (m_return[to] - m_return[from]) - (m_there[to] - m_there[from]) : 0;
}

/// Makes the change if it helps and no rule forbids it.
bool Descent::take(const Change& change)
{
    std::size_t least = m_width;
    for (int i = 0; i < change.count; ++i) {
        apply(change.turns[i]);
        least = std::min<std::size_t>(least, change.turns[i].from);
    }
    const double waited = m_waiting;
    const std::size_t breached = m_breaches;
    const double value = valueOf(m_walk - change.gain);
    if (!(value < m_value - tiny)) {
        m_breaches = breached;
        m_waiting = waited;
        for (int i = change.count; i-- > 0;) apply(change.turns[i]);
        return false;
    }
    for (int i = 0; i < change.count; ++i) {
        const Turn turn = change.turns[i];
        m_log.push_back(turn);
        for (const std::size_t place :
             {std::size_t{turn.from} - 1, std::size_t{turn.from}, std::size_t{turn.to}, std::size_t{turn.to} + 1})
            push(m_order[place]);
    }
    sumFrom(least);
    m_value = value;
    m_walk -= change.gain;
    return true;
}

bool Descent::tryTurn(std::size_t from, std::size_t to)
{
    if (from < 1 || to >= m_count || from >= to) return false;
    const double gain = cost(at(from - 1), at(from)) + cost(at(to), at(to + 1)) - cost(at(from - 1), at(to))
                      - cost(at(from), at(to + 1)) - turnedWithin(from, to);
    if (gain <= tiny - (m_breaches > 0 ? m_fine : 0) && (gain <= -m_waiting || !usesWaiting(from, to))) return false;
    return take({{{static_cast<std::uint32_t>(from), static_cast<std::uint32_t>(to)}}, 1, gain});
}

/// The stretch [from, to] is put after position `after`, outside of it, turned or not.
bool Descent::tryMove(std::size_t from, std::size_t to, std::size_t after, bool turned)
{
    if (from < 1 || to >= m_count || after >= m_count || (after + 1 >= from && after <= to)) return false;
    const std::uint32_t head = turned ? at(to) : at(from);
    const std::uint32_t tail = turned ? at(from) : at(to);
    const double gain = cost(at(from - 1), at(from)) + cost(at(to), at(to + 1)) + cost(at(after), at(after + 1))
                      - cost(at(from - 1), at(to + 1)) - cost(at(after), head) - cost(tail, at(after + 1))
                      - (turned ? turnedWithin(from, to) : 0);
    if (gain <= tiny - (m_breaches > 0 ? m_fine : 0)
        && (gain <= -m_waiting || !usesWaiting(std::min(from, after + 1), std::max(to, after))))
        return false;
    // Two neighbouring stretches change places: both turned together, then each by itself, or one of them not.
    const std::size_t length = to - from + 1;
    const bool later = after > to;
    const std::size_t low = later ? from : after + 1;
    const std::size_t high = later ? after : to;
    Change change{{{static_cast<std::uint32_t>(low), static_cast<std::uint32_t>(high)}}, 1, gain};
    const auto add = [&](std::size_t first, std::size_t last) {
        if (first < last)
            change.turns[change.count++] = {static_cast<std::uint32_t>(first), static_cast<std::uint32_t>(last)};
    };
    const std::size_t movedFrom = later ? high + 1 - length : low;
    if (!turned) add(movedFrom, movedFrom + length - 1);
    if (later) add(low, high - length);
    else add(low + length, high);
    return take(change);
}

/// A change that helps has a new step at one of its ends that is shorter than one it replaces there: longer ones need
/// not be tried, unless there is waiting to be used.
double Descent::longestWorth(std::size_t position) const
{
    if (m_waiting > 0) return std::numeric_limits<double>::infinity();
    const double onward = cost(at(position), at(position + 1));
    return position == 0 ? onward : std::max(onward, cost(at(position - 1), at(position)));
}

bool Descent::turnsAt(std::size_t position)
{
    const std::uint32_t stop = at(position);
    const double worth = longestWorth(position);
    // The end of the walk is nobody's neighbour, and where the walk ends is open.
    if (tryTurn(position + 1, m_count - 1)) return true;
    for (std::size_t k = 0; k < m_nearCount; ++k) {
        const std::uint32_t other = m_near[stop * m_nearCount + k];
        if (std::min(cost(stop, other), cost(other, stop)) >= worth) break;
        const std::size_t there = m_position[other];
        // The two become neighbours: by what follows each of them, or by what precedes each.
        const auto [low, high] = std::minmax(position, there);
        if (tryTurn(low + 1, high) || (low > 0 && tryTurn(low, high - 1))) return true;
    }
    return false;
}

bool Descent::movesAt(std::size_t position)
{
    const std::uint32_t stop = at(position);
    for (std::size_t length = 1; length <= m_longest; ++length)
        for (const bool turned : {false, true})
            if (tryMove(position, position + length - 1, m_count - 1, turned)) return true;
    const double worth = longestWorth(position);
    for (std::size_t k = 0; k < m_nearCount; ++k) {
        const std::uint32_t other = m_near[stop * m_nearCount + k];
        if (std::min(cost(stop, other), cost(other, stop)) >= worth) break;
        const std::size_t there = m_position[other];
        for (std::size_t length = 1; length <= m_longest; ++length) {
            // The stop leads or ends the stretch that is moved next to its neighbour.
            for (const auto& [from, to] : {std::pair{position, position + length - 1},
                                           std::pair{position + 1 - std::min(length, position + 1), position}}) {
                if (from < 1 || to >= m_count) continue;
                const bool leads = from == position;
                if (tryMove(from, to, there, !leads) || (there > 0 && tryMove(from, to, there - 1, leads))) return true;
                if (length == 1) break;
            }
        }
    }
    return false;
}

bool Descent::improve(std::uint32_t stop)
{
    const std::size_t position = m_position[stop];
    return turnsAt(position) || movesAt(m_position[stop]);
}

void Descent::exchange(std::size_t first, std::size_t second, std::size_t third)
{
    Change change;
    const auto add = [&](std::size_t from, std::size_t to) {
        if (from < to)
            change.turns[change.count++] = {static_cast<std::uint32_t>(from), static_cast<std::uint32_t>(to)};
    };
    add(first, third - 1);
    add(first, first + (third - second) - 1);
    add(first + (third - second), third - 1);
    for (int i = 0; i < change.count; ++i) apply(change.turns[i]);
    // Read backwards: what the three joints were, now that they are apart.
    const std::size_t middle = first + (third - second);
    const double walk = m_walk + cost(at(first - 1), at(first)) + cost(at(middle - 1), at(middle))
                      + cost(at(third - 1), at(third)) - cost(at(first - 1), at(middle))
                      - cost(at(third - 1), at(first)) - cost(at(middle - 1), at(third));
    const double waited = m_waiting;
    const std::size_t breached = m_breaches;
    const double value = valueOf(walk);
    if (!std::isfinite(value)) {
        m_breaches = breached;
        m_waiting = waited;
        for (int i = change.count; i-- > 0;) apply(change.turns[i]);
        return;
    }
    for (int i = 0; i < change.count; ++i) m_log.push_back(change.turns[i]);
    for (const std::size_t place :
         {first - 1, first, first + (third - second) - 1, first + (third - second), third - 1, third})
        push(m_order[place]);
    sumFrom(first);
    m_value = value;
    m_walk = walk;
}

} // namespace proofwalk::measure
