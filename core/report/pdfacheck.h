// SPDX-License-Identifier: GPL-3.0-or-later
// Whether a document is put together as PDF/A-3b wants it, as far as its objects show: not the whole of ISO
// 19005-3, and no judgement of conformity. The rules are from memory of that standard; the standard was not at hand.
#pragma once

#include "core/report/qpdf.h"

#include <string_view>
#include <vector>

namespace proofwalk::report {

/// Everything found, in the order of the objects; empty if nothing. `where` is "object N" or empty. Codes:
/// seal.pdfa-header; seal.pdfa-encrypted; seal.pdfa-id; seal.pdfa-metadata; seal.pdfa-part; seal.pdfa-facts {key,
/// found, wanted}; seal.pdfa-intent; seal.pdfa-profile; seal.pdfa-font {font, part}; seal.pdfa-action {found};
/// seal.pdfa-stream {found}; seal.pdfa-image {found}; seal.pdfa-annotation {found}; seal.pdfa-attachment {found};
/// seal.pdfa-form {found}. The arguments are keys and values of PDF as they stand.
std::vector<Error> pdfaProblems(QPDF& pdf, std::string_view bytes);

} // namespace proofwalk::report
