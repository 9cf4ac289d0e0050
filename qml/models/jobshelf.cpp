// SPDX-License-Identifier: GPL-3.0-or-later
#include "qml/models/jobshelf.h"

#include "core/journal/home.h"
#include "qml/models/desk.h"
#include "qml/models/telling.h"
#include "qml/models/whereabouts.h"
#include "qml/parts/words.h"

#include <QDir>
#include <QFile>
#include <QFileInfo>
#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>
#include <QSaveFile>

#include <algorithm>

namespace proofwalk::models {
namespace {

constexpr std::size_t mostJobs = 24;
constexpr int soon_ms = 400;

QString listFile()
{
    const auto home = journal::homeFolder();
    return home ? QString::fromStdString((*home / "window" / "jobs.json").string()) : QString();
}

QJsonObject roomJson(const RoomRow& room)
{
    return {{"floor", room.floor}, {"level", room.level},     {"outside", room.outside},
            {"room", room.room},   {"verdict", room.verdict}, {"here", room.here}};
}

RoomRow roomFrom(const QJsonObject& json)
{
    RoomRow room;
    room.floor = json["floor"].toString();
    room.level = json["level"].toInt();
    room.outside = json["outside"].toBool();
    room.room = json["room"].toString();
    room.verdict = std::clamp(json["verdict"].toInt(parts::verdict::ToDo), 0, int{parts::verdict::Retest});
    room.here = json["here"].toBool();
    return room;
}

QJsonObject jobJson(const ShelvedJob& job)
{
    QJsonArray rooms;
    for (const RoomRow& room : job.rooms) rooms.append(roomJson(room));
    return {{"file", job.file},
            {"site", job.site},
            {"where", job.where},
            {"seen", job.seenAt},
            {"standing", job.standing},
            {"answered", job.answered},
            {"total", job.total},
            {"findings", job.findings},
            {"retests", job.retests},
            {"missing", job.missing},
            {"handed-over", job.handedOver},
            {"rooms", rooms}};
}

ShelvedJob jobFrom(const QJsonObject& json)
{
    ShelvedJob job;
    job.file = json["file"].toString();
    job.site = json["site"].toString();
    job.where = json["where"].toString();
    job.seenAt = json["seen"].toString();
    job.standing = json["standing"].toString();
    job.answered = json["answered"].toInt();
    job.total = json["total"].toInt();
    job.findings = json["findings"].toInt();
    job.retests = json["retests"].toInt();
    job.missing = json["missing"].toInt();
    job.handedOver = json["handed-over"].toBool();
    for (const auto& room : json["rooms"].toArray()) job.rooms.push_back(roomFrom(room.toObject()));
    return job;
}

QString whole(const std::filesystem::path& file)
{
    return QDir::cleanPath(QFileInfo(QString::fromStdString(file.string())).absoluteFilePath());
}

/// Where the person stood: the card in hand, else the device answered last.
QString whereIn(const Snapshot& job)
{
    const walk::DeviceView* at = job.view(Whereabouts::instance().subject().toStdString());
    const walk::Attempt* newest = nullptr;
    if (at == nullptr)
        for (const walk::DeviceView& view : job.views())
            if (view.newest != nullptr && (newest == nullptr || newest->fact.at.utc_ms < view.newest->fact.at.utc_ms)) {
                newest = view.newest;
                at = &view;
            }
    if (at == nullptr) return {};
    const plan::Device& device = *at->device->device;
    return parts::phrase("window.next-device", {{"tag", device.tag},
                                                {"floor", floorName(*job.scope().plan, device.floor).toStdString()},
                                                {"room", roomName(device.room).toStdString()}});
}

ShelvedJob pictureOf(const Snapshot& job)
{
    ShelvedJob made;
    made.file = whole(job.file());
    made.site = text(job.scope().plan->siteFact("name"));
    if (made.site.isEmpty()) made.site = QFileInfo(made.file).completeBaseName();
    made.where = whereIn(job);
    const auto now = base::now();
    made.seenAt = text(base::localDate(now) + "T" + base::localTime(now));
    made.standing = text(std::string(walk::wordOf(job.readiness().standing)));
    made.total = static_cast<int>(job.views().size());
    for (const walk::DeviceView& view : job.views()) {
        const bool open = view.verdict == walk::Verdict::toDo || view.verdict == walk::Verdict::running;
        const bool again = view.verdict == walk::Verdict::retest;
        made.retests += again ? 1 : 0;
        made.answered += open || again ? 0 : 1;
    }
    made.findings = static_cast<int>(std::ranges::count_if(job.findings(), &walk::Finding::pending));
    made.missing = static_cast<int>(std::ranges::count(job.readiness().rungs, true, &walk::Rung::blocking));
    made.handedOver =
        std::ranges::any_of(job.state().handovers, [](const auto& told) { return told.body.form == "final"; });
    made.rooms = RoomList().rows();
    return made;
}

} // namespace

JobShelf& JobShelf::instance()
{
    static JobShelf shelf;
    return shelf;
}

JobShelf::JobShelf()
{
    m_soon.setSingleShot(true);
    m_soon.setInterval(soon_ms);
    connect(&m_soon, &QTimer::timeout, this, &JobShelf::seen);
    connect(&Desk::instance(), &Desk::opened, this, &JobShelf::seen);
    connect(&Desk::instance(), &Desk::published, &m_soon, qOverload<>(&QTimer::start));
    connect(&Whereabouts::instance(), &Whereabouts::moved, &m_soon, qOverload<>(&QTimer::start));
}

void JobShelf::recall()
{
    QFile file(listFile());
    m_jobs.clear();
    m_open.clear();
    if (!file.open(QIODevice::ReadOnly)) return;
    const QJsonObject kept = QJsonDocument::fromJson(file.read(8 << 20)).object();
    m_open = kept["open"].toString();
    for (const auto& each : kept["jobs"].toArray()) {
        ShelvedJob job = jobFrom(each.toObject());
        if (!job.file.isEmpty() && m_jobs.size() < mostJobs) m_jobs.push_back(std::move(job));
    }
    Q_EMIT changed();
}

void JobShelf::seen()
{
    const auto job = Desk::instance().job();
    if (job == nullptr) return;
    ShelvedJob now = pictureOf(*job);
    m_open = now.file;
    std::erase_if(m_jobs, [&](const ShelvedJob& each) { return each.file == now.file; });
    m_jobs.insert(m_jobs.begin(), std::move(now));
    if (m_jobs.size() > mostJobs) m_jobs.resize(mostJobs);
    keep();
    Q_EMIT changed();
}

void JobShelf::forget(const QString& file)
{
    std::erase_if(m_jobs, [&](const ShelvedJob& each) { return each.file == file; });
    keep();
    Q_EMIT changed();
}

void JobShelf::putAway()
{
    seen();
    m_open.clear();
    keep();
}

void JobShelf::keep()
{
    QJsonArray jobs;
    for (const ShelvedJob& job : m_jobs) jobs.append(jobJson(job));
    const QJsonObject kept{{"open", m_open}, {"jobs", jobs}};
    Desk::instance().aside([name = listFile(), kept] {
        if (name.isEmpty()) return;
        QDir().mkpath(QFileInfo(name).path());
        QSaveFile file(name);
        if (!file.open(QIODevice::WriteOnly)) return;
        file.write(QJsonDocument(kept).toJson(QJsonDocument::Compact));
        file.commit();
    });
}

} // namespace proofwalk::models
