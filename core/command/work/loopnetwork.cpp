// SPDX-License-Identifier: GPL-3.0-or-later
// proofwalk work loop, for a loop described as a network: what its states read, and what readings say of it
// (core/measure/networktext.h, loopstates.h, diagnosis.h).
#include "core/command/work/loopnetwork.h"

#include "core/base/text.h"
#include "core/measure/conductor.h"
#include "core/measure/diagnosis.h"
#include "core/measure/inputs.h"
#include "core/measure/loopstates.h"
#include "core/measure/networktext.h"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <cmath>

namespace proofwalk::command::work {
namespace {

using measure::FarEnd;
using measure::Finding;
using measure::Handling;
using measure::Mistake;
using measure::NetworkState;

constexpr double infinity = std::numeric_limits<double>::infinity();

std::vector<Input> loopInputs()
{
    return {word("loop", {}),
            usual("tolerance_pct", "1", {0, 99}),
            optional("length_m", {0, 1e5, true}),
            Input{.name = "conductor", .kind = Input::Kind::text, .required = false},
            optional("wire_ohm_per_km", {0, 1e6, true}),
            usual("cable_c", "20", {-40, 90}),
            usual("coefficient_ppm_per_k", "100", {0, 1e4}),
            usual("change_k", "0", {0, 90})};
}

/// The pair's resistance from its length: as it is for a figure that was given, from nothing to it for a figure that a
/// standard permits at the most.
Result<std::optional<measure::CableOhm>> cableOf(const Given& given)
{
    using Found = std::optional<measure::CableOhm>;
    if (!given.has("length_m")) return Found{};
    measure::Conductor conductor{"", 0, given.maybe("wire_ohm_per_km").value_or(0), 20, false, "", ""};
    if (given.has("conductor")) {
        auto named = measure::conductorByName(given.word("conductor"));
        if (!named) return std::unexpected(std::move(named.error()).within("conductor"));
        conductor = *named;
    } else if (!given.has("wire_ohm_per_km")) {
        return failure("work.missing", "", {{"wanted", "conductor or wire_ohm_per_km"}});
    }
    auto ohm = measure::pairResistance_ohm(
        measure::ConductorRun{conductor, given.number("length_m"), given.number("cable_c")});
    if (!ohm) return passOn(ohm);
    return Found(measure::CableOhm{conductor.isMaximum ? 0 : *ohm, *ohm});
}

Result<measure::Network> networkOf(const Given& given)
{
    auto cable = cableOf(given);
    if (!cable) return passOn(cable);
    auto network = measure::readNetwork(given.word("loop"), given.number("tolerance_pct"), *cable);
    if (!network) return std::unexpected(std::move(network.error()).within("loop"));
    return network->withDrift(given.number("coefficient_ppm_per_k"), given.number("change_k"));
}

/// "rest", "alarm", "alarm-and-tamper", "cut", "shorted": the names of the contacts that acted.
std::string nameOf(const measure::Network& network, const NetworkState& state)
{
    if (state.pair == NetworkState::Pair::cut) return "cut";
    if (state.pair == NetworkState::Pair::shorted) return "shorted";
    std::vector<std::string> names;
    for (std::size_t i = 0; i < network.parts().size(); ++i)
        if (state.acted & measure::partBit(i)) names.push_back(network.parts()[i].name);
    return names.empty() ? "rest" : base::join(names, "-and-");
}

std::vector<std::string> pieces(const std::string& text) { return base::split(text, ','); }

/// "normal" from 1000 ohm on: what the panel shows, from its thresholds.
Result<std::vector<measure::PanelBand>> bandsOf(const Given& given)
{
    std::vector<measure::PanelBand> bands;
    if (!given.has("thresholds_ohm") && !given.has("shows")) return bands;
    if (!given.has("thresholds_ohm")) return failure("work.missing", "", {{"wanted", "thresholds_ohm"}});
    if (!given.has("shows")) return failure("work.missing", "", {{"wanted", "shows"}});
    const auto& thresholds = given.numbers("thresholds_ohm");
    const auto shows = pieces(given.word("shows"));
    if (shows.size() != thresholds.size() + 1)
        return failure("work.loop.shows", "shows=" + given.word("shows"),
                       {{"found", static_cast<std::int64_t>(shows.size())},
                        {"wanted", static_cast<std::int64_t>(thresholds.size() + 1)}});
    bands.push_back({shows[0], 0});
    for (std::size_t i = 0; i < thresholds.size(); ++i) bands.push_back({shows[i + 1], thresholds[i]});
    return bands;
}

Result<void> addBands(Worked& worked, const measure::Network& network, const NetworkState& state,
                      const std::vector<measure::PanelBand>& bands, double expanded_ohm)
{
    if (bands.empty()) return {};
    auto reached = measure::bandsOfState(network, state, bands, expanded_ohm);
    if (!reached) return std::unexpected(std::move(reached.error()).within("thresholds_ohm"));
    std::vector<std::string> shown;
    for (const std::size_t each : *reached) shown.push_back(bands[each].shows);
    worked.remarks.push_back({shown.size() == 1 ? "work.loop.shows-always" : "work.loop.shows-one-of",
                              {{"state", nameOf(network, state)}, {"shown", base::join(shown, ", ")}}});
    return {};
}

/// A threshold in the middle of each gap between neighbours, from the lowest reading to the highest.
void addThresholds(Worked& worked, const measure::Network& network, std::vector<NetworkState> states,
                   measure::Spread spread)
{
    const auto windowOf = [&](const NetworkState& state) { return measure::windowOf(network, state, spread); };
    std::erase_if(states, [&](const NetworkState& state) { return !windowOf(state).upper_ohm; });
    std::ranges::sort(states, {}, [&](const NetworkState& state) { return *windowOf(state).lower_ohm; });
    for (std::size_t i = 0; i + 1 < states.size(); ++i) {
        const auto middle = measure::thresholdBetween_ohm(windowOf(states[i]), windowOf(states[i + 1]));
        if (!middle) continue;
        const std::string low = nameOf(network, states[i]), high = nameOf(network, states[i + 1]);
        worked.lines.push_back({"middle of the gap between " + low + " and " + high, "",
                                "threshold_" + low + "_" + high + "_ohm", *middle});
    }
}

Result<Worked> states(const Given& given)
{
    auto network = networkOf(given);
    if (!network) return passOn(network);
    auto bands = bandsOf(given);
    if (!bands) return passOn(bands);
    const double expanded = given.number("expanded_ohm");
    const auto spread =
        given.word("spread") == "independent" ? measure::Spread::rootSumSquares : measure::Spread::worstCase;
    const auto all = measure::statesOf(*network);
    auto alike = measure::statesAlike(*network, all, expanded, spread);
    if (!alike) return passOn(alike);

    Worked worked;
    for (const NetworkState& state : all) {
        const auto window = measure::windowOf(*network, state, spread);
        const std::string name = nameOf(*network, state);
        const char* open = window.upper_ohm ? "" : "open: no less than the highest reading of a whole loop";
        worked.lines.push_back({"least R of " + name, open, name + "_from_ohm", *window.lower_ohm});
        if (!window.upper_ohm) continue;
        measure::Circumstances at;
        at.acted = state.acted;
        if (state.pair == NetworkState::Pair::whole)
            worked.lines.push_back({"R of " + name + ", every part as printed", "", name + "_nominal_ohm",
                                    measure::spanOf(*network, at).nominal_ohm});
        worked.lines.push_back({"greatest R of " + name, "", name + "_to_ohm", *window.upper_ohm});
    }
    addThresholds(worked, *network, all, spread);
    for (const measure::Alike& pair : *alike)
        worked.remarks.push_back(
            {"work.loop.alike", {{"a", nameOf(*network, all[pair.a])}, {"b", nameOf(*network, all[pair.b])}}});
    if (alike->empty()) worked.remarks.push_back({"work.loop.told-apart", {}});
    for (const NetworkState& state : all)
        if (auto added = addBands(worked, *network, state, *bands, expanded); !added) return passOn(added);
    worked.limits = {spread == measure::Spread::worstCase ? "work.limit.worst-case" : "work.limit.independent-parts",
                     "work.limit.loop-disconnected"};
    worked.sources = {"work.source.ohm", "work.source.loop-practice"};
    return worked;
}

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
    const auto over = given.has("over_range") ? pieces(given.word("over_range")) : std::vector<std::string>{};
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
std::string nameOf(const measure::Network& network, const Finding& finding)
{
    std::string name = wordOf(finding.suspicion.what);
    for (const std::size_t part : {finding.suspicion.part, finding.suspicion.other})
        if (part < network.parts().size()) name += " " + network.parts()[part].name;
    return name;
}

/// The sentence of an explanation, and its size if it has one.
void addFinding(Worked& worked, const measure::Network& network, const Finding& finding, std::size_t number)
{
    const std::string at = fmt::format("finding_{}", number);
    const std::string name = nameOf(network, finding);
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
    worked.remarks.push_back({std::string("work.loop.mistake.") + wordOf(finding.suspicion.what),
                              {{"part", part(finding.suspicion.part)}, {"other", part(finding.suspicion.other)}}});
}

/// Which further reading tells the first finding from another, or that none does.
Remark tellingApart(const measure::Network& network, const Finding& first, const Finding& other, double relative)
{
    const std::vector<Argument> names{{"a", nameOf(network, first)}, {"b", nameOf(network, other)}};
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
        names.push_back(nameOf(*network, each));
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

std::vector<Input> joined(std::vector<Input> first, const std::vector<Input>& second)
{
    first.insert(first.end(), second.begin(), second.end());
    return first;
}

Input text(std::string_view name, std::string_view otherwise = {})
{
    return {.name = name, .kind = Input::Kind::text, .required = false, .otherwise = otherwise};
}

} // namespace

std::vector<Computation> networkComputations()
{
    return {
        {"states",
         joined(loopInputs(), {usual("expanded_ohm", "0", {0, 1e6}), word("spread", {"worst", "independent"}, "worst"),
                               optionalList("thresholds_ohm", {0, 1e9, true}), text("shows")}),
         states,
         "loop=cable=12+tamper:nc+(alarm:nc|zone=4700)+eol=2200 expanded_ohm=20 "
         "thresholds_ohm=1000,4500,9000 shows=short,normal,alarm,cut"},
        {"diagnosis",
         joined(loopInputs(),
                {optional("rest_ohm", {0, 1e9}), optional("acted_ohm", {0, 1e9}), optional("cover_ohm", {0, 1e9}),
                 optional("shorted_ohm", {0, 1e9}), optional("opened_ohm", {0, 1e9}), text("over_range"),
                 text("contact", "alarm"), text("tamper", "tamper"), usual("expanded_pct", "1", {0, 50}),
                 usual("expanded_ohm", "0.5", {0, 1e6}), usual("range_ohm", "10000000", {1, 1e9}),
                 optional("earth_ohm", {0, 1e9}), usual("least_earth_ohm", "1000000", {1, 1e9})}),
         diagnosis,
         "loop=cable=12+tamper:nc+(alarm:nc|zone=4700)+eol=2200 rest_ohm=2210 acted_ohm=6910 "
         "shorted_ohm=2208 over_range=cover"}};
}

} // namespace proofwalk::command::work
