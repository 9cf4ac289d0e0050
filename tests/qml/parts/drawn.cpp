// SPDX-License-Identifier: GPL-3.0-or-later
// The drawn parts by what must be seen: shapes that grey tells apart, walls and whiskers where the numbers put them,
// rooms that a finger finds. Expected places are computed here from the numbers alone; the rules are the design's own.
#include "core/report/icon.h"
#include "qml/parts/kinds.h"
#include "qml/parts/theme.h"
#include "tests/qml/rig/stage.h"
#include "tests/qml/rig/taps.h"

#include <QJsonArray>
#include <QJsonDocument>
#include <QSignalSpy>

using namespace proofwalk;
using namespace proofwalk::rig;

class Drawn : public WindowTest {
    Q_OBJECT

private Q_SLOTS:
    void cleanup() { parts::Theme::instance().setChoice(parts::Theme::Light); }
    void marksDifferInGrey_data();
    void marksDifferInGrey();
    void windowsDifferInGrey();
    void bulkAndEarChangeTheMark();
    void anUnknownMarkDrawsNothing();
    void everyActionHasItsIcon();
    void anIconTakesTheColourOfTheLook();
    void whiskerCrossesTheJamb();
    void anAbsentLimitHasNoJamb();
    void eachRoomIsFoundWhereItLies();
    void theRoomInHandIsYellowBehindAHeavierWall();
    void aFloorInHandStaysAlone();
    void aChangedRowIsDrawn();
    void spotsKeepApartAndAnswer();
    void trialsShowMisses();
    void theStopwatchWalksRound();
    void strokesComeOutInThousandths();
    void leavingTheFieldEndsAStroke();
    void damagedInkIsRefused();

private:
    /// The item alone, drawn 60 by 60 unless it says otherwise.
    QImage drawnAlone(const QString& qml, const QSize& size = {60, 60});
};

namespace {

QImage grab(QQuickWindow& window)
{
    settle(window);
    return window.grabWindow().convertToFormat(QImage::Format_RGB32);
}

/// Form without colour: what is darker than the ground by a third of the scale.
QImage formOf(const QImage& image)
{
    QImage form(image.size(), QImage::Format_Grayscale8);
    const int ground = qGray(image.pixel(0, 0));
    for (int y = 0; y < image.height(); ++y)
        for (int x = 0; x < image.width(); ++x)
            form.setPixel(x, y, std::abs(qGray(image.pixel(x, y)) - ground) > 60 ? qRgb(0, 0, 0) : qRgb(255, 255, 255));
    return form;
}

int differing(const QImage& one, const QImage& other)
{
    int count = 0;
    for (int y = 0; y < one.height(); ++y)
        for (int x = 0; x < one.width(); ++x) count += one.pixel(x, y) != other.pixel(x, y);
    return count;
}

int pixelsOf(const QImage& image, const QColor& colour)
{
    int count = 0;
    for (int y = 0; y < image.height(); ++y)
        for (int x = 0; x < image.width(); ++x) count += image.pixel(x, y) == colour.rgb();
    return count;
}

const parts::Theme& theme() { return parts::Theme::instance(); }

const auto house = QStringLiteral(R"(
    ListModel { id: house; objectName: "house"
        ListElement { floor: "Up"; level: 1; outside: false; room: "Landing"; verdict: 0; here: false; caption: "" }
        ListElement { floor: "Up"; level: 1; outside: false; room: "Bedroom"; verdict: 5; here: true; caption: "" }
        ListElement { floor: "Ground"; level: 0; outside: false; room: "Hall"; verdict: 1; here: false; caption: "" }
        ListElement { floor: "Ground"; level: 0; outside: false; room: "Kitchen"; verdict: 5; here: false; caption: "" }
        ListElement { floor: "Cellar"; level: -1; outside: false; room: "Store"; verdict: 5; here: false; caption: "" }
        ListElement { floor: "Yard"; level: 0; outside: true; room: "Shed"; verdict: 5; here: false; caption: "" }
    })");

QRectF boxOf(QQuickItem& picture, int row)
{
    QRectF box;
    QMetaObject::invokeMethod(&picture, "boxOf", Q_RETURN_ARG(QRectF, box), Q_ARG(int, row));
    return box;
}

int roomAt(QQuickItem& picture, QPointF at)
{
    int row = -2;
    QMetaObject::invokeMethod(&picture, "roomAt", Q_RETURN_ARG(int, row), Q_ARG(double, at.x()), Q_ARG(double, at.y()));
    return row;
}

} // namespace

