// SPDX-License-Identifier: GPL-3.0-or-later
// The controls under the rig's rules: every page of the gallery is read, heard, tabbed through and measured; then what
// each does when it is touched or typed on. The rules' sources stand in the rig.
#include "tests/qml/rig/accessible.h"
#include "tests/qml/rig/legible.h"
#include "tests/qml/rig/stage.h"
#include "tests/qml/rig/tabwalk.h"
#include "tests/qml/rig/targets.h"

#include <QQuickItem>
#include <QSignalSpy>

using namespace proofwalk;
using namespace proofwalk::rig;

class Touched : public WindowTest {
    Q_OBJECT

private Q_SLOTS:
    void everyPageKeepsTheRules_data();
    void everyPageKeepsTheRules();
    void spaceReturnTouchAndVoicePress();
    void busyAndShutAreDeaf();
    void figuresAreTypedOnThePad();
    void theSheetKeepsTheKeyboard();
    void theArrowsWalkTheList();
};

namespace {

void press(QQuickWindow& window, QQuickItem& item)
{
    const QPointF middle = item.mapToScene({item.width() / 2, item.height() / 2});
    QTest::mouseClick(&window, Qt::LeftButton, {}, middle.toPoint());
}

} // namespace

void Touched::everyPageKeepsTheRules_data()
{
    QTest::addColumn<QString>("page");
    QTest::addColumn<int>("width");
    for (const char* page : {"Buttons", "Pads", "Stairs", "Lists", "Sheet"})
        for (const int width : {360, 800}) QTest::addRow("%s %d", page, width) << QString::fromLatin1(page) << width;
}

void Touched::everyPageKeepsTheRules()
{
    QFETCH(const QString, page);
    QFETCH(const int, width);
    m_hold_ms = -1; // a whole gallery at once
    Stage stage;
    auto* window = stage.show(
        QStringLiteral("Loader { width: %1; source: \"file://" PROOFWALK_SOURCE "/tests/qml/gallery/%2.qml\" }")
            .arg(width)
            .arg(page),
        {width, page == QLatin1String("Sheet") ? 780 : 2100});
    QVERIFY2(window, qPrintable(stage.problem()));
    settle(*window);
    // The pads of one page share their keys' names, as no screen does.
    Findings heard = accessible(*window);
    std::erase_if(heard, [](const auto& finding) { return finding.rule == QLatin1String("two-names"); });
    QCOMPARE(toText(heard), QString());
    QCOMPARE(toText(legible(*window)), QString());
    QCOMPARE(toText(tabWalk(*window, true)), QString());
}

void Touched::spaceReturnTouchAndVoicePress()
{
    Stage stage;
    auto* window = stage.show(QStringLiteral("ActionButton { objectName: \"it\"; text: \"walk on\" }"));
    QVERIFY2(window, qPrintable(stage.problem()));
    auto* button = stage.item(QStringLiteral("it"));
    QSignalSpy pressed(button, SIGNAL(clicked()));
    press(*window, *button);
    QCOMPARE(pressed.count(), 1);
    button->forceActiveFocus(Qt::TabFocusReason);
    QTest::keyClick(window, Qt::Key_Space);
    QTest::keyClick(window, Qt::Key_Return);
    QTest::keyClick(window, Qt::Key_Enter);
    QCOMPARE(pressed.count(), 4);
    QVERIFY(pressAccessibly(*button));
    QCOMPARE(pressed.count(), 5);
}

void Touched::busyAndShutAreDeaf()
{
    Stage stage;
    auto* window = stage.show(QStringLiteral(
        "Column { ActionButton { objectName: \"busy\"; text: \"a\"; busy: true }"
        " ActionButton { objectName: \"shut\"; text: \"b\"; style: ActionButton.Shut; second: \"why\" } }"));
    QVERIFY2(window, qPrintable(stage.problem()));
    for (const char* name : {"busy", "shut"}) {
        auto* button = stage.item(QString::fromLatin1(name));
        QSignalSpy pressed(button, SIGNAL(clicked()));
        press(*window, *button);
        button->forceActiveFocus(Qt::TabFocusReason);
        QVERIFY(button->hasActiveFocus());
        QTest::keyClick(window, Qt::Key_Space);
        pressAccessibly(*button);
        QCOMPARE(pressed.count(), 0);
    }
}

