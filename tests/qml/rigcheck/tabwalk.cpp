// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/qml/rig/tabwalk.h"
#include "tests/qml/rig/stage.h"

using namespace proofwalk;

namespace {

QString keys(const QString& body, const QString& page = QStringLiteral("%1"))
{
    return QStringLiteral("component Key: Rectangle { width: 90; height: 48; activeFocusOnTab: true; color: \"white\"\n"
                          "border.width: activeFocus ? 2 : 0; Accessible.role: Accessible.Button\n"
                          "Accessible.name: objectName; Accessible.onPressAction: {} }\n")
         + page.arg(QStringLiteral("Column { %1 }").arg(body));
}

} // namespace

class TabWalk : public rig::WindowTest {
    Q_OBJECT

private Q_SLOTS:
    void breaksTheRule_data()
    {
        QTest::addColumn<QString>("qml");
        QTest::addColumn<QString>("rule");
        QTest::newRow("three keys") << keys(
            "Key { objectName: \"a\" } Key { objectName: \"b\" } Key { objectName: \"c\" }")
                                    << QString();
        QTest::newRow("one is left out") << keys(
            "Key { objectName: \"a\" } Key { objectName: \"b\"; activeFocusOnTab: false }")
                                         << QStringLiteral("not-reached");
        QTest::newRow("none takes it") << keys("Key { objectName: \"a\"; activeFocusOnTab: false }")
                                       << QStringLiteral("not-reached");
        QTest::newRow("a disabled one is passed over")
            << keys("Key { objectName: \"a\" } Key { objectName: \"b\"; enabled: false }") << QString();
        QTest::newRow("no mark of the focus")
            << keys("Key { objectName: \"a\" } Key { objectName: \"b\"; border.width: 1 }")
            << QStringLiteral("no-focus-mark");
        QTest::newRow("out of sight") << keys(
            "Key { objectName: \"a\" } Item { width: 1; height: 200 } Key { objectName: \"b\" }",
            QStringLiteral("Flickable { width: 360; height: 60; clip: true; contentHeight: 400; %1 }"))
                                      << QStringLiteral("focus-hidden");
        QTest::newRow("behind a sheet") << keys(
            "Key { objectName: \"a\" } Key { objectName: \"b\" }",
            QStringLiteral("Item { %1 Rectangle { width: 360; height: 640 } Key { x: 100; objectName: \"c\" } }"))
                                        << QStringLiteral("focus-hidden");
    }
    void breaksTheRule()
    {
        QFETCH(QString, qml);
        QFETCH(QString, rule);
        rig::Stage stage;
        auto* window = stage.show(qml);
        QVERIFY2(window != nullptr, qPrintable(stage.problem()));
        const auto findings = rig::tabWalk(*window, true);
        if (rule.isEmpty()) QVERIFY2(findings.empty(), qPrintable(rig::toText(findings)));
        else QVERIFY2(rig::has(findings, rule), qPrintable("told: " + rig::toText(findings)));
    }
};

PROOFWALK_WINDOW_TEST(TabWalk)
#include "tabwalk.moc"
