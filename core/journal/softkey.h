// SPDX-License-Identifier: GPL-3.0-or-later
// Keys that lie in files: making them, writing and reading them as PKCS#8 PEM, and the SigningKey they are.
#pragma once

#include "core/journal/key.h"
#include "core/journal/openssl.h"

#include <optional>

namespace proofwalk::journal {

/// A fresh P-256 key. Error: key.cannot-make {detail}.
Result<KeyHandle> makeKey();

/// Whether the key is of the curve P-256.
bool isP256(const EVP_PKEY* key);

/// A SigningKey that signs with this key in memory. The key must be P-256 with its private half.
std::shared_ptr<const SigningKey> softwareKey(KeyHandle key);

/// PKCS#8 PEM, not encrypted (RFC 5958). Cleanse what is returned once it is written.
std::string toPem(const EVP_PKEY* key);
/// nullptr if it is not exactly such a PEM of a P-256 key.
KeyHandle fromPem(const std::string& pem);

/// PKCS#8 PEM under a passphrase: PBES2 with scrypt (RFC 7914) N = 16384, r = 8, p = 8, a 16-byte salt, AES-256-CBC.
/// Error: key.cannot-make {detail}.
Result<std::string> toSealedPem(const EVP_PKEY* key, std::string_view passphrase);
/// nullopt if the text is no sealed key; a nullptr inside if the passphrase does not open it. CBC is not authenticated:
/// compare the key with its certificate.
std::optional<KeyHandle> fromSealedPem(const std::string& pem, std::string_view passphrase);

/// What the library last complained of, and forgets all of it. English, for a `detail`.
std::string lastComplaint();

/// Whether anybody but its owner may read, write or run the file; its permission bits in octal in `mode`.
bool openToOthers(const std::filesystem::path& path, std::string& mode);

/// Makes the folder, and those above it, for its owner only; one that exists is left as it is.
/// Error: key.folder {detail}.
Result<void> makePrivateFolder(const std::filesystem::path& folder);

} // namespace proofwalk::journal
