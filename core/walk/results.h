// SPDX-License-Identifier: GPL-3.0-or-later
// The summary that is signed with a report: every device and every step with its verdict, as rows. Verify computes the
// same from the record and compares.
#pragma once

#include "core/walk/state.h"

#include <string>
#include <vector>

namespace proofwalk::walk {

/// CSV (RFC 4180) with the columns row, tag, signal, step, verdict, input, response, output, received, reading,
/// uncertainty, unit, lower, upper, at. A row is a "device" (tag, verdict, the four proofs' states; "by-its-like" for a
/// response that is stood for), a "step" of the device, zone, area or timer that `tag` names ("GR-01", "zone 07",
/// "entry-delay, mill"), or a "finding" (its verdict is the status). Numbers as typed; limits in the base unit.
std::string resultsCsv(const State& state);

/// The first row in which two summaries differ, for people; empty if they are the same.
std::string firstDifference(const std::string& signedRows, const std::string& computedRows);

} // namespace proofwalk::walk
