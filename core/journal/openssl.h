// SPDX-License-Identifier: GPL-3.0-or-later
// Handles of the OpenSSL library that free themselves, and bytes in the shape it wants. For sources only: no header
// that other rooms read for its meaning includes this one.
#pragma once

#include <openssl/bio.h>
#include <openssl/cms.h>
#include <openssl/evp.h>
#include <openssl/x509.h>
#include <openssl/x509_vfy.h>

#include <memory>
#include <string>
#include <string_view>

namespace proofwalk::journal {

/// Calls the library's own free function.
template <auto Free>
struct Freed {
    template <class T>
    void operator()(T* handle) const
    {
        Free(handle);
    }
};

using Bio = std::unique_ptr<BIO, Freed<BIO_free_all>>;
using KeyHandle = std::unique_ptr<EVP_PKEY, Freed<EVP_PKEY_free>>;
using KeyContext = std::unique_ptr<EVP_PKEY_CTX, Freed<EVP_PKEY_CTX_free>>;
using DigestContext = std::unique_ptr<EVP_MD_CTX, Freed<EVP_MD_CTX_free>>;
using Certificate = std::unique_ptr<X509, Freed<X509_free>>;
using Cms = std::unique_ptr<CMS_ContentInfo, Freed<CMS_ContentInfo_free>>;

inline const unsigned char* octets(std::string_view bytes)
{
    return reinterpret_cast<const unsigned char*>(bytes.data());
}

/// The DER of a value, by the library's i2d function; empty if it cannot be encoded.
template <class T>
std::string derOf(int (*encode)(const T*, unsigned char**), const T* value)
{
    unsigned char* out = nullptr;
    const int length = encode(value, &out);
    if (length < 0) return {};
    std::string der(reinterpret_cast<const char*>(out), static_cast<std::size_t>(length));
    OPENSSL_free(out);
    return der;
}

/// A certificate from exactly one DER value; nullptr if it is none or anything follows.
inline Certificate certificateOf(std::string_view der)
{
    const unsigned char* at = octets(der);
    Certificate certificate(d2i_X509(nullptr, &at, static_cast<long>(der.size())));
    if (certificate != nullptr && at != octets(der) + der.size()) certificate.reset();
    return certificate;
}

/// Everything a memory BIO holds.
inline std::string contentsOf(BIO* bio)
{
    char* data = nullptr;
    const long length = BIO_get_mem_data(bio, &data);
    return length > 0 ? std::string(data, static_cast<std::size_t>(length)) : std::string();
}

} // namespace proofwalk::journal
