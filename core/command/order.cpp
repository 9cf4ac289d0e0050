// SPDX-License-Identifier: GPL-3.0-or-later
// proofwalk order JOB.walk: in which order to walk.
#include "core/command/command.h"

#include "core/journal/journal.h"
#include "core/walk/deviceview.h"
#include "core/walk/judgement.h"
#include "core/walk/order.h"

namespace proofwalk::command {
namespace {

using base::Json;

Exit run(Face& face, const Options& options)
{
    auto record = journal::Journal::read(options.words[0]);
    if (!record) return face.cannot(record.error());
    auto judged = walk::judgeRecord(*record);
    if (!judged) return face.cannot(std::move(judged.error()).within(options.words[0]));

    const walk::Scope& scope = *judged->state.scope;
    Json::Array stops;
    std::string here;
    for (const std::size_t index : walk::walkingOrder(scope)) {
        const walk::ScopeDevice& device = scope.devices[index];
        const plan::Device& row = *device.device;
        const std::string verdict(walk::wordOf(walk::viewDevice(judged->state, device).verdict));
        if (const std::string place = row.floor + ", " + row.room; place != here) {
            face.say("order.place", {{"floor", row.floor}, {"room", row.room}});
            here = place;
        }
        face.say("order.stop", {{"tag", row.tag},
                                {"device", device.kind != nullptr ? device.kind->title : row.kind},
                                {"zone", row.zone.empty() ? std::string("-") : row.zone},
                                {"verdict", face.phrase("verdict." + verdict)}});
        stops.push_back(Json::Object{{"tag", row.tag},
                                     {"kind", row.kind},
                                     {"floor", row.floor},
                                     {"room", row.room},
                                     {"zone", row.zone},
                                     {"verdict", verdict}});
    }
    face.answer("order", {{"stops", std::move(stops)}});
    return Exit::well;
}

} // namespace

Command orderCommand() { return {{"order", {"JOB.walk"}, {}}, run}; }

} // namespace proofwalk::command
