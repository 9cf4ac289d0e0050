// SPDX-License-Identifier: GPL-3.0-or-later
// The chain by itself: what it names as seen when others write between two of its events, and its stamps.
#include "core/journal/chain.h"

#include "tests/journal/jobs.h"

using namespace proofwalk;
using namespace proofwalk::journal;

namespace {

Event headOf(char chain, std::int64_t n, Stamp stamp)
{
    Event event;
    event.chain = std::string(32, chain);
    event.n = n;
    event.hash = std::string(63, chain) + static_cast<char>('0' + n);
    event.stamp = stamp;
    return event;
}

Head named(const Event& event) { return {event.chain, event.n, event.hash}; }

} // namespace

class ChainOfEvents : public QObject {
    Q_OBJECT
private slots:
    void namesWhatIsNewAndNothingTwice();
    void aFailedAppendLeavesNoTrace();
    void stampsAreLaterThanAllSeen();
};

void ChainOfEvents::namesWhatIsNewAndNothingTwice()
{
    Chain chain(std::string(32, '1'), "key");
    const Event a1 = headOf('a', 1, {5, 0}), b4 = headOf('b', 4, {6, 0}), a2 = headOf('a', 2, {7, 0});
    chain.learn({b4, a1});
    auto events = chain.extend({note(1)}, clockAt(0));
    VERIFY_GOOD(events);
    QCOMPARE(events->size(), 2U);
    QCOMPARE(events->front().seen, (std::vector<Head>{named(a1), named(b4)})); // sorted by chain
    QVERIFY(events->back().seen.empty());

    Event own = events->back(); // the file holds our own head as well
    chain.learn({a2, b4, own});
    auto more = chain.extend({note(2)}, clockAt(1));
    VERIFY_GOOD(more);
    QCOMPARE(more->size(), 1U);
    QCOMPARE(more->front().seen, std::vector<Head>{named(a2)});
    QCOMPARE(more->front().n, 3);
    QCOMPARE(more->front().prev, own.hash);
}

void ChainOfEvents::aFailedAppendLeavesNoTrace()
{
    Chain chain(std::string(32, '1'), "key");
    chain.learn({headOf('a', 1, {5, 0})});
    Chain tried = chain;
    VERIFY_GOOD(tried.extend({note(1)}, clockAt(0))); // thrown away, as when the disk is full
    auto events = chain.extend({note(1)}, clockAt(0));
    VERIFY_GOOD(events);
    QCOMPARE(events->front().n, 1);
    QCOMPARE(events->front().seen.size(), 1U);
    QVERIFY(events->front().chain != tried.head().chain);
}

void ChainOfEvents::stampsAreLaterThanAllSeen()
{
    QCOMPARE(stampAfter({100, 3}, 101), (Stamp{101, 0}));
    QCOMPARE(stampAfter({100, 3}, 100), (Stamp{100, 4}));
    QCOMPARE(stampAfter({100, 3}, 20), (Stamp{100, 4}));
    Chain chain(std::string(32, '1'), "key");
    chain.learn({headOf('a', 1, {clockAt(50).utc_ms, 7}), headOf('b', 1, {clockAt(40).utc_ms, 9})});
    auto events = chain.extend({note(1), note(2)}, clockAt(0));
    VERIFY_GOOD(events);
    Stamp last{clockAt(50).utc_ms, 7};
    for (const Event& event : *events) {
        QVERIFY(event.stamp > last);
        last = event.stamp;
    }
}

QTEST_GUILESS_MAIN(ChainOfEvents)
#include "chain.moc"
