// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/measure/loopstates.h"

#include "core/measure/inputs.h"

#include <algorithm>
#include <cmath>
#include <utility>

namespace proofwalk::measure {
namespace {

constexpr std::size_t fewContacts = 4; // sixteen sets of them: still a list a person reads

std::vector<Parts> contactsOf(const Network& network)
{
    std::vector<Parts> contacts;
    for (std::size_t i = 0; i < network.parts().size(); ++i)
        if (network.parts()[i].kind == PartKind::contact) contacts.push_back(partBit(i));
    return contacts;
}

Circumstances circumstancesOf(const NetworkState& state)
{
    Circumstances circumstances;
    circumstances.acted = state.acted;
    return circumstances;
}

/// The span of the whole pair with independent resistors: what each does alone, squared and summed.
Span independent(const Network& network, const NetworkState& state)
{
    Circumstances at = circumstancesOf(state);
    const Span worst = spanOf(network, at);
    if (std::isinf(worst.nominal_ohm)) return worst;
    double squares = 0;
    for (std::size_t i = 0; i < network.parts().size(); ++i) {
        const Part& part = network.parts()[i];
        if (part.kind != PartKind::resistor) continue;
        const auto nominalWith = [&](double ohm) {
            at.replaced[0] = {i, {ohm, ohm, ohm}};
            return spanOf(network, at).nominal_ohm;
        };
        const double half = (nominalWith(part.ohm.most_ohm) - nominalWith(part.ohm.least_ohm)) / 2;
        squares += half * half;
    }
    // The cable is no chance contribution: it is as long as it is. So its ends are taken with the resistors exact.
    const double half = std::sqrt(squares);
    const Span ends = spanOf(network.withExactResistors(), circumstancesOf(state));
    return {std::max(0.0, ends.least_ohm - half), ends.nominal_ohm, ends.most_ohm + half};
}

Span spanOfState(const Network& network, const NetworkState& state, Spread spread)
{
    if (state.pair == NetworkState::Pair::cut) return openCircuit;
    if (state.pair == NetworkState::Pair::shorted) {
        const double most = network.cableMost_ohm();
        return {0, most / 2, most};
    }
    return spread == Spread::worstCase ? spanOf(network, circumstancesOf(state)) : independent(network, state);
}

/// The highest reading of a state that has a resistance.
double highestReading_ohm(const Network& network, Spread spread)
{
    double highest = 0;
    for (const NetworkState& state : statesOf(network))
        if (const double most = spanOfState(network, state, spread).most_ohm; std::isfinite(most))
            highest = std::max(highest, most);
    return highest;
}

bool toldApart(Span a, Span b, double expanded_ohm)
{
    if (a.least_ohm > b.least_ohm) std::swap(a, b);
    if (std::isinf(b.least_ohm)) return std::isfinite(a.most_ohm);
    return a.most_ohm + expanded_ohm < b.least_ohm - expanded_ohm;
}

} // namespace

std::vector<NetworkState> statesOf(const Network& network)
{
    const std::vector<Parts> contacts = contactsOf(network);
    std::vector<NetworkState> states{{}};
    if (contacts.size() <= fewContacts) {
        for (std::size_t set = 1; set < std::size_t{1} << contacts.size(); ++set) {
            Parts acted = 0;
            for (std::size_t i = 0; i < contacts.size(); ++i)
                if (set & (std::size_t{1} << i)) acted |= contacts[i];
            states.push_back({.acted = acted});
        }
    } else {
        Parts all = 0;
        for (const Parts each : contacts) {
            states.push_back({.acted = each});
            all |= each;
        }
        states.push_back({.acted = all});
    }
    states.push_back({.pair = NetworkState::Pair::cut});
    states.push_back({.pair = NetworkState::Pair::shorted});
    return states;
}

Window windowOf(const Network& network, const NetworkState& state, Spread spread)
{
    const Span span = spanOfState(network, state, spread);
    if (std::isinf(span.least_ohm)) return {highestReading_ohm(network, spread), std::nullopt};
    return {span.least_ohm, span.most_ohm};
}

Result<std::vector<Alike>> statesAlike(const Network& network, std::span<const NetworkState> states,
                                       double expanded_ohm, Spread spread)
{
    if (auto sound = checkNotNegative("expanded_ohm", expanded_ohm); !sound) return passOn(sound);
    std::vector<Span> spans;
    for (const NetworkState& state : states) spans.push_back(spanOfState(network, state, spread));
    std::vector<Alike> alike;
    for (std::size_t a = 0; a < spans.size(); ++a)
        for (std::size_t b = a + 1; b < spans.size(); ++b)
            if (!toldApart(spans[a], spans[b], expanded_ohm)) alike.push_back({a, b});
    return alike;
}

Result<std::vector<std::size_t>> bandsOfState(const Network& network, const NetworkState& state,
                                              std::span<const PanelBand> bands, double expanded_ohm)
{
    if (auto sound = checkNotNegative("expanded_ohm", expanded_ohm); !sound) return passOn(sound);
    const auto unordered = [](double found) { return failure("measure.bands-order", "", {{"found", written(found)}}); };
    if (bands.empty()) return unordered(0);
    if (bands.front().from_ohm != 0) return unordered(bands.front().from_ohm);
    for (std::size_t i = 1; i < bands.size(); ++i)
        if (!std::isfinite(bands[i].from_ohm) || bands[i].from_ohm <= bands[i - 1].from_ohm)
            return unordered(bands[i].from_ohm);

    const Span span = spanOfState(network, state, Spread::worstCase);
    std::vector<std::size_t> reached;
    for (std::size_t i = 0; i < bands.size(); ++i) {
        const bool isLast = i + 1 == bands.size();
        const bool endsBelow = !isLast && bands[i + 1].from_ohm <= span.least_ohm - expanded_ohm;
        if (!endsBelow && bands[i].from_ohm <= span.most_ohm + expanded_ohm) reached.push_back(i);
    }
    return reached;
}

std::optional<double> thresholdBetween_ohm(const Window& lower, const Window& upper)
{
    if (!lower.upper_ohm || !upper.lower_ohm || *lower.upper_ohm >= *upper.lower_ohm) return std::nullopt;
    return *lower.upper_ohm + (*upper.lower_ohm - *lower.upper_ohm) / 2;
}

double gapBetween_ohm(const Window& lower, const Window& upper)
{
    if (!lower.upper_ohm || !upper.lower_ohm) return std::numeric_limits<double>::infinity();
    return *upper.lower_ohm - *lower.upper_ohm;
}

Result<double> greatestTolerance_pct(double eol_ohm, double alarm_ohm)
{
    if (auto sound = checkAbove("eol_ohm", eol_ohm, 0); !sound) return passOn(sound);
    if (auto sound = checkWithin("eol_ohm", eol_ohm, 0, 1e9); !sound) return passOn(sound);
    if (auto sound = checkAbove("alarm_ohm", alarm_ohm, 0); !sound) return passOn(sound);
    if (auto sound = checkWithin("alarm_ohm", alarm_ohm, 0, 1e9); !sound) return passOn(sound);
    return 100 * alarm_ohm / (2 * eol_ohm + alarm_ohm);
}

} // namespace proofwalk::measure
