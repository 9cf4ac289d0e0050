// SPDX-License-Identifier: GPL-3.0-or-later
// The commands by words. Each is a file of its own; this is their table.
#pragma once

#include "core/command/face.h"
#include "core/command/options.h"

#include <optional>
#include <span>
#include <string>

namespace proofwalk::command {

struct Command {
    Usage usage;
    Exit (*run)(Face& face, const Options& options) = nullptr;
    /// Help on what the words name, if the command has such; nothing: the help of the command is wanted.
    std::optional<Exit> (*help)(Face& face, const Options& options) = nullptr;
};

Command checkCommand();
Command kindsCommand();
Command startCommand();
Command orderCommand();
Command takeCommand();
Command whereCommand();
Command reportCommand();
Command verifyCommand();
Command signerCommand();
Command workCommand();
Command listenCommand();

/// Runs the program by its words (without its own name). Help and the list of commands are answered here.
Exit runWords(std::span<const std::string> arguments, std::ostream& out, std::ostream& err);

} // namespace proofwalk::command