QImage Drawn::drawnAlone(const QString& qml, const QSize& size)
{
    Stage stage;
    auto* window = stage.show(qml, size);
    return window == nullptr ? QImage() : grab(*window);
}

void Drawn::marksDifferInGrey_data()
{
    QTest::addColumn<int>("side");
    QTest::newRow("small") << 20;
    QTest::newRow("large") << 48;
}

void Drawn::marksDifferInGrey()
{
    QFETCH(int, side);
    QList<QImage> forms;
    for (int mark = parts::verdict::Pass; mark <= parts::verdict::Retest; ++mark)
        forms << formOf(drawnAlone(
            QStringLiteral("VerdictMark { mark: %1; width: %2; height: %2 }").arg(mark).arg(side), {side, side}));
    for (int a = 0; a < forms.size(); ++a)
        for (int b = a + 1; b < forms.size(); ++b)
            QVERIFY2(differing(forms[a], forms[b]) > side * side / 25,
                     qPrintable(QStringLiteral("%1 and %2").arg(a).arg(b)));
}

void Drawn::windowsDifferInGrey()
{
    for (int kind = 0; kind < 4; ++kind) {
        QList<QImage> forms;
        for (int state = parts::proof::NotPromised; state <= parts::proof::Failed; ++state)
            forms << formOf(drawnAlone(
                QStringLiteral("ProofMark { kind: %1; state: %2; progress: 0.6 }").arg(kind).arg(state), {20, 20}));
        for (int a = 0; a < forms.size(); ++a)
            for (int b = a + 1; b < forms.size(); ++b)
                QVERIFY2(differing(forms[a], forms[b]) > 16,
                         qPrintable(QStringLiteral("proof %1: %2 and %3").arg(kind).arg(a).arg(b)));
    }
}

void Drawn::bulkAndEarChangeTheMark()
{
    for (const QString& mark :
         {QStringLiteral("VerdictMark { mark: Verdict.Pass"), QStringLiteral("ProofMark { state: Proof.Lit")}) {
        QList<QImage> forms;
        for (const int seen : {parts::seen::Singly, parts::seen::Bulk, parts::seen::Ear, parts::seen::Partner})
            forms << formOf(
                drawnAlone(mark + QStringLiteral("; seen: %1; width: 40; height: 24 }").arg(seen), {40, 24}));
        for (int a = 0; a < forms.size(); ++a)
            for (int b = a + 1; b < forms.size(); ++b) QVERIFY(differing(forms[a], forms[b]) > 16);
    }
}

void Drawn::anUnknownMarkDrawsNothing()
{
    for (const int mark : {-1, 8}) {
        const QImage image = drawnAlone(QStringLiteral("VerdictMark { mark: %1 }").arg(mark), {20, 20});
        QCOMPARE(pixelsOf(image, theme().film()), 400);
    }
}

void Drawn::everyActionHasItsIcon()
{
    for (const char* name : {"ear",        "lid-off",   "lid-on",   "on-test", "caution", "isolated", "really-set",
                             "photograph", "write",     "note",     "call",    "print",   "withdraw", "stairs",
                             "add",        "open-file", "practise", "erase",   "go",      "back",     "person"}) {
        QVERIFY2(report::hasIcon(name), name);
        const QImage image = drawnAlone(QStringLiteral("Icon { name: \"%1\" }").arg(QLatin1String(name)), {24, 24});
        QVERIFY2(pixelsOf(image, theme().ink()) > 24, name);
    }
    const QImage unknown = drawnAlone(QStringLiteral("Icon { name: \"unknown\" }"), {24, 24});
    QCOMPARE(drawnAlone(QStringLiteral("Icon { name: \"no-such-thing\" }"), {24, 24}), unknown);
    QCOMPARE(drawnAlone(QStringLiteral("Icon { name: \"../ear\" }"), {24, 24}), unknown);
}

