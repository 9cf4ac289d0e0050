// SPDX-License-Identifier: GPL-3.0-or-later
// proofwalk kinds [NAME]: the device kinds, or one test sheet.
#include "core/command/command.h"
#include "core/command/places.h"

#include "core/base/text.h"

namespace proofwalk::command {
namespace {

using base::Json;

Json stepJson(const catalogue::Step& step)
{
    Json::Array states;
    for (const auto state : step.states) states.emplace_back(catalogue::wordOf(state));
    return Json::Object{{"step", step.name},
                        {"signal", step.signal},
                        {"kind", catalogue::wordOf(step.kind)},
                        {"subject", catalogue::wordOf(step.subject)},
                        {"proves", catalogue::wordOf(step.proves)},
                        {"core", step.core},
                        {"states", std::move(states)},
                        {"act", step.act},
                        {"expect", step.expect},
                        {"caution", step.caution},
                        {"never", step.never},
                        {"seconds", step.seconds},
                        {"basis", step.source.basis},
                        {"part", step.part}};
}

void sayStep(Face& face, const catalogue::Step& step)
{
    if (!step.caution.empty()) face.say("kinds.caution", {{"words", step.caution}});
    std::vector<std::string> states;
    for (const auto state : step.states) states.emplace_back(catalogue::wordOf(state));
    face.say("kinds.step",
             {{"step", step.name},
              {"kind", std::string(catalogue::wordOf(step.kind))},
              {"proves",
               step.proves == catalogue::Proof::none ? std::string("-") : std::string(catalogue::wordOf(step.proves))},
              {"signal", step.signal},
              {"core", face.phrase(step.core ? "kinds.core" : "kinds.extended")},
              {"states", base::join(states, ", ")}});
    face.say("      " + step.act);
    if (!step.expect.empty()) face.say("      " + step.expect);
    if (!step.never.empty()) face.say("      " + step.never);
}

/// A sheet as it would be on a plain zone of the kind's first purpose; what was chosen is said.
catalogue::Traits plainTraits(const catalogue::Catalogue& catalogue, const catalogue::Kind& kind,
                              const Options& options)
{
    const auto chosen = [&](const char* name, std::string otherwise) {
        return options.has(name) ? options.value(name) : std::move(otherwise);
    };
    catalogue::Traits traits;
    traits.kind = kind.name;
    traits.signals = {"alarm", "tamper", "fault"};
    traits.purpose = chosen("--purpose", kind.purposes.empty() ? std::string() : kind.purposes.front());
    traits.feed = chosen("--feed", "loop");
    traits.rest = "closed";
    traits.resistors = chosen("--resistors", "2");
    traits.delay = "none";
    traits.sounding = "loud";
    traits.reporting = "yes";
    traits.rules = catalogue.ruleNames();
    return traits;
}

Exit showSheet(Face& face, const catalogue::Catalogue& catalogue, const catalogue::Kind& kind, const Options& options)
{
    const auto traits = plainTraits(catalogue, kind, options);
    auto sheet = catalogue.compose(traits);
    if (!sheet) return face.cannot(sheet.error());
    face.say(kind.title + " (" + kind.name + ")");
    face.say(kind.summary);
    face.say("kinds.composed", {{"purpose", traits.purpose}, {"feed", traits.feed}, {"resistors", traits.resistors}});
    Json::Array steps;
    for (const catalogue::Step& step : sheet->steps) {
        sayStep(face, step);
        steps.push_back(stepJson(step));
    }
    face.answer("kinds", {{"kind", kind.name}, {"title", kind.title}, {"steps", std::move(steps)}});
    return Exit::well;
}

Exit run(Face& face, const Options& options)
{
    auto files = catalogueFiles(options);
    if (!files) return face.cannot(files.error());
    auto catalogue = catalogue::Catalogue::read(std::move(*files));
    if (!catalogue) return face.cannot(catalogue.error());
    if (!options.words.empty()) {
        if (const catalogue::Kind* kind = catalogue->kind(options.words[0]))
            return showSheet(face, *catalogue, *kind, options);
        std::vector<std::string> known;
        for (const auto& kind : catalogue->kinds()) known.push_back(kind.name);
        return face.cannot(
            {"kinds.unknown", options.words[0], {{"nearest", base::nearestWord(options.words[0], known)}}});
    }
    Json::Array kinds;
    for (const catalogue::Kind& kind : catalogue->kinds()) {
        face.say("kinds.line", {{"name", kind.name}, {"title", kind.title}, {"summary", kind.summary}});
        kinds.push_back(
            Json::Object{{"kind", kind.name}, {"title", kind.title}, {"group", kind.group}, {"summary", kind.summary}});
    }
    face.answer("kinds", {{"kinds", std::move(kinds)}});
    return Exit::well;
}

} // namespace

Command kindsCommand()
{
    return {{"kinds",
             {"[NAME]"},
             {{"--purpose", "WORD"}, {"--feed", "WORD"}, {"--resistors", "N"}, {"--catalogue", "FOLDER"}}},
            run};
}

} // namespace proofwalk::command