void Touched::figuresAreTypedOnThePad()
{
    Stage stage;
    auto* window = stage.show(QStringLiteral(
        "NumberPad { objectName: \"pad\"; width: 328; unitText: \"V\"; leftEnd: \"none\"; nextText: \"next\"; focus: true;"
        " property string typed; onDigit: figure => typed += figure; onPoint: typed += \".\"; onSign: typed += \"-\";"
        " onErase: typed += \"<\"; onNext: typed += \"!\"; onEnd: which => typed += \"e\" + which }"));
    QVERIFY2(window, qPrintable(stage.problem()));
    auto* pad = stage.item(QStringLiteral("pad"));
    pad->forceActiveFocus();
    for (const char key : std::string("-13,8.")) QTest::keyClick(window, key);
    QTest::keyClick(window, Qt::Key_Backspace);
    QTest::keyClick(window, Qt::Key_Return);
    QCOMPARE(pad->property("typed").toString(), QStringLiteral("-13.8.<!"));
    pad->setProperty("typed", QString());
    // By touch: the first key of the figures, left in the row under the unit's; then Return is still "next".
    QTest::mouseClick(window, Qt::LeftButton, {}, pad->mapToScene({38, 78}).toPoint());
    QTest::mouseClick(window, Qt::LeftButton, {}, pad->mapToScene({200, 24}).toPoint());
    QTest::keyClick(window, Qt::Key_Return);
    QCOMPARE(pad->property("typed").toString(), QStringLiteral("1e0!"));
    pad->setProperty("typed", QString());
    // By Tab: the pad, its end, then the figures; Space and Return press the key the keyboard stands on.
    QTest::keyClick(window, Qt::Key_Tab);
    QTest::keyClick(window, Qt::Key_Return);
    QCOMPARE(pad->property("typed").toString(), QStringLiteral("e0"));
}

void Touched::theSheetKeepsTheKeyboard()
{
    Stage stage;
    auto* window =
        stage.show(QStringLiteral("Item { anchors.fill: parent; ActionButton { objectName: \"below\"; text: \"below\" }"
                                  " SheetPanel { objectName: \"sheet\"; visible: false; title: \"A sheet\";"
                                  " TextEntry { width: parent.width; label: \"words\"; multiline: true }"
                                  " ActionButton { text: \"inside\" } } }"));
    QVERIFY2(window, qPrintable(stage.problem()));
    auto* below = stage.item(QStringLiteral("below"));
    auto* sheet = stage.item(QStringLiteral("sheet"));
    below->forceActiveFocus(Qt::TabFocusReason);
    sheet->setVisible(true);
    settle(*window);
    for (int i = 0; i < 10; ++i) {
        QVERIFY(window->activeFocusItem());
        QVERIFY(sheet->isAncestorOf(window->activeFocusItem()));
        QTest::keyClick(window, i < 6 ? Qt::Key_Tab : Qt::Key_Backtab, i < 6 ? Qt::NoModifier : Qt::ShiftModifier);
    }
    QSignalSpy dismissed(sheet, SIGNAL(dismissed()));
    QTest::keyClick(window, Qt::Key_Escape);
    QCOMPARE(dismissed.count(), 1);
    sheet->setVisible(false);
    QVERIFY(below->hasActiveFocus());
}

void Touched::theArrowsWalkTheList()
{
    Stage stage;
    auto* window = stage.show(QStringLiteral(
        "ListColumn { id: list; objectName: \"list\"; anchors.fill: parent; name: \"devices\"; model: 40; property int taken: -1;"
        " delegate: DeviceRow { required property int index; width: list.width; tag: \"CE-\" + index; title: \"Contact\";"
        " onClicked: list.taken = index } }"));
    QVERIFY2(window, qPrintable(stage.problem()));
    auto* list = stage.item(QStringLiteral("list"));
    QTest::keyClick(window, Qt::Key_Tab);
    QVERIFY(list->hasActiveFocus() || list->isAncestorOf(window->activeFocusItem()));
    QTest::keyClick(window, Qt::Key_Down);
    QTest::keyClick(window, Qt::Key_Down);
    QTest::keyClick(window, Qt::Key_Return);
    QCOMPARE(list->property("taken").toInt(), 2);
    QTest::keyClick(window, Qt::Key_End);
    QTest::keyClick(window, Qt::Key_Return);
    QCOMPARE(list->property("taken").toInt(), 39);
}

PROOFWALK_WINDOW_TEST(Touched)
#include "touched.moc"
