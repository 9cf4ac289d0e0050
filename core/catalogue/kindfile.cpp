// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/catalogue/kindfile.h"

#include "core/base/text.h"
#include "core/catalogue/parts.h"
#include "core/catalogue/vocabulary.h"

#include <algorithm>

namespace proofwalk::catalogue {
namespace {

constexpr int longestCore_s = 3600;

void refuseUnlisted(const std::vector<StepEntry>& steps, const Kind& kind, Reading& reading)
{
    for (const StepEntry& each : steps) {
        const std::string& signal = each.step.signal;
        if (signal == "-" || std::ranges::find(kind.signals, signal) != kind.signals.end()) continue;
        reading.refuse(each.line, "catalogue.signal-unlisted",
                       {{"found", signal}, {"wanted", base::join(kind.signals, ", ")}});
    }
}

} // namespace

KindFile readKindFile(const Node& document, const std::string& name, Reading& reading)
{
    const Keys keys(document, reading,
                    {"format", "title", "group", "output", "life-safety", "purposes", "signals", "core-seconds",
                     "summary", "forbid", "before", "after"});
    readFormat(keys);
    KindFile file;
    file.kind.name = name;
    file.kind.title = keys.text("title");
    file.kind.group = keys.word("group", groupWords());
    file.kind.output = keys.truth("output", false);
    file.kind.lifeSafety = keys.truth("life-safety", false);
    file.kind.purposes = keys.words("purposes", columnWords("purpose"));
    file.kind.signals = keys.words("signals", {});
    file.kind.coreSeconds = keys.wholeNumber("core-seconds", 1, longestCore_s);
    file.kind.summary = keys.text("summary");
    file.before = readSteps(keys, "before", StepPlace::sheet);
    file.after = readSteps(keys, "after", StepPlace::sheet);
    if (keys.has("forbid")) file.forbid = keys.words("forbid", {});

    std::vector<StepEntry> all = file.before;
    all.insert(all.end(), file.after.begin(), file.after.end());
    if (all.empty()) keys.refuse("before", "catalogue.key-missing", {{"wanted", "before"}});
    refuseUnlisted(all, file.kind, reading);
    refuseTwins(all, reading);
    refuseForbiddingOwn(all, file.forbid, keys);
    return file;
}

} // namespace proofwalk::catalogue
