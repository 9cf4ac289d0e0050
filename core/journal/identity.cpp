// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/journal/identity.h"

#include "core/base/digest.h"
#include "core/base/file.h"
#include "core/base/text.h"
#include "core/journal/certificate.h"
#include "core/journal/softkey.h"

#include <openssl/err.h>
#include <openssl/pem.h>

#include <unistd.h>

#include <algorithm>
#include <array>
#include <cerrno>
#include <cstdio>
#include <system_error>

namespace proofwalk::journal {
namespace {

namespace fs = std::filesystem;

constexpr std::size_t fileLimit = 65536;
constexpr std::int64_t nameLimit = 64;
constexpr std::array files{"signer.key", "signer.pem", "root.key", "root.pem"};

/// Two certificates that have been seen to belong together.
struct Pair {
    Certificate signer;
    Certificate root;
};

bool isName(std::string_view text)
{
    const auto control = [](char c) { return static_cast<unsigned char>(c) < 0x20 || c == 0x7F; };
    const auto begins = [](char c) { return (static_cast<unsigned char>(c) & 0xC0U) != 0x80U; };
    return base::isUtf8(text) && base::trimmed(text) == text && std::ranges::none_of(text, control)
        && std::ranges::count_if(text, begins) <= nameLimit;
}

Result<void> checkPerson(const Person& person, std::string_view passphrase)
{
    if (person.name.empty() || !isName(person.name))
        return failure("identity.name", "", {{"found", person.name}, {"limit", nameLimit}});
    if (!isName(person.firm)) return failure("identity.firm", "", {{"found", person.firm}, {"limit", nameLimit}});
    if (passphrase.size() < passphraseLeast)
        return failure("identity.passphrase-short", "", {{"wanted", static_cast<std::int64_t>(passphraseLeast)}});
    return {};
}

std::string pemOf(const X509* certificate)
{
    const Bio bio(BIO_new(BIO_s_mem()));
    return PEM_write_bio_X509(bio.get(), certificate) == 1 ? contentsOf(bio.get()) : std::string();
}

IdentityFacts factsOf(const Pair& pair)
{
    return {commonName(pair.signer.get()), organisation(pair.signer.get()),
            base::sha256Hex(derOf(i2d_X509, pair.root.get())), lifeStart_ms(pair.signer.get()),
            lifeEnd_ms(pair.signer.get())};
}

/// Writes the four files into a folder of its own beside `folder` and moves it into place when it is complete.
Result<IdentityFacts> writeIdentity(const fs::path& folder, const Person& person, std::string_view passphrase,
                                    std::int64_t made_utc_ms)
{
    auto rootKey = makeKey();
    if (!rootKey) return passOn(rootKey);
    auto signerKey = makeKey();
    if (!signerKey) return passOn(signerKey);
    auto root = makeRoot(person, rootKey->get(), made_utc_ms);
    if (!root) return passOn(root);
    auto signer = makeSigner(person, signerKey->get(), root->get(), rootKey->get(), made_utc_ms);
    if (!signer) return passOn(signer);
    auto sealedRoot = toSealedPem(rootKey->get(), passphrase);
    if (!sealedRoot) return passOn(sealedRoot);
    auto sealedSigner = toSealedPem(signerKey->get(), passphrase);
    if (!sealedSigner) return passOn(sealedSigner);

    const std::array bytes{*sealedSigner, pemOf(signer->get()), *sealedRoot, pemOf(root->get())};
    for (std::size_t i = 0; i < files.size(); ++i) {
        if (auto written = base::writeFile(folder / files[i], bytes[i], base::FileAccess::ownerOnly); !written)
            return passOn(written);
    }
    return factsOf({std::move(*signer), std::move(*root)});
}

Result<void> refuseWhatIsThere(const fs::path& folder)
{
    std::error_code error;
    if (!fs::exists(fs::symlink_status(folder, error))) return {};
    for (const char* name : files) {
        if (fs::exists(folder / name, error)) return failure("identity.exists", folder.string());
    }
    if (!fs::is_directory(folder, error) || !fs::is_empty(folder, error) || error)
        return failure("identity.folder-in-use", folder.string());
    return {};
}

Result<std::string> readPart(const fs::path& folder, const char* name)
{
    auto bytes = base::readFile(folder / name, fileLimit);
    if (!bytes && bytes.error().code == "file.missing") return failure("identity.incomplete", (folder / name).string());
    return bytes;
}

Result<Certificate> readCertificate(const fs::path& folder, const char* name)
{
    auto pem = readPart(folder, name);
    if (!pem) return passOn(pem);
    const Bio bio(BIO_new_mem_buf(pem->data(), static_cast<int>(pem->size())));
    Certificate certificate(PEM_read_bio_X509(bio.get(), nullptr, nullptr, nullptr));
    ERR_clear_error();
    if (certificate == nullptr || !isP256(X509_get0_pubkey(certificate.get())))
        return failure("identity.damaged", (folder / name).string());
    return certificate;
}

Result<Pair> readPair(const fs::path& folder)
{
    std::error_code ignored;
    if (std::ranges::none_of(files, [&](const char* name) { return fs::exists(folder / name, ignored); }))
        return failure("identity.missing", folder.string());
    auto signer = readCertificate(folder, "signer.pem");
    if (!signer) return passOn(signer);
    auto root = readCertificate(folder, "root.pem");
    if (!root) return passOn(root);
    // Whether the certificate has run out is not asked here: the caller who signs knows at what time.
    if (!checkChain(signer->get(), root->get(), lifeStart_ms(signer->get())))
        return failure("identity.not-issued-by-root", folder.string());
    return Pair{std::move(*signer), std::move(*root)};
}

} // namespace

Result<IdentityFacts> createIdentity(const fs::path& folder, const Person& person, std::string_view passphrase,
                                     const base::WallClock& made)
{
    if (auto fit = checkPerson(person, passphrase); !fit) return passOn(fit);
    std::error_code error;
    fs::path place = fs::weakly_canonical(folder, error);
    if (error) place = folder;
    if (!place.has_filename()) place = place.parent_path(); // "somewhere/"
    if (auto free = refuseWhatIsThere(place); !free) return passOn(free);

    const fs::path fresh = place.string() + "." + base::randomHex(4) + ".part";
    if (auto folderMade = makePrivateFolder(fresh); !folderMade) return passOn(folderMade);
    auto facts = writeIdentity(fresh, person, passphrase, made.utc_ms);
    // Over an empty folder a rename succeeds, over any other it fails: nothing that somebody made meanwhile is lost.
    if (facts && std::rename(fresh.c_str(), place.c_str()) != 0)
        facts = failure("key.folder", place.string(), {{"detail", std::generic_category().message(errno)}});
    if (!facts) fs::remove_all(fresh, error);
    return facts;
}

Result<IdentityFacts> describeIdentity(const fs::path& folder)
{
    auto pair = readPair(folder);
    if (!pair) return passOn(pair);
    return factsOf(*pair);
}

Result<Identity> openIdentity(const fs::path& folder, std::string_view passphrase)
{
    auto pair = readPair(folder);
    if (!pair) return passOn(pair);
    const fs::path keyFile = folder / "signer.key";
    if (std::string mode; openToOthers(keyFile, mode))
        return failure("identity.readable-by-others", keyFile.string(), {{"mode", mode}});
    auto pem = readPart(folder, "signer.key");
    if (!pem) return passOn(pem);
    auto key = fromSealedPem(*pem, passphrase);
    if (!key) return failure("identity.damaged", keyFile.string());
    if (*key == nullptr) return failure("identity.wrong-passphrase", folder.string());
    if (X509_check_private_key(pair->signer.get(), key->get()) != 1) {
        ERR_clear_error();
        return failure("identity.key-certificate-mismatch", folder.string());
    }
    return Identity{factsOf(*pair), derOf(i2d_X509, pair->signer.get()), derOf(i2d_X509, pair->root.get()),
                    softwareKey(std::move(*key))};
}

} // namespace proofwalk::journal
