// SPDX-License-Identifier: GPL-3.0-or-later
// Whether a record's bytes hold together. It trusts nothing but SHA-256 and the keys that the chains themselves name;
// whose keys those are is for who vouches for them.
#include "core/journal/key.h"
#include "core/journal/record.h"

#include "core/base/digest.h"

#include <fmt/format.h>

#include <algorithm>
#include <span>
#include <tuple>
#include <unordered_map>

namespace proofwalk::journal {
namespace {

using EventList = std::vector<const Event*>;

std::string placeOf(const std::string& chain) { return "chain " + chain; }
std::string placeOf(const Event& event) { return fmt::format("chain {}, event {}", event.chain, event.n); }

class Check {
public:
    explicit Check(const Record& record) : m_record(record) {}

    Soundness run()
    {
        m_result.problems = m_record.unreadable;
        checkNamedBytes();
        const auto chains = sortedChains();
        for (const auto& [chain, events] : chains) checkChain(chain, events);
        checkStart(chains);
        checkHeads(chains);
        return std::move(m_result);
    }

private:
    void report(std::string code, std::string where, std::vector<Argument> arguments = {})
    {
        m_result.problems.push_back({std::move(code), std::move(where), std::move(arguments)});
    }

    /// What is kept under a hash must have it.
    void checkNamedBytes()
    {
        for (const auto& [hash, bytes] : m_record.contents)
            if (base::sha256Hex(bytes) != hash) report("record.content-hash", "content " + hash);
        for (const auto& [commitment, sealed] : m_record.privates)
            if (sealed.commitment != commitment || commitmentOf(sealed.salt, sealed.value) != commitment)
                report("record.private-commitment", "private value " + commitment);
        for (const auto& [hash, bytes] : m_record.photographs)
            if (base::sha256Hex(bytes) != hash) report("record.photograph-hash", "photograph " + hash);
    }

    std::map<std::string, EventList> sortedChains()
    {
        std::map<std::string, EventList> chains;
        for (const Event& event : m_record.events) {
            chains[event.chain].push_back(&event);
            m_byHash.emplace(event.hash, &event);
        }
        for (auto& [chain, events] : chains)
            std::ranges::sort(events, {}, [](const Event* each) { return std::tie(each->n, each->hash); });
        return chains;
    }

    void checkChain(const std::string& chain, const EventList& events)
    {
        std::int64_t& sound = m_result.soundEvents[chain];
        bool holds = true;
        const Event* before = nullptr;
        for (auto at = events.begin(); at != events.end();) {
            const auto next = std::find_if(at, events.end(), [&](const Event* each) { return each->n != (*at)->n; });
            const std::span<const Event* const> same(at, next);
            const std::size_t problems = m_result.problems.size();
            if (same.size() > 1)
                report("record.fork", placeOf(**at), {{"count", static_cast<std::int64_t>(same.size())}});
            for (const Event* event : same) checkEvent(*event, before);
            const bool good = m_result.problems.size() == problems;
            if (holds && good) sound = (*at)->n;
            // An event that its follower does not name is not the one that once stood there.
            if (holds && !good && !followsAny(same, before)) sound = std::max<std::int64_t>(sound - 1, 0);
            holds = holds && good;
            before = *at;
            at = next;
        }
    }

    /// Whether one of the events names the one before it; so does what has a gap before it, which says nothing of it.
    bool followsAny(std::span<const Event* const> events, const Event* before) const
    {
        return std::ranges::any_of(events, [&](const Event* event) {
            return before == nullptr || event->n != before->n + 1 || names(*event, before->n);
        });
    }

    /// Whether `prev` is an event of that number in the same chain.
    bool names(const Event& event, std::int64_t n) const { return isThere({event.chain, n, event.prev}); }

    bool isThere(const Head& head) const
    {
        const auto found = m_byHash.find(head.hash);
        return found != m_byHash.end() && found->second->chain == head.chain && found->second->n == head.n;
    }