void Drawn::anIconTakesTheColourOfTheLook()
{
    Stage stage;
    auto* window = stage.show(QStringLiteral("Icon { name: \"lid-on\"; width: 48; height: 48 }"), {48, 48});
    QVERIFY(window);
    QVERIFY(pixelsOf(grab(*window), theme().ink()) > 100);
    const QColor before = theme().ink();
    parts::Theme::instance().setChoice(parts::Theme::Dark);
    QVERIFY(theme().ink() != before);
    const QImage dark = grab(*window);
    QVERIFY(pixelsOf(dark, theme().ink()) > 100);
    QCOMPARE(pixelsOf(dark, before), 0);
}

// 3.4 ± 0.5 against 3 to 5: the whisker ends at 2.9, behind the jamb at 3.
void Drawn::whiskerCrossesTheJamb()
{
    Stage stage;
    auto* window =
        stage.show(QStringLiteral("ScalePicture { objectName: \"scale\"; width: 300; lower: 3; upper: 5; value: 3.4; "
                                  "uncertainty: 0.5; mark: Verdict.TooClose }"),
                   {300, 80});
    QVERIFY(window);
    QQuickItem* scale = stage.item(QStringLiteral("scale"));
    QVERIFY(scale);
    const auto x = [&](double number) {
        double at = 0;
        QMetaObject::invokeMethod(scale, "xOf", Q_RETURN_ARG(double, at), Q_ARG(double, number));
        return at;
    };
    const double perUnit = x(4) - x(3);
    QVERIFY(perUnit > 20);
    QVERIFY(std::abs(x(5) - x(3) - 2 * perUnit) < 0.01);
    const QImage image = grab(*window);
    const int y = 19; // the middle of the jambs, 38 high
    const QRgb ink = theme().ink().rgb();
    QCOMPARE(image.pixel(qRound(x(3)), y - 17), ink);                       // the jamb stands
    QCOMPARE(image.pixel(qRound(x(5)), y - 17), ink);
    QVERIFY(image.pixel(qRound(x(4)), y - 17) != ink);                      // between them it is open
    QCOMPARE(image.pixel(qRound(x(4)) + 20, y - 8), theme().done().rgb());
    QCOMPARE(image.pixel(qRound(x(3.4)), y), ink);                          // the reading
    const int end = qRound(x(2.9));
    QVERIFY(end < qRound(x(3)) - 3);
    bool cap = false;                                                       // the whisker's end, inside the wall
    for (int near = end - 1; near <= end + 1; ++near) cap = cap || image.pixel(near, y) == ink;
    QVERIFY(cap);
}

void Drawn::anAbsentLimitHasNoJamb()
{
    const QImage image = drawnAlone(
        QStringLiteral("ScalePicture { width: 300; lower: 10; value: 14; uncertainty: 1; mark: Verdict.Pass }"),
        {300, 80});
    int jambs = 0;
    for (int x = 1; x < image.width(); ++x)
        jambs += image.pixel(x, 2) == theme().ink().rgb() && image.pixel(x - 1, 2) != theme().ink().rgb();
    QCOMPARE(jambs, 1);
}

