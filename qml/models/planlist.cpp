// SPDX-License-Identifier: GPL-3.0-or-later
#include "qml/models/planlist.h"

#include "qml/models/desk.h"
#include "qml/models/telling.h"
#include "qml/parts/words.h"

#include <algorithm>
#include <set>

namespace proofwalk::models {
namespace {

PlanRow deviceRow(const walk::ScopeDevice& device)
{
    PlanRow row;
    row.tag = text(device.device->tag);
    row.icon = text(device.device->kind);
    const bool labelled = device.zone != nullptr && !device.zone->label.empty();
    row.title = labelled ? text(device.zone->label) : kindTitle(device);
    row.zone = device.zone == nullptr ? QStringLiteral("–") : text(device.zone->zone);
    QStringList note;
    if (labelled) note << kindTitle(device);
    if (device.zone != nullptr) note << text(device.zone->purpose);
    if (!device.device->position.empty()) note << text(device.device->position);
    row.note = note.join(QStringLiteral(", "));
    return row;
}

} // namespace

PlanList::PlanList(QObject* parent) : Rows(parent)
{
    connect(&Desk::instance(), &Desk::opened, this, &PlanList::refresh);
    refresh();
}

void PlanList::refresh()
{
    const auto job = Desk::instance().job();
    std::vector<PlanRow> rows;
    if (job != nullptr) {
        const plan::Device* before = nullptr;
        std::size_t head = 0;
        std::int64_t count = 0;
        std::set<std::string> floors;
        const auto close = [&] {
            if (before != nullptr)
                rows[head].note =
                    parts::phrase(count == 1 ? "window.devices.one" : "window.devices.many", {{"count", count}});
        };
        for (const std::size_t index : job->order()) {
            const walk::ScopeDevice& device = job->scope().devices[index];
            floors.insert(device.device->floor);
            if (before == nullptr || before->room != device.device->room || before->floor != device.device->floor) {
                close();
                head = rows.size();
                count = 0;
                PlanRow wall;
                wall.wall = true;
                wall.title = floorName(*job->scope().plan, device.device->floor) + QStringLiteral(", ")
                           + roomName(device.device->room);
                rows.push_back(std::move(wall));
                before = device.device;
            }
            rows.push_back(deviceRow(device));
            ++count;
        }
        close();
        const auto some = [](std::size_t number) { return static_cast<std::int64_t>(number); };
        m_summary = parts::phrase("window.plan-summary", {{"devices", some(job->scope().devices.size())},
                                                          {"zones", some(job->scope().plan->zones.size())},
                                                          {"floors", some(floors.size())}});
    }
    replace(std::move(rows));
    Q_EMIT changed();
}

} // namespace proofwalk::models
