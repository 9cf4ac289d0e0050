// SPDX-License-Identifier: GPL-3.0-or-later
// The building section of page one, and the sheets of devices by floor and room.
#include "core/report/filling.h"

#include "core/walk/order.h"

#include <algorithm>
#include <map>
#include <set>

namespace proofwalk::report {
namespace {

std::string floorName(const plan::Plan& plan, const std::string& floor)
{
    const auto row = std::ranges::find(plan.floors, floor, &plan::Floor::floor);
    return row == plan.floors.end() || row->name.empty() ? floor : row->name;
}

std::string roomName(const Filling& filling, const std::string& room)
{
    return room.empty() ? filling.phrase("report.no-room") : room;
}

Floor& floorOf(const Filling& filling, Contents& contents, const std::string& floor)
{
    const std::string name = floorName(filling.plan, floor);
    const auto found = std::ranges::find(contents.floors, name, &Floor::name);
    if (found != contents.floors.end()) return *found;
    Floor made;
    made.name = name;
    const auto row = std::ranges::find(filling.plan.floors, floor, &plan::Floor::floor);
    // A floor without a level stands outside: a yard, a shed.
    made.outside = row != filling.plan.floors.end() && !row->level;
    made.level =
        row != filling.plan.floors.end() && row->level ? *row->level : static_cast<int>(contents.floors.size());
    contents.floors.push_back(std::move(made));
    return contents.floors.back();
}

/// "pass"; "too close, fail": the words of what is in the room, worst first.
std::string roomWord(const Filling& filling, const std::set<walk::Verdict>& verdicts)
{
    std::string text;
    for (const walk::Verdict verdict : verdicts) {
        const bool quiet = verdict == walk::Verdict::pass || verdict == walk::Verdict::notApplicable;
        if (quiet && !text.empty()) continue;
        text += (text.empty() ? "" : ", ") + filling.verdictWord(verdict);
    }
    return text;
}

/// The figure that stands for the device in its row: a reading of its own with a limit, else one without, else trials,
/// else its loop.
const walk::Attempt* rowReading(const Filling& filling, const walk::ScopeDevice& device, const walk::ScopeStep*& of)
{
    const walk::Attempt* best = nullptr;
    int bestRank = 0;
    for (const walk::StepKey& key : device.steps) {
        const walk::StepView view = walk::viewStep(filling.state, key);
        if (view.newest == nullptr) continue;
        const walk::AnswerBody& answer = view.newest->answer;
        if (!answer.reading && !answer.hits) continue;
        const walk::ScopeStep* step = filling.scope.step(key);
        const bool own = key.subject == device.device->id;
        int rank = answer.reading ? (own ? (step->confirmed.empty() ? 3 : 4) : 1) : 2;
        if (view.verdict == walk::Verdict::fail || view.verdict == walk::Verdict::tooClose) rank += 10;
        if (rank <= bestRank) continue;
        bestRank = rank;
        best = view.newest;
        of = step;
    }
    return best;
}

ProofSeen seenOf(const walk::ProofView& proof)
{
    if (proof.standIn != nullptr) return ProofSeen::byItsLike;
    switch (proof.how) {
    case walk::How::singly: return ProofSeen::singly;
    case walk::How::bulk: return ProofSeen::inBulk;
    case walk::How::ear: return ProofSeen::byTheEar;
    case walk::How::partner: return ProofSeen::byPartner;
    }
    return ProofSeen::singly;
}

Proof proofOf(const walk::ProofView& proof)
{
    constexpr std::array states{ProofState::notPromised, ProofState::promised, ProofState::underWay, ProofState::lit,
                                ProofState::failed};
    return {states[static_cast<std::size_t>(proof.state)], seenOf(proof)};
}

Device deviceRow(const Filling& filling, const walk::DeviceView& view)
{
    const plan::Device& row = *view.device->device;
    Device device;
    device.verdict = markOf(view.verdict);
    device.tag = row.tag;
    device.icon = row.kind;
    device.device = view.device->kind != nullptr ? view.device->kind->title
                                                 : filling.phrase("report.no-sheet", {{"kind", row.kind}});
    device.where = !row.position.empty() ? row.position : roomName(filling, row.room);
    device.zone = row.zone;
    device.result = filling.verdictWord(view.verdict);
    for (std::size_t i = 0; i < view.proofs.size(); ++i) device.proofs[i] = proofOf(view.proofs[i]);
    const walk::ScopeStep* step = nullptr;
    if (const walk::Attempt* attempt = rowReading(filling, *view.device, step)) {
        device.reading = readingText(attempt->answer);
        device.limit = limitText(*step);
        device.scale = scaleOf(*step, *attempt);
        if (attempt->answer.hits)
            device.trials = Trials{static_cast<int>(*attempt->answer.hits), step->step.trialsWanted};
    }
    if (view.newest != nullptr) device.time = base::localTime(view.newest->fact.at);
    return device;
}

} // namespace

void fillFloors(const Filling& filling, Contents& contents)
{
    std::map<std::pair<std::string, std::string>, std::set<walk::Verdict>> verdicts;
    for (const std::size_t index : walk::walkingOrder(filling.scope)) {
        const walk::DeviceView& view = filling.views[index];
        const plan::Device& row = *view.device->device;
        Floor& floor = floorOf(filling, contents, row.floor);
        const std::string name = roomName(filling, row.room);
        auto room = std::ranges::find(floor.rooms, name, &Room::name);
        if (room == floor.rooms.end()) room = floor.rooms.insert(floor.rooms.end(), Room{name, Verdict::pass, "", {}});
        auto& all = verdicts[{floor.name, name}];
        all.insert(view.verdict);
        room->verdict = markOf(*all.begin());
        room->word = roomWord(filling, all);
        const bool quiet = view.verdict == walk::Verdict::pass || view.verdict == walk::Verdict::notApplicable
                        || view.device->kind == nullptr;
        if (!quiet) room->notable.push_back({markOf(view.verdict), row.tag});
        floor.count = std::to_string(std::stoi(floor.count.empty() ? "0" : floor.count) + 1);
    }
}

void fillDevices(const Filling& filling, Contents& contents)
{
    contents.devicesNote = filling.phrase("report.devices-note");
    for (const std::size_t index : walk::walkingOrder(filling.scope)) {
        const walk::DeviceView& view = filling.views[index];
        const plan::Device& row = *view.device->device;
        const std::string floor = floorName(filling.plan, row.floor);
        const std::string room = roomName(filling, row.room);
        auto& rooms = contents.deviceRooms;
        if (rooms.empty() || rooms.back().floor != floor || rooms.back().room != room)
            rooms.push_back({floor, room, {}});
        rooms.back().devices.push_back(deviceRow(filling, view));
    }
}

} // namespace proofwalk::report
