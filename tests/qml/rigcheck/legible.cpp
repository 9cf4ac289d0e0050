// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/qml/rig/legible.h"
#include "tests/qml/rig/stage.h"

using namespace proofwalk;

class Legible : public rig::WindowTest {
    Q_OBJECT

private Q_SLOTS:
    void breaksTheRule_data()
    {
        QTest::addColumn<QString>("qml");
        QTest::addColumn<QString>("rule"); // empty: none is broken
        const auto row = [](const char* name, const char* rule, const char* qml) {
            QTest::newRow(name) << QString::fromUtf8(qml) << QString::fromUtf8(rule);
        };
        row("a page in order", "", R"(Column { Text { text: "Kitchen"; font.pixelSize: 15 }
            Text { text: "Hall"; font.pixelSize: 13 } })");
        row("elided", "truncated",
            R"(Text { width: 60; elide: Text.ElideRight; text: "a very long word"; font.pixelSize: 15 })");
        row("more lines than shown", "truncated", R"(Text { width: 60; wrapMode: Text.Wrap; maximumLineCount: 1
            elide: Text.ElideRight; text: "two words and more"; font.pixelSize: 15 })");
        row("wider than its item", "overflow", R"(Text { width: 60; text: "a very long word"; font.pixelSize: 15 })");
        row("higher than its item", "overflow", R"(Text { width: 60; height: 20; wrapMode: Text.Wrap
            text: "a very long word that wraps"; font.pixelSize: 15 })");
        row("cut by an ancestor", "clipped", R"(Item { width: 40; height: 40; clip: true
            Text { text: "a very long word"; font.pixelSize: 15 } })");
        row("out of the window", "clipped", R"(Text { x: 320; text: "a very long word"; font.pixelSize: 15 })");
        row("on content that scrolls", "",
            R"(Flickable { width: 200; height: 40; clip: true; contentHeight: 400; contentWidth: 200
            Text { y: 300; text: "further down"; font.pixelSize: 15 } })");
        row("across the way that scrolls", "clipped", R"(Flickable { width: 60; height: 40; clip: true
            contentHeight: 400; contentWidth: 60; Text { text: "a very long word"; font.pixelSize: 15 } })");
        row("one over another", "overlap", R"(Item { Text { text: "Kitchen"; font.pixelSize: 15 }
            Text { x: 10; y: 5; text: "Hall"; font.pixelSize: 15 } })");
        row("behind a sheet", "", R"(Item { Text { text: "Kitchen"; font.pixelSize: 15 }
            Rectangle { width: 360; height: 640; color: "white"; Text { y: 4; text: "Hall"; font.pixelSize: 15 } } })");
        row("half behind a plate", "half-covered", R"(Item { Text { text: "Kitchen"; font.pixelSize: 15 }
            Rectangle { x: 20; width: 100; height: 30; color: "white" } })");
        row("small", "small-type", R"(Text { text: "Kitchen"; font.pixelSize: 11 })");
        row("made small", "small-type",
            R"(Text { text: "Kitchen"; font.pixelSize: 20; scale: 0.5; transformOrigin: Item.TopLeft })");
        row("not to be seen", "", R"(Text { visible: false; text: "Kitchen"; font.pixelSize: 9 })");
        row("centred and too long", "clipped", R"(Item { width: 360; height: 40; Text { anchors.centerIn: parent
            text: "words without end that run from one edge of the window to the other"; font.pixelSize: 15 } })");
    }
    void breaksTheRule()
    {
        QFETCH(QString, qml);
        QFETCH(QString, rule);
        rig::Stage stage;
        auto* window = stage.show(qml);
        QVERIFY2(window != nullptr, qPrintable(stage.problem()));
        const auto findings = rig::legible(*window);
        if (rule.isEmpty()) QVERIFY2(findings.empty(), qPrintable(rig::toText(findings)));
        else QVERIFY2(rig::has(findings, rule), qPrintable("told: " + rig::toText(findings)));
    }
};

PROOFWALK_WINDOW_TEST(Legible)
#include "legible.moc"
