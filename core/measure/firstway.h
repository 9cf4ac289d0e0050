// SPDX-License-Identifier: GPL-3.0-or-later
// An order that obeys every rule, to begin a search with.
#pragma once

#include "core/measure/walked.h"

#include <cstdint>

namespace proofwalk::measure {

/// Numbers by chance, the same on every machine (xorshift, G. Marsaglia 2003; from memory).
class Chance {
public:
    explicit Chance(std::uint64_t seed) : m_state(seed * 0x9E3779B97F4A7C15U + 0x2545F4914F6CDD1DU) {}
    std::size_t below(std::size_t count)
    {
        m_state ^= m_state << 13U;
        m_state ^= m_state >> 7U;
        m_state ^= m_state << 17U;
        return static_cast<std::size_t>((m_state >> 33U) * count >> 31U);
    }

private:
    std::uint64_t m_state;
};

/// Always to the nearest stop that may come next and still leaves every agreed time within reach; by chance a little
/// further, in later tries. Error: measure.route-not-found.
Result<std::vector<std::size_t>> firstWay(const Walked& walked, std::uint64_t seed);

} // namespace proofwalk::measure
