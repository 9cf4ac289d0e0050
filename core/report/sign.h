// SPDX-License-Identifier: GPL-3.0-or-later
// Signing a report: the installer's PAdES baseline-B signature, the last thing done to it.
#pragma once

#include "core/base/instant.h"
#include "core/base/result.h"
#include "core/journal/identity.h"

#include <string>
#include <string_view>

namespace proofwalk::report {

/// When and why. The time is the machine's own claim; it is signed, to the second.
struct Signing {
    base::WallClock at;
    std::string reason; ///< in the reader's language; not empty
};

/// Signs what buildPdfA() made and gives the whole file, which checkSeal() has found sound: every byte of `pdf` stands
/// unchanged at its beginning. Errors: seal.signed-outside-life {found}; seal.fact-missing {found}; those of
/// appendUpdate, signedData, fillIn and checkSeal.
Result<std::string> signReport(std::string_view pdf, const journal::Identity& identity, const Signing& signing);

} // namespace proofwalk::report
