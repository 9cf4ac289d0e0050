// SPDX-License-Identifier: GPL-3.0-or-later
// The two certificates of an identity (RFC 5280), and what is read out of them.
#pragma once

#include "core/base/result.h"
#include "core/journal/identity.h"
#include "core/journal/openssl.h"

#include <cstdint>
#include <string>

namespace proofwalk::journal {

/// A root that signs itself: CA:TRUE with path length 0, keyCertSign. From the day before `made_utc_ms`, thirty years.
/// Error: key.cannot-make {detail}.
Result<Certificate> makeRoot(const Person& person, EVP_PKEY* rootKey, std::int64_t made_utc_ms);

/// A signing certificate issued by it: CA:FALSE, digitalSignature and nonRepudiation, for e-mail protection and
/// document
/// signing (RFC 5280, 4.2.1.12; 1.3.6.1.5.5.7.3.36 of RFC 9336). Twenty years. Error: key.cannot-make {detail}.
Result<Certificate> makeSigner(const Person& person, const EVP_PKEY* signerKey, X509* root, EVP_PKEY* rootKey,
                               std::int64_t made_utc_ms);

/// The one common name, or organisation, of the subject as UTF-8; empty if there is none, or more than one.
std::string commonName(const X509* certificate);
std::string organisation(const X509* certificate);

/// The ends of a certificate's life, in milliseconds since 1970-01-01T00:00:00Z.
std::int64_t lifeStart_ms(const X509* certificate);
std::int64_t lifeEnd_ms(const X509* certificate);

/// Whether `signer` is fit to sign documents, `root` to issue it and did so, and both live at that time: checked by
/// OpenSSL in its strict mode with `root` as the only thing trusted. Error: certificate.chain {detail}.
Result<void> checkChain(X509* signer, X509* root, std::int64_t at_utc_ms);

} // namespace proofwalk::journal
