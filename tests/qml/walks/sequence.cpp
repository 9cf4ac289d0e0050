// SPDX-License-Identifier: GPL-3.0-or-later
// Leaving and coming home, step by step, with the times by the stopwatch on the screen. The shop's own timers with less
// to wait: the plan is the corner shop's but for these two.
#include "tests/qml/walks/scene.h"

#include <QDir>
#include <QFile>
#include <QJsonArray>
#include <QJsonObject>

using namespace proofwalk;

class SequenceWalk : public rig::WalkTest {
    Q_OBJECT

    static constexpr int waited_ms = 1500; ///< well within 4 s give or take 3 s, on a busy machine too

    QString begun() override
    {
        const QDir shop(QStringLiteral(PROOFWALK_SOURCE "/fixtures/corner-shop"));
        const QString plan = folder() + QStringLiteral("/plan/");
        QDir().mkpath(plan);
        for (const QString& name : shop.entryList({QStringLiteral("*.csv")}))
            QFile::copy(shop.filePath(name), plan + name);
        QFile::remove(plan + QStringLiteral("timers.csv"));
        QFile timers(plan + QStringLiteral("timers.csv"));
        if (!timers.open(QIODevice::WriteOnly)) return {};
        timers.write("timer,area,planned_s,tolerance_s\nentry-delay,shop,4,3\nexit-delay,shop,4,3\n");
        timers.close();
        return started(plan, "{\"do\":\"kit\",\"name\":\"stopwatch\",\"measures\":[{\"quantity\":\"time\","
                             "\"fixed\":\"0.3 s\"}]}\n{\"do\":\"state\",\"area\":\"shop\",\"state\":\"unset\"}\n");
    }

    /// One large button does it all: starts the watch, stops it, keeps what it shows.
    void time(rig::Hand& hand)
    {
        hand.press("next");
        hand.wait(waited_ms);
        hand.press("next");
        hand.press("next");
    }

    void walk(rig::Hand& hand) override
    {
        hand.take("walk-list", "row-entry-exit");
        for (int step = 0; step < 3; ++step) hand.press("next"); // setting refused, begun, heard
        time(hand);
        hand.press("next"); // the area is really set now
        for (int step = 0; step < 3; ++step) hand.press("next"); // seen from outside, the way in, unset in time
        time(hand);
        hand.press("not-applicable");
        hand.write("reason", "no room beside the way in");
        hand.press("give-reason");
        hand.press("next"); // left unset
        hand.press("state");
        hand.press("shop-unset");
    }

    QString lines() override { return QStringLiteral("sequence.jsonl"); }

    void check(const QJsonObject& where) override
    {
        for (const QJsonValue& rung : where["rungs"].toArray())
            QVERIFY2(rung["code"] != "ready.sequence", qPrintable(rung["sentence"].toString()));
    }
};

PROOFWALK_WINDOW_TEST(SequenceWalk)
#include "sequence.moc"
