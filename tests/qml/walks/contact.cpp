// SPDX-License-Identifier: GPL-3.0-or-later
// A faultless contact, from the list to the next card, by touch and by keys: at most 3 taps and 6 s of the operator's
// time beyond the walking itself. Counted after the keystroke-level model (tests/qml/rig/taps.h names its source); the
// looks from the door to the screen belong to the walk test, the decisions do not.
#include "qml/models/desk.h"
#include "qml/models/whereabouts.h"
#include "tests/qml/rig/stage.h"
#include "tests/qml/rig/taps.h"

#include <QSignalSpy>

using namespace proofwalk;

class ContactTest : public rig::WindowTest {
    Q_OBJECT

private:
    QTemporaryDir m_folder;
    int m_jobs = 0;

    bool done(const std::function<void(std::function<void(bool)>)>& ask)
    {
        int outcome = -1;
        ask([&](bool well) { outcome = well ? 1 : 0; });
        return QTest::qWaitFor([&] { return outcome >= 0; }, 20000) && outcome == 1;
    }

    void walkOneContact(rig::By by)
    {
        rig::Stage stage;
        const auto file = std::filesystem::path(m_folder.path().toStdString()) / (std::to_string(++m_jobs) + ".walk");
        QVERIFY(done([&](auto told) {
            models::Desk::instance().start(file, PROOFWALK_SOURCE "/fixtures/corner-shop", this,
                                           [told](const Result<void>& result) { told(result.has_value()); });
        }));
        QVERIFY(done([&](auto told) {
            models::Desk::instance().tell(
                this, base::Json(base::Json::Object{{"do", "state"}, {"area", "shop"}, {"state", "walk-test"}}),
                [told](const Result<int>& result) { told(result.has_value()); });
        }));
        QQuickWindow* window = stage.open(QUrl("qrc:/qt/qml/Proofwalk/Screens/Main.qml"));
        QVERIFY2(window != nullptr, qPrintable(stage.problem()));
        models::Whereabouts::instance().go(models::Whereabouts::Walk, "card", "GR-06");
        rig::settle(*window);

        rig::Taps taps(*window, by);
        const auto answered = [] { return models::Desk::instance().job()->view("GR-06")->answered; };
        for (const int steps : {1, 3, 6}) { // fixing; opened and closed; the cover, its tamper, nothing bridged
            QVERIFY2(taps.tap("as-planned"), qPrintable(taps.problem()));
            QVERIFY2(taps.until([&] { return answered() == steps; }, "answered"),
                     qPrintable(QStringLiteral("%1: %2 of %3").arg(taps.problem()).arg(answered()).arg(steps)));
            rig::settle(*window);
        }
        QCOMPARE(models::Whereabouts::instance().subject(), QString("GR-07")); // the next in the room, by itself
        qInfo("a faultless contact: %s", qPrintable(taps.account()));
        if (by == rig::By::touch) {
            QVERIFY2(taps.taps() <= 3, qPrintable(taps.account()));
            QVERIFY2(taps.seconds() <= 6, qPrintable(taps.account()));
        }
        models::Desk::instance().close();
    }

private Q_SLOTS:
    void byTouch() { walkOneContact(rig::By::touch); }
    void byKeys() { walkOneContact(rig::By::keys); }
};

PROOFWALK_WINDOW_TEST(ContactTest)
#include "contact.moc"
