// SPDX-License-Identifier: GPL-3.0-or-later
// A route of 600 stops against one nearest-neighbour order with a plain descent by turning stretches after it, in the
// same run, by processor time; and its length against that of a search a hundred times as long (without PROOFWALK_LONG=1:
// ten). Ends with 1 if it takes over 30 times as long, or is over 2 % longer.
#include "core/measure/tour.h"
#include "tests/measure/errands.h"

#include <algorithm>
#include <cstdio>
#include <cstdlib>
#include <cstring>
#include <ctime>

using namespace proofwalk;

namespace {

/// Turns every stretch that gets shorter by it, until none does.
void descend(const measure::Errand& errand, std::vector<std::size_t>& order)
{
    const auto leg = [&](std::size_t from, std::size_t to) { return errand.leg_s[from * errand.stops + to]; };
    for (bool better = true; better;) {
        better = false;
        for (std::size_t i = 1; i + 1 < order.size(); ++i)
            for (std::size_t k = i + 1; k < order.size(); ++k) {
                double gain = leg(order[i - 1], order[i]) - leg(order[i - 1], order[k]);
                if (k + 1 < order.size()) gain += leg(order[k], order[k + 1]) - leg(order[i], order[k + 1]);
                if (gain <= 1e-9) continue;
                std::reverse(order.begin() + static_cast<std::ptrdiff_t>(i),
                             order.begin() + static_cast<std::ptrdiff_t>(k) + 1);
                better = true;
            }
    }
}

double since_s(std::clock_t begun) { return static_cast<double>(std::clock() - begun) / CLOCKS_PER_SEC; }

} // namespace

int main()
{
    const char* const longRun = std::getenv("PROOFWALK_LONG");
    const std::size_t times = longRun != nullptr && std::strcmp(longRun, "1") == 0 ? 100 : 10;
    const measure::Errand errand = errands::make(600, {}, 1);
    constexpr std::size_t rounds = 2500; // enough for the bar
    double once_s = 1e9;
    double plain = 0;
    for (int i = 0; i < 3; ++i) {
        const std::clock_t begun = std::clock();
        auto order = measure::nearestNeighbour(errand);
        descend(errand, order);
        once_s = std::min(once_s, since_s(begun));
        plain = measure::timeOf(errand, order).value().time_s;
    }
    std::clock_t begun = std::clock();
    const double found = measure::goodOrder(errand, {.seed = 1, .rounds = rounds}).value().time_s;
    const double search_s = since_s(begun);
    begun = std::clock();
    const double best = measure::goodOrder(errand, {.seed = 2, .rounds = times * rounds}).value().time_s;
    std::printf("seed 1: %.1f s walked, plain descent %.1f, %zu times as long a search %.1f: %+.2f %% (bar 2)\n", found,
                plain, times, best, 100 * (found / best - 1));
    std::printf("search %.0f ms, plain descent %.1f ms, ratio %.1f (bar 30); the long one %.1f s\n", 1e3 * search_s,
                1e3 * once_s, search_s / once_s, since_s(begun));
    return search_s <= 30 * once_s && found <= 1.02 * best ? 0 : 1;
}
