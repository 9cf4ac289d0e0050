// SPDX-License-Identifier: GPL-3.0-or-later
// proofwalk work loop: what the states of a loop read, and what the panel makes of it (core/measure/loopstates.h).
#include "core/command/work/loopnetwork.h"

#include "core/base/text.h"
#include "core/measure/networktext.h"

#include <fmt/format.h>

#include <algorithm>

namespace proofwalk::command::work {
namespace {

using measure::NetworkState;

std::vector<Input> stateInputs(std::vector<Input> first)
{
    for (const Input& each : {usual("expanded_ohm", "0", {0, 1e6}), word("spread", {"worst", "independent"}, "worst"),
                              optionalList("thresholds_ohm", {0, 1e9, true}), maybeText("shows")})
        first.push_back(each);
    return first;
}

/// "normal" from 1000 ohm on: what the panel shows, from its thresholds.
Result<std::vector<measure::PanelBand>> bandsOf(const Given& given)
{
    std::vector<measure::PanelBand> bands;
    if (!given.has("thresholds_ohm") && !given.has("shows")) return bands;
    if (!given.has("thresholds_ohm")) return failure("work.missing", "", {{"wanted", "thresholds_ohm"}});
    if (!given.has("shows")) return failure("work.missing", "", {{"wanted", "shows"}});
    const auto& thresholds = given.numbers("thresholds_ohm");
    const auto shows = base::split(given.word("shows"), ',');
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

Result<Worked> statesOf(const measure::Network& network, const Given& given)
{
    auto bands = bandsOf(given);
    if (!bands) return passOn(bands);
    const double expanded = given.number("expanded_ohm");
    const auto spread =
        given.word("spread") == "independent" ? measure::Spread::rootSumSquares : measure::Spread::worstCase;
    const auto all = measure::statesOf(network);
    auto alike = measure::statesAlike(network, all, expanded, spread);
    if (!alike) return passOn(alike);

    Worked worked;
    for (const NetworkState& state : all) {
        const auto window = measure::windowOf(network, state, spread);
        const std::string name = nameOf(network, state);
        const char* open = window.upper_ohm ? "" : "open: no less than the highest reading of a whole loop";
        worked.lines.push_back({"least R of " + name, open, name + "_from_ohm", *window.lower_ohm});
        if (!window.upper_ohm) continue;
        measure::Circumstances at;
        at.acted = state.acted;
        if (state.pair == NetworkState::Pair::whole)
            worked.lines.push_back({"R of " + name + ", every part as printed", "", name + "_nominal_ohm",
                                    measure::spanOf(network, at).nominal_ohm});
        worked.lines.push_back({"greatest R of " + name, "", name + "_to_ohm", *window.upper_ohm});
    }
    addThresholds(worked, network, all, spread);
    for (const measure::Alike& pair : *alike)
        worked.remarks.push_back(
            {"work.loop.alike", {{"a", nameOf(network, all[pair.a])}, {"b", nameOf(network, all[pair.b])}}});
    if (alike->empty()) worked.remarks.push_back({"work.loop.told-apart", {}});
    for (const NetworkState& state : all)
        if (auto added = addBands(worked, network, state, *bands, expanded); !added) return passOn(added);
    worked.limits = {spread == measure::Spread::worstCase ? "work.limit.worst-case" : "work.limit.independent-parts",
                     "work.limit.loop-disconnected"};
    worked.sources = {"work.source.ohm", "work.source.loop-practice"};
    return worked;
}

Result<Worked> states(const Given& given)
{
    auto network = networkOf(given);
    if (!network) return passOn(network);
    return statesOf(*network, given);
}

/// All digits of a resistance, without an exponent.
std::string digits(double ohm)
{
    return ohm == 0 || ohm >= 1e-3 ? fmt::format("{}", ohm) : fmt::format("{:.12f}", ohm);
}

/// The usual wirings by their resistors, as core/measure/loop.h knows them, written as a network.
std::string wiringText(const Given& given)
{
    const bool closed = given.word("rest") == "closed";
    const std::string cable = "cable=" + digits(given.number("cable_ohm"));
    const std::string eol = given.has("eol_ohm") ? "eol=" + digits(given.number("eol_ohm")) : "";
    if (eol.empty()) return cable + (closed ? " + alarm:nc" : " + alarm:no");
    if (!given.has("alarm_ohm")) return cable + (closed ? " + alarm:nc + " + eol : " + (alarm:no | " + eol + ")");
    const std::string zone = "zone=" + digits(given.number("alarm_ohm"));
    return cable + (closed ? " + (alarm:nc | " + zone + ") + " + eol : " + (alarm:no + " + zone + " | " + eol + ")");
}

Result<Worked> wiring(const Given& given)
{
    if (given.has("alarm_ohm") && !given.has("eol_ohm")) return failure("work.missing", "", {{"wanted", "eol_ohm"}});
    const std::string text = wiringText(given);
    auto network = measure::readNetwork(text, given.number("tolerance_pct"));
    if (!network) return passOn(network);
    auto worked = statesOf(*network, given);
    if (!worked) return worked;
    worked->lines.insert(worked->lines.begin(), Line{"the loop as a line, from the panel on", "", "loop", text});
    return worked;
}

} // namespace

std::vector<Computation> stateComputations()
{
    return {{"wiring",
             stateInputs({optional("eol_ohm", {1e-3, 1e8}), optional("alarm_ohm", {1e-3, 1e8}),
                          word("rest", {"closed", "open"}, "closed"), usual("cable_ohm", "0", {0, 1e6}),
                          usual("tolerance_pct", "1", {0, 99})}),
             wiring, "eol_ohm=4700 alarm_ohm=4700 cable_ohm=40"},
            {"states", stateInputs(loopInputs()), states,
             "loop=cable=12+tamper:nc+(alarm:nc|zone=4700)+eol=2200 expanded_ohm=20 "
             "thresholds_ohm=1000,4500,9000 shows=short,normal,alarm,cut"}};
}

} // namespace proofwalk::command::work
