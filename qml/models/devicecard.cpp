// SPDX-License-Identifier: GPL-3.0-or-later
// What the card's buttons ask; devicecardview.cpp has what it shows.
#include "qml/models/devicecard.h"

#include "core/walk/nextdevice.h"
#include "qml/models/desk.h"
#include "qml/models/telling.h"

#include <algorithm>
#include <ranges>

namespace proofwalk::models {

using base::Json;

DeviceCard::DeviceCard(QObject* parent) : QObject(parent)
{
    connect(&Desk::instance(), &Desk::opened, this, &DeviceCard::refresh);
    connect(&Desk::instance(), &Desk::published, this, &DeviceCard::refresh);
}

void DeviceCard::setTag(const QString& tag)
{
    if (tag == m_tag) return;
    m_tag = tag;
    m_chosen = -1;
    m_extended = false;
    setProblem({});
    refresh();
}

void DeviceCard::setExtended(bool extended)
{
    if (extended == m_extended) return;
    m_extended = extended;
    m_chosen = -1; // a row of other stages
    refresh();
}

QStringList DeviceCard::stepNames() const
{
    QStringList names;
    if (const walk::Stage* now = stage(m_inHand))
        for (const walk::StepKey& key : now->steps) names.append(text(key.name));
    return names;
}

void DeviceCard::choose(int stage)
{
    m_chosen = stage;
    setProblem({});
    refresh();
}

void DeviceCard::clearProblem() { setProblem({}); }

void DeviceCard::setProblem(const QString& problem)
{
    if (problem == m_problem) return;
    m_problem = problem;
    Q_EMIT problemChanged();
}

const walk::Stage* DeviceCard::stage(int row) const
{
    const bool there = row >= 0 && row < static_cast<int>(m_stages.size());
    return there ? &m_stages[static_cast<std::size_t>(row)] : nullptr;
}

/// Names the step as commands do; a step of the zone by the zone, so that it is the zone's for every device.
Json::Object DeviceCard::answerTo(const walk::StepKey& key, const std::string& tag) const
{
    Json::Object command{{"do", "answer"}, {"step", key.name}};
    const auto& zones = m_job->scope().plan->zones;
    const auto zone = std::ranges::find(zones, key.subject, &plan::Zone::id);
    if (zone != zones.end()) command["zone"] = zone->zone;
    else command["device"] = tag;
    if (zone == zones.end()) command["signal"] = key.signal;
    return command;
}

void DeviceCard::tell(std::vector<Json> commands)
{
    if (m_waiting > 0 || commands.empty()) return; // a second tap before the first is durable asks for nothing new
    ++m_waiting;
    setProblem({});
    Q_EMIT busyChanged();
    Desk::instance().ask<Result<int>>(
        this,
        [commands = std::move(commands)](walk::Job& job) -> Result<int> {
            int events = 0;
            for (const Json& command : commands) {
                auto taken = job.take(base::canonical(command), {}, base::now());
                if (!taken) return taken;
                events += *taken;
            }
            return events;
        },
        [this](const Result<int>& outcome) {
            --m_waiting;
            Q_EMIT busyChanged();
            if (!outcome) return setProblem(sentence(outcome.error()));
            m_chosen = -1;
            refresh();
            Q_EMIT answered();
            const walk::Stage* now = stage(m_inHand);
            if (now == nullptr || !now->possible) Q_EMIT left();
        });
}

void DeviceCard::asPlanned()
{
    const walk::Stage* now = stage(m_inHand);
    if (now == nullptr) return;
    std::vector<Json> commands;
    for (const walk::StepKey& key : now->steps) {
        Json::Object command = answerTo(key, m_tag.toStdString());
        command["result"] = "as-planned";
        commands.emplace_back(std::move(command));
    }
    tell(std::move(commands));
}

void DeviceCard::asPlannedInBulk()
{
    const walk::Stage* now = stage(m_inHand);
    if (now == nullptr) return;
    std::vector<std::string> tags = m_peers;
    tags.insert(tags.begin(), m_tag.toStdString());
    std::vector<Json> commands;
    for (const std::string& tag : tags) {
        for (const walk::StepKey& key : now->steps) {
            Json::Object command = answerTo(key, tag);
            command["result"] = "as-planned";
            command["how"] = "bulk";
            commands.emplace_back(std::move(command));
        }
    }
    tell(std::move(commands));
}

void DeviceCard::trials(int hits, int tries)
{
    const walk::Stage* now = stage(m_inHand);
    if (now == nullptr) return;
    Json::Object command = answerTo(now->steps.front(), m_tag.toStdString());
    command["hits"] = hits;
    command["tries"] = tries;
    tell({Json(std::move(command))});
}

void DeviceCard::noAccess(const QString& reason)
{
    tell({Json(Json::Object{{"do", "no-access"}, {"device", m_tag.toStdString()}, {"reason", reason.toStdString()}})});
}

void DeviceCard::notApplicable(const QString& reason)
{
    const walk::Stage* now = stage(m_inHand);
    if (now == nullptr) return;
    std::vector<Json> commands;
    for (const walk::StepKey& key : now->steps) {
        Json::Object command = answerTo(key, m_tag.toStdString());
        command["result"] = "not-applicable";
        command["reason"] = reason.toStdString();
        commands.emplace_back(std::move(command));
    }
    tell(std::move(commands));
}

void DeviceCard::started()
{
    const walk::Stage* now = stage(m_inHand);
    if (now == nullptr) return;
    Json::Object command = answerTo(now->steps.front(), m_tag.toStdString());
    command["result"] = "started";
    tell({Json(std::move(command))});
}

void DeviceCard::withdraw(int row, const QString& reason)
{
    const walk::Stage* which = stage(row);
    if (which == nullptr) return;
    std::vector<Json> commands;
    // The last first, as one takes back what one has said.
    for (const walk::StepKey& key : which->steps | std::views::reverse) {
        if (!walk::viewStep(m_job->state(), key).answered()) continue;
        Json::Object command = answerTo(key, m_tag.toStdString());
        command["do"] = "withdraw";
        command["reason"] = reason.toStdString();
        commands.emplace_back(std::move(command));
    }
    tell(std::move(commands));
}

void DeviceCard::note(const QString& words)
{
    tell({Json(Json::Object{{"do", "note"}, {"device", m_tag.toStdString()}, {"words", words.toStdString()}})});
}

} // namespace proofwalk::models
