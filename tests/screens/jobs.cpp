// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/screens/jobs.h"

#include <QDir>
#include <QFile>
#include <QProcess>

namespace proofwalk::screens {
namespace {

/// What a long name has behind it: one word that no line can break early, and several that it can.
const QString tail =
    QStringLiteral(" behind the long shelf with the seasonal decorations, Hochwasserschutzbeauftragter");

/// The columns a person fills with words of their own; `value` of site.csv only in the rows of names.
const QStringList wordy{QStringLiteral("position"), QStringLiteral("protects"), QStringLiteral("label"),
                        QStringLiteral("note")};

QStringList cellsOf(const QString& line)
{
    QStringList cells{{}};
    bool quoted = false;
    for (const QChar sign : line) {
        if (sign == u'"') quoted = !quoted;
        if (sign == u',' && !quoted) cells << QString();
        else cells.back() += sign;
    }
    return cells;
}

QString longer(QString cell)
{
    cell.remove(u'"');
    return cell.isEmpty() ? cell : u'"' + cell + tail + u'"';
}

QString lengthenedTable(const QString& name, const QString& text)
{
    QStringList lines = text.split(u'\n');
    const QStringList heads = cellsOf(lines.front());
    for (auto line = lines.begin() + 1; line != lines.end(); ++line) {
        if (line->isEmpty()) continue;
        QStringList cells = cellsOf(*line);
        const bool ofName = name == QStringLiteral("site.csv")
                         && (cells[0] == QStringLiteral("name") || cells[0] == QStringLiteral("address"));
        for (qsizetype at = 0; at < cells.size() && at < heads.size(); ++at)
            if (wordy.contains(heads[at]) || (ofName && at == 1)) cells[at] = longer(cells[at]);
        *line = cells.join(u',');
    }
    return lines.join(u'\n');
}

std::string textOf(const QString& text) { return text.toStdString(); }

} // namespace

Jobs::Jobs(QString program, QString fixtures) : m_program(std::move(program)), m_fixtures(std::move(fixtures)) {}

Result<void> Jobs::run(const QStringList& words)
{
    QProcess process;
    process.setProcessChannelMode(QProcess::MergedChannels);
    process.start(m_program, words);
    if (!process.waitForFinished(120000) || process.exitStatus() != QProcess::NormalExit || process.exitCode() != 0)
        return failure("jobs.failed",
                       textOf(words.join(u' ') + QStringLiteral(": ") + QString::fromUtf8(process.readAll())));
    return {};
}

/// Two of the files a plan is made of, with every name longer; the others as they are.
Result<QString> Jobs::lengthened(const QString& premises)
{
    const QDir from(m_fixtures + u'/' + premises), to(m_folder.filePath(premises + QStringLiteral("-long")));
    if (to.exists()) return to.path();
    QDir().mkpath(to.path());
    for (const auto& name : from.entryList(QDir::Files)) {
        QFile file(from.filePath(name)), made(to.filePath(name));
        if (!file.open(QIODevice::ReadOnly) || !made.open(QIODevice::WriteOnly))
            return failure("file.missing", textOf(name));
        const auto bytes = file.readAll();
        made.write(name.endsWith(QStringLiteral(".csv")) ? lengthenedTable(name, QString::fromUtf8(bytes)).toUtf8()
                                                         : bytes);
    }
    return to.path();
}

Result<QString> Jobs::linesUpTo(const QString& folder, const QString& place)
{
    QFile file(folder + QStringLiteral("/walk.jsonl"));
    if (!file.open(QIODevice::ReadOnly)) return failure("file.missing", textOf(file.fileName()));
    QStringList lines = QString::fromUtf8(file.readAll()).split(u'\n');
    bool isNumber = false;
    qsizetype until = place.toInt(&isNumber);
    if (!isNumber)
        for (until = 0; until < lines.size() && !lines[until].startsWith(QStringLiteral("# ") + place);) ++until;
    if (until > lines.size() || (!isNumber && until == lines.size()))
        return failure("jobs.no-such-place", textOf(place));
    // Photographs are named relative to the file, so it stands beside them.
    const QString made = m_folder.filePath(QStringLiteral("some.jsonl"));
    QFile some(made);
    if (!some.open(QIODevice::WriteOnly)) return failure("file.missing", textOf(made));
    some.write(lines.mid(0, until).join(u'\n').toUtf8() + '\n');
    for (const auto& name : QDir(folder).entryList({QStringLiteral("*.jpg")}, QDir::Files))
        QFile::copy(folder + u'/' + name, m_folder.filePath(name));
    return made;
}

Result<QString> Jobs::make(const QString& asked)
{
    const auto at = asked.indexOf(u'@');
    QString premises = at < 0 ? asked : asked.left(at);
    QString folder = m_fixtures + u'/' + premises;
    if (premises.endsWith(QStringLiteral("+long"))) {
        premises.chop(5);
        auto made = lengthened(premises);
        if (!made) return passOn(made);
        folder = *made;
    }
    const QString file = m_folder.filePath(QStringLiteral("made-%1.walk").arg(m_made.size()));
    if (auto ran = run({QStringLiteral("start"), file, QStringLiteral("--plan"), folder}); !ran) return passOn(ran);
    QString lines = folder + QStringLiteral("/walk.jsonl");
    if (at >= 0) {
        auto some = linesUpTo(folder, asked.mid(at + 1));
        if (!some) return passOn(some);
        lines = *some;
    }
    if (auto ran = run({QStringLiteral("take"), file, QStringLiteral("--from"), lines}); !ran) return passOn(ran);
    return file;
}

Result<QString> Jobs::fresh(const QString& asked)
{
    if (!m_made.contains(asked)) {
        auto made = make(asked);
        if (!made) return passOn(made);
        m_made.insert(asked, *made);
    }
    // The name may be read on a screen, so it is told by premises alone, in a folder of its own.
    const QString folder = m_folder.filePath(QString::number(++m_copies));
    QDir().mkpath(folder);
    const QString copy = folder + u'/' + asked.section(u'@', 0, 0).section(u'+', 0, 0) + QStringLiteral(".walk");
    if (!QFile::copy(m_made.value(asked), copy)) return failure("file.missing", textOf(copy));
    return copy;
}

} // namespace proofwalk::screens
