// SPDX-License-Identifier: GPL-3.0-or-later
// The sheets of a completion report as a PDF file.
#pragma once

#include "core/base/result.h"
#include "core/report/contents.h"
#include "core/report/pdfa.h"

#include <string>

namespace proofwalk::report {

/// Where page one keeps room for the installer's signature field: the foot of the cell of the installer's key.
inline constexpr SignaturePlace installerPlace{0, 64 * 72.0 / 110, 1184 * 72.0 / 110, 246 * 72.0 / 110,
                                               18 * 72.0 / 110};

/// Draws all sheets, A4 upright, as PDF/A-1b without transparency, every typeface embedded. The same contents give the
/// same pages, but not the same bytes: the writer puts the time and fresh identifiers in.
/// In the words of page one, of heads and of closing lines "{sheet:NAME}" becomes the number of the first sheet of that
/// kind: devices, findings, readings, grounds, checking. One that has no such sheet is an error.
/// There must be a QApplication (its platform may be `offscreen`): charts need one.
/// Errors: report.no-application; report.font-missing {found, wanted}; report.code-too-long {found};
/// report.no-such-sheet {found}.
Result<std::string> drawPages(const Contents& contents);

} // namespace proofwalk::report
