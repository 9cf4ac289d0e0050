// SPDX-License-Identifier: GPL-3.0-or-later
// Signing with ECDSA on the curve P-256 (FIPS 186-4) over SHA-256. The one who signs is an interface, so that a key
// which never leaves its hardware can take the place of one that lies in a file.
#pragma once

#include "core/base/result.h"

#include <filesystem>
#include <memory>
#include <string>
#include <string_view>

namespace proofwalk::journal {

/// A P-256 key that signs. Two signatures over the same bytes differ: never compare them, verify them.
class SigningKey {
public:
    SigningKey() = default;
    SigningKey(const SigningKey&) = delete;
    SigningKey& operator=(const SigningKey&) = delete;
    virtual ~SigningKey() = default;

    /// ECDSA over SHA-256 of the bytes, as the DER of an ECDSA-Sig-Value (RFC 3279, 2.2.3), 70 to 72 bytes mostly.
    /// Error: key.cannot-sign {detail}.
    virtual Result<std::string> sign(std::string_view bytes) const = 0;

    /// The public half as the DER of a SubjectPublicKeyInfo with the point uncompressed (RFC 5480): 91 bytes.
    virtual const std::string& publicKeyDer() const = 0;
};

/// Whether the signature is one of the key over the bytes. False as well for what is no P-256 key or no signature, and
/// for any form of either but the one DER has.
bool verifySignature(std::string_view publicKeyDer, std::string_view bytes, std::string_view signatureDer);

/// This machine's own key, FOLDER/machine.key (PKCS#8, not encrypted, for its owner only). It is made without a word
/// when there is none yet; of several programs doing so at once one wins and all use its key.
/// Errors, with `where` = the path: key.readable-by-others {mode}; key.damaged; key.folder {detail}; those of
/// base::readFile and base::writeFile.
Result<std::shared_ptr<const SigningKey>> openMachineKey(const std::filesystem::path& folder);

} // namespace proofwalk::journal
