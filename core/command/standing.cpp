// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/command/standing.h"

#include "core/base/digest.h"
#include "core/base/text.h"
#include "core/command/places.h"
#include "core/walk/deviceview.h"

#include <map>

namespace proofwalk::command {

std::string sentenceOf(const Face& face, const walk::Rung& rung)
{
    std::vector<Argument> arguments = rung.arguments;
    arguments.push_back({"subject", rung.subject});
    return face.phrase(rung.code, arguments);
}

Result<SheetChange> changedBySheets(const journal::Record& record, const walk::Judged& judged, const Options& options)
{
    SheetChange change;
    auto files = catalogueFiles(options);
    if (!files) return passOn(files);
    std::map<std::string, std::string> embedded(judged.start.catalogue.begin(), judged.start.catalogue.end());
    for (const auto& [path, bytes] : *files) {
        const auto old = embedded.find(path);
        if (old == embedded.end() || old->second != base::sha256Hex(bytes)) change.files.push_back(path);
        if (old != embedded.end()) embedded.erase(old);
    }
    for (const auto& [path, hash] : embedded) change.files.push_back(path);
    if (change.files.empty()) return change;

    auto catalogue = catalogue::Catalogue::read(std::move(*files));
    if (!catalogue) return passOn(catalogue);
    auto other = walk::judgeRecordWith(record, *catalogue);
    if (!other) return passOn(other);
    for (std::size_t i = 0; i < judged.state.scope->devices.size(); ++i) {
        const auto before = walk::viewDevice(judged.state, judged.state.scope->devices[i]);
        const auto after = walk::viewDevice(other->state, other->state.scope->devices[i]);
        if (before.verdict == after.verdict) continue;
        change.differences.push_back(before.device->device->tag + ": " + std::string(walk::wordOf(before.verdict))
                                     + ", would be " + std::string(walk::wordOf(after.verdict)));
    }
    return change;
}

void sayChanged(Face& face, const SheetChange& change)
{
    if (change.files.empty()) return;
    face.say("sheets.changed", {{"files", base::join(change.files, ", ")}});
    for (const std::string& difference : change.differences) face.say("  " + difference);
}

} // namespace proofwalk::command
