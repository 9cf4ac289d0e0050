// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/qml/rig/watchdog.h"
#include "tests/qml/rig/stage.h"

#include <QTimer>

using namespace proofwalk;

class Watchdog : public rig::WindowTest {
    Q_OBJECT

public:
    Watchdog() { m_hold_ms = -1; } // here it is held on purpose

private Q_SLOTS:
    void anEventThatSleeps()
    {
        QTimer::singleShot(0, this, [] { QTest::qSleep(400); });
        QTest::qWait(450);
        const double held = rig::watched()->longest_ms();
        // What the keeper of time was late itself is taken off: on a busy machine a part of the 400.
        QVERIFY2(held > 150 && held < 2000, qPrintable(QString::number(held)));
    }

    void anEventThatReckons()
    {
        QTimer::singleShot(0, this, [] {
            QElapsedTimer timer;
            timer.start();
            while (timer.elapsed() < 400) {
            }
        });
        QTest::qWait(450);
        QVERIFY2(rig::watched()->longest_ms() > 150, qPrintable(QString::number(rig::watched()->longest_ms())));
    }

    void manyShortEventsAreNone()
    {
        for (int i = 0; i < 200; ++i) QTimer::singleShot(0, this, [] { QTest::qSleep(1); });
        QTest::qWait(400);
        QVERIFY2(rig::watched()->longest_ms() < rig::longestHold_ms,
                 qPrintable(QString::number(rig::watched()->longest_ms())));
    }

    void testCodeBetweenEventsIsNotCounted()
    {
        QTest::qSleep(400);
        QCoreApplication::processEvents();
        QVERIFY(rig::watched()->longest_ms() < rig::longestHold_ms);
    }

    void itForgets()
    {
        QTimer::singleShot(0, this, [] { QTest::qSleep(400); });
        QTest::qWait(450);
        rig::watched()->forget();
        QCOMPARE(rig::watched()->longest_ms(), 0.0);
    }

    void aHandlerInQml()
    {
        rig::Stage stage;
        auto* window = stage.show(QStringLiteral(R"(Item { width: 90; height: 48; MouseArea { anchors.fill: parent
            onClicked: { const begun = Date.now(); while (Date.now() - begun < 400) {} } } })"));
        QVERIFY(window != nullptr);
        QTest::mouseClick(window, Qt::LeftButton, {}, {20, 20});
        QVERIFY2(rig::watched()->longest_ms() > 150, qPrintable(QString::number(rig::watched()->longest_ms())));
    }
};

PROOFWALK_WINDOW_TEST(Watchdog)
#include "watchdog.moc"
