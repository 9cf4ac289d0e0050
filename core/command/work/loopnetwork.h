// SPDX-License-Identifier: GPL-3.0-or-later
// What the computations of `proofwalk work loop` over a whole network share: the loop as it is written, and its names.
#pragma once

#include "core/command/work/topic.h"
#include "core/measure/loopstates.h"
#include "core/measure/network.h"

#include <string>
#include <string_view>
#include <vector>

namespace proofwalk::command::work {

/// The inputs that describe a loop: its line, tolerance, cable and temperatures.
std::vector<Input> loopInputs();

/// A text that need not be given.
Input maybeText(std::string_view name, std::string_view otherwise = {});

/// The network they describe. Errors: work.missing; those of measure::conductorByName, pairResistance_ohm, readNetwork
/// and Network::withDrift.
Result<measure::Network> networkOf(const Given& given);

/// "rest", "alarm", "alarm-and-tamper", "cut", "shorted": the names of the contacts that acted.
std::string nameOf(const measure::Network& network, const measure::NetworkState& state);

/// "wiring" and "states": what each state reads.
std::vector<Computation> stateComputations();

/// "diagnosis": what readings say.
Computation diagnosisComputation();

} // namespace proofwalk::command::work
