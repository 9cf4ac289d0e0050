// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/command/work/loopnetwork.h"

#include "core/base/text.h"
#include "core/measure/conductor.h"
#include "core/measure/networktext.h"

namespace proofwalk::command::work {
namespace {

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

} // namespace

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

Input maybeText(std::string_view name, std::string_view otherwise)
{
    return {.name = name, .kind = Input::Kind::text, .required = false, .otherwise = otherwise};
}

Result<measure::Network> networkOf(const Given& given)
{
    auto cable = cableOf(given);
    if (!cable) return passOn(cable);
    auto network = measure::readNetwork(given.word("loop"), given.number("tolerance_pct"), *cable);
    if (!network) return std::unexpected(std::move(network.error()).within("loop"));
    return network->withDrift(given.number("coefficient_ppm_per_k"), given.number("change_k"));
}

std::string nameOf(const measure::Network& network, const measure::NetworkState& state)
{
    if (state.pair == measure::NetworkState::Pair::cut) return "cut";
    if (state.pair == measure::NetworkState::Pair::shorted) return "shorted";
    std::vector<std::string> names;
    for (std::size_t i = 0; i < network.parts().size(); ++i)
        if (state.acted & measure::partBit(i)) names.push_back(network.parts()[i].name);
    return names.empty() ? "rest" : base::join(names, "-and-");
}

} // namespace proofwalk::command::work
