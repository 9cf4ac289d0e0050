// SPDX-License-Identifier: GPL-3.0-or-later
// Where the commands find what they need: the catalogue, passphrases.
#pragma once

#include "core/catalogue/catalogue.h"
#include "core/command/options.h"

#include <string>
#include <string_view>

namespace proofwalk::command {

/// The files of the catalogue: of --catalogue FOLDER, else the program's own.
Result<catalogue::Files> catalogueFiles(const Options& options);

/// A passphrase from --passphrase-file (its first line), else asked for at the terminal without showing it. Never
/// from an argument. Errors: passphrase.no-terminal; passphrase.empty; those of base::readFile.
Result<std::string> passphrase(const Options& options, std::string_view prompt);

} // namespace proofwalk::command
