// SPDX-License-Identifier: GPL-3.0-or-later
// A device from the first look to its pass, with a fault on the way: done, seen, read, found, photographed, put right,
// tested again, and the rest of it in the states it needs. The shop's back door, after the round at the panel.
#include "tests/qml/walks/scene.h"

#include <QJsonArray>
#include <QJsonObject>

using namespace proofwalk;

class DeviceTest : public rig::WalkTest {
    Q_OBJECT

    const QString m_seen = QStringLiteral("zone 5 showed open only at a hand's width");
    const QString m_words = QStringLiteral("The magnet has slipped along the leaf");
    const QString m_right = QStringLiteral("Magnet set square and screwed again");

    QString begun() override
    {
        lay(QStringLiteral(PROOFWALK_SOURCE "/fixtures/corner-shop/relay.jpg"));
        lay(QStringLiteral(PROOFWALK_SOURCE "/fixtures/lantern-mill/joint.jpg"));
        return made(QStringLiteral("corner-shop@Walking: doors"));
    }

    void state(rig::Hand& hand, const char* state)
    {
        hand.leave("door-walk");
        hand.press("states");
        hand.press(QLatin1String(state));
        hand.leave("door-walk");
        hand.take("walk-list", "device-GR-06");
    }

    void find(rig::Hand& hand)
    {
        hand.press("not-as-planned");
        hand.press("failed-opened");
        hand.write("fault-seen", m_seen);
        hand.press("deficiency");
        hand.press("due-0");
        hand.press("fault-photograph");
        hand.take("pictures", "relay.jpg");
        hand.write("fault-words", m_words);
        hand.press("keep-finding");
    }

    void putRight(rig::Hand& hand)
    {
        hand.press("door-findings");
        hand.take("finding-list", "finding-GR-06");
        hand.press("photograph");
        hand.take("pictures", "joint.jpg");
        hand.write("photograph-words", "the leaf before it was put right");
        hand.press("keep-photograph");
        hand.press("repair");
        hand.press("touched-device");
        hand.press("touched-terminals");
        hand.write("repair-words", m_right);
        hand.press("keep-repair");
        hand.press("retest");
    }

    /// The words come first where they and the pad do not fit on one page.
    void read(rig::Hand& hand, const char* figures)
    {
        if (hand.offers("words-read")) hand.press("words-read");
        hand.figures(QLatin1String(figures));
        hand.next();
    }

    void readTheGap(rig::Hand& hand)
    {
        hand.press("steps-ahead");
        hand.press("all-steps");
        hand.press("extended");
        hand.press("opening gap");
        read(hand, "11");
    }

    void walk(rig::Hand& hand) override
    {
        state(hand, "shop-walk-test");
        hand.press("as-planned"); // the fixing
        find(hand);
        putRight(hand);
        hand.press("as-planned"); // looked at again
        hand.press("as-planned"); // opened and closed
        readTheGap(hand);
        hand.press("as-planned"); // rattled
        hand.press("as-planned"); // the cover, and nothing bridged
        state(hand, "shop-set-closed");
        hand.press("as-planned"); // the response
        hand.press("as-planned"); // what the station reads back
        state(hand, "shop-unset");
        read(hand, "4.702"); // the loop again: its terminals were touched
    }

    QString lines() override { return QStringLiteral("device.jsonl"); }

    void check(const QJsonObject& where) override
    {
        for (const QJsonValue& each : where["devices"].toArray())
            if (each["tag"] == "GR-06") QCOMPARE(each["verdict"].toString(), QString("pass"));
        for (const QJsonValue& each : where["findings"].toArray())
            QCOMPARE(each["status"].toString(), QString("cleared"));
    }
};

PROOFWALK_WINDOW_TEST(DeviceTest)
#include "device.moc"
