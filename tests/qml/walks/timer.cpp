// SPDX-License-Identifier: GPL-3.0-or-later
// A time of a device by the stopwatch: begun too early and begun again, stopped, kept; and the next step in hand.
#include "tests/qml/walks/scene.h"

#include <QJsonArray>
#include <QJsonObject>

using namespace proofwalk;

class TimerWalk : public rig::WalkTest {
    Q_OBJECT

    QString begun() override { return made(QStringLiteral("corner-shop@Walking: doors")); }

    void walk(rig::Hand& hand) override
    {
        hand.press("states");
        hand.press("shop-walk-test");
        hand.leave("door-walk");
        hand.take("walk-list", "device-GR-10");
        hand.press("as-planned"); // the lowest place
        hand.press("as-planned"); // wetted
        hand.press("watch");
        hand.press("again"); // the water was not there yet
        hand.press("watch");
        hand.wait(1000);
        hand.press("watch");
        hand.press("watch"); // kept
        hand.press("as-planned"); // dried
    }

    QString lines() override { return QStringLiteral("timer.jsonl"); }

    void check(const QJsonObject& where) override
    {
        for (const QJsonValue& each : where["devices"].toArray())
            if (each["tag"] == "GR-10") QCOMPARE(each["answered"].toInt(), 5); // its loop was read by the round
    }
};

PROOFWALK_WINDOW_TEST(TimerWalk)
#include "timer.moc"
