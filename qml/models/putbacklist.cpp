// SPDX-License-Identifier: GPL-3.0-or-later
#include "qml/models/putbacklist.h"

#include "core/walk/upkeep.h"
#include "qml/models/desk.h"
#include "qml/models/stepref.h"
#include "qml/models/telling.h"
#include "qml/models/whereabouts.h"
#include "qml/parts/words.h"

namespace proofwalk::models {
namespace {

QString sinceWords(const base::WallClock& at)
{
    constexpr std::int64_t hour = 60;
    constexpr std::int64_t day = 24 * hour;
    const std::int64_t minutes = (base::now().utc_ms - at.utc_ms) / 60'000;
    const std::string time = base::localTime(at);
    if (minutes < 1) return parts::phrase("window.since", {{"time", time}});
    if (minutes < hour) return parts::phrase("window.since-minutes", {{"time", time}, {"minutes", minutes}});
    if (minutes < day)
        return parts::phrase("window.since-hours",
                             {{"time", time}, {"hours", minutes / hour}, {"minutes", minutes % hour}});
    return parts::phrase("window.since-day", {{"time", time}, {"day", base::localDate(at)}});
}

PutBackRow rowOf(const Snapshot& job, const walk::Told<walk::TemporaryBody>& told)
{
    PutBackRow row;
    row.event = text(told.fact.event);
    row.title = text(told.body.name);
    row.subject = subjectWord(*job.scope().plan, told.body.subject);
    row.where = job.reveal(told.body.words);
    if (const auto* device = job.scope().deviceOf(told.body.subject)) {
        const QString room = roomName(device->device->room);
        row.where = row.where.isEmpty() ? room : room + ", " + row.where;
        row.here = row.subject == Whereabouts::instance().subject();
    }
    row.since = sinceWords(told.fact.at);
    return row;
}

} // namespace

PutBackList::PutBackList(QObject* parent) : Rows(parent), m_asking(this, [this] { Q_EMIT askingChanged(); })
{
    connect(&Desk::instance(), &Desk::opened, this, &PutBackList::refresh);
    connect(&Desk::instance(), &Desk::published, this, &PutBackList::refresh);
    refresh();
}

void PutBackList::refresh()
{
    const auto job = Desk::instance().job();
    std::vector<PutBackRow> rows, back;
    m_left = 0;
    if (job != nullptr) {
        for (const auto& told : job->state().temporaries) {
            if (!job->state().stands(told.fact)) continue;
            const auto* done = walk::putBackOf(job->state(), told);
            PutBackRow row = rowOf(*job, told);
            if (done == nullptr) {
                rows.push_back(std::move(row));
                continue;
            }
            row.back = true;
            row.event = text(done->fact.event);
            row.since = text(base::localTime(done->fact.at));
            back.push_back(std::move(row));
        }
        m_left = static_cast<int>(rows.size());
    }
    m_summary = parts::phrase("window.put-back-summary",
                              {{"left", std::int64_t{m_left}}, {"back", static_cast<std::int64_t>(back.size())}});
    rows.insert(rows.end(), std::make_move_iterator(back.begin()), std::make_move_iterator(back.end()));
    replace(std::move(rows));
    Q_EMIT changed();
}

void PutBackList::add(const QString& what, const QString& subject, const QString& where)
{
    auto command = named(subject.trimmed());
    command["do"] = "temporary";
    command["name"] = what.trimmed().toStdString();
    if (!where.trimmed().isEmpty()) command["words"] = where.trimmed().toStdString();
    m_asking.tell(std::move(command), [this] { Q_EMIT taken(); });
}

void PutBackList::putBack(const QString& title)
{
    m_asking.tell({{"do", "put-back"}, {"name", title.toStdString()}}, [this] { Q_EMIT taken(); });
}

void PutBackList::withdraw(const QString& event, const QString& reason)
{
    m_asking.tell({{"do", "withdraw"}, {"event", event.toStdString()}, {"reason", reason.toStdString()}},
                  [this] { Q_EMIT taken(); });
}

} // namespace proofwalk::models
