// SPDX-License-Identifier: GPL-3.0-or-later
// What has seen what, against a slow and obvious second version: follow every link, as far as it goes.
#include "core/walk/sight.h"

#include <QRandomGenerator>
#include <QTest>

#include <algorithm>
#include <set>

using namespace proofwalk;
using namespace proofwalk::walk;

namespace {

/// Events of a few people who now and then look at each other's copies.
std::vector<journal::Event> history(quint32 seed, int count)
{
    QRandomGenerator random(seed);
    std::map<std::string, std::int64_t> heads;
    std::vector<journal::Event> events;
    for (int i = 0; i < count; ++i) {
        journal::Event event;
        event.chain = std::string(1, static_cast<char>('a' + random.bounded(4)));
        event.n = ++heads[event.chain];
        event.stamp = {1000 + i, 0};
        for (const auto& [chain, n] : heads)
            if (chain != event.chain && random.bounded(4) == 0) event.seen.push_back({chain, n, ""});
        events.push_back(event);
    }
    return events;
}

/// Every place an event has seen, by walking all links.
void follow(const std::vector<journal::Event>& events, const Place& from, std::set<Place>& found)
{
    for (const journal::Event& event : events) {
        if (event.chain != from.chain || event.n > from.n) continue;
        if (event.n < from.n) found.insert({event.chain, event.n});
        for (const journal::Head& head : event.seen)
            if (found.insert({head.chain, head.n}).second) follow(events, {head.chain, head.n}, found);
    }
}

std::set<Place> slowlySeen(const std::vector<journal::Event>& events, const Place& from)
{
    std::set<Place> direct;
    follow(events, from, direct);
    std::set<Place> all;
    for (const Place& place : direct)
        for (std::int64_t n = 1; n <= place.n; ++n) all.insert({place.chain, n});
    all.erase(from);
    return all;
}

} // namespace

class SightTest : public QObject {
    Q_OBJECT

private slots:
    void agreesWithTheSlowWay();
    void anyOrderThatRespectsSeenIsFound();
    void eventsBehindAGapAreLeftOut();
};

void SightTest::agreesWithTheSlowWay()
{
    const quint32 first = qEnvironmentVariableIntValue("PROOFWALK_SEED") != 0
                            ? static_cast<quint32>(qEnvironmentVariableIntValue("PROOFWALK_SEED"))
                            : 20261125U;
    for (quint32 seed = first; seed < first + 20; ++seed) {
        const auto events = history(seed, 60);
        Sight sight;
        for (const journal::Event& event : events) sight.add(event);
        for (const journal::Event& later : events) {
            const Place from{later.chain, later.n};
            const auto slow = slowlySeen(events, from);
            for (const journal::Event& earlier : events) {
                const Place to{earlier.chain, earlier.n};
                if (from == to) continue;
                QVERIFY2(sight.hasSeen(from, to) == slow.contains(to), qPrintable(QStringLiteral("seed %1").arg(seed)));
            }
        }
    }
}

void SightTest::anyOrderThatRespectsSeenIsFound()
{
    auto events = history(7, 80);
    std::ranges::reverse(events);
    const auto ordered = inOrderSeen(events);
    QCOMPARE(ordered.size(), events.size());
    std::map<std::string, std::int64_t> done;
    for (const journal::Event& event : ordered) {
        QCOMPARE(event.n, done[event.chain] + 1);
        for (const journal::Head& head : event.seen) QVERIFY(done[head.chain] >= head.n);
        done[event.chain] = event.n;
    }
}

void SightTest::eventsBehindAGapAreLeftOut()
{
    auto events = history(9, 40);
    const std::string chain = events.front().chain;
    std::erase_if(events, [&](const journal::Event& event) { return event.chain == chain && event.n == 2; });
    for (const journal::Event& event : inOrderSeen(events)) QVERIFY(event.chain != chain || event.n == 1);
}

QTEST_GUILESS_MAIN(SightTest)
#include "sight.moc"
