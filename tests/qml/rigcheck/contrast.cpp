// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/qml/rig/contrast.h"
#include "qml/parts/theme.h"
#include "tests/qml/rig/stage.h"

#include <QFile>

using namespace proofwalk;

class Contrast : public rig::WindowTest {
    Q_OBJECT

private Q_SLOTS:
    // Source: WCAG 2.2, "contrast ratio" (21 to 1 for black on white by its definition); #767676 on white as the lightest
    // grey that still reaches 4.5 and #777777 as one that does not, as quoted on public pages. Tolerance: the last digit.
    void theFormula()
    {
        QCOMPARE(rig::contrast(Qt::black, Qt::white), 21.0);
        QCOMPARE(rig::contrast(Qt::red, Qt::red), 1.0);
        QVERIFY(qAbs(rig::contrast(QColor("#767676"), Qt::white) - 4.54) < 0.005);
        QVERIFY(qAbs(rig::contrast(Qt::white, QColor("#777777")) - 4.48) < 0.005);
    }

    // contrasts.csv was computed by contrasts.py, which knows only the sheet of colours of the design; a test of its own
    // holds it against that. Here the Theme's own colours must give the same, and be enough.
    void everyPairOfTheTheme()
    {
        QFile table(QStringLiteral(PROOFWALK_SOURCE "/tests/qml/rigcheck/contrasts.csv"));
        QVERIFY(table.open(QIODevice::ReadOnly));
        const std::map<QByteArray, parts::Theme::Choice> looks{{"light", parts::Theme::Light},
                                                               {"dark", parts::Theme::Dark},
                                                               {"high contrast", parts::Theme::HighContrast}};
        auto& theme = parts::Theme::instance();
        int rows = 0;
        for (table.readLine(); !table.atEnd(); ++rows) {
            const auto cells = table.readLine().trimmed().split(',');
            QCOMPARE(cells.size(), 5);
            theme.setChoice(looks.at(cells[0]));
            const auto colour = [&](const QByteArray& name) {
                return theme.property(name.constData()).value<QColor>();
            };
            QVERIFY2(colour(cells[1]).isValid() && colour(cells[2]).isValid(), cells[1] + " on " + cells[2]);
            const double found = rig::contrast(colour(cells[1]), colour(cells[2]));
            const QByteArray told = cells.join(' ') + ": found " + QByteArray::number(found);
            QVERIFY2(qAbs(found - cells[3].toDouble()) < 0.051, told);
            QVERIFY2(found >= cells[4].toDouble() - 0.05, told);
        }
        QVERIFY(rows > 150);
        theme.setChoice(parts::Theme::Light);
    }

    void breaksTheRule_data()
    {
        QTest::addColumn<QString>("qml");
        QTest::addColumn<QString>("rule");
        const auto row = [](const char* name, const char* rule, const char* qml) {
            QTest::newRow(name) << QString::fromUtf8(qml) << QString::fromUtf8(rule);
        };
        row("ink on film", "", R"(Text { text: "Kitchen"; font.pixelSize: 15; color: Theme.ink })");
        row("grey on film", "contrast",
            R"(Text { text: "Kitchen"; font.pixelSize: 15; color: Qt.rgba(0.600, 0.600, 0.600, 1) })");
        row("the same grey, large", "contrast",
            R"(Text { text: "Kitchen"; font.pixelSize: 24; color: Qt.rgba(0.667, 0.667, 0.667, 1) })");
        row("half clear", "contrast",
            R"(Text { text: "Kitchen"; font.pixelSize: 15; color: Theme.ink; opacity: 0.4 })");
        row("a grey that is enough when large", "",
            R"(Text { text: "Kitchen"; font.pixelSize: 24; color: Qt.rgba(0.467, 0.467, 0.467, 1) })");
        row("the same grey, small", "contrast",
            R"(Text { text: "Kitchen"; font.pixelSize: 15; color: Qt.rgba(0.467, 0.467, 0.467, 1) })");
        row("on a button", "contrast", R"(Rectangle { width: 200; height: 48; color: Theme.routeBtn
            Text { anchors.centerIn: parent; text: "Kitchen"; font.pixelSize: 15; color: Theme.ink } })");
        row("behind another sheet", "",
            R"(Item { Text { text: "Kitchen"; font.pixelSize: 15; color: Qt.rgba(0.800, 0.800, 0.800, 1) }
            Rectangle { width: 360; height: 640; color: Theme.paper } })");
    }
    void breaksTheRule()
    {
        QFETCH(QString, qml);
        QFETCH(QString, rule);
        rig::Stage stage;
        auto* window = stage.show(qml);
        QVERIFY2(window != nullptr, qPrintable(stage.problem()));
        const auto findings = rig::contrasts(*window, window->grabWindow());
        if (rule.isEmpty()) QVERIFY2(findings.empty(), qPrintable(rig::toText(findings)));
        else QVERIFY2(rig::has(findings, rule), qPrintable("told: " + rig::toText(findings)));
    }

    void wordsThatWereNotDrawn()
    {
        rig::Stage stage;
        auto* window = stage.show(QStringLiteral("Text { text: \"Kitchen\"; font.pixelSize: 15; color: Theme.ink }"));
        QVERIFY(window != nullptr);
        QImage blank = window->grabWindow();
        blank.fill(Qt::white);
        QVERIFY(rig::has(rig::contrasts(*window, blank), QStringLiteral("faint")));
    }
};

PROOFWALK_WINDOW_TEST(Contrast)
#include "contrast.moc"