    void checkEvent(const Event& event, const Event* before)
    {
        const std::string place = placeOf(event);
        if (event.job != m_record.job)
            report("record.other-job", place, {{"found", event.job}, {"wanted", m_record.job}});
        const std::string hash = base::sha256Hex(canonicalText(event));
        if (hash != event.hash) report("record.event-hash", place, {{"found", hash}, {"wanted", event.hash}});
        checkPlaceInChain(event, before);
        for (const Head& head : event.seen) checkSeen(event, head);
        if (event.n == 1 && base::fromHex(event.body.text("key")).empty()) report("record.no-key", place);
    }

    void checkPlaceInChain(const Event& event, const Event* before)
    {
        const std::int64_t last = before == nullptr ? 0 : before->n;
        if (event.n != last + 1) {
            report("record.gap", placeOf(event), {{"from", last + 1}, {"to", event.n - 1}});
            return;
        }
        if (before == nullptr) return;
        // Of two events before it under one number, either may be the one it follows; the fork is told already.
        if (!names(event, last))
            report("record.prev", placeOf(event), {{"found", event.prev}, {"wanted", before->hash}});
        if (event.stamp <= before->stamp) report("record.stamp-back", placeOf(event));
    }

    void checkSeen(const Event& event, const Head& head)
    {
        if (!isThere(head)) report("record.seen-missing", placeOf(event), {{"chain", head.chain}, {"n", head.n}});
        else if (event.stamp <= m_byHash.at(head.hash)->stamp) report("record.stamp-back", placeOf(event));
    }

    /// One chain, and only one, began the job.
    void checkStart(const std::map<std::string, EventList>& chains)
    {
        std::size_t starts = 0;
        for (const auto& [chain, events] : chains) {
            const Event& first = *events.front();
            if (first.n != 1) continue;
            if (first.kind == "start") {
                if (++starts > 1) report("record.start-twice", placeOf(first));
            } else if (first.kind != "open") {
                report("record.first-kind", placeOf(first), {{"found", first.kind}});
            }
        }
        if (starts == 0) report("record.no-start", "");
    }

    void checkHeads(const std::map<std::string, EventList>& chains)
    {
        std::map<std::string, const HeadSignature*> heads;
        for (const HeadSignature& each : m_record.heads) {
            if (!heads.emplace(each.head.chain, &each).second) report("record.head-twice", placeOf(each.head.chain));
            if (!chains.contains(each.head.chain))
                report("record.chain-missing", placeOf(each.head.chain), {{"n", each.head.n}});
        }
        for (const auto& [chain, events] : chains) {
            const auto found = heads.find(chain);
            if (found == heads.end()) report("record.no-head", placeOf(chain));
            else checkHead(*found->second, events);
        }
    }

    void checkHead(const HeadSignature& signature, const EventList& events)
    {
        const Head& head = signature.head;
        const Event& last = *events.back();
        if (head.n > last.n) {
            report("record.tail-missing", placeOf(head.chain), {{"from", last.n + 1}, {"to", head.n}});
        } else if (!isThere(head)) {
            report("record.head-other", placeOf(head.chain), {{"n", head.n}, {"wanted", head.hash}});
            std::int64_t& sound = m_result.soundEvents[head.chain];
            sound = std::min(sound, head.n - 1);
        } else if (head.n < last.n) {
            report("record.tail-unsigned", placeOf(head.chain), {{"from", head.n + 1}, {"to", last.n}});
        }
        const std::string key = events.front()->n == 1 ? base::fromHex(events.front()->body.text("key")) : "";
        if (!verifySignature(key, headText(m_record.job, head), base::fromHex(signature.signature)))
            report("record.head-signature", placeOf(head.chain), {{"n", head.n}});
    }

    const Record& m_record;
    Soundness m_result;
    std::unordered_map<std::string_view, const Event*> m_byHash;
};

} // namespace

Soundness checkRecord(const Record& record) { return Check(record).run(); }

} // namespace proofwalk::journal
