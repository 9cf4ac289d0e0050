// SPDX-License-Identifier: GPL-3.0-or-later
// A person's identity: a small certification authority of their own. Its root issued one signing certificate, whose key
// signs reports and vouches for machine keys. A folder holds signer.key, signer.pem, root.key and root.pem (PEM; both
// keys sealed under the passphrase). What anyone compares by eye is the root's fingerprint.
#pragma once

#include "core/base/instant.h"
#include "core/base/result.h"
#include "core/journal/key.h"

#include <cstdint>
#include <filesystem>
#include <memory>
#include <string>
#include <string_view>

namespace proofwalk::journal {

/// Who signs, as it is to stand in the certificate.
struct Person {
    std::string name; ///< 1 to 64 characters (RFC 5280, ub-common-name), no control characters, no space at the ends
    std::string firm; ///< likewise; empty for one who works in no firm's name
};

/// The fewest bytes a passphrase may have (NIST SP 800-63B, 5.1.1.2: eight characters; from memory).
constexpr std::size_t passphraseLeast = 8;

/// What an identity's certificates say.
struct IdentityFacts {
    std::string name;
    std::string firm; ///< empty if none
    std::string rootFingerprint; ///< SHA-256 of the root's DER: 64 lower-case hexadecimal digits
    std::int64_t validFrom_utc_ms = 0; ///< of the signing certificate
    std::int64_t validUntil_utc_ms = 0; ///< likewise
};

/// An identity ready to sign.
struct Identity {
    IdentityFacts facts;
    std::string signerDer; ///< the signing certificate
    std::string rootDer; ///< the certificate that issued it
    std::shared_ptr<const SigningKey> key;
};

/// Makes an identity in a folder that does not exist or is empty: all of it, or none. The signing certificate is good
/// for twenty years from the day before `made`, the root for thirty.
/// Errors: identity.name {found, limit}; identity.firm {found, limit}; identity.passphrase-short {wanted}; with `where`
/// = the folder: identity.exists; identity.folder-in-use; key.folder {detail}; key.cannot-make {detail}; those of
/// base::writeFile.
Result<IdentityFacts> createIdentity(const std::filesystem::path& folder, const Person& person,
                                     std::string_view passphrase, const base::WallClock& made = base::now());

/// What the certificates in the folder say; needs no passphrase. The root is seen to have issued the signing
/// certificate.
/// Errors, with `where` = a path: identity.missing (no such folder, or nothing of an identity in it);
/// identity.incomplete (a file is missing); identity.damaged (no certificate of the kind wanted);
/// identity.not-issued-by-root; file.unreadable {detail}; file.too-large.
Result<IdentityFacts> describeIdentity(const std::filesystem::path& folder);

/// Errors besides those of describeIdentity: identity.readable-by-others {mode}; identity.wrong-passphrase;
/// identity.key-certificate-mismatch.
Result<Identity> openIdentity(const std::filesystem::path& folder, std::string_view passphrase);

} // namespace proofwalk::journal
