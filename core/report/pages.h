// SPDX-License-Identifier: GPL-3.0-or-later
// The sheets of a completion report as a PDF file.
#pragma once

#include "core/base/result.h"
#include "core/report/contents.h"

#include <string>

namespace proofwalk::report {

/// Draws all sheets, A4 upright, as PDF/A-1b without transparency, every typeface embedded. The same contents give the
/// same pages, but not the same bytes: the writer puts the time and fresh identifiers in.
/// There must be a QApplication (its platform may be `offscreen`): charts need one.
/// Errors: report.no-application; report.font-missing {found, wanted}; report.code-too-long {found}.
Result<std::string> drawPages(const Contents& contents);

} // namespace proofwalk::report
