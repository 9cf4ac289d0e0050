// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/journal/certificate.h"

#include "core/journal/softkey.h"

#include <openssl/bn.h>
#include <openssl/err.h>
#include <openssl/rand.h>
#include <openssl/x509v3.h>

#include <array>
#include <ctime>

namespace proofwalk::journal {
namespace {

using Extension = std::unique_ptr<X509_EXTENSION, Freed<X509_EXTENSION_free>>;
using Store = std::unique_ptr<X509_STORE, Freed<X509_STORE_free>>;
using StoreContext = std::unique_ptr<X509_STORE_CTX, Freed<X509_STORE_CTX_free>>;
using Number = std::unique_ptr<BIGNUM, Freed<BN_free>>;

constexpr int rootYears = 30, signerYears = 20;
constexpr std::int64_t day_s = 86400;

std::unexpected<Error> cannotMake() { return failure("key.cannot-make", "", {{"detail", lastComplaint()}}); }

bool addName(X509_NAME* name, int nid, const std::string& text)
{
    return X509_NAME_add_entry_by_NID(name, nid, V_ASN1_UTF8STRING, octets(text), static_cast<int>(text.size()), -1, 0)
        == 1;
}

/// The root bears one entry more than the signer, or the signer would look as if it had issued itself.
bool fillName(X509_NAME* name, const Person& person, bool isRoot)
{
    return (person.firm.empty() || addName(name, NID_organizationName, person.firm))
        && (!isRoot || addName(name, NID_organizationalUnitName, "Root")) && addName(name, NID_commonName, person.name);
}

/// Sixteen random octets, positive (RFC 5280, 4.1.2.2 allows twenty).
bool randomSerial(X509* certificate)
{
    std::array<unsigned char, 16> octetsOf{};
    if (RAND_bytes(octetsOf.data(), static_cast<int>(octetsOf.size())) != 1) return false;
    octetsOf[0] = static_cast<unsigned char>((octetsOf[0] & 0x7FU) | 0x40U);
    const Number number(BN_bin2bn(octetsOf.data(), static_cast<int>(octetsOf.size()), nullptr));
    return number != nullptr && BN_to_ASN1_INTEGER(number.get(), X509_get_serialNumber(certificate)) != nullptr;
}

/// From the day before: another machine's clock may be behind ours.
bool setLife(X509* certificate, std::int64_t made_utc_ms, int years)
{
    const std::int64_t from_s = made_utc_ms / 1000 - day_s;
    const std::int64_t until_s = from_s + (std::int64_t{years} * 365 + years / 4) * day_s;
    return ASN1_TIME_set(X509_getm_notBefore(certificate), from_s) != nullptr
        && ASN1_TIME_set(X509_getm_notAfter(certificate), until_s) != nullptr;
}

bool addExtension(X509* certificate, X509V3_CTX& context, int nid, const char* value)
{
    const Extension extension(X509V3_EXT_conf_nid(nullptr, &context, nid, value));
    return extension != nullptr && X509_add_ext(certificate, extension.get(), -1) == 1;
}

/// A certificate with all but its extensions and its signature.
Certificate blank(const EVP_PKEY* key, std::int64_t made_utc_ms, int years)
{
    Certificate made(X509_new());
    // The setter takes the key without const and does not change it.
    if (made == nullptr || X509_set_version(made.get(), X509_VERSION_3) != 1 || !randomSerial(made.get())
        || !setLife(made.get(), made_utc_ms, years) || X509_set_pubkey(made.get(), const_cast<EVP_PKEY*>(key)) != 1)
        return nullptr;
    return made;
}

std::string entryOf(const X509* certificate, int nid)
{
    const X509_NAME* name = X509_get_subject_name(certificate);
    const int at = X509_NAME_get_index_by_NID(name, nid, -1);
    if (at < 0 || X509_NAME_get_index_by_NID(name, nid, at) >= 0) return {};
    unsigned char* text = nullptr;
    const int length = ASN1_STRING_to_UTF8(&text, X509_NAME_ENTRY_get_data(X509_NAME_get_entry(name, at)));
    if (length < 0) return {};
    std::string entry(reinterpret_cast<const char*>(text), static_cast<std::size_t>(length));
    OPENSSL_free(text);
    return entry;
}

std::int64_t toUtc_ms(const ASN1_TIME* time)
{
    std::tm fields{};
    return ASN1_TIME_to_tm(time, &fields) == 1 ? std::int64_t{timegm(&fields)} * 1000 : 0;
}

} // namespace

Result<Certificate> makeRoot(const Person& person, EVP_PKEY* rootKey, std::int64_t made_utc_ms)
{
    Certificate root = blank(rootKey, made_utc_ms, rootYears);
    if (root == nullptr || !fillName(X509_get_subject_name(root.get()), person, true)
        || X509_set_issuer_name(root.get(), X509_get_subject_name(root.get())) != 1)
        return cannotMake();
    X509V3_CTX context;
    X509V3_set_ctx(&context, root.get(), root.get(), nullptr, nullptr, 0);
    if (!addExtension(root.get(), context, NID_basic_constraints, "critical,CA:TRUE,pathlen:0")
        || !addExtension(root.get(), context, NID_key_usage, "critical,keyCertSign")
        || !addExtension(root.get(), context, NID_subject_key_identifier, "hash")
        || !addExtension(root.get(), context, NID_authority_key_identifier, "keyid:always")
        || X509_sign(root.get(), rootKey, EVP_sha256()) == 0)
        return cannotMake();
    return root;
}

Result<Certificate> makeSigner(const Person& person, const EVP_PKEY* signerKey, X509* root, EVP_PKEY* rootKey,
                               std::int64_t made_utc_ms)
{
    Certificate signer = blank(signerKey, made_utc_ms, signerYears);
    if (signer == nullptr || !fillName(X509_get_subject_name(signer.get()), person, false)
        || X509_set_issuer_name(signer.get(), X509_get_subject_name(root)) != 1)
        return cannotMake();
    X509V3_CTX context;
    X509V3_set_ctx(&context, root, signer.get(), nullptr, nullptr, 0);
    if (!addExtension(signer.get(), context, NID_basic_constraints, "critical,CA:FALSE")
        || !addExtension(signer.get(), context, NID_key_usage, "critical,digitalSignature,nonRepudiation")
        || !addExtension(signer.get(), context, NID_ext_key_usage, "emailProtection,1.3.6.1.5.5.7.3.36")
        || !addExtension(signer.get(), context, NID_subject_key_identifier, "hash")
        || !addExtension(signer.get(), context, NID_authority_key_identifier, "keyid:always")
        || X509_sign(signer.get(), rootKey, EVP_sha256()) == 0)
        return cannotMake();
    return signer;
}

std::string commonName(const X509* certificate) { return entryOf(certificate, NID_commonName); }
std::string organisation(const X509* certificate) { return entryOf(certificate, NID_organizationName); }

std::int64_t lifeStart_ms(const X509* certificate) { return toUtc_ms(X509_get0_notBefore(certificate)); }
std::int64_t lifeEnd_ms(const X509* certificate) { return toUtc_ms(X509_get0_notAfter(certificate)); }

Result<void> checkChain(X509* signer, X509* root, std::int64_t at_utc_ms)
{
    const Store store(X509_STORE_new());
    const StoreContext context(X509_STORE_CTX_new());
    if (store == nullptr || context == nullptr || X509_STORE_add_cert(store.get(), root) != 1
        || X509_STORE_CTX_init(context.get(), store.get(), signer, nullptr) != 1)
        return failure("certificate.chain", "", {{"detail", lastComplaint()}});
    X509_VERIFY_PARAM* rules = X509_STORE_CTX_get0_param(context.get());
    // The root's own signature is looked at as well: it is what covers the bytes whose fingerprint is printed.
    X509_VERIFY_PARAM_set_flags(rules, X509_V_FLAG_X509_STRICT | X509_V_FLAG_CHECK_SS_SIGNATURE);
    X509_VERIFY_PARAM_set_purpose(rules, X509_PURPOSE_SMIME_SIGN);
    X509_VERIFY_PARAM_set_time(rules, at_utc_ms / 1000);
    const bool good = X509_verify_cert(context.get()) == 1;
    ERR_clear_error();
    const auto usage = X509_get_key_usage(signer);
    if (!good)
        return failure("certificate.chain", "",
                       {{"detail", X509_verify_cert_error_string(X509_STORE_CTX_get_error(context.get()))}});
    if ((usage & KU_NON_REPUDIATION) == 0 || X509_check_ca(signer) != 0 || X509_check_ca(root) != 1)
        return failure("certificate.chain", "", {{"detail", "key usage"}});
    return {};
}

} // namespace proofwalk::journal
