// SPDX-License-Identifier: GPL-3.0-or-later
// The one way in: a command is checked against plan, catalogue and state, and becomes the drafts of events.
// COMMANDS.md beside this file has every command with an example.
#pragma once

#include "core/journal/journal.h"
#include "core/walk/state.h"

#include <filesystem>
#include <string_view>
#include <vector>

namespace proofwalk::walk {

/// What a command is checked against.
struct CommandGround {
    const State& state;
    std::filesystem::path folder; ///< where a photograph named in a command lies
};

/// The commands' names, for help and for "nearest".
std::vector<std::string> commandNames();

/// The drafts of the events that a line asks for: all of them are appended, or none.
/// Errors: json.*; command.* (the line is not well formed); walk.* (it means nothing here, with the way out).
Result<std::vector<journal::Draft>> draftsFor(const CommandGround& ground, std::string_view line);

} // namespace proofwalk::walk
