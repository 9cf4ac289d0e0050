// SPDX-License-Identifier: GPL-3.0-or-later
// parts/COLUMN-WORD.toml: the steps a zone's wiring and behaviour add to every kind.
#pragma once

#include "core/catalogue/stepentry.h"

#include <array>
#include <string>
#include <string_view>
#include <vector>

namespace proofwalk::catalogue {

struct PartFile {
    std::vector<StepEntry> steps;
    std::vector<std::string> forbid;
};

/// The columns that have parts, in the order in which their steps stand on a sheet.
inline constexpr std::array<std::string_view, 4> partColumns{"purpose", "delay", "feed", "resistors"};

/// Whether a part may have that name: "feed-radio" is a column of partColumns and one of its words.
bool isPartName(std::string_view name);
/// All names parts may have.
const std::vector<std::string>& partNames();

/// Reads one part. Errors: those of Keys and stepentry.h; catalogue.forbid-own {found}.
PartFile readPartFile(const Node& document, Reading& reading);

/// `format = 1`, which every file has: catalogue.format {found}.
void readFormat(const Keys& keys);

/// A file that forbids a step it brings itself contradicts itself.
void refuseForbiddingOwn(const std::vector<StepEntry>& steps, const std::vector<std::string>& forbid, const Keys& keys);

} // namespace proofwalk::catalogue
