// SPDX-License-Identifier: GPL-3.0-or-later
// A round of 28 loops at the panel, a reading after the other by the pad or by the figures of the keyboard: at most four
// minutes of the operator's time, the looks at the meter among them. Counted after the keystroke-level model
// (tests/qml/rig/taps.h names its source). One loop is far too high, one far too low, as the command line has them too.
#include "tests/qml/models/manyloops.h"
#include "tests/qml/walks/scene.h"

#include <QFile>
#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>

using namespace proofwalk;

class RoundWalk : public rig::WalkTest {
    Q_OBJECT

    static constexpr int loops = 28;
    static constexpr double most_s = 4 * 60;

    /// What the commands say the meter showed, as it is typed: by the zone's number.
    static QMap<int, QString> figures()
    {
        QFile commands(QStringLiteral(PROOFWALK_SOURCE "/tests/qml/walks/round.jsonl"));
        QMap<int, QString> typed;
        if (!commands.open(QIODevice::ReadOnly)) return typed;
        const auto values = QJsonDocument::fromJson(commands.readAll())["values"].toObject();
        for (auto value = values.begin(); value != values.end(); ++value)
            typed[value.key().toInt()] = value->toString().section(u' ', 0, 0);
        return typed;
    }

    QString begun() override
    {
        const auto plan = rig::planOfLoops((folder() + QStringLiteral("/plan")).toStdString(), loops);
        return started(QString::fromStdString(plan.string()),
                       "{\"do\":\"kit\",\"name\":\"meter A\",\"measures\":[{\"quantity\":\"resistance\","
                       "\"percent\":\"0.3\",\"digits\":2}]}\n");
    }

    void walk(rig::Hand& hand) override
    {
        const auto readings = figures();
        QCOMPARE(readings.size(), loops);
        hand.take("walk-list", "row-loop-readings");
        if (hand.window().width() < 700) hand.press("caution-seen"); // beside the grid where there is room
        hand.taps().startOver();
        for (const QString& reading : readings) {
            hand.taps().look();
            hand.figures(reading);
            hand.next();
        }
        const auto& taps = hand.taps();
        qInfo("%d readings: %.0f s of the operator's time, %.0f s each, of it %.1f s of waiting", loops, taps.seconds(),
              taps.seconds() / loops, taps.response_ms() / 1000);
        QVERIFY2(taps.seconds() <= most_s, qPrintable(taps.account()));
    }

    QString lines() override { return QStringLiteral("round.jsonl"); }

    void check(const QJsonObject& where) override { QCOMPARE(where["findings"].toArray().size(), 2); }
};

PROOFWALK_WINDOW_TEST(RoundWalk)
#include "round.moc"
