// SPDX-License-Identifier: GPL-3.0-or-later
// The page on the format, held to its word: its shell lines are run, its statements compared with a file.
#include "tests/journal/jobs.h"
#include "tests/journal/tools.h"

#include "core/base/digest.h"
#include "core/base/file.h"

#include <QProcess>
#include <QRegularExpression>

using namespace proofwalk;
using namespace proofwalk::journal;

namespace {

QString page()
{
    const auto bytes = base::readFile(PROOFWALK_SOURCE "/core/journal/FORMAT.md");
    return bytes ? QString::fromStdString(*bytes) : QString();
}

/// The blocks between fences that are marked with that word.
QStringList blocks(const QString& mark)
{
    QStringList found;
    const QRegularExpression fenced("^```" + mark + "\\n(.*?)^```$",
                                    QRegularExpression::MultilineOption
                                        | QRegularExpression::DotMatchesEverythingOption);
    for (auto it = fenced.globalMatch(page()); it.hasNext();) found << it.next().captured(1);
    return found;
}

} // namespace

class Format : public QObject {
    Q_OBJECT
private slots:
    void shellLinesDoWhatTheySay();
    void theProgramAgreesWithThem();
    void theStatementsAreThoseOfAFile();
    void everyMemberIsThere();
};

void Format::shellLinesDoWhatTheySay()
{
    const QStringList lines = blocks("sh"), outputs = blocks("output");
    QCOMPARE(lines.size(), 3);
    QCOMPARE(outputs.size(), 3);
    const QTemporaryDir folder;
    for (int i = 0; i < lines.size(); ++i) {
        QProcess shell;
        shell.setWorkingDirectory(folder.path());
        shell.start("/bin/sh", {"-e", "-c", lines.at(i)});
        QVERIFY(shell.waitForFinished());
        QCOMPARE(shell.readAllStandardError(), QByteArray());
        QCOMPARE(QString::fromUtf8(shell.readAllStandardOutput()), outputs.at(i));
        QCOMPARE(shell.exitCode(), 0);
    }
}

void Format::theProgramAgreesWithThem()
{
    const QStringList lines = blocks("sh"), outputs = blocks("output");
    auto event = readEvent(lines.at(0).section('\'', 3, 3).toStdString());
    VERIFY_GOOD(event);
    QCOMPARE(QString::fromStdString(event->hash), outputs.at(0).left(64));

    auto sealed = base::parseCanonical(lines.at(1).section('\'', 3, 3).toStdString());
    VERIFY_GOOD(sealed);
    const auto& parts = *sealed->array();
    QCOMPARE(QString::fromStdString(commitmentOf(*parts[1].string(), *parts[2].string())), outputs.at(1).left(64));

    const QStringList words = lines.at(2).split(QRegularExpression("\\s+"));
    const std::string key = base::fromHex(words.at(2).toStdString());
    const std::string signature = base::fromHex(lines.at(2).split('\n').at(1).split(' ').at(2).toStdString());
    QCOMPARE(base::toHex(key), event->body.text("key"));
    const Head head{event->chain, event->n, event->hash};
    QVERIFY(verifySignature(key, headText(event->job, head), signature));
    QVERIFY(!verifySignature(key, headText(event->job, {event->chain, 2, event->hash}), signature));
}

void Format::theStatementsAreThoseOfAFile()
{
    const Workshop shop;
    const auto stored = withSqlite(shop.job(1), "SELECT sql FROM sqlite_schema WHERE sql IS NOT NULL ORDER BY rowid");
    QString listed;
    for (const auto& statement : stored) listed += QString::fromStdString(statement) + '\n';
    QCOMPARE(blocks("sql"), QStringList(listed));
    const auto ids = withSqlite(shop.path("job.walk"), "SELECT application_id || ' ' || user_version FROM "
                                                       "pragma_application_id, pragma_user_version");
    QCOMPARE(ids.at(0), std::string("1347898443 1"));
    QVERIFY(page().contains("| application_id | 1347898443 ("));
}

void Format::everyMemberIsThere()
{
    const Workshop shop;
    auto record = Journal::read(shop.job(1));
    VERIFY_GOOD(record);
    auto event = base::parseCanonical(canonicalText(record->events.front()));
    VERIFY_GOOD(event);
    for (const auto& [key, value] : *event->object())
        QVERIFY2(page().contains(QString::fromStdString("| `" + key + "` |")), key.c_str());
    QCOMPARE(event->object()->size(), 12U);
}

QTEST_GUILESS_MAIN(Format)
#include "format.moc"
