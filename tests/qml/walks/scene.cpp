// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/qml/walks/scene.h"

#include "core/journal/home.h"
#include "qml/models/desk.h"

#include <QDir>
#include <QFile>
#include <QJsonDocument>
#include <QJsonObject>
#include <QProcess>

#include <algorithm>

namespace proofwalk::rig {

QString WalkTest::made(const QString& asked)
{
    if (m_jobs == nullptr)
        m_jobs = std::make_unique<screens::Jobs>(QStringLiteral(PROOFWALK_PROGRAM),
                                                 QStringLiteral(PROOFWALK_SOURCE "/fixtures"));
    const auto file = m_jobs->fresh(asked);
    if (!file) qWarning("%s: %s", file.error().code.c_str(), file.error().where.c_str());
    return file ? *file : QString();
}

QString WalkTest::started(const QString& plan, const QByteArray& commands)
{
    const QString file = m_folder.filePath(QStringLiteral("begun.walk"));
    QFile taken(m_folder.filePath(QStringLiteral("begun.jsonl")));
    if (!taken.open(QIODevice::WriteOnly)) return {};
    taken.write(commands);
    taken.close();
    for (const QStringList& words :
         {QStringList{"start", file, "--plan", plan}, QStringList{"take", file, "--from", taken.fileName()}}) {
        int status = -1;
        if (const QByteArray told = say(words, &status); status != 0) {
            qWarning("%s", told.constData());
            return {};
        }
    }
    return file;
}

QByteArray WalkTest::say(const QStringList& words, int* status)
{
    QProcess program;
    program.start(QStringLiteral(PROOFWALK_PROGRAM), words);
    if (!program.waitForFinished(60'000)) return "it did not end";
    if (status != nullptr) *status = program.exitStatus() == QProcess::NormalExit ? program.exitCode() : -1;
    return program.readAllStandardOutput() + program.readAllStandardError();
}

void WalkTest::lay(const QString& picture)
{
    const QString pictures = QDir::homePath() + QStringLiteral("/Pictures");
    QDir().mkpath(pictures);
    for (const QString& place : {pictures, m_folder.path()})
        QFile::copy(picture, place + u'/' + QFileInfo(picture).fileName());
}

/// Each hand comes to a machine that knows neither where the other stood nor whose key it is.
void WalkTest::forget()
{
    const auto home = journal::homeFolder();
    QVERIFY(home);
    for (const char* kept : {"window", "identity"}) std::filesystem::remove_all(*home / kept);
}

QByteArray WalkTest::byHand(By by, const QSize& size)
{
    forget();
    const QString file = m_folder.filePath(QString::number(++m_copies)) + u'/' + QFileInfo(m_begun).fileName();
    QDir().mkpath(QFileInfo(file).path());
    if (!QFile::copy(m_begun, file)) return "no copy";
    QString problem;
    {
        Stage stage;
        auto* window = stage.open(QUrl(QStringLiteral("qrc:/qt/qml/Proofwalk/Screens/Main.qml")), size);
        if (window == nullptr) return stage.problem().toUtf8();
        const auto hand = handOf(*window, by);
        hand->press(QStringLiteral("open-file"));
        hand->write(QStringLiteral("path"), file);
        hand->press(QStringLiteral("open-now"));
        hand->await([] { return models::Desk::instance().job() != nullptr; }, QStringLiteral("the job"));
        hand->taps().startOver();
        if (hand->well()) walk(*hand);
        qInfo("%.0f s of an operator's time", hand->taps().seconds());
        problem = hand->problem();
    }
    if (!problem.isEmpty()) return problem.toUtf8();
    return say({QStringLiteral("where"), file, QStringLiteral("--json")});
}

QByteArray WalkTest::byLines()
{
    const QString file = m_folder.filePath(QString::number(++m_copies)) + u'/' + QFileInfo(m_begun).fileName();
    QDir().mkpath(QFileInfo(file).path());
    // Photographs are named relative to the commands, so these stand beside them.
    const QString commands = m_folder.filePath(lines());
    QFile::remove(commands);
    if (!QFile::copy(m_begun, file)
        || !QFile::copy(QStringLiteral(PROOFWALK_SOURCE "/tests/qml/walks/") + lines(), commands))
        return "no copy";
    int status = 0;
    const QByteArray told = say({QStringLiteral("take"), file, QStringLiteral("--from"), commands}, &status);
    if (status != 0) return told;
    finish(file);
    return say({QStringLiteral("where"), file, QStringLiteral("--json")});
}

void WalkTest::compare(By by, const QSize& size)
{
    if (m_begun.isEmpty()) m_begun = begun();
    QVERIFY(!m_begun.isEmpty());
    if (m_byLines.isEmpty()) m_byLines = byLines();
    QVERIFY2(m_byLines.startsWith('{'), m_byLines.constData());
    const QByteArray byHand = this->byHand(by, size);
    QVERIFY2(byHand.startsWith('{'), byHand.constData());
    check(QJsonDocument::fromJson(byHand).object());
    const auto differs = std::ranges::mismatch(byHand, m_byLines).in1 - byHand.begin();
    QVERIFY2(byHand == m_byLines,
             "by hand: " + byHand.mid(differs - 120, 400) + "\nby lines: " + m_byLines.mid(differs - 120, 400));
}

} // namespace proofwalk::rig
