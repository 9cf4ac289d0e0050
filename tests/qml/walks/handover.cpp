// SPDX-License-Identifier: GPL-3.0-or-later
// The handover of the corner shop: off test, what the owner was shown, their name and ink, the installer's key, the
// report looked at sheet by sheet, signed, and verified in front of the customer.
#include "qml/parts/words.h"
#include "tests/qml/rig/written.h"
#include "tests/qml/walks/scene.h"

#include <QFile>
#include <QJsonArray>
#include <QJsonObject>

using namespace proofwalk;

class HandoverWalk : public rig::WalkTest {
    Q_OBJECT

    static constexpr auto secret = "a walk in the park";
    QString m_report;
    int m_reports = 0;
    QStringList m_shown; ///< what was on the screen when it had been verified

    /// The day up to the call to the station.
    QString begun() override
    {
        QFile day(QStringLiteral(PROOFWALK_SOURCE "/fixtures/corner-shop/walk.jsonl"));
        if (!day.open(QIODevice::ReadOnly)) return {};
        int line = 0;
        while (!day.atEnd() && !day.readLine().contains("\"off-test\"")) ++line;
        return made(QStringLiteral("corner-shop@%1").arg(line));
    }

    void backToNormal(rig::Hand& hand)
    {
        hand.press("tread-4");
        hand.press("normal-act-0");
        hand.write("told", "station operator; a last test signal came as live");
        hand.press("off-test-do");
        hand.leave("door-handover");
    }

    void show(rig::Hand& hand)
    {
        hand.press("tread-5");
        for (const char* topic : {"show-0", "show-1", "show-2"}) hand.press(QLatin1String(topic));
        hand.write("other-topic", "the stopcock");
        hand.write("other-words", "turned it themselves");
        hand.press("add-topic");
        hand.leave("door-handover");
    }

    void makeKey(rig::Hand& hand)
    {
        hand.press("want-key");
        hand.write("key-name", "Commissioning engineer");
        hand.write("key-firm", "The installing firm");
        hand.write("key-passphrase", QLatin1String(secret));
        hand.write("key-again", QLatin1String(secret));
        hand.press("make-key");
    }

    void agree(rig::Hand& hand)
    {
        hand.press("tread-6");
        makeKey(hand);
        hand.write("customer-name", "Owner");
        hand.draw("signature");
        hand.leave("door-handover"); // called away: what was drawn is there again
        hand.press("tread-6");
        hand.press("agree");
        hand.leave("door-handover");
    }

    /// Put away and taken up again, as the commands and the report of the command line are two sittings too.
    void sitDownAgain(rig::Hand& hand)
    {
        hand.press("close-job");
        hand.press("walk-on");
        hand.press("door-handover");
        hand.press("final-report");
    }

    int lookThrough(rig::Hand& hand)
    {
        QSet<QString> sheets;
        hand.pressOn("sheet-next", [&] { sheets << hand.reads("sheet"); });
        return int(sheets.size());
    }

    /// Looked at, signed, looked at again as it was signed, verified.
    void report(rig::Hand& hand)
    {
        m_report = QStringLiteral("%1/by-hand-%2.pdf").arg(folder()).arg(++m_reports);
        const int drafted = lookThrough(hand);
        hand.press("sign");
        hand.write("report-path", m_report);
        hand.write("passphrase", QLatin1String(secret));
        hand.press("sign-now");
        const int handedOver = lookThrough(hand);
        const QString sound = parts::phrase("window.report.sound");
        hand.await([&] { return hand.reads("verify").contains(sound); }, sound);
        hand.press("verify");
        QVERIFY2(hand.well(), qPrintable(hand.problem()));
        QVERIFY2(drafted > 1 && handedOver >= drafted, qPrintable(QString::number(drafted)));
        m_shown.clear();
        for (const auto& written : rig::writtenItems(hand.window()))
            if (!written.shown.covered) m_shown << written.text;
    }

    void walk(rig::Hand& hand) override
    {
        hand.press("door-handover");
        backToNormal(hand);
        show(hand);
        agree(hand);
        sitDownAgain(hand);
        report(hand);
    }

    QString lines() override { return QStringLiteral("handover.jsonl"); }

    /// The same by the command line, by a signer of its own.
    void finish(const QString& file) override
    {
        const QString words = folder() + QStringLiteral("/passphrase"), signer = folder() + QStringLiteral("/signer");
        QFile kept(words);
        QVERIFY(kept.open(QIODevice::WriteOnly));
        kept.write(QByteArray(secret) + '\n');
        kept.close();
        int status = -1;
        QByteArray told = say({"signer", signer, "--name", "Commissioning engineer", "--firm", "The installing firm",
                               "--passphrase-file", words},
                              &status);
        QVERIFY2(status == 0, told.constData());
        told = say({"report", file, "--out", folder() + QStringLiteral("/by-lines.pdf"), "--signed-by", signer,
                    "--passphrase-file", words},
                   &status);
        QVERIFY2(status == 0, told.constData());
    }

    void check(const QJsonObject& where) override
    {
        QCOMPARE(where["standing"].toString(), QString("complete"));
        for (const QJsonValue& rung : where["rungs"].toArray()) QVERIFY(!rung["blocking"].toBool());
        // Public test source: the command line verifies what the window made, and says what the window said of it.
        int status = -1;
        const QByteArray told = say({"verify", m_report}, &status);
        QVERIFY2(status == 0, told.constData());
        const QString first = QString::fromUtf8(told.left(told.indexOf('\n'))).remove(folder() + u'/');
        QVERIFY2(m_shown.contains(first), qPrintable(first + u'\n' + m_shown.join(u'\n')));
    }
};

PROOFWALK_WINDOW_TEST(HandoverWalk)
#include "handover.moc"
