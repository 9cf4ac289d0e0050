// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/base/text.h"
#include "core/command/work/print.h"

#include <fmt/format.h>

namespace proofwalk::command::work {
namespace {

using base::Json;

std::string codeOf(const Topic& topic, std::string_view part, std::string_view name)
{
    return fmt::format("work.{}.{}.{}", topic.name, part, name);
}

std::string nameOf(const Input& input) { return std::string(input.name) + (input.anyUnit ? "_UNIT" : ""); }

/// "value, above 0 to 60 m", "steady, pulsed".
std::string domainOf(const Face& face, const Input& input)
{
    using Kind = Input::Kind;
    if (input.kind == Kind::text) return face.phrase("work.domain.text");
    if (input.kind == Kind::word)
        return base::join(std::vector<std::string>(input.choices.begin(), input.choices.end()), ", ");
    const bool whole = input.kind == Kind::whole || input.kind == Kind::wholes;
    const bool list = input.kind == Kind::numbers || input.kind == Kind::wholes;
    std::string text = rangeText(input.range);
    if (const auto unit = writtenUnit(input.name); !unit.empty()) text += " " + std::string(unit);
    if (whole) text = face.phrase("work.domain.whole", {{"range", text}});
    return list ? face.phrase("work.domain.list", {{"range", text}}) : text;
}

/// How it must be given, or what is taken when it is not.
std::string needOf(const Face& face, const Input& input)
{
    if (input.required) return face.phrase("work.need.yes");
    if (input.otherwise.empty()) return face.phrase("work.need.no");
    return face.phrase("work.need.otherwise", {{"value", std::string(input.otherwise)}});
}

/// The example's words as a shell takes them: in quotes where a sign would mean something to it.
std::string forShell(std::string_view example)
{
    std::vector<std::string> words = base::split(std::string(example), ' ');
    for (std::string& word : words)
        if (word.find_first_of("()|;&<>*?[]$#~") != std::string::npos) word = "'" + word + "'";
    return base::join(words, " ");
}

void sayComputation(Face& face, const Topic& topic, const Computation& computation)
{
    face.say("");
    face.say(fmt::format("what={}", computation.what));
    face.say("  " + face.phrase(codeOf(topic, "as", computation.what)));
    for (const Input& input : computation.inputs)
        face.say("work.help-input", {{"name", nameOf(input)},
                                     {"domain", domainOf(face, input)},
                                     {"need", needOf(face, input)},
                                     {"meaning", face.phrase(codeOf(topic, "in", input.name))}});
    face.say("work.help-example", {{"topic", std::string(topic.name)}, {"words", forShell(computation.example)}});
}

Json computationJson(const Face& face, const Topic& topic, const Computation& computation)
{
    Json::Array inputs;
    for (const Input& input : computation.inputs)
        inputs.push_back(Json::Object{{"name", nameOf(input)},
                                      {"unit", std::string(writtenUnit(input.name))},
                                      {"domain", domainOf(face, input)},
                                      {"required", input.required},
                                      {"otherwise", std::string(input.otherwise)},
                                      {"meaning", face.phrase(codeOf(topic, "in", input.name))}});
    return Json::Object{{"what", std::string(computation.what)},
                        {"short", face.phrase(codeOf(topic, "as", computation.what))},
                        {"inputs", std::move(inputs)},
                        {"example", fmt::format("proofwalk work {} {}", topic.name, forShell(computation.example))}};
}

} // namespace

void printHelp(Face& face, const Topic& topic)
{
    const std::string about = face.phrase(fmt::format("work.{}", topic.name));
    face.say(fmt::format("proofwalk work {} name=value ...", topic.name));
    face.say(about);
    Json::Array computations;
    for (const Computation& each : topic.computations) {
        sayComputation(face, topic, each);
        computations.push_back(computationJson(face, topic, each));
    }
    face.say("");
    face.say("work.help-units", {});
    face.answer("work",
                {{"topic", std::string(topic.name)}, {"short", about}, {"computations", std::move(computations)}});
}

void printTopics(Face& face)
{
    Json::Array all;
    for (const Topic& topic : topics()) {
        const std::string about = face.phrase(fmt::format("work.{}", topic.name));
        face.say("work.topic-line", {{"name", std::string(topic.name)}, {"about", about}});
        all.push_back(Json::Object{{"topic", std::string(topic.name)}, {"short", about}});
    }
    face.say("work.topics-end", {});
    face.answer("work", {{"topics", std::move(all)}});
}

} // namespace proofwalk::command::work
