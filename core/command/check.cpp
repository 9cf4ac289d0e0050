// SPDX-License-Identifier: GPL-3.0-or-later
// proofwalk check PLAN: what is wrong with the plan.
#include "core/command/command.h"
#include "core/command/planning.h"

namespace proofwalk::command {
namespace {

using base::Json;

Exit run(Face& face, const Options& options)
{
    auto reviewed = readAndReview(face, options);
    if (!reviewed) return reviewed.error();
    sayRemarks(face, *reviewed);
    Json::Array remarks, assumed, unused;
    for (const review::Remark& remark : reviewed->remarks) remarks.push_back(remarkJson(face, remark));
    for (const plan::Assumption& each : reviewed->plan.assumptions) {
        face.say("check.assumed", {{"where", each.where}, {"what", face.phrase(each.code, each.arguments)}});
        assumed.push_back(Json::Object{
            {"where", each.where}, {"code", each.code}, {"sentence", face.phrase(each.code, each.arguments)}});
    }
    for (const std::string& column : reviewed->plan.unknownColumns) {
        face.say("check.unknown-column", {{"column", column}});
        unused.emplace_back(column);
    }
    const bool well = reviewed->errors == 0 && reviewed->warnings == 0;
    face.say(well ? "check.well" : "check.not-well",
             {{"devices", static_cast<std::int64_t>(reviewed->plan.devices.size())},
              {"zones", static_cast<std::int64_t>(reviewed->plan.zones.size())},
              {"errors", std::int64_t{reviewed->errors}},
              {"warnings", std::int64_t{reviewed->warnings}}});
    face.answer("check", {{"remarks", std::move(remarks)},
                          {"assumed", std::move(assumed)},
                          {"unused", std::move(unused)},
                          {"errors", reviewed->errors},
                          {"warnings", reviewed->warnings}});
    return well ? Exit::well : Exit::no;
}

} // namespace

Command checkCommand() { return {{"check", {"PLAN"}, {{"--catalogue", "FOLDER"}}}, run}; }

} // namespace proofwalk::command
