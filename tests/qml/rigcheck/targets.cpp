// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/qml/rig/targets.h"
#include "tests/qml/rig/stage.h"

using namespace proofwalk;

namespace {

// A button of no part's, so that what is tried here hangs on none of ours.
QString button(const char* place, const char* more = "")
{
    return QStringLiteral("Rectangle { %1; Accessible.role: Accessible.Button; Accessible.name: \"b\"; "
                          "Accessible.onPressAction: {}\n%2 }\n")
        .arg(QLatin1String(place), QLatin1String(more));
}

} // namespace

class Targets : public rig::WindowTest {
    Q_OBJECT

private Q_SLOTS:
    void breaksTheRule_data()
    {
        QTest::addColumn<QString>("qml");
        QTest::addColumn<QString>("rule");
        QTest::newRow("large enough") << button("width: 48; height: 48") << QString();
        QTest::newRow("30 high") << button("width: 200; height: 30") << QStringLiteral("small-target");
        QTest::newRow("30 wide") << button("width: 30; height: 64") << QStringLiteral("small-target");
        QTest::newRow("made small") << button("width: 64; height: 64; scale: 0.5") << QStringLiteral("small-target");
        QTest::newRow("two on one ground") << button("width: 80; height: 48") + button("x: 40; width: 80; height: 48")
                                           << QStringLiteral("targets-overlap");
        QTest::newRow("side by side") << button("width: 80; height: 48") + button("x: 80; width: 80; height: 48")
                                      << QString();
        QTest::newRow("one in another") << button("width: 200; height: 96",
                                                  " Item { x: 100; width: 48; height: 48; "
                                                  "Accessible.role: Accessible.Button; Accessible.name: \"c\"; "
                                                  "Accessible.onPressAction: {} }")
                                        << QString();
        QTest::newRow("beneath a sheet") << button("width: 200; height: 30")
                                                + QStringLiteral(
                                                    "Rectangle { width: 360; height: 640; color: \"white\" }")
                                         << QString();
        QTest::newRow("beneath a veil")
            << button("width: 200; height: 30")
                   + QStringLiteral("Rectangle { width: 360; height: 640; color: \"black\"; opacity: 0.4 }")
            << QString();
        QTest::newRow("out of the window")
            << button("x: 340; width: 100; height: 48") << QStringLiteral("out-of-reach");
        QTest::newRow("scrolled out") << QStringLiteral(
                                             "Flickable { width: 360; height: 60; contentHeight: 400; clip: true; ")
                                             + button("y: 300; width: 100; height: 48") + QStringLiteral("}")
                                      << QString();
        QTest::newRow("a verdict") << QStringLiteral(
            "component VerdictButton: Rectangle { Accessible.role: Accessible.Button; "
            "Accessible.name: \"pass\"; Accessible.onPressAction: {} }\n"
            "VerdictButton { width: 200; height: 48 }")
                                   << QStringLiteral("small-target");
    }
    void breaksTheRule()
    {
        QFETCH(QString, qml);
        QFETCH(QString, rule);
        rig::Stage stage;
        auto* window = stage.show(qml);
        QVERIFY2(window != nullptr, qPrintable(stage.problem()));
        const auto findings = rig::targets(*window);
        if (rule.isEmpty()) QVERIFY2(findings.empty(), qPrintable(rig::toText(findings)));
        else QVERIFY2(rig::has(findings, rule), qPrintable("told: " + rig::toText(findings)));
    }
};

PROOFWALK_WINDOW_TEST(Targets)
#include "targets.moc"
