// SPDX-License-Identifier: GPL-3.0-or-later
#include "qml/models/joblist.h"

#include "qml/models/telling.h"
#include "qml/parts/words.h"

#include <QDateTime>
#include <QFileInfo>
#include <QLocale>

#include <map>

namespace proofwalk::models {
namespace {

/// "Monday" within the last week, "14:02" today, else the date.
QString dayOf(const QDateTime& seen)
{
    const qint64 days = seen.date().daysTo(QDate::currentDate());
    const QLocale english(QLocale::English, QLocale::UnitedKingdom);
    if (days == 0) return parts::phrase("window.start.today");
    return english.toString(seen.date(), days > 0 && days < 7 ? QStringLiteral("dddd") : QStringLiteral("d MMMM yyyy"));
}

QString counted(const std::string& code, int count)
{
    return parts::phrase(code + (count == 1 ? ".one" : ".many"), {{"count", std::int64_t{count}}});
}

void tellStanding(const ShelvedJob& job, JobRow& row)
{
    if (row.missing) {
        row.verdict = parts::verdict::NoAccess;
        row.word = parts::phrase("window.start.file-gone");
    } else if (job.handedOver) {
        row.verdict = parts::verdict::Pass;
        row.word = parts::phrase("window.start.signed");
    } else if (job.retests > 0) {
        row.verdict = parts::verdict::Retest;
        row.word = counted("window.start.retest", job.retests);
    } else if (job.missing == 0) {
        row.verdict = parts::verdict::Pass;
        row.word = parts::phrase("window.start.ready");
    } else {
        row.verdict = parts::verdict::ToDo;
        row.word = counted("window.start.to-do", job.missing);
    }
}

JobRow rowOf(const ShelvedJob& job, ShelvedRooms* rooms)
{
    JobRow row;
    const QDateTime seen = QDateTime::fromString(job.seenAt, Qt::ISODate);
    row.file = job.file;
    row.site = job.site;
    row.rooms = rooms;
    row.missing = !QFileInfo::exists(job.file);
    row.place = job.where;
    row.second = parts::phrase("window.start.devices-day",
                               {{"count", std::int64_t{job.total}}, {"day", dayOf(seen).toStdString()}});
    if (!job.where.isEmpty())
        row.where =
            parts::phrase("window.start.you-stood", {{"place", job.where.toStdString()},
                                                     {"time", seen.toString(QStringLiteral("HH:mm")).toStdString()},
                                                     {"day", dayOf(seen).toStdString()}});
    row.count =
        parts::phrase("window.some-of", {{"some", std::int64_t{job.answered}}, {"all", std::int64_t{job.total}}});
    row.findings = counted("window.findings", job.findings);
    tellStanding(job, row);
    return row;
}

/// Jobs of one premises are called by their file too, by its whole path where the name alone does not tell them apart.
void tellApart(std::vector<JobRow>& rows)
{
    std::map<QString, int> sites, names;
    const auto named = [](const JobRow& row) {
        return parts::phrase("window.start.site-file", {{"site", row.site.toStdString()},
                                                        {"file", QFileInfo(row.file).fileName().toStdString()}});
    };
    for (const auto& row : rows) {
        ++sites[row.site];
        ++names[named(row)];
    }
    for (auto& row : rows) {
        if (sites[row.site] == 1) continue;
        const QString name = named(row);
        row.site = names[name] == 1 ? name
                                    : parts::phrase("window.start.site-file", {{"site", row.site.toStdString()},
                                                                               {"file", row.file.toStdString()}});
    }
}

} // namespace

JobList::JobList(QObject* parent) : Rows(parent)
{
    connect(&JobShelf::instance(), &JobShelf::changed, this, &JobList::refresh);
    refresh();
}

void JobList::refresh()
{
    // The rooms shown so far are let go only after the rows no longer name them.
    std::vector<std::unique_ptr<ShelvedRooms>> rooms;
    std::vector<JobRow> rows;
    for (const ShelvedJob& job : JobShelf::instance().jobs()) {
        rooms.push_back(std::make_unique<ShelvedRooms>(job.rooms));
        rows.push_back(rowOf(job, rooms.back().get()));
    }
    tellApart(rows);
    replace(std::move(rows));
    m_rooms = std::move(rooms);
    Q_EMIT countChanged();
}

} // namespace proofwalk::models
