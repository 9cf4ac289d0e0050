// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/journal/softkey.h"

#include <openssl/crypto.h>
#include <openssl/err.h>
#include <openssl/pem.h>
#include <openssl/pkcs12.h>
#include <openssl/rand.h>
#include <openssl/x509.h>

#include <fmt/format.h>
#include <sys/stat.h>

#include <array>
#include <cerrno>
#include <cstdint>
#include <system_error>

namespace proofwalk::journal {
namespace {

using SealedKey = std::unique_ptr<X509_SIG, Freed<X509_SIG_free>>;
using KeyInfo = std::unique_ptr<PKCS8_PRIV_KEY_INFO, Freed<PKCS8_PRIV_KEY_INFO_free>>;
using Algorithm = std::unique_ptr<X509_ALGOR, Freed<X509_ALGOR_free>>;

// N = 32768 would ask for more than the 32 MiB the library grants scrypt; a larger p costs the same time without it.
constexpr std::uint64_t scryptN = 16384, scryptR = 8, scryptP = 8;

std::unexpected<Error> cannotMake() { return failure("key.cannot-make", "", {{"detail", lastComplaint()}}); }

class SoftwareKey final : public SigningKey {
public:
    explicit SoftwareKey(KeyHandle key) : m_key(std::move(key)), m_publicKeyDer(derOf(i2d_PUBKEY, m_key.get())) {}

    Result<std::string> sign(std::string_view bytes) const override
    {
        const auto bad = [] { return failure("key.cannot-sign", "", {{"detail", lastComplaint()}}); };
        const DigestContext context(EVP_MD_CTX_new());
        std::size_t length = 0;
        if (context == nullptr || EVP_DigestSignInit(context.get(), nullptr, EVP_sha256(), nullptr, m_key.get()) != 1
            || EVP_DigestSign(context.get(), nullptr, &length, octets(bytes), bytes.size()) != 1)
            return bad();
        std::string signature(length, '\0');
        auto* out = reinterpret_cast<unsigned char*>(signature.data());
        if (EVP_DigestSign(context.get(), out, &length, octets(bytes), bytes.size()) != 1) return bad();
        signature.resize(length);
        return signature;
    }

    const std::string& publicKeyDer() const override { return m_publicKeyDer; }

private:
    KeyHandle m_key;
    std::string m_publicKeyDer;
};

Bio reading(const std::string& text) { return Bio(BIO_new_mem_buf(text.data(), static_cast<int>(text.size()))); }

/// No passphrase is ever asked for by the library itself.
int noPassphrase(char*, int, int, void*) { return -1; }

} // namespace

Result<KeyHandle> makeKey()
{
    KeyHandle key(EVP_EC_gen("P-256"));
    if (key == nullptr) return cannotMake();
    return key;
}

bool isP256(const EVP_PKEY* key)
{
    std::array<char, 64> name{};
    return key != nullptr && EVP_PKEY_get_base_id(key) == EVP_PKEY_EC
        && EVP_PKEY_get_group_name(key, name.data(), name.size(), nullptr) == 1
        && std::string_view(name.data()) == "prime256v1";
}

std::shared_ptr<const SigningKey> softwareKey(KeyHandle key) { return std::make_shared<SoftwareKey>(std::move(key)); }

std::string toPem(const EVP_PKEY* key)
{
    const Bio bio(BIO_new(BIO_s_secmem()));
    if (PEM_write_bio_PKCS8PrivateKey(bio.get(), key, nullptr, nullptr, 0, nullptr, nullptr) != 1) return {};
    return contentsOf(bio.get());
}

KeyHandle fromPem(const std::string& pem)
{
    const Bio bio = reading(pem);
    const KeyInfo info(PEM_read_bio_PKCS8_PRIV_KEY_INFO(bio.get(), nullptr, noPassphrase, nullptr));
    KeyHandle key(info == nullptr ? nullptr : EVP_PKCS82PKEY(info.get()));
    ERR_clear_error();
    return isP256(key.get()) ? std::move(key) : nullptr;
}

Result<std::string> toSealedPem(const EVP_PKEY* key, std::string_view passphrase)
{
    std::array<unsigned char, 16> salt{};
    if (RAND_bytes(salt.data(), static_cast<int>(salt.size())) != 1) return cannotMake();
    Algorithm algorithm(PKCS5_pbe2_set_scrypt(EVP_aes_256_cbc(), salt.data(), static_cast<int>(salt.size()), nullptr,
                                              scryptN, scryptR, scryptP));
    const KeyInfo info(EVP_PKEY2PKCS8(key));
    if (algorithm == nullptr || info == nullptr) return cannotMake();
    const SealedKey sealed(
        PKCS8_set0_pbe(passphrase.data(), static_cast<int>(passphrase.size()), info.get(), algorithm.get()));
    if (sealed == nullptr) return cannotMake();
    [[maybe_unused]] const X509_ALGOR* given = algorithm.release(); // now the sealed key's
    const Bio bio(BIO_new(BIO_s_mem()));
    if (PEM_write_bio_PKCS8(bio.get(), sealed.get()) != 1) return cannotMake();
    return contentsOf(bio.get());
}

std::optional<KeyHandle> fromSealedPem(const std::string& pem, std::string_view passphrase)
{
    const Bio bio = reading(pem);
    const SealedKey sealed(PEM_read_bio_PKCS8(bio.get(), nullptr, noPassphrase, nullptr));
    ERR_clear_error();
    if (sealed == nullptr) return std::nullopt;
    const KeyInfo info(PKCS8_decrypt(sealed.get(), passphrase.data(), static_cast<int>(passphrase.size())));
    KeyHandle key(info == nullptr ? nullptr : EVP_PKCS82PKEY(info.get()));
    ERR_clear_error();
    if (!isP256(key.get())) key.reset();
    return key;
}

std::string lastComplaint()
{
    std::array<char, 256> text{};
    const unsigned long code = ERR_peek_last_error();
    ERR_clear_error();
    if (code == 0) return "no reason given";
    ERR_error_string_n(code, text.data(), text.size());
    return text.data();
}

bool openToOthers(const std::filesystem::path& path, std::string& mode)
{
    struct stat facts{};
    if (::stat(path.c_str(), &facts) != 0) return false; // reading it will tell why
    mode = fmt::format("{:04o}", facts.st_mode & 07777U);
    return (facts.st_mode & 077U) != 0;
}

Result<void> makePrivateFolder(const std::filesystem::path& folder)
{
    std::error_code error;
    if (std::filesystem::is_directory(folder, error)) return {};
    if (folder.has_parent_path() && folder.parent_path() != folder) {
        if (auto above = makePrivateFolder(folder.parent_path()); !above) return above;
    }
    if (::mkdir(folder.c_str(), 0700) != 0 && errno != EEXIST)
        return failure("key.folder", folder.string(), {{"detail", std::generic_category().message(errno)}});
    if (!std::filesystem::is_directory(folder, error))
        return failure("key.folder", folder.string(), {{"detail", std::generic_category().message(ENOTDIR)}});
    return {};
}

} // namespace proofwalk::journal
