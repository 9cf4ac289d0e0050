// SPDX-License-Identifier: GPL-3.0-or-later
// One job and one report of every released format, kept in fixtures/golden and opened by every run from now on. Their bytes
// must stay readable and sound for decades; their verdicts are frozen when the judgement is.
#include "core/report/examine.h"
#include "core/walk/readiness.h"

#include <QDir>
#include <QTest>

using namespace proofwalk;

class GoldenTest : public QObject {
    Q_OBJECT

private slots:
    void soundAndSame_data();
    void soundAndSame();
};

void GoldenTest::soundAndSame_data()
{
    QTest::addColumn<QString>("file");
    const QDir folder(QStringLiteral(PROOFWALK_SOURCE "/fixtures/golden"));
    for (const QString& name : folder.entryList({QStringLiteral("*.walk"), QStringLiteral("*.pdf")}, QDir::Files))
        QTest::newRow(qPrintable(name)) << folder.filePath(name);
    QVERIFY(folder.entryList({QStringLiteral("*.walk")}).size() >= 1);
    QVERIFY(folder.entryList({QStringLiteral("*.pdf")}).size() >= 1);
}

void GoldenTest::soundAndSame()
{
    QFETCH(QString, file);
    const auto examined = report::examine(file.toStdString());
    QVERIFY2(examined, examined ? "" : examined.error().code.c_str());
    for (const Error& problem : examined->problems) qWarning("%s %s", problem.code.c_str(), problem.where.c_str());
    QVERIFY(examined->sound());
    QVERIFY(examined->judged);
    QVERIFY(examined->judged->state.unjudged.empty());
    // The corner shop as it was handed over: ten devices, all of them pass. Read off the walk by hand.
    QCOMPARE(walk::countVerdicts(examined->judged->state)[static_cast<std::size_t>(walk::Verdict::pass)], 10);
    QVERIFY(!QFile::exists(file + QStringLiteral("-wal")));
}

QTEST_GUILESS_MAIN(GoldenTest)
#include "golden.moc"
