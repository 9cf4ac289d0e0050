// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/cms.h"

#include "core/base/digest.h"
#include "core/journal/openssl.h"
#include "core/journal/softkey.h"

#include <algorithm>
#include <vector>

namespace proofwalk::report {
namespace {

std::unexpected<Error> cannotSign() { return failure("seal.cannot-sign", "", {{"detail", journal::lastComplaint()}}); }

bool addAttributes(CMS_SignerInfo* signer, const std::string& digest)
{
    return CMS_signed_add1_attr_by_NID(signer, NID_pkcs9_contentType, V_ASN1_OBJECT, OBJ_nid2obj(NID_pkcs7_data), -1)
            == 1
        && CMS_signed_add1_attr_by_NID(signer, NID_pkcs9_messageDigest, V_ASN1_OCTET_STRING, digest.data(),
                                       static_cast<int>(digest.size()))
               == 1;
}

/// A length as DER writes it, after a tag.
std::string header(unsigned char tag, std::size_t length)
{
    std::string octets;
    if (length < 0x80U) {
        octets = static_cast<char>(length);
    } else {
        for (std::size_t rest = length; rest != 0; rest >>= 8U) octets.insert(0, 1, static_cast<char>(rest & 0xFFU));
        octets.insert(0, 1, static_cast<char>(0x80U | octets.size()));
    }
    return static_cast<char>(tag) + octets;
}

/// What is signed is the attributes as a SET OF in DER: sorted by their encodings (RFC 5652, 5.4).
std::string attributesToSign(const CMS_SignerInfo* signer)
{
    std::vector<std::string> attributes;
    for (int i = 0; i < CMS_signed_get_attr_count(signer); ++i)
        attributes.push_back(journal::derOf(i2d_X509_ATTRIBUTE, CMS_signed_get_attr(signer, i)));
    std::ranges::sort(attributes);
    std::string all;
    for (const std::string& attribute : attributes) all += attribute;
    return header(V_ASN1_SET | V_ASN1_CONSTRUCTED, all.size()) + all;
}

/// CMS_final would add the signing time that PAdES forbids, so the last steps are taken by hand; nothing of the private
/// key is needed for them but one signature.
Result<void> signBy(CMS_SignerInfo* signer, const journal::SigningKey& key)
{
    auto signature = key.sign(attributesToSign(signer));
    if (!signature) return passOn(signature);
    if (ASN1_STRING_set(CMS_SignerInfo_get0_signature(signer), signature->data(), static_cast<int>(signature->size()))
        != 1)
        return cannotSign();
    return {};
}

} // namespace

Result<std::string> signedData(std::string_view content, const journal::Identity& identity)
{
    constexpr unsigned int flags = CMS_DETACHED | CMS_BINARY | CMS_PARTIAL | CMS_NOSMIMECAP;
    const auto signerCertificate = journal::certificateOf(identity.signerDer);
    const auto root = journal::certificateOf(identity.rootDer);
    const journal::Cms cms(CMS_sign(nullptr, nullptr, nullptr, nullptr, flags));
    if (signerCertificate == nullptr || root == nullptr || cms == nullptr || CMS_add1_cert(cms.get(), root.get()) != 1)
        return cannotSign();
    // The library wants a key to compare with the certificate; the certificate's own public half satisfies it.
    CMS_SignerInfo* signer =
        CMS_add1_signer(cms.get(), signerCertificate.get(), X509_get0_pubkey(signerCertificate.get()), EVP_sha256(),
                        CMS_CADES | CMS_BINARY | CMS_PARTIAL | CMS_NOSMIMECAP);
    if (signer == nullptr || !addAttributes(signer, base::fromHex(base::sha256Hex(content)))) return cannotSign();
    if (auto done = signBy(signer, *identity.key); !done) return passOn(done);
    std::string der = journal::derOf(i2d_CMS_ContentInfo, cms.get());
    if (der.empty()) return cannotSign();
    return der;
}

} // namespace proofwalk::report
