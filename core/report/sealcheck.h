// SPDX-License-Identifier: GPL-3.0-or-later
// Checking a signed report from its bytes upward. Nothing in it is trusted and nothing repaired; what PDF readers let
// pass (an update after the signature, digits of the signature in capitals, padding that is not zero) is refused.
#pragma once

#include "core/base/instant.h"
#include "core/base/result.h"

#include <map>
#include <string>
#include <string_view>
#include <vector>

namespace proofwalk::report {

/// What a sound seal says. That the name is the person's own nobody has looked into: it is as good as the root's
/// fingerprint, compared with one that was got in another way.
struct SealFindings {
    std::string signerName;
    std::string firm;            ///< empty if none
    std::string rootFingerprint; ///< SHA-256 of the root's DER: 64 lower-case hexadecimal digits
    base::WallClock signedAt;    ///< as the signer's machine claims it, UTC, to the second; the chain is judged then
    std::string reason;
    std::map<std::string, std::string> attachments; ///< name to bytes
    std::vector<Error> problems; ///< where it is not put together as PDF/A-3b wants it: pdfaProblems()
};

/// Every byte counts: a report cut short, added to, or changed in one bit is an Error that names the first bad
/// thing, in the order: seal.too-large {limit}; seal.not-a-pdf; seal.cut-short (it does not end as a report ends);
/// seal.syntax {detail}; seal.encrypted; seal.fields {found} (not the one field); seal.not-signed;
/// seal.dictionary {key}; seal.byte-range {found}; seal.appended {bytes} (behind what is signed); seal.contents;
/// those of checkSignedData; seal.time {found}; those of journal::checkChain; seal.certificate {part}; seal.name
/// {found, wanted}; seal.revision {part} (the signed update changes more than its own field); seal.attachment {found}.
Result<SealFindings> checkSeal(std::string_view pdf);

} // namespace proofwalk::report
