// SPDX-License-Identifier: GPL-3.0-or-later
// The XMP packet of a report (ISO 16684-1): what it is built to, and what it says of itself.
#pragma once

#include "core/report/pdfa.h"

#include <optional>
#include <string>
#include <string_view>

namespace proofwalk::report {

/// The whole packet. Texts are escaped; characters that XML 1.0 forbids must have been refused before.
std::string xmpPacket(const DocumentFacts& facts);

/// The text of the only element of that name ("xmp:CreateDate"; of "dc:title" its one alternative), unescaped; nullopt
/// if there is none or more than one. Reads packets of the form above, no other XMP.
std::optional<std::string> xmpText(std::string_view packet, const std::string& element);

} // namespace proofwalk::report
