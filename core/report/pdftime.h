// SPDX-License-Identifier: GPL-3.0-or-later
// Times as PDF (ISO 32000-1, 7.9.4; from memory) and XMP write them, to the second.
#pragma once

#include "core/base/instant.h"

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>

namespace proofwalk::report {

/// "D:20261125100200+01'00'", local.
std::string pdfTime(const base::WallClock& time);

/// "2026-11-25T10:02:00+01:00", the same moment for XMP.
std::string xmpTime(const base::WallClock& time);

/// "D:20261125090200Z", as a signature holds it.
std::string pdfTimeUtc(const base::WallClock& time);

/// Reads that last form, and no other.
std::optional<base::WallClock> readPdfTimeUtc(std::string_view text);

} // namespace proofwalk::report
