// SPDX-License-Identifier: GPL-3.0-or-later
#include "qml/models/findingacts.h"

#include "qml/models/desk.h"
#include "qml/models/findingtelling.h"
#include "qml/models/telling.h"

namespace proofwalk::models {

using base::Json;

void FindingActs::repair(const QStringList& touched, const QString& words)
{
    Json::Array what;
    for (const QString& word : touched) what.emplace_back(word.toStdString());
    tell("repair", {{"touched", std::move(what)}, {"words", words.trimmed().toStdString()}});
}

void FindingActs::accept(const QString& name, const QString& words)
{
    tell("accept", {{"name", name.trimmed().toStdString()}, {"words", words.trimmed().toStdString()}});
}

void FindingActs::describe(bool deficiency, const QString& words, const QString& due)
{
    Json::Object more{{"grade", deficiency ? "deficiency" : "recommendation"},
                      {"words", words.trimmed().toStdString()}};
    if (!due.isEmpty()) more["due"] = due.toStdString();
    tell("finding", more);
}

void FindingActs::photograph(const QString& path, const QString& words)
{
    const std::filesystem::path file = path.toStdString();
    Json::Object more{{"file", file.filename().string()}};
    if (!words.trimmed().isEmpty()) more["words"] = words.trimmed().toStdString();
    tell("photograph", more, file.parent_path());
}

void FindingActs::withdraw(const QString& event, const QString& reason)
{
    send(Json(Json::Object{
             {"do", "withdraw"}, {"event", event.toStdString()}, {"reason", reason.trimmed().toStdString()}}),
         {});
}

void FindingActs::clearProblem() { setProblem({}); }

void FindingActs::tell(const char* act, const Json::Object& more, const std::filesystem::path& folder)
{
    const auto job = Desk::instance().job();
    const auto key = job == nullptr ? std::nullopt : keyFrom(job->scope(), m_key);
    if (!key) return;
    Json::Object command = commandOn(job->scope(), *key, act);
    for (const auto& [name, value] : more) command[name] = value;
    send(Json(std::move(command)), folder);
}

void FindingActs::send(const Json& command, const std::filesystem::path& folder)
{
    if (m_busy) return; // a second tap before the first is durable asks for nothing new
    m_busy = true;
    setProblem({});
    Q_EMIT busyChanged();
    Desk::instance().tell(
        this, command,
        [this](const Result<int>& outcome) {
            m_busy = false;
            Q_EMIT busyChanged();
            if (!outcome) return setProblem(sentence(outcome.error()));
            Q_EMIT taken();
        },
        folder);
}

void FindingActs::setProblem(const QString& problem)
{
    if (problem == m_problem) return;
    m_problem = problem;
    Q_EMIT problemChanged();
}

} // namespace proofwalk::models
