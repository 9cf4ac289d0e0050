// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/cmscheck.h"

#include "core/base/digest.h"
#include "core/journal/key.h"
#include "core/journal/openssl.h"
#include "core/report/der.h"

#include <openssl/err.h>

#include <array>

namespace proofwalk::report {
namespace {

using namespace std::string_view_literals;

constexpr unsigned char sequence = 0x30, set = 0x31, octetString = 0x04, context0 = 0xA0, directoryName = 0xA4;

// Whole DER values. OIDs: signedData 1.2.840.113549.1.7.2 and data 1.2.840.113549.1.7.1 (RFC 5652, 4 and 5.1);
// id-sha256 (RFC 5754, 2.2) and ecdsa-with-SHA256 (RFC 5758, 3.2), both without parameters; the attributes of RFC 5652,
// 11.1 and 11.2, and of RFC 5035, 3.
constexpr auto signedDataType = "\x06\x09\x2A\x86\x48\x86\xF7\x0D\x01\x07\x02"sv;
constexpr auto one = "\x02\x01\x01"sv;
constexpr auto sha256 = "\x30\x0B\x06\x09\x60\x86\x48\x01\x65\x03\x04\x02\x01"sv;
constexpr auto digestSet = "\x31\x0D\x30\x0B\x06\x09\x60\x86\x48\x01\x65\x03\x04\x02\x01"sv;
constexpr auto detachedData = "\x30\x0B\x06\x09\x2A\x86\x48\x86\xF7\x0D\x01\x07\x01"sv;
constexpr auto ecdsaWithSha256 = "\x30\x0A\x06\x08\x2A\x86\x48\xCE\x3D\x04\x03\x02"sv;
constexpr auto contentTypeIsData =
    "\x30\x18\x06\x09\x2A\x86\x48\x86\xF7\x0D\x01\x09\x03\x31\x0B\x06\x09\x2A\x86\x48\x86\xF7\x0D\x01\x07\x01"sv;
constexpr auto messageDigestUpToValue = "\x30\x2F\x06\x09\x2A\x86\x48\x86\xF7\x0D\x01\x09\x04\x31\x22\x04\x20"sv;
constexpr auto signingCertificateV2 = "\x06\x0B\x2A\x86\x48\x86\xF7\x0D\x01\x09\x10\x02\x2F"sv;

std::unexpected<Error> wrong(const char* part) { return failure("seal.cms", "", {{"part", part}}); }

/// The parts of a SignedData that are not the same in every one.
struct Parts {
    std::array<std::string_view, 2> certificates;
    DerValue signerId; ///< issuerAndSerialNumber
    DerValue attributes; ///< signedAttrs
    std::string_view signature;
};

Result<void> readSignerInfo(std::string_view content, Parts& parts)
{
    DerReader info(content);
    if (!info.skip(one)) return wrong("SignerInfo.version");
    const auto id = info.next(sequence);
    if (!id) return wrong("SignerInfo.sid");
    if (!info.skip(sha256)) return wrong("SignerInfo.digestAlgorithm");
    const auto attributes = info.next(context0);
    if (!attributes) return wrong("SignerInfo.signedAttrs");
    if (!info.skip(ecdsaWithSha256)) return wrong("SignerInfo.signatureAlgorithm");
    const auto signature = info.next(octetString);
    if (!signature) return wrong("SignerInfo.signature");
    if (!info.atEnd()) return wrong("SignerInfo.unsignedAttrs");
    parts.signerId = *id;
    parts.attributes = *attributes;
    parts.signature = signature->content;
    return {};
}

Result<void> readCertificates(DerReader& data, Parts& parts)
{
    const auto certificates = data.next(context0);
    if (!certificates) return wrong("certificates");
    DerReader each(certificates->content);
    for (auto& part : parts.certificates) {
        const auto certificate = each.next(sequence);
        if (!certificate) return wrong("certificates");
        part = certificate->whole;
    }
    if (!each.atEnd() || parts.certificates[1] <= parts.certificates[0]) return wrong("certificates");
    return {};
}

Result<Parts> readParts(std::string_view der)
{
    DerReader all(der);
    const auto outer = all.next(sequence);
    if (!outer || !all.atEnd()) return wrong("ContentInfo");
    DerReader info(outer->content);
    if (!info.skip(signedDataType)) return wrong("ContentInfo.contentType");
    const auto wrapped = info.next(context0);
    if (!wrapped || !info.atEnd()) return wrong("ContentInfo.content");
    DerReader inner(wrapped->content);
    const auto signedData = inner.next(sequence);
    if (!signedData || !inner.atEnd()) return wrong("SignedData");

    DerReader data(signedData->content);
    Parts parts;
    if (!data.skip(one)) return wrong("version");
    if (!data.skip(digestSet)) return wrong("digestAlgorithms");
    if (!data.skip(detachedData)) return wrong("encapContentInfo");
    if (auto read = readCertificates(data, parts); !read) return passOn(read);
    const auto signers = data.next(set);
    if (!signers || !data.atEnd()) return wrong("signerInfos");
    DerReader each(signers->content);
    const auto signer = each.next(sequence);
    if (!signer || !each.atEnd()) return wrong("signerInfos");
    if (auto read = readSignerInfo(signer->content, parts); !read) return passOn(read);
    return parts;
}

/// Issuer and serial number as they stand in the certificate, one after the other; empty if it is none.
std::string issuerAndSerial(std::string_view certificateDer)
{
    const auto certificate = journal::certificateOf(certificateDer);
    if (certificate == nullptr) return {};
    return journal::derOf(i2d_X509_NAME, X509_get_issuer_name(certificate.get()))
         + journal::derOf(i2d_ASN1_INTEGER, X509_get0_serialNumber(certificate.get()));
}

/// certs = one ESSCertIDv2 with the default algorithm: the certificate's SHA-256, and its issuer and serial if named.
bool namesCertificate(std::string_view value, std::string_view signerDer)
{
    DerReader outer(value);
    const auto signing = outer.next(sequence);
    if (!signing || !outer.atEnd()) return false;
    DerReader inSigning(signing->content);
    const auto ids = inSigning.next(sequence);
    if (!ids || !inSigning.atEnd()) return false;
    DerReader inIds(ids->content);
    const auto id = inIds.next(sequence);
    if (!id || !inIds.atEnd()) return false;
    DerReader inId(id->content);
    const auto hash = inId.next(octetString);
    if (!hash || base::toHex(hash->content) != base::sha256Hex(signerDer)) return false;
    if (inId.atEnd()) return true;
    const auto issuerSerial = inId.next(sequence);
    if (!issuerSerial || !inId.atEnd()) return false;
    DerReader inIssuer(issuerSerial->content);
    const auto names = inIssuer.next(sequence);
    if (!names) return false;
    DerReader inNames(names->content);
    const auto name = inNames.next(directoryName);
    return name && inNames.atEnd()
        && std::string(name->content) + std::string(inIssuer.rest()) == issuerAndSerial(signerDer);
}

Result<void> checkAttributes(std::string_view attributes, std::string_view content, std::string_view signerDer)
{
    DerReader each(attributes);
    if (!each.skip(contentTypeIsData)) return wrong("content-type");
    if (!each.skip(messageDigestUpToValue) || each.rest().size() < 32) return wrong("message-digest");
    const std::string_view digest = each.rest().substr(0, 32);
    (void)each.skip(digest);
    const auto third = each.next(sequence);
    if (!third) return wrong("signing-certificate-v2");
    DerReader attribute(third->content);
    if (!attribute.skip(signingCertificateV2)) return wrong("signing-certificate-v2");
    const auto values = attribute.next(set);
    if (!values || !attribute.atEnd() || !namesCertificate(values->content, signerDer))
        return wrong("signing-certificate-v2");
    if (!each.atEnd()) return wrong("signedAttrs");
    if (base::toHex(digest) != base::sha256Hex(content)) return failure("seal.digest", "");
    return {};
}

/// Which of the two is the signer's: issuer and serial number must agree byte for byte.
Result<SignedBy> matchSigner(const Parts& parts)
{
    for (std::size_t i = 0; i < 2; ++i) {
        if (issuerAndSerial(parts.certificates[i]) == parts.signerId.content)
            return SignedBy{std::string(parts.certificates[i]), std::string(parts.certificates[1 - i])};
    }
    return wrong("SignerInfo.sid");
}

/// A second opinion on the form: the library's own encoding of what it read.
bool encodesToItself(std::string_view der)
{
    const unsigned char* at = journal::octets(der);
    const journal::Cms cms(d2i_CMS_ContentInfo(nullptr, &at, static_cast<long>(der.size())));
    const bool same = cms != nullptr && journal::derOf(i2d_CMS_ContentInfo, cms.get()) == der;
    ERR_clear_error();
    return same;
}

} // namespace

Result<SignedBy> checkSignedData(std::string_view der, std::string_view content)
{
    auto parts = readParts(der);
    if (!parts) return passOn(parts);
    if (!encodesToItself(der)) return wrong("DER");
    auto by = matchSigner(*parts);
    if (!by) return by;
    if (auto good = checkAttributes(parts->attributes.content, content, by->signerDer); !good) return passOn(good);

    // Signed is the SET OF, and sent under another tag (RFC 5652, 5.4).
    std::string attributes(parts->attributes.whole);
    attributes[0] = static_cast<char>(set);
    const auto certificate = journal::certificateOf(by->signerDer);
    const std::string publicKey = journal::derOf(i2d_PUBKEY, X509_get0_pubkey(certificate.get()));
    if (!journal::verifySignature(publicKey, attributes, parts->signature)) return failure("seal.signature", "");
    return by;
}

} // namespace proofwalk::report
