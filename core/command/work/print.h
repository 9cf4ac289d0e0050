// SPDX-License-Identifier: GPL-3.0-or-later
// A worked computation and the help of a topic, for people and for programs.
#pragma once

#include "core/command/face.h"
#include "core/command/work/choose.h"

namespace proofwalk::command::work {

/// The steps, what they say, where they stop being true and where they come from. With --json one object: topic, what,
/// inputs and results (by name), formulas (a list of formula, numbers, name), remarks, limits, sources (sentences).
/// Numbers are JSON numbers of full precision, unlike in the record, which holds no float.
/// Error: work.no-number {found}: a result that no number can hold; nothing is printed then.
Result<void> print(Face& face, const Topic& topic, const Chosen& chosen, const Worked& worked);

/// Chooses, computes and prints; failures are told by the face, under the topic's name where they name no word.
Exit answer(Face& face, const Topic& topic, std::span<const std::string> words);

/// The computations of a topic with their inputs, units, ranges and an example.
void printHelp(Face& face, const Topic& topic);

/// The topics, a line each.
void printTopics(Face& face);

} // namespace proofwalk::command::work
