// SPDX-License-Identifier: GPL-3.0-or-later
#include "qml/models/roomlist.h"

#include "qml/models/desk.h"
#include "qml/models/telling.h"
#include "qml/models/whereabouts.h"
#include "qml/parts/words.h"

#include <algorithm>
#include <map>

namespace proofwalk::models {
namespace {

/// Floors of floors.csv have a level, or stand outside; others are stacked as they are met.
void placeFloor(const plan::Plan& plan, const std::string& floor, std::map<std::string, int>& met, RoomRow& row)
{
    const auto given = std::ranges::find(plan.floors, floor, &plan::Floor::floor);
    met.try_emplace(floor, static_cast<int>(met.size()));
    row.outside = given != plan.floors.end() && !given->level;
    row.level = given != plan.floors.end() && given->level ? *given->level : met[floor];
}

} // namespace

RoomList::RoomList(QObject* parent) : Rows(parent)
{
    connect(&Desk::instance(), &Desk::opened, this, &RoomList::refresh);
    connect(&Desk::instance(), &Desk::published, this, &RoomList::refresh);
    connect(&Whereabouts::instance(), &Whereabouts::moved, this, &RoomList::refresh);
    refresh();
}

void RoomList::refresh()
{
    const auto job = Desk::instance().job();
    if (job == nullptr) return replace({});
    std::vector<RoomRow> rows;
    std::vector<walk::Verdict> worst;
    std::map<std::pair<std::string, std::string>, std::size_t> at;
    std::map<std::string, int> floors;
    const std::string here = Whereabouts::instance().subject().toStdString();
    for (const walk::DeviceView& view : job->views()) {
        const plan::Device& device = *view.device->device;
        const auto [place, added] = at.try_emplace({device.floor, device.room}, rows.size());
        if (added) {
            RoomRow row;
            row.floor = floorName(*job->scope().plan, device.floor);
            row.room = roomName(device.room);
            placeFloor(*job->scope().plan, device.floor, floors, row);
            rows.push_back(std::move(row));
            worst.push_back(view.verdict);
        }
        RoomRow& row = rows[place->second];
        walk::Verdict& verdict = worst[place->second];
        verdict = std::min(verdict, view.verdict);
        ++row.count;
        row.answered += view.verdict != walk::Verdict::toDo && view.verdict != walk::Verdict::retest ? 1 : 0;
        row.here = row.here || (!here.empty() && device.tag == here);
    }
    for (std::size_t i = 0; i < rows.size(); ++i) {
        rows[i].verdict = markOf(worst[i]);
        rows[i].caption = parts::phrase(
            "window.some-of", {{"some", std::int64_t{rows[i].answered}}, {"all", std::int64_t{rows[i].count}}});
    }
    replace(std::move(rows));
}

} // namespace proofwalk::models
