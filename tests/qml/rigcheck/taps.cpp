// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/qml/rig/taps.h"
#include "tests/qml/rig/stage.h"

using namespace proofwalk;

namespace {

const QString page = QStringLiteral(R"(
    component Key: Rectangle {
        property int pressed: 0
        width: 90; height: 48; activeFocusOnTab: true
        Accessible.role: Accessible.Button; Accessible.name: "key " + objectName; Accessible.onPressAction: pressed += 1
        Keys.onReturnPressed: pressed += 1
        TapHandler { onTapped: parent.pressed += 1 }
    }
    component NumberPad: Row { Key { objectName: "1" } Key { objectName: "2" } }
    Column {
        Key { objectName: "top" }
        NumberPad {}
        Key { objectName: "off"; enabled: false }
        Flickable {
            width: 360; height: 100; clip: true; contentHeight: 600
            Key { y: 500; objectName: "deep" }
        }
    }
)");

} // namespace

class TapsTest : public rig::WindowTest {
    Q_OBJECT

private Q_SLOTS:
    void reachesByAllThree_data()
    {
        QTest::addColumn<int>("by");
        QTest::newRow("mouse") << int(rig::By::mouse);
        QTest::newRow("touch") << int(rig::By::touch);
        QTest::newRow("keys") << int(rig::By::keys);
    }
    void reachesByAllThree()
    {
        QFETCH(int, by);
        rig::Stage stage;
        auto* window = stage.show(page);
        QVERIFY2(window != nullptr, qPrintable(stage.problem()));
        rig::Taps taps(*window, rig::By(by));
        for (const char* name : {"top", "key 2", "deep", "top"})
            QVERIFY2(taps.tap(QLatin1String(name)), qPrintable(taps.problem()));
        QCOMPARE(stage.item(QStringLiteral("top"))->property("pressed").toInt(), 2);
        QCOMPARE(stage.item(QStringLiteral("2"))->property("pressed").toInt(), 1);
        QCOMPARE(stage.item(QStringLiteral("deep"))->property("pressed").toInt(), 1);
        QCOMPARE(taps.taps(), 4);
    }

    // Source: tests/qml/rig/taps.h names the model. One look, one decision, a tap, then two keys of one pad:
    // 2 M + (P + K) + (P + K) + K = 2 * 1.35 + 2 * 1.10 + 3 * 0.28 = 5.74 s.
    void countsByTheModel()
    {
        rig::Stage stage;
        auto* window = stage.show(page);
        QVERIFY(window != nullptr);
        rig::Taps taps(*window, rig::By::touch);
        taps.look();
        taps.decide();
        for (const char* name : {"top", "1", "2"}) QVERIFY2(taps.tap(QLatin1String(name)), qPrintable(taps.problem()));
        QCOMPARE(taps.taps(), 3);
        QVERIFY2(qAbs(taps.seconds() - 5.74) < 1e-9, qPrintable(taps.account()));
        QVERIFY(taps.account().startsWith(QStringLiteral("3 taps, M M P K P K K: 5.74 s")));
        taps.startOver();
        QCOMPARE(taps.seconds(), 0.0);
    }

    void waitingIsCounted()
    {
        rig::Stage stage;
        auto* window = stage.show(page);
        QVERIFY(window != nullptr);
        rig::Taps taps(*window, rig::By::touch);
        QElapsedTimer timer;
        timer.start();
        QVERIFY(taps.until([&] { return timer.elapsed() > 60; }, QStringLiteral("60 ms")));
        QVERIFY(taps.response_ms() > 55 && taps.seconds() > 0.055);
        QVERIFY(!taps.until([] { return false; }, QStringLiteral("what never comes"), 50));
        QVERIFY(taps.problem().contains(QStringLiteral("what never comes")));
    }

    void whatNobodyCouldTap()
    {
        rig::Stage stage;
        auto* window = stage.show(
            page + QStringLiteral("Rectangle { objectName: \"sheet\"; visible: false; width: 360; height: 60 }"));
        QVERIFY(window != nullptr);
        rig::Taps taps(*window, rig::By::touch);
        QVERIFY(!taps.tap(QStringLiteral("no such key")));
        QVERIFY(taps.problem().contains(QStringLiteral("no such key"))
                && taps.problem().contains(QStringLiteral("\"deep\"")));
        QVERIFY(!taps.tap(QStringLiteral("off")));
        stage.item(QStringLiteral("sheet"))->setVisible(true);
        QVERIFY(!taps.tap(QStringLiteral("top")));
        QCOMPARE(stage.item(QStringLiteral("top"))->property("pressed").toInt(), 0);
        QCOMPARE(taps.taps(), 0);
    }
};

PROOFWALK_WINDOW_TEST(TapsTest)
#include "taps.moc"
