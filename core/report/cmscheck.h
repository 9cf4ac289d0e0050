// SPDX-License-Identifier: GPL-3.0-or-later
// Whether the bytes are exactly one signature of the form of cms.h over the content. Much of a CMS is not covered
// by the
// signature in it (versions, the names of algorithms, the signer's name in another spelling, the order of sets); of all
// that only one form is taken here, byte for byte, so that a change of any byte is noticed.
#pragma once

#include "core/base/result.h"

#include <string>
#include <string_view>

namespace proofwalk::report {

/// Who signed. The chain is not judged yet: that needs the time.
struct SignedBy {
    std::string signerDer;
    std::string rootDer;
};

/// Errors: seal.cms {part}, with the field's name in RFC 5652 or RFC 5035; seal.digest (the content is another);
/// seal.signature (the key did not sign these attributes).
Result<SignedBy> checkSignedData(std::string_view der, std::string_view content);

} // namespace proofwalk::report
