// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/command/work/print.h"

#include "core/base/text.h"
#include "core/command/work/figures.h"

#include <fmt/format.h>

#include <cmath>

namespace proofwalk::command::work {
namespace {

std::string codeOf(const Topic& topic, std::string_view part, std::string_view name)
{
    return fmt::format("work.{}.{}.{}", topic.name, part, name);
}

/// The first result that is no number, or nothing.
const Line* withoutNumber(const Worked& worked)
{
    for (const Line& line : worked.lines) {
        if (const auto* number = std::get_if<double>(&line.value); number != nullptr && !std::isfinite(*number))
            return &line;
        if (const auto* list = std::get_if<std::vector<double>>(&line.value))
            for (const double each : *list)
                if (!std::isfinite(each)) return &line;
    }
    return nullptr;
}

void sayInputs(Face& face, const Topic& topic, const Chosen& chosen)
{
    face.say(face.phrase(codeOf(topic, "as", chosen.computation->what)));
    for (const Given::Taken& each : chosen.given.taken()) {
        std::string text = each.text;
        if (each.isNumber) {
            std::vector<std::string> figures;
            for (const double number : each.numbers) figures.push_back(shown(number));
            text = base::join(figures, ", ") + unitAfter(each.name);
        }
        face.say(each.byDefault ? "work.taken-unless" : "work.taken", {{"name", each.name}, {"value", text}});
    }
}

/// Whether the text is the formula with its numbers put in, and not a list of what was given.
bool isSubstitution(const std::string& numbers)
{
    if (numbers.find(" = ") != std::string::npos) return false;
    for (const char* sign : {" + ", " − ", " × ", "/", "√", "^", "log10", "ln", "exp", "tan ", "sin ", "cos "})
        if (numbers.find(sign) != std::string::npos) return true;
    return false;
}

void sayLine(Face& face, const Line& line)
{
    face.say("");
    face.say("  " + line.formula);
    if (!line.numbers.empty())
        face.say(isSubstitution(line.numbers) ? "    = " + line.numbers
                                              : "    " + face.phrase("work.with", {{"given", line.numbers}}));
    face.say("    = " + valueText(line.name, line.value) + "    (" + line.name + ")");
}

void sayList(Face& face, std::string_view heading, const std::vector<std::string>& codes)
{
    if (codes.empty()) return;
    face.say("");
    face.say(face.phrase(heading));
    for (const std::string& code : codes) face.say("  " + face.phrase(code));
}

std::string sentences(const Face& face, const std::vector<std::string>& codes)
{
    std::vector<std::string> texts;
    for (const std::string& code : codes) texts.push_back(jsonText(face.phrase(code)));
    return "[" + base::join(texts, ",") + "]";
}

std::string inputsJson(const Given& given)
{
    std::vector<std::string> members;
    for (const Given::Taken& each : given.taken()) {
        Value value = each.text;
        if (each.isList) value = each.numbers;
        else if (each.isNumber) value = each.numbers.front();
        members.push_back(jsonText(each.name) + ":" + jsonValue(value));
    }
    return "{" + base::join(members, ",") + "}";
}

std::string answerJson(const Face& face, const Topic& topic, const Chosen& chosen, const Worked& worked)
{
    std::vector<std::string> formulas;
    std::vector<std::string> results;
    for (const Line& line : worked.lines) {
        formulas.push_back(fmt::format(R"({{"formula":{},"name":{},"numbers":{},"unit":{}}})", jsonText(line.formula),
                                       jsonText(line.name), jsonText(line.numbers),
                                       jsonText(std::string(writtenUnit(line.name)))));
        results.push_back(jsonText(line.name) + ":" + jsonValue(line.value));
    }
    std::vector<std::string> remarks;
    for (const Remark& each : worked.remarks) remarks.push_back(jsonText(face.phrase(each.code, each.arguments)));
    return fmt::format(R"({{"command":"work","format":1,"formulas":[{}],"inputs":{},"limits":{},"remarks":[{}],)"
                       R"("results":{{{}}},"sources":{},"topic":{},"what":{}}})",
                       base::join(formulas, ","), inputsJson(chosen.given), sentences(face, worked.limits),
                       base::join(remarks, ","), base::join(results, ","), sentences(face, worked.sources),
                       jsonText(std::string(topic.name)), jsonText(std::string(chosen.computation->what)));
}

} // namespace

Result<void> print(Face& face, const Topic& topic, const Chosen& chosen, const Worked& worked)
{
    if (const Line* line = withoutNumber(worked)) return failure("work.no-number", "", {{"found", line->name}});
    if (face.json()) {
        face.answerText(answerJson(face, topic, chosen, worked));
        return {};
    }
    sayInputs(face, topic, chosen);
    for (const Line& line : worked.lines) sayLine(face, line);
    if (!worked.remarks.empty()) face.say("");
    for (const Remark& each : worked.remarks) face.say(each.code, each.arguments);
    sayList(face, "work.limits", worked.limits);
    sayList(face, "work.sources", worked.sources);
    return {};
}

Exit answer(Face& face, const Topic& topic, std::span<const std::string> words)
{
    const auto cannot = [&](Error error) {
        if (error.where.empty()) error.where = topic.name;
        return face.cannot(error);
    };
    auto chosen = choose(topic, words);
    if (!chosen) return cannot(std::move(chosen.error()));
    auto worked = chosen->computation->run(chosen->given);
    if (!worked) return cannot(std::move(worked.error()));
    if (auto printed = print(face, topic, *chosen, *worked); !printed) return cannot(std::move(printed.error()));
    return Exit::well;
}

} // namespace proofwalk::command::work
