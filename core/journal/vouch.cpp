// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/journal/vouch.h"

#include "core/base/digest.h"
#include "core/journal/certificate.h"
#include "core/journal/openssl.h"

#include <openssl/x509.h>

#include <memory>

namespace proofwalk::journal {
namespace {

using CertificateHandle = std::unique_ptr<X509, decltype(&X509_free)>;

CertificateHandle certificateFrom(const std::string& hex)
{
    const std::string der = base::fromHex(hex);
    const auto* bytes = reinterpret_cast<const unsigned char*>(der.data());
    return {d2i_X509(nullptr, &bytes, static_cast<long>(der.size())), X509_free};
}

std::string publicKeyOf(const X509* certificate)
{
    unsigned char* bytes = nullptr;
    const int size = i2d_X509_PUBKEY(X509_get_X509_PUBKEY(certificate), &bytes);
    std::string der(reinterpret_cast<const char*>(bytes), size > 0 ? static_cast<std::size_t>(size) : 0);
    OPENSSL_free(bytes);
    return der;
}

} // namespace

std::string vouchText(std::string_view job, std::string_view machineKeyHex)
{
    return "proofwalk/vouch/1\n" + std::string(job) + "\n" + std::string(machineKeyHex) + "\n";
}

Result<Vouching> vouchFor(std::string_view job, std::string_view machineKeyHex, const Identity& identity)
{
    auto signature = identity.key->sign(vouchText(job, machineKeyHex));
    if (!signature) return passOn(signature);
    return Vouching{std::string(machineKeyHex), base::toHex(identity.signerDer), base::toHex(identity.rootDer),
                    base::toHex(*signature)};
}

Result<std::string> checkVouching(std::string_view job, const Vouching& vouching, std::int64_t at_utc_ms)
{
    const auto certificate = certificateFrom(vouching.certificate);
    const auto root = certificateFrom(vouching.root);
    if (!certificate || !root) return failure("vouch.invalid", "");
    if (!checkChain(certificate.get(), root.get(), at_utc_ms)) return failure("vouch.invalid", "");
    if (!verifySignature(publicKeyOf(certificate.get()), vouchText(job, vouching.machineKey),
                         base::fromHex(vouching.signature)))
        return failure("vouch.invalid", "");
    return commonName(certificate.get());
}

} // namespace proofwalk::journal
