// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/journal/chain.h"

#include "core/base/digest.h"

#include <algorithm>
#include <utility>

namespace proofwalk::journal {
namespace {

constexpr const char* programName = "proofwalk " PROOFWALK_VERSION;
constexpr std::int64_t latest_ms = 253'402'300'799'999; // 9999-12-31T23:59:59.999Z, the last that RFC 3339 can say

} // namespace

Stamp stampAfter(const Stamp& last, std::int64_t wall_ms)
{
    if (wall_ms > last.ms) return {wall_ms, 0};
    return {last.ms, last.count + 1};
}

Chain::Chain(std::string job, std::string publicKey) : m_job(std::move(job)), m_publicKey(std::move(publicKey)) {}

void Chain::learn(const std::vector<Event>& lastEvents)
{
    for (const Event& event : lastEvents) {
        m_last = std::max(m_last, event.stamp);
        if (event.chain == m_head.chain) continue;
        const Head head{event.chain, event.n, event.hash};
        if (std::exchange(m_seen[event.chain], head) != head) m_toBeNamed[event.chain] = head;
    }
}

Event Chain::next(const std::string& kind, std::int64_t v, base::Json body, const base::WallClock& now)
{
    Event event;
    event.v = v;
    event.job = m_job;
    event.chain = m_head.chain;
    event.n = m_head.n + 1;
    event.prev = m_head.hash;
    for (auto& [chain, head] : std::exchange(m_toBeNamed, {})) event.seen.push_back(head);
    event.stamp = m_last = stampAfter(m_last, now.utc_ms);
    event.at = now;
    event.kind = kind;
    event.body = std::move(body);
    event.hash = base::sha256Hex(canonicalText(event));
    m_head = {event.chain, event.n, event.hash};
    return event;
}

Result<std::vector<Event>> Chain::extend(const std::vector<Draft>& drafts, const base::WallClock& now)
{
    if (now.utc_ms < 0 || now.utc_ms > latest_ms)
        return failure("event.value", "", {{"member", "utc"}, {"found", now.utc_ms}});
    const bool isFirstOfJob = m_head.n == 0 && m_seen.empty();
    for (const Draft& draft : drafts) {
        const bool isFirst = isFirstOfJob && &draft == drafts.data();
        if (isFirst && draft.kind != "start") return failure("journal.not-started", "", {{"found", draft.kind}});
        if (!isFirst && (draft.kind == "start" || draft.kind == "open"))
            return failure("journal.kind-reserved", "", {{"found", draft.kind}});
    }

    std::vector<Event> events;
    if (m_head.n == 0) {
        m_head.chain = base::randomHex(16);
        if (!isFirstOfJob)
            events.push_back(next("open", 1, base::Json::Object{{"key", m_publicKey}, {"program", programName}}, now));
    }
    for (const Draft& draft : drafts) {
        base::Json body = draft.body;
        if (isFirstOfJob && &draft == drafts.data()) body["key"] = m_publicKey;
        events.push_back(next(draft.kind, draft.v, std::move(body), now));
    }
    return events;
}

} // namespace proofwalk::journal
