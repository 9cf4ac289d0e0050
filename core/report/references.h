// SPDX-License-Identifier: GPL-3.0-or-later
// Words that name a sheet by its kind get the sheet's number once it is known.
#pragma once

#include "core/base/result.h"
#include "core/report/book.h"

namespace proofwalk::report {

/// Puts numbers in the place of "{sheet:NAME}" in the words of page one, of heads and of closing lines. While nothing
/// is laid out yet (`layout` has no sheets) every number is 0. Error: report.no-such-sheet {found}.
Result<void> nameSheets(Contents& contents, const Layout& layout);

} // namespace proofwalk::report
