// SPDX-License-Identifier: GPL-3.0-or-later
// The files inside a report, read in one way that leaves no room for a second.
#pragma once

#include "core/report/qpdf.h"

#include <map>
#include <string>

namespace proofwalk::report {

/// Name to bytes. The list /AF and the name tree of embedded files must name the same files, so that every reader finds
/// what was checked; all of them unpacked are at most reportLimit bytes. Error: seal.attachment {found}.
Result<std::map<std::string, std::string>> readAttachments(QPDF& pdf);

} // namespace proofwalk::report
