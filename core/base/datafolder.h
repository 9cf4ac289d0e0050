// SPDX-License-Identifier: GPL-3.0-or-later
// Where the program's own data lives: words, the catalogue, tables.
#pragma once

#include <filesystem>

namespace proofwalk::base {

/// The folder with words/, catalogue/ and measure/ in it: what the environment variable PROOFWALK_DATA names, if it
/// is set and not empty; else share/proofwalk beside the folder of the running program, if it is there; else the
/// folder core/ of the source tree the program was built from. It need not exist: opening a file in it says so.
std::filesystem::path dataFolder();

} // namespace proofwalk::base
