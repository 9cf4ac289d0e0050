// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/qml/rig/accessible.h"
#include "tests/qml/rig/stage.h"

using namespace proofwalk;

class Accessible : public rig::WindowTest {
    Q_OBJECT

private Q_SLOTS:
    void breaksTheRule_data()
    {
        QTest::addColumn<QString>("qml");
        QTest::addColumn<QString>("rule");
        const auto row = [](const char* name, const char* rule, const char* qml) {
            QTest::newRow(name) << QString::fromUtf8(qml) << QString::fromUtf8(rule);
        };
        row("in order", "", R"(Item { width: 90; height: 48; activeFocusOnTab: true; Accessible.role: Accessible.Button
            Accessible.name: "next"; Accessible.onPressAction: {} MouseArea { anchors.fill: parent; onClicked: {} } })");
        row("without a name", "nameless", R"(Item { width: 90; height: 48; Accessible.role: Accessible.Button
            Accessible.onPressAction: {} })");
        row("a name of blanks", "nameless", R"(Item { width: 90; height: 48; Accessible.role: Accessible.Button
            Accessible.name: "  "; Accessible.onPressAction: {} })");
        row("a picture without a name", "nameless",
            R"(Item { width: 90; height: 48; Accessible.role: Accessible.Graphic })");
        row("nobody hears the press", "no-press", R"(Item { width: 90; height: 48; Accessible.role: Accessible.Button
            Accessible.name: "next"; MouseArea { anchors.fill: parent; onClicked: {} } })");
        row("Tab without a role", "no-role", R"(Item { width: 90; height: 48; activeFocusOnTab: true })");
        row("a bare place to touch", "bare-touch",
            R"(Item { width: 90; height: 48; MouseArea { anchors.fill: parent; onClicked: {} } })");
        row("a bare handler of taps", "bare-touch", R"(Item { width: 90; height: 48; TapHandler { onTapped: {} } })");
        row("two of one name", "two-names", R"(Row { Repeater { model: 2; Item { width: 90; height: 48
            Accessible.role: Accessible.Button; Accessible.name: "next"; Accessible.onPressAction: {} } } })");
        row("nameless, but behind a sheet", "",
            R"(Item { Item { width: 90; height: 48; Accessible.role: Accessible.Button }
            Rectangle { width: 360; height: 640; color: "white" } })");
    }
    void breaksTheRule()
    {
        QFETCH(QString, qml);
        QFETCH(QString, rule);
        rig::Stage stage;
        auto* window = stage.show(qml);
        QVERIFY2(window != nullptr, qPrintable(stage.problem()));
        const auto findings = rig::accessible(*window);
        if (rule.isEmpty()) QVERIFY2(findings.empty(), qPrintable(rig::toText(findings)));
        else QVERIFY2(rig::has(findings, rule), qPrintable("told: " + rig::toText(findings)));
    }

    void theTreeIsThereAndAPressArrives()
    {
        rig::Stage stage;
        auto* window =
            stage.show(QStringLiteral(R"(Item { objectName: "key"; property int pressed: 0; width: 90; height: 48
            Accessible.role: Accessible.Button; Accessible.name: "next"; Accessible.onPressAction: pressed += 1 })"));
        QVERIFY2(window != nullptr, qPrintable(stage.problem()));
        QVERIFY(rig::nodesOf(*window) >= 2);
        auto* key = stage.item(QStringLiteral("key"));
        QVERIFY(rig::pressAccessibly(*key));
        QCOMPARE(key->property("pressed").toInt(), 1);
        key->setEnabled(false);
        QVERIFY(!rig::pressAccessibly(*key));
    }
};

PROOFWALK_WINDOW_TEST(Accessible)
#include "accessible.moc"
