// SPDX-License-Identifier: GPL-3.0-or-later
// proofwalk work loop: what readings say of a loop (core/measure/diagnosis.h).
#include "core/command/work/loopnetwork.h"

#include "core/base/text.h"
#include "core/measure/colourcode.h"
#include "core/measure/diagnosis.h"

#include <fmt/format.h>

#include <algorithm>
#include <limits>

namespace proofwalk::command::work {
namespace {

using measure::FarEnd;
using measure::Finding;
using measure::Handling;
using measure::Mistake;
using measure::NetworkState;

constexpr double infinity = std::numeric_limits<double>::infinity();

/// One way of holding the loop while it is measured, by the name of its input.
struct Asked {
    const char* input;    ///< "acted_ohm"
    const char* name;     ///< in over_range: "acted"
    Handling handling;
};

Result<Handling> acting(const measure::Network& network, const Given& given, const char* input)
{
    const auto part = network.find(given.word(input));
    if (part && network.parts()[*part].kind == measure::PartKind::contact)
        return Handling{.acted = measure::partBit(*part)};
    std::vector<std::string> contacts;
    for (const measure::Part& each : network.parts())
        if (each.kind == measure::PartKind::contact) contacts.push_back(each.name);
    if (contacts.empty()) return failure("work.loop.no-contacts", std::string(input) + "=" + given.word(input));
    return failure("work.loop.no-contact", std::string(input) + "=" + given.word(input),
                   {{"wanted", base::join(contacts, ", ")}});
}

Result<measure::LoopQuestion> questionOf(const measure::Network& network, const Given& given)
{
    std::vector<Asked> ways{{"rest_ohm", "rest", {}},
                            {"acted_ohm", "acted", {}},
                            {"cover_ohm", "cover", {}},
                            {"shorted_ohm", "shorted", {.end = FarEnd::shorted}},
                            {"opened_ohm", "opened", {.end = FarEnd::opened}}};
    const auto over = given.has("over_range") ? base::split(given.word("over_range"), ',') : std::vector<std::string>{};
    for (const std::string& each : over)
        if (std::ranges::find(ways, each, [](const Asked& way) { return std::string(way.name); }) == ways.end())
            return failure("work.choice", "over_range=" + given.word("over_range"),
                           {{"wanted", "rest, acted, cover, shorted, opened"}});
    measure::LoopQuestion question;
    question.range_ohm = given.number("range_ohm");
    for (Asked& way : ways) {
        const bool isOver = std::ranges::find(over, way.name) != over.end();
        if (!isOver && !given.has(way.input)) continue;
        if (isOver && given.has(way.input)) return failure("work.twice", way.input);
        if (way.name == std::string_view("acted") || way.name == std::string_view("cover")) {
            auto handling = acting(network, given, way.name == std::string_view("acted") ? "contact" : "tamper");
            if (!handling) return passOn(handling);
            way.handling = *handling;
        }
        const double ohm = isOver ? infinity : given.number(way.input);
        const double expanded = isOver ? 0 : ohm * given.number("expanded_pct") / 100 + given.number("expanded_ohm");
        question.readings.push_back({way.handling, ohm, expanded});
    }
    if (question.readings.empty()) return failure("work.missing", "", {{"wanted", "rest_ohm"}});
    question.toEarth_ohm = given.maybe("earth_ohm");
    question.leastToEarth_ohm = given.number("least_earth_ohm");
    return question;
}

/// The word of a mistake in names and codes.
const char* wordOf(Mistake what)
{
    switch (what) {
    case Mistake::none: return "none";
    case Mistake::contactStaysOpen: return "contact-stays-open";
    case Mistake::contactStaysClosed: return "contact-stays-closed";
    case Mistake::contactReversed: return "contact-reversed";
    case Mistake::contactsBothActed: return "contacts-both-acted";
    case Mistake::contactResistance: return "contact-resistance";
    case Mistake::resistorBridged: return "resistor-bridged";
    case Mistake::resistorMissing: return "resistor-missing";
    case Mistake::resistorDoubled: return "resistor-doubled";
    case Mistake::resistorHalved: return "resistor-halved";
    case Mistake::resistorWrong: return "resistor-wrong";
    case Mistake::resistorsSwapped: return "resistors-swapped";
    case Mistake::resistorAtPanel: return "resistor-at-panel";
    case Mistake::resistorAcrossPanel: return "resistor-across-panel";
    case Mistake::secondAtPanel: return "second-at-panel";
    case Mistake::joint: return "joint";
    case Mistake::leakage: return "leakage";
    case Mistake::cut: return "cut";
    case Mistake::shorted: return "shorted";
    case Mistake::earthFault: return "earth-fault";
    }
    return "";
}

/// "resistor-at-panel eol", as one word of a result.
std::string explanation(const measure::Network& network, const Finding& finding)
{
    std::string name = wordOf(finding.suspicion.what);
    for (const std::size_t part : {finding.suspicion.part, finding.suspicion.other})
        if (part < network.parts().size()) name += " " + network.parts()[part].name;
    return name;
}

/// Says so if a resistor of the size found has rings that are easily taken for those of the planned one.
void addMisreading(Worked& worked, const measure::Network& network, const Finding& finding)
{
    if (finding.suspicion.what != Mistake::resistorWrong || !finding.size) return;
    const measure::Part& part = network.parts()[finding.suspicion.part];
    const auto planned = base::fromDouble(part.ohm.nominal_ohm, -2);
    if (!planned) return;
    const auto misread = measure::misreadingsOf(*planned, {1, 0});
    if (!misread) return; // a value without rings
    const double tolerance = part.ohm.most_ohm / part.ohm.nominal_ohm - 1;
    for (const base::Decimal& each : *misread) {
        const double ohm = base::toDouble(each);
        if (ohm * (1 + tolerance) < finding.size->lower_ohm.value_or(0)) continue;
        if (finding.size->upper_ohm && ohm * (1 - tolerance) > *finding.size->upper_ohm) continue;
        worked.remarks.push_back(
            {"work.loop.misread",
             {{"part", part.name}, {"found", shown("x_ohm", ohm)}, {"wanted", shown("x_ohm", part.ohm.nominal_ohm)}}});
    }
}

/// The sentence of an explanation, and its size if it has one.
void addFinding(Worked& worked, const measure::Network& network, const Finding& finding, std::size_t number)
{
    const std::string at = fmt::format("finding_{}", number);
    const std::string name = explanation(network, finding);
    if (finding.size) {
        worked.lines.push_back(
            {"size of " + name + ", from", "", at + "_from_ohm", finding.size->lower_ohm.value_or(0)});
        if (finding.size->upper_ohm)
            worked.lines.push_back({"size of " + name + ", to", "", at + "_to_ohm", *finding.size->upper_ohm});
    }
    if (finding.preferred_ohm)
        worked.lines.push_back({"nearest value of E24", "", at + "_preferred_ohm", *finding.preferred_ohm});
    const auto part = [&](std::size_t which) {
        return which < network.parts().size() ? network.parts()[which].name : std::string();
    };
    addMisreading(worked, network, finding);
    worked.remarks.push_back({std::string("work.loop.mistake.") + wordOf(finding.suspicion.what),
                              {{"part", part(finding.suspicion.part)}, {"other", part(finding.suspicion.other)}}});
}

/// Which further reading tells the first finding from another, or that none does.
Remark tellingApart(const measure::Network& network, const Finding& first, const Finding& other, double relative)
{
    const std::vector<Argument> names{{"a", explanation(network, first)}, {"b", explanation(network, other)}};
    if (first.suspicion.what == Mistake::earthFault || other.suspicion.what == Mistake::earthFault)
        return {"work.loop.tell.earth", names};
    const auto handling = measure::handlingThatTells(network, first, other, relative);
    if (!handling) return {"work.loop.tell.nothing", names};
    if (handling->end == FarEnd::shorted) return {"work.loop.tell.shorted", names};
    if (handling->end == FarEnd::opened) return {"work.loop.tell.opened", names};
    if (handling->acted == 0) return {"work.loop.tell.rest", names};
    auto withContact = names;
    withContact.push_back({"contact", nameOf(network, NetworkState{.acted = handling->acted})});
    return {"work.loop.tell.acted", withContact};
}

Result<Worked> diagnosis(const Given& given)
{
    auto network = networkOf(given);
    if (!network) return passOn(network);
    auto question = questionOf(*network, given);
    if (!question) return passOn(question);
    auto findings = measure::diagnose(*network, *question);
    if (!findings) return passOn(findings);
    Worked worked;
    std::vector<std::string> names;
    std::vector<double> shares;
    for (const Finding& each : *findings) {
        names.push_back(explanation(*network, each));
        shares.push_back(each.share);
    }
    worked.lines.push_back({"what explains every reading, the likeliest first",
                            fmt::format("{} readings", question->readings.size()), "findings", names});
    worked.lines.push_back({"their shares of the likelihood", "", "shares", shares});
    for (std::size_t i = 0; i < findings->size(); ++i) addFinding(worked, *network, (*findings)[i], i + 1);
    if (findings->empty()) worked.remarks.push_back({"work.loop.nothing-fits", {}});
    if (findings->size() > 1) worked.remarks.push_back({"work.loop.not-told-apart", {}});
    for (std::size_t i = 1; i < findings->size(); ++i)
        worked.remarks.push_back(
            tellingApart(*network, findings->front(), (*findings)[i], given.number("expanded_pct") / 100));
    worked.limits = {"work.limit.diagnosis", "work.limit.one-mistake", "work.limit.loop-disconnected"};
    worked.sources = {"work.source.ohm", "work.source.loop-practice"};
    return worked;
}

} // namespace

Computation diagnosisComputation()
{
    std::vector<Input> inputs = loopInputs();
    for (const Input& each :
         {optional("rest_ohm", {0, 1e9}), optional("acted_ohm", {0, 1e9}), optional("cover_ohm", {0, 1e9}),
          optional("shorted_ohm", {0, 1e9}), optional("opened_ohm", {0, 1e9}), maybeText("over_range"),
          maybeText("contact", "alarm"), maybeText("tamper", "tamper"), usual("expanded_pct", "1", {0, 50}),
          usual("expanded_ohm", "0.5", {0, 1e6}), usual("range_ohm", "10000000", {1, 1e9}),
          optional("earth_ohm", {0, 1e9}), usual("least_earth_ohm", "1000000", {1, 1e9})})
        inputs.push_back(each);
    return {"diagnosis", std::move(inputs), diagnosis,
            "loop=cable=12+tamper:nc+(alarm:nc|zone=4700)+eol=2200 rest_ohm=2210 acted_ohm=6910 "
            "shorted_ohm=2208 over_range=cover"};
}

} // namespace proofwalk::command::work