void Drawn::eachRoomIsFoundWhereItLies()
{
    Stage stage;
    auto* window = stage.show(
        house + QStringLiteral("SectionPicture { objectName: \"section\"; width: 300; height: 160; rooms: house }"),
        {300, 160});
    QVERIFY2(window, qPrintable(stage.problem()));
    QQuickItem* section = stage.item(QStringLiteral("section"));
    QVERIFY(section);
    QList<QRectF> boxes;
    for (int row = 0; row < 6; ++row) {
        const QRectF box = boxOf(*section, row);
        QVERIFY(QRectF(0, 0, 300, 160).contains(box));
        QVERIFY(box.width() > 10 && box.height() > 10);
        QCOMPARE(roomAt(*section, box.center()), row);
        for (const QRectF& other : boxes) QVERIFY(!other.adjusted(1, 1, -1, -1).intersects(box.adjusted(1, 1, -1, -1)));
        boxes << box;
    }
    QCOMPARE(boxes[0].width(), boxes[1].width()); // equal cells
    QVERIFY(boxes[0].bottom() <= boxes[2].top() && boxes[2].bottom() <= boxes[4].top()); // highest on top
    QCOMPARE(boxes[5].bottom(), boxes[4].top()); // the hut stands on the earth line, the cellar lies below it
    QVERIFY(boxes[5].left() > boxes[1].right());
    QCOMPARE(roomAt(*section, {1, 1}), -1);
}

void Drawn::theRoomInHandIsYellowBehindAHeavierWall()
{
    Stage stage;
    auto* window = stage.show(
        house + QStringLiteral("SectionPicture { objectName: \"section\"; width: 300; height: 160; rooms: house }"),
        {300, 160});
    QVERIFY(window);
    QQuickItem* section = stage.item(QStringLiteral("section"));
    const QImage image = grab(*window);
    const auto colourIn = [&](int row) { return image.pixel(boxOf(*section, row).center().toPoint()); };
    QCOMPARE(colourIn(1), theme().here().rgb());
    QCOMPARE(colourIn(0), theme().done().rgb());
    QCOMPARE(colourIn(2), theme().failT().rgb());
    QCOMPARE(colourIn(3), theme().paper().rgb());
    const auto wallBeside = [&](int row, double x) { // ink pixels across a wall at mid height
        const int y = boxOf(*section, row).center().toPoint().y();
        int wide = 0;
        for (int at = qRound(x) - 6; at <= qRound(x) + 6; ++at) wide += qGray(image.pixel(at, y)) < 100;
        return wide;
    };
    QVERIFY(wallBeside(1, boxOf(*section, 1).left()) > wallBeside(3, boxOf(*section, 3).left()));
}

void Drawn::aFloorInHandStaysAlone()
{
    QString rows;
    for (int level = 7; level >= 0; --level)
        rows += QStringLiteral(
                    "ListElement { floor: \"F%1\"; level: %1; outside: false; room: \"R\"; verdict: 5; here: %2; "
                    "caption: \"\" }\n")
                    .arg(level)
                    .arg(level == 5 ? QStringLiteral("true") : QStringLiteral("false"));
    Stage stage;
    auto* window =
        stage.show(QStringLiteral("ListModel { id: tower\n%1}\nSectionPicture { objectName: \"section\"; width: 200; "
                                  "height: 200; rooms: tower }")
                       .arg(rows),
                   {200, 200});
    QVERIFY2(window, qPrintable(stage.problem()));
    QQuickItem* section = stage.item(QStringLiteral("section"));
    const QRectF here = boxOf(*section, 2);
    for (int row = 0; row < 8; ++row)
        if (row != 2) QVERIFY2(boxOf(*section, row) != here, qPrintable(QString::number(row)));
    QCOMPARE(boxOf(*section, 0), boxOf(*section, 1)); // those above it are one
    QCOMPARE(roomAt(*section, here.center()), 2);
}

void Drawn::aChangedRowIsDrawn()
{
    Stage stage;
    auto* window = stage.show(
        house
            + QStringLiteral("SectionPicture { objectName: \"section\"; width: 300; height: 160; rooms: house; "
                             "function answer() { house.setProperty(3, \"verdict\", Verdict.Pass) } }"),
        {300, 160});
    QVERIFY(window);
    QQuickItem* section = stage.item(QStringLiteral("section"));
    QCOMPARE(grab(*window).pixel(boxOf(*section, 3).center().toPoint()), theme().paper().rgb());
    QVERIFY(QMetaObject::invokeMethod(section, "answer"));
    QCOMPARE(grab(*window).pixel(boxOf(*section, 3).center().toPoint()), theme().done().rgb());
}

