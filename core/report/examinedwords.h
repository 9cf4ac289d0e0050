// SPDX-License-Identifier: GPL-3.0-or-later
// What an examination found, as sentences: the same on the command line and in the window.
#pragma once

#include "core/report/examine.h"
#include "core/words/words.h"

#include <string>
#include <vector>

namespace proofwalk::report {

/// Who signed, what the record holds, who answers for it, how it counts when computed again.
std::vector<std::string> tellContents(const Examined& examined, const words::Book& book, const std::string& file);

/// Sound or not, and why not.
std::vector<std::string> tellSoundness(const Examined& examined, const words::Book& book);

/// The chains of machines for which no person answers.
std::vector<std::string> unvouchedChains(const Examined& examined);

} // namespace proofwalk::report
