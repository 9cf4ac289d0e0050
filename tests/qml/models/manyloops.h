// SPDX-License-Identifier: GPL-3.0-or-later
// A plan with as many loops as a round may have: fixtures/lantern-mill with its zones and devices made wired windows.
#pragma once

#include <filesystem>

namespace proofwalk::rig {

/// That many windows on a pair each, listed backwards so that the panel's order is not the plan's. Makes the folder and
/// returns it. Failures are failures of the test that asks.
std::filesystem::path planOfLoops(const std::filesystem::path& folder, int loops);

} // namespace proofwalk::rig