void Drawn::spotsKeepApartAndAnswer()
{
    Stage stage;
    auto* window = stage.show(QStringLiteral(R"(
        ListModel { id: spots
            ListElement { tag: "A-01"; position: "window, left"; verdict: 5; here: true }
            ListElement { tag: "A-02"; position: "window, right"; verdict: 0; here: false }
            ListElement { tag: "A-03"; position: "on the ceiling"; verdict: 5; here: false }
            ListElement { tag: "A-04"; position: ""; verdict: 1; here: false }
            ListElement { tag: "A-05"; position: "above the door"; verdict: 5; here: false }
        }
        RoomPicture { objectName: "room"; width: 340; height: 150; spots: spots })"),
                              {340, 150});
    QVERIFY2(window, qPrintable(stage.problem()));
    QQuickItem* room = stage.item(QStringLiteral("room"));
    QSignalSpy tapped(room, SIGNAL(spotTapped(int)));
    QList<QPointF> places;
    for (int row = 0; row < 5; ++row) {
        QPointF place;
        QMetaObject::invokeMethod(room, "spotAt", Q_RETURN_ARG(QPointF, place), Q_ARG(int, row));
        QVERIFY(QRectF(6, 6, 328, 138).contains(place));
        for (const QPointF& other : places) QVERIFY(QLineF(other, place).length() >= 26);
        places << place;
        touchAt(*window, (place + QPointF(3, 3)).toPoint());
        QTRY_COMPARE(tapped.size(), row + 1);
        QCOMPARE(tapped.last().first().toInt(), row);
    }
    QCOMPARE(room->property("hereAt").toPointF(), places[0]);
    QVERIFY(places[0].y() < places[2].y()); // the window in the wall, the ceiling in the middle
    QVERIFY(places[4].x() < places[2].x()); // the door is at the left
}

void Drawn::trialsShowMisses()
{
    const QImage image = drawnAlone(QStringLiteral("TrialBoxes { hits: 3; tries: 4; wanted: 5 }"), {160, 21});
    const auto middle = [&](int box) { return image.pixel(box * 31 + 10, 10); };
    for (int box = 0; box < 3; ++box) QCOMPARE(middle(box), theme().ink().rgb());
    QCOMPARE(middle(3), theme().failC().rgb());
    QCOMPARE(middle(4), theme().paper().rgb());
}

// A corridor of 90 s, walked clockwise from the upper left corner: a quarter of its length is not a quarter of the sides.
void Drawn::theStopwatchWalksRound()
{
    Stage stage;
    auto* window =
        stage.show(QStringLiteral("StopwatchPicture { objectName: \"watch\"; width: 300; height: 200; elapsed: 20; "
                                  "lower: 54; upper: 66; full: 90 }"),
                   {300, 200});
    QVERIFY(window);
    QQuickItem* watch = stage.item(QStringLiteral("watch"));
    const auto at = [&](double seconds) {
        QPointF point;
        QMetaObject::invokeMethod(watch, "at", Q_RETURN_ARG(QPointF, point), Q_ARG(double, seconds));
        return point;
    };
    const QPointF begin = at(0), half = at(45);
    QVERIFY(begin.x() < 30 && begin.y() < 30);
    QVERIFY(half.x() > 270 && half.y() > 170); // half way round is the opposite corner
    QVERIFY(QLineF(at(90), begin).length() < 0.01);
    QVERIFY(QLineF(at(500), begin).length() < 0.01); // past the end one stands at the end
    const double way = 2 * (half.x() - begin.x() + half.y() - begin.y());
    QVERIFY(std::abs(at(20).x() - begin.x() - way * 20 / 90) < 0.01);
    const QImage image = grab(*window);
    QCOMPARE(image.pixel(at(10).toPoint()), theme().runC().rgb());
    QCOMPARE(image.pixel(at(60).toPoint()), theme().done().rgb());
    QCOMPARE(image.pixel(at(54).toPoint()), theme().ink().rgb());
    const QRectF inside = watch->property("inside").toRectF();
    QCOMPARE(image.pixel(inside.center().toPoint()), theme().paper().rgb());
}

