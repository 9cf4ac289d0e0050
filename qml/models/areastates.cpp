// SPDX-License-Identifier: GPL-3.0-or-later
#include "qml/models/areastates.h"

#include "qml/models/desk.h"
#include "qml/models/telling.h"
#include "qml/parts/words.h"

#include <algorithm>

namespace proofwalk::models {
namespace {

AreaStateRow rowOf(const Snapshot& job, const plan::Area& area)
{
    AreaStateRow row;
    row.area = text(area.area);
    row.title = text(area.name.empty() ? area.area : area.name);
    row.state = text(std::string(catalogue::wordOf(walk::areaState(job.state(), area.id))));
    row.stateWord = parts::phrase("window.state." + row.state.toStdString());
    row.since = parts::phrase("window.state-unsaid");
    for (const plan::Mode& mode : job.scope().plan->modes) {
        if (std::ranges::find(mode.areas, area.area) == mode.areas.end()) continue;
        row.modes.append(text(mode.mode));
        row.modeTitles.append(text(mode.name.empty() ? mode.mode : mode.name));
    }
    const auto told = job.state().areaStates.find(area.id);
    if (told == job.state().areaStates.end() || !job.state().stands(told->second.fact)) return row;
    row.since = parts::phrase("window.since", {{"time", base::localTime(told->second.fact.at)}});
    for (const plan::Mode& mode : job.scope().plan->modes)
        if (mode.id == told->second.body.mode) {
            row.mode = text(mode.mode);
            row.stateWord += ": " + text(mode.name.empty() ? mode.mode : mode.name);
        }
    return row;
}

} // namespace

AreaStates::AreaStates(QObject* parent) : Rows(parent), m_asking(this, [this] { Q_EMIT askingChanged(); })
{
    connect(&Desk::instance(), &Desk::opened, this, &AreaStates::refresh);
    connect(&Desk::instance(), &Desk::published, this, &AreaStates::refresh);
    refresh();
}

void AreaStates::refresh()
{
    const auto job = Desk::instance().job();
    std::vector<AreaStateRow> rows;
    if (job != nullptr)
        for (const plan::Area& area : job->scope().plan->areas) rows.push_back(rowOf(*job, area));
    replace(std::move(rows));
}

void AreaStates::say(const QString& area, const QString& state, const QString& mode)
{
    base::Json::Object command{{"do", "state"}, {"area", area.toStdString()}, {"state", state.toStdString()}};
    if (!mode.isEmpty()) command["mode"] = mode.toStdString();
    m_asking.tell(std::move(command), [this] { Q_EMIT taken(); });
}

} // namespace proofwalk::models
