// SPDX-License-Identifier: GPL-3.0-or-later
// The one signature of a report as it stands in the PDF: its field, its dictionary, the range it covers.
#pragma once

#include "core/base/instant.h"
#include "core/report/qpdf.h"

#include <string>
#include <string_view>

namespace proofwalk::report {

/// Found in the file; what it is worth is not known yet.
struct Signature {
    QPDFObjectHandle field;
    QPDFObjectHandle dictionary;
    base::WallClock at;
    std::string name;
    std::string reason;
    std::string covered; ///< the bytes of both ranges
    std::string der;     ///< the CMS, without the zeros behind it
};

/// Errors: seal.fields {found}; seal.not-signed; seal.dictionary {key}; seal.time {found}; seal.byte-range {found};
/// seal.appended {bytes}; seal.contents.
Result<Signature> readSignature(QPDF& pdf, std::string_view bytes);

} // namespace proofwalk::report
