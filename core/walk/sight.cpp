// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/walk/sight.h"

#include <algorithm>
#include <deque>
#include <tuple>

namespace proofwalk::walk {

const Sight::Horizon* Sight::horizonAt(const Place& place) const
{
    const auto chain = m_chains.find(place.chain);
    if (chain == m_chains.end()) return nullptr;
    const auto after = std::ranges::upper_bound(chain->second, place.n, {}, &Since::n);
    return after == chain->second.begin() ? nullptr : &std::prev(after)->horizon;
}

void Sight::add(const journal::Event& event)
{
    if (event.seen.empty()) return;
    auto& changes = m_chains[event.chain];
    Horizon horizon = changes.empty() ? Horizon{} : changes.back().horizon;
    const auto raise = [&](const std::string& chain, std::int64_t n) {
        std::int64_t& known = horizon[chain];
        known = std::max(known, n);
    };
    for (const journal::Head& head : event.seen) {
        raise(head.chain, head.n);
        if (const Horizon* theirs = horizonAt({head.chain, head.n}))
            for (const auto& [chain, n] : *theirs) raise(chain, n);
    }
    changes.push_back({event.n, std::move(horizon)});
}

bool Sight::hasSeen(const Place& later, const Place& earlier) const
{
    if (later.chain == earlier.chain) return earlier.n < later.n;
    const Horizon* horizon = horizonAt(later);
    if (horizon == nullptr) return false;
    const auto known = horizon->find(earlier.chain);
    return known != horizon->end() && known->second >= earlier.n;
}

std::vector<journal::Event> inOrderSeen(std::vector<journal::Event> events)
{
    std::map<std::string, std::deque<journal::Event>> waiting;
    std::ranges::sort(events, {}, [](const journal::Event& event) { return std::tie(event.chain, event.n); });
    for (journal::Event& event : events) waiting[event.chain].push_back(std::move(event));

    // A head that is not here (its chain is damaged there) is not waited for: damage touches no other chain.
    std::map<std::string, std::int64_t> there;
    for (const auto& [chain, queue] : waiting) there[chain] = static_cast<std::int64_t>(queue.size());

    std::map<std::string, std::int64_t> done;
    const auto ready = [&](const journal::Event& event) {
        return event.n == done[event.chain] + 1 && std::ranges::all_of(event.seen, [&](const journal::Head& head) {
                   return done[head.chain] >= std::min(head.n, there[head.chain]);
               });
    };
    std::vector<journal::Event> ordered;
    while (true) {
        std::deque<journal::Event>* next = nullptr;
        for (auto& [chain, queue] : waiting) {
            if (queue.empty() || !ready(queue.front())) continue;
            if (next == nullptr || queue.front().stamp < next->front().stamp) next = &queue;
        }
        if (next == nullptr) return ordered;
        done[next->front().chain] = next->front().n;
        ordered.push_back(std::move(next->front()));
        next->pop_front();
    }
}

} // namespace proofwalk::walk
