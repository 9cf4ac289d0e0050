// SPDX-License-Identifier: GPL-3.0-or-later
#include "qml/models/shownlist.h"

#include "qml/models/desk.h"
#include "qml/models/telling.h"
#include "qml/parts/words.h"

#include <algorithm>
#include <array>

namespace proofwalk::models {
namespace {

// What an owner must know of any system (common practice).
constexpr std::array usual{"window.topic.set", "window.topic.alarm", "window.topic.silence", "window.topic.test",
                           "window.topic.call"};

TopicRow recorded(const Snapshot& job, const walk::Told<walk::ShownBody>& told)
{
    TopicRow row;
    row.topic = text(told.body.topic);
    row.shown = true;
    row.event = text(told.fact.event);
    const QString words = job.reveal(told.body.words);
    row.note = parts::phrase(words.isEmpty() ? "window.shown.at" : "window.shown.at-words",
                             {{"time", base::localTime(told.fact.at)}, {"words", words.toStdString()}});
    return row;
}

} // namespace

ShownList::ShownList(QObject* parent) : Rows(parent), m_asking(this, [this] { Q_EMIT askingChanged(); })
{
    connect(&Desk::instance(), &Desk::opened, this, &ShownList::refresh);
    connect(&Desk::instance(), &Desk::published, this, &ShownList::refresh);
    refresh();
}

void ShownList::show(const QString& topic, const QString& words)
{
    base::Json::Object command{{"do", "shown"}, {"topic", topic.trimmed().toStdString()}};
    if (!words.trimmed().isEmpty()) command["words"] = words.trimmed().toStdString();
    m_asking.tell(std::move(command), [this] { Q_EMIT taken(); });
}

void ShownList::takeBack(int row, const QString& reason)
{
    if (row < 0 || row >= rowCount() || !rows()[static_cast<std::size_t>(row)].shown) return;
    m_asking.tell({{"do", "withdraw"},
                   {"event", rows()[static_cast<std::size_t>(row)].event.toStdString()},
                   {"reason", reason.trimmed().toStdString()}},
                  [this] { Q_EMIT taken(); });
}

void ShownList::refresh()
{
    const auto job = Desk::instance().job();
    std::vector<TopicRow> rows;
    if (job != nullptr) {
        for (const auto& told : job->state().shown)
            if (job->state().stands(told.fact)) rows.push_back(recorded(*job, told));
        for (const char* code : usual) {
            const QString topic = parts::phrase(code);
            if (std::ranges::find(rows, topic, &TopicRow::topic) != rows.end()) continue;
            rows.push_back({});
            rows.back().topic = topic;
        }
    }
    replace(std::move(rows));
}

} // namespace proofwalk::models
