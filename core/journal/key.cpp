// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/journal/key.h"

#include "core/base/digest.h"
#include "core/base/file.h"
#include "core/journal/softkey.h"

#include <openssl/crypto.h>
#include <openssl/err.h>

#include <unistd.h>

#include <cerrno>
#include <system_error>

namespace proofwalk::journal {
namespace {

constexpr std::size_t keyFileLimit = 16384;

/// Makes a key and puts it at `path` unless another program was quicker: a link, unlike a rename, never replaces.
Result<void> placeNewKey(const std::filesystem::path& path)
{
    auto key = makeKey();
    if (!key) return passOn(key);
    const std::filesystem::path fresh = path.string() + "." + base::randomHex(4) + ".new";
    std::string pem = toPem(key->get());
    auto written = base::writeFile(fresh, pem, base::FileAccess::ownerOnly);
    OPENSSL_cleanse(pem.data(), pem.size());
    if (!written) return written;
    const int error = ::link(fresh.c_str(), path.c_str()) == 0 ? 0 : errno;
    ::unlink(fresh.c_str());
    if (error != 0 && error != EEXIST)
        return failure("file.unwritable", path.string(), {{"detail", std::generic_category().message(error)}});
    return {};
}

} // namespace

bool verifySignature(std::string_view publicKeyDer, std::string_view bytes, std::string_view signatureDer)
{
    const unsigned char* at = octets(publicKeyDer);
    const KeyHandle key(d2i_PUBKEY(nullptr, &at, static_cast<long>(publicKeyDer.size())));
    const bool form = isP256(key.get()) && derOf(i2d_PUBKEY, key.get()) == publicKeyDer;
    const DigestContext context(EVP_MD_CTX_new());
    // The library itself refuses a signature that is not its own DER.
    const bool good =
        form && context != nullptr
        && EVP_DigestVerifyInit(context.get(), nullptr, EVP_sha256(), nullptr, key.get()) == 1
        && EVP_DigestVerify(context.get(), octets(signatureDer), signatureDer.size(), octets(bytes), bytes.size()) == 1;
    ERR_clear_error();
    return good;
}

Result<std::shared_ptr<const SigningKey>> openMachineKey(const std::filesystem::path& folder)
{
    if (auto made = makePrivateFolder(folder); !made) return passOn(made);
    const auto path = folder / "machine.key";
    std::error_code ignored;
    if (!std::filesystem::exists(path, ignored)) {
        if (auto placed = placeNewKey(path); !placed) return passOn(placed);
    }
    if (std::string mode; openToOthers(path, mode))
        return failure("key.readable-by-others", path.string(), {{"mode", mode}});
    auto pem = base::readFile(path, keyFileLimit);
    if (!pem) return passOn(pem);
    KeyHandle key = fromPem(*pem);
    OPENSSL_cleanse(pem->data(), pem->size());
    if (key == nullptr) return failure("key.damaged", path.string());
    return softwareKey(std::move(key));
}

} // namespace proofwalk::journal
