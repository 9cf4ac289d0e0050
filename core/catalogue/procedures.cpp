// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/catalogue/procedures.h"

#include "core/catalogue/parts.h"
#include "core/catalogue/vocabulary.h"

namespace proofwalk::catalogue {

Sequence readSequence(const Node& document, const std::string& name, Reading& reading)
{
    const Keys keys(document, reading, {"format", "title", "summary", "steps"});
    readFormat(keys);
    Sequence sequence{name, keys.text("title"), keys.text("summary"), {}};
    const auto entries = readSteps(keys, "steps", StepPlace::sequence);
    if (entries.empty()) keys.refuse("steps", "catalogue.key-missing", {{"wanted", "steps"}});
    refuseTwins(entries, reading);
    for (const StepEntry& each : entries) sequence.steps.push_back(each.step);
    return sequence;
}

Round readRound(const Node& document, const std::string& name, Reading& reading)
{
    const Keys keys(document, reading, {"format", "title", "summary", "step", "subject"});
    readFormat(keys);
    Round round;
    round.name = name;
    round.title = keys.text("title");
    round.summary = keys.text("summary");
    round.step = keys.name("step");
    round.subject = subjectOf(keys.word("subject", subjectWords()));
    return round;
}

} // namespace proofwalk::catalogue
