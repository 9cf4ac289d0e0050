// SPDX-License-Identifier: GPL-3.0-or-later
// The kinds of sheets, in the order in which they are bound. Each begins its own sheet and takes as many as it needs.
#pragma once

#include "core/report/book.h"

namespace proofwalk::report {

/// The report on one sheet, and what did not fit there. Error: report.code-too-long.
Result<void> drawSummary(Book& book);
void drawDevices(Book& book);
void drawFindings(Book& book);
void drawReadings(Book& book);
/// Instruments, limits, assumptions, what was shown. Left out if there are no blocks.
void drawGrounds(Book& book);
/// How to check the report without its makers. Left out if there are no steps.
void drawChecking(Book& book);

} // namespace proofwalk::report
