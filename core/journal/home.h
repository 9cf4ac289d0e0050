// SPDX-License-Identifier: GPL-3.0-or-later
// Where the program keeps what is the machine's own, and the machine's key in it.
#pragma once

#include "core/base/result.h"
#include "core/journal/key.h"

#include <filesystem>
#include <memory>

namespace proofwalk::journal {

/// PROOFWALK_HOME if set, else $XDG_DATA_HOME/proofwalk, else ~/.local/share/proofwalk. Error: place.no-home.
Result<std::filesystem::path> homeFolder();

/// This machine's key, made silently at first use. Errors: place.no-home; those of openMachineKey.
Result<std::shared_ptr<const SigningKey>> machineKey();

} // namespace proofwalk::journal