namespace {

void draw(QQuickWindow& window, const QList<QPoint>& points)
{
    QTest::mousePress(&window, Qt::LeftButton, {}, points.first());
    for (const QPoint& point : points) QTest::mouseMove(&window, point);
    QTest::mouseRelease(&window, Qt::LeftButton, {}, points.last());
}

QJsonArray strokes(const QQuickItem& pad)
{
    return QJsonDocument::fromJson(pad.property("ink").toString().toUtf8()).array();
}

} // namespace

void Drawn::strokesComeOutInThousandths()
{
    Stage stage;
    auto* window = stage.show(QStringLiteral("InkPad { objectName: \"pad\"; width: 250; height: 100 }"), {250, 100});
    QVERIFY(window);
    QQuickItem* pad = stage.item(QStringLiteral("pad"));
    QVERIFY(pad->property("empty").toBool());
    QCOMPARE(pad->property("ink").toString(), QStringLiteral("[]"));
    QSignalSpy changed(pad, SIGNAL(inkChanged()));
    draw(*window, {{25, 50}, {125, 20}, {200, 80}});
    draw(*window, {{225, 10}});
    QCOMPARE(changed.size(), 2); // once a stroke, when the pen is lifted
    // 25 of 250 is 100 thousandths, 50 of 100 is 500.
    QCOMPARE(pad->property("ink").toString(), QStringLiteral("[[[100,500],[500,200],[800,800]],[[900,100]]]"));
    QVERIFY(!pad->property("empty").toBool());
    QVERIFY(qGray(grab(*window).pixel(25, 50)) < 100);
    const QString kept = pad->property("ink").toString();
    QVERIFY(QMetaObject::invokeMethod(pad, "clear"));
    QVERIFY(pad->property("empty").toBool());
    pad->setProperty("ink", kept);
    QCOMPARE(pad->property("ink").toString(), kept);
}

void Drawn::leavingTheFieldEndsAStroke()
{
    Stage stage;
    auto* window =
        stage.show(QStringLiteral("InkPad { objectName: \"pad\"; x: 20; y: 20; width: 250; height: 100 }"), {320, 160});
    QVERIFY(window);
    QQuickItem* pad = stage.item(QStringLiteral("pad"));
    draw(*window, {{120, 60}, {120, 100}, {120, 140}, {170, 140}, {170, 100}});
    const QJsonArray ink = strokes(*pad);
    QCOMPARE(ink.size(), 2);
    for (const QJsonValue& stroke : ink)
        for (const QJsonValue& point : stroke.toArray())
            for (const QJsonValue& each : point.toArray()) QVERIFY(each.toInt() >= 0 && each.toInt() <= 1000);
}

void Drawn::damagedInkIsRefused()
{
    Stage stage;
    auto* window = stage.show(QStringLiteral("InkPad { objectName: \"pad\"; ink: \"[[[1,2]]]\" }"), {320, 128});
    QVERIFY(window);
    QQuickItem* pad = stage.item(QStringLiteral("pad"));
    for (const char* damaged :
         {"[[[1,2]", "{}", "[[]]", "[[[1,2,3]]]", "[[[-1,2]]]", "[[[1,1001]]]", "[[[1.5,2]]]", "[[[\"1\",2]]]"}) {
        QTest::ignoreMessage(QtWarningMsg, QRegularExpression(QStringLiteral("no list of strokes")));
        pad->setProperty("ink", QString::fromLatin1(damaged));
        QCOMPARE(pad->property("ink").toString(), QStringLiteral("[[[1,2]]]"));
    }
}

PROOFWALK_WINDOW_TEST(Drawn)
#include "drawn.moc"
