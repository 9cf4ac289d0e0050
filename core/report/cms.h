// SPDX-License-Identifier: GPL-3.0-or-later
// The signature inside a report: CMS SignedData (RFC 5652) without its content, as PAdES baseline B wants it (ETSI
// EN 319
// 142-1; from memory): content type, message digest and signing-certificate-v2 (RFC 5035) signed, and no signing time,
// which stands in the PDF.
#pragma once

#include "core/base/result.h"
#include "core/journal/identity.h"

#include <string>
#include <string_view>

namespace proofwalk::report {

/// The DER of a signature over the content by the identity's key; the signer's certificate and its root are inside.
/// Errors: seal.cannot-sign {detail}; those of SigningKey::sign.
Result<std::string> signedData(std::string_view content, const journal::Identity& identity);

} // namespace proofwalk::report
