// SPDX-License-Identifier: GPL-3.0-or-later
// What usually goes with a kind and with a purpose, for cells left blank: usual-kinds.csv and usual-purposes.csv.
#pragma once

#include <string>
#include <string_view>

namespace proofwalk::plan {

/// Of a kind: the purpose its zone has, and its feed where the kind settles it.
struct UsualKind {
    std::string purpose, feed;
};

/// Of a purpose: "always" or blank for the modes of its areas; how it sounds; how its loop rests.
struct UsualPurpose {
    std::string liveIn, sounding, rest;
};

/// nullptr where nothing is clear.
const UsualKind* usualKind(std::string_view kind);
const UsualPurpose* usualPurpose(std::string_view purpose);

} // namespace proofwalk::plan
