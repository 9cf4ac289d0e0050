// SPDX-License-Identifier: GPL-3.0-or-later
// The title block at the foot of page one: who tested, whose key, who agreed to what, and the fingerprint.
#pragma once

#include "core/report/book.h"

namespace proofwalk::report {

/// Where it begins: it grows upwards with the words the customer agreed to, up to a bound.
double titleBlockTop(const Book& book);

/// Draws it. True if the words agreed to were too long and must follow in full on another sheet.
/// Error: report.code-too-long {found}.
Result<bool> drawTitleBlock(Book& book, double top);

} // namespace proofwalk::report
