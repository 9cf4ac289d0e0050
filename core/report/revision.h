// SPDX-License-Identifier: GPL-3.0-or-later
// Whether the update that holds the signature changes nothing but the field that is signed: otherwise what was
// looked at before signing and what is shown now could be two things.
#pragma once

#include "core/report/signature.h"

#include <string_view>

namespace proofwalk::report {

/// The file cut before the update must be a whole report of one revision, in which the field is empty and everything
/// else is as it is now. Error: seal.revision {part}, with the PDF key, "xref", "object N" or what is wrong in the file
/// before.
Result<void> checkRevision(std::string_view bytes, QPDF& after, const Signature& signature);

} // namespace proofwalk::report
