// SPDX-License-Identifier: GPL-3.0-or-later
// Makes an order shorter by turning a stretch round, or moving a short one elsewhere, as long as that helps. Every
// change is made of
// turns, and can be taken back.
#pragma once

#include "core/measure/walked.h"

#include <cstdint>

namespace proofwalk::measure {

class Descent {
public:
    /// The order must obey the rules, and `walked` outlive this.
    Descent(const Walked& walked, const std::vector<std::size_t>& order);

    /// What is made small: the way, or with agreed times the end of the walk; and a fine for each rule that is
    /// broken, so
    /// that the search may pass through what is not allowed.
    double value() const { return m_value; }
    /// Whether the order breaks no rule now.
    bool allowed() const { return m_breaches == 0; }
    std::vector<std::size_t> order() const;

    /// Makes the fine dearer or cheaper, within bounds.
    void scaleFine(double by);
    /// Until no turn and no move of a stretch helps.
    void descend();
    /// Undo comes back to here.
    void mark();
    void undo();
    /// The stretches [first, second) and [second, third) change places, unless an agreed time is missed then. By
    /// position.
    void exchange(std::size_t first, std::size_t second, std::size_t third);

private:
    struct Turn {
        std::uint32_t from;
        std::uint32_t to;
    };
    /// A change of up to three turns, and what it would save if waiting did not matter.
    struct Change {
        Turn turns[3]{};
        int count = 0;
        double gain = 0;
    };

    double cost(std::size_t from, std::size_t to) const { return m_cost[from * m_width + to]; }
    std::uint32_t at(std::size_t position) const { return m_order[position]; }
    bool improve(std::uint32_t stop);
    void findNear(std::uint32_t stop);
    double longestWorth(std::size_t position) const;
    bool turnsAt(std::size_t position);
    bool movesAt(std::size_t position);
    bool tryTurn(std::size_t from, std::size_t to);
    bool tryMove(std::size_t from, std::size_t to, std::size_t after, bool turned);
    double turnedWithin(std::size_t from, std::size_t to) const;
    bool take(const Change& change);
    void apply(Turn turn);
    void sumFrom(std::size_t position);
    double valueOf(double walk);
    bool usesWaiting(std::size_t low, std::size_t high) const;
    void push(std::uint32_t stop);

    const Walked& m_walked;
    std::size_t m_count;
    std::size_t m_width;
    std::vector<double> m_cost; ///< steps without stays, and to the end of the walk
    bool m_oneWay;
    std::size_t m_longest;
    std::vector<std::uint32_t> m_order; ///< with the end of the walk after the last
    std::vector<std::uint32_t> m_position;
    std::vector<double> m_there; ///< sums of steps up to each position
    std::vector<double> m_return; ///< the same, each step walked the other way
    std::vector<std::uint32_t> m_near;
    std::size_t m_nearCount;
    std::vector<std::uint32_t> m_queue;
    std::vector<bool> m_queued;
    std::vector<Turn> m_log;
    std::vector<std::size_t> m_agreed;
    double m_value = 0;
    double m_walk = 0; ///< the way alone, without stays and waiting
    double m_waiting = 0;
    double m_fine = 0;
    double m_leastFine = 0;
    std::size_t m_breaches = 0;
    std::size_t m_markedBreaches = 0;
    double m_marked = 0;
    double m_markedWaiting = 0;
    double m_markedWalk = 0;
    std::vector<std::size_t> m_plain;
};

} // namespace proofwalk::measure
