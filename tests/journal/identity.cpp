// SPDX-License-Identifier: GPL-3.0-or-later
// The judge of certificates and keys is the `openssl` command, a public test source.
#include "core/journal/identity.h"

#include "core/base/digest.h"
#include "core/base/file.h"

#include <QProcess>
#include <QTemporaryDir>
#include <QtTest>

#include <sys/stat.h>

using namespace proofwalk;
namespace fs = std::filesystem;

namespace {

constexpr std::string_view passphrase = "four words and then some";
const journal::Person person{"Zoë Ångström", "Kłos & Söhne (Alarms)"};

QString run(const QStringList& words, int* status = nullptr)
{
    QProcess process;
    process.setProcessChannelMode(QProcess::MergedChannels);
    process.start("openssl", words);
    if (!process.waitForFinished(30000)) return "did not finish";
    if (status != nullptr) *status = process.exitCode();
    return QString::fromUtf8(process.readAll());
}

template <class T>
std::string codeOf(const Result<T>& result)
{
    return result ? "no error" : result.error().code;
}

} // namespace

class IdentityTest : public QObject {
    Q_OBJECT

    QTemporaryDir m_folder;
    QString name(const char* within) const { return m_folder.filePath(within); }
    fs::path path(const char* within) const { return name(within).toStdString(); }

    /// A copy of the identity, to be spoilt.
    fs::path copy(const char* within) const
    {
        fs::copy(path("own"), path(within), fs::copy_options::recursive);
        return path(within);
    }

private slots:
    void initTestCase()
    {
        auto made = journal::createIdentity(path("own"), person, passphrase);
        QCOMPARE(codeOf(made), std::string("no error"));
        auto other = journal::createIdentity(path("other"), {"Second", ""}, passphrase);
        QCOMPARE(codeOf(other), std::string("no error"));
    }

    void saysWhoItIsWithoutAPassphrase()
    {
        auto facts = journal::describeIdentity(path("own"));
        QVERIFY(facts);
        QCOMPARE(facts->name, person.name);
        QCOMPARE(facts->firm, person.firm);
        const QString words = run({"x509", "-in", name("own/root.pem"), "-noout", "-fingerprint", "-sha256"});
        const QString wanted = words.section('=', 1).trimmed().remove(':').toLower();
        QCOMPARE(QString::fromStdString(facts->rootFingerprint), wanted);
        QCOMPARE(journal::describeIdentity(path("other"))->firm, std::string());
    }

    void certificatesSayWhatTheyAreFor()
    {
        const QString signer = run({"x509", "-in", name("own/signer.pem"), "-noout", "-text"});
        for (const char* wanted :
             {"Version: 3", "X509v3 Basic Constraints: critical", "CA:FALSE", "X509v3 Key Usage: critical",
              "Digital Signature, Non Repudiation\n", "E-mail Protection, 1.3.6.1.5.5.7.3.36",
              "X509v3 Subject Key Identifier", "X509v3 Authority Key Identifier", "ecdsa-with-SHA256", "prime256v1"})
            QVERIFY2(signer.contains(wanted), wanted);
        const QString root = run({"x509", "-in", name("own/root.pem"), "-noout", "-text"});
        for (const char* wanted : {"CA:TRUE", "Certificate Sign\n", "X509v3 Key Usage: critical"})
            QVERIFY2(root.contains(wanted), wanted);
        QVERIFY(run({"asn1parse", "-in", name("own/signer.pem")}).contains("UTF8STRING"));
    }

    void anotherToolVerifiesTheChainForTenYears()
    {
        for (const qint64 years : {0, 10, 19}) {
            const QString at = QString::number(QDateTime::currentSecsSinceEpoch() + years * 365 * 86400);
            const QString words = run({"verify", "-x509_strict", "-check_ss_sig", "-purpose", "smimesign", "-attime",
                                       at, "-CAfile", name("own/root.pem"), name("own/signer.pem")});
            QVERIFY2(words.trimmed().endsWith("signer.pem: OK"), qPrintable(words));
        }
        int status = 0;
        run({"verify", "-CAfile", name("other/root.pem"), name("own/signer.pem")}, &status);
        QVERIFY(status != 0);
    }

    void opensAndSigns()
    {
        auto identity = journal::openIdentity(path("own"), passphrase);
        QCOMPARE(codeOf(identity), std::string("no error"));
        QCOMPARE(base::sha256Hex(identity->rootDer), identity->facts.rootFingerprint);
        auto signature = identity->key->sign("words");
        QVERIFY(signature);
        QVERIFY(base::writeFile(path("words"), "words"));
        QVERIFY(base::writeFile(path("words.sig"), *signature));
        QVERIFY(base::writeFile(path("pub.pem"),
                                run({"x509", "-in", name("own/signer.pem"), "-noout", "-pubkey"}).toStdString()));
        QVERIFY(run({"dgst", "-sha256", "-verify", name("pub.pem"), "-signature", name("words.sig"), name("words")})
                    .contains("Verified OK"));
    }

    /// RFC 7914 scrypt with 16 bytes of salt, N = 16384 (0x4000), r = 8, p = 8, read by another tool.
    void keysAreSealedAsPromised()
    {
        for (const char* key : {"own/signer.key", "own/root.key"}) {
            const QString words = run({"asn1parse", "-in", name(key)});
            QVERIFY(words.contains("PBES2") && words.contains(":scrypt"));
            QVERIFY(words.contains("aes-256-cbc"));
            QVERIFY(words.contains("INTEGER           :4000"));
            QCOMPARE(words.count("INTEGER           :08"), qsizetype{2});
            QVERIFY(words.contains(QRegularExpression("l=  16 prim: OCTET STRING")));
            const QString right = "pass:" + QString::fromUtf8(passphrase.data(), qsizetype(passphrase.size()));
            int status = -1;
            run({"pkey", "-in", name(key), "-noout", "-passin", right}, &status);
            QCOMPARE(status, 0);
            run({"pkey", "-in", name(key), "-noout", "-passin", "pass:something else"}, &status);
            QVERIFY(status != 0);
        }
    }

    void onlyItsOwnerMayRead()
    {
        struct stat facts{};
        QCOMPARE(::stat(path("own").c_str(), &facts), 0);
        QCOMPARE(facts.st_mode & 07777U, 0700U);
        for (const auto& entry : fs::directory_iterator(path("own"))) {
            QCOMPARE(::stat(entry.path().c_str(), &facts), 0);
            QCOMPARE(facts.st_mode & 07777U, 0600U);
        }
        QCOMPARE(std::distance(fs::directory_iterator(path("own")), {}), std::ptrdiff_t{4});
        fs::permissions(copy("shown") / "signer.key", fs::perms(0604));
        QCOMPARE(codeOf(journal::openIdentity(path("shown"), passphrase)), std::string("identity.readable-by-others"));
    }

    void neverOverwritten()
    {
        const auto before = base::readFile(path("own/signer.pem"));
        QCOMPARE(codeOf(journal::createIdentity(path("own"), person, passphrase)), std::string("identity.exists"));
        QCOMPARE(codeOf(journal::createIdentity(name("own/").toStdString(), person, passphrase)),
                 std::string("identity.exists"));
        QCOMPARE(*base::readFile(path("own/signer.pem")), *before);
        fs::create_directory(path("used"));
        QVERIFY(base::writeFile(path("used/letter.txt"), "mine"));
        QCOMPARE(codeOf(journal::createIdentity(path("used"), person, passphrase)),
                 std::string("identity.folder-in-use"));
        QCOMPARE(codeOf(journal::createIdentity(path("words.txt/under"), person, passphrase)), std::string("no error"));
    }

    void emptyFolderIsTaken()
    {
        fs::create_directory(path("empty"));
        QCOMPARE(codeOf(journal::createIdentity(path("empty"), person, passphrase)), std::string("no error"));
        QVERIFY(journal::openIdentity(path("empty"), passphrase));
    }

    void folderCannotBeMade()
    {
        QVERIFY(base::writeFile(path("file"), "x"));
        QCOMPARE(codeOf(journal::createIdentity(path("file"), person, passphrase)),
                 std::string("identity.folder-in-use"));
        QCOMPARE(codeOf(journal::createIdentity(path("file/under"), person, passphrase)), std::string("key.folder"));
    }

    void badWords_data()
    {
        QTest::addColumn<QByteArray>("name");
        QTest::addColumn<QByteArray>("firm");
        QTest::addColumn<QByteArray>("words");
        QTest::addColumn<QByteArray>("code");
        QTest::newRow("no name") << QByteArray("") << QByteArray("F") << QByteArray("12345678")
                                 << QByteArray("identity.name");
        QTest::newRow("65 letters") << QByteArray(65, 'a') << QByteArray("") << QByteArray("12345678")
                                    << QByteArray("identity.name");
        QTest::newRow("a line end") << QByteArray("a\nb") << QByteArray("") << QByteArray("12345678")
                                    << QByteArray("identity.name");
        QTest::newRow("not UTF-8") << QByteArray("\xC3(") << QByteArray("") << QByteArray("12345678")
                                   << QByteArray("identity.name");
        QTest::newRow("a space before") << QByteArray(" a") << QByteArray("") << QByteArray("12345678")
                                        << QByteArray("identity.name");
        QTest::newRow("firm too long") << QByteArray("a") << QByteArray(65, 'f') << QByteArray("12345678")
                                       << QByteArray("identity.firm");
        QTest::newRow("seven bytes") << QByteArray("a") << QByteArray("") << QByteArray("1234567")
                                     << QByteArray("identity.passphrase-short");
    }
    void badWords()
    {
        QFETCH(QByteArray, name);
        QFETCH(QByteArray, firm);
        QFETCH(QByteArray, words);
        QFETCH(QByteArray, code);
        auto refused =
            journal::createIdentity(path("never"), {name.toStdString(), firm.toStdString()}, words.toStdString());
        QCOMPARE(codeOf(refused), code.toStdString());
        QVERIFY(!fs::exists(path("never")));
    }

    void sixtyFourLettersOfTwoBytes()
    {
        std::string longName;
        for (int i = 0; i < 64; ++i) longName += "ö";
        QCOMPARE(codeOf(journal::createIdentity(path("longest"), {longName, longName}, passphrase)),
                 std::string("no error"));
        QCOMPARE(journal::describeIdentity(path("longest"))->name, longName);
    }

    void wrongPassphrase()
    {
        for (int i = 0; i < 4; ++i)
            QCOMPARE(codeOf(journal::openIdentity(path("own"), "not this one " + std::to_string(i))),
                     std::string("identity.wrong-passphrase"));
    }

    void nothingThere()
    {
        QCOMPARE(codeOf(journal::openIdentity(path("nowhere"), passphrase)), std::string("identity.missing"));
        QCOMPARE(codeOf(journal::describeIdentity(path("used"))), std::string("identity.missing"));
    }

    void aFileIsMissing()
    {
        for (const char* file : {"signer.pem", "root.pem", "signer.key"}) {
            const fs::path spoilt = copy((std::string("without-") + file).c_str());
            fs::remove(spoilt / file);
            auto refused = journal::openIdentity(spoilt, passphrase);
            QCOMPARE(codeOf(refused), std::string("identity.incomplete"));
            QVERIFY(refused.error().where.ends_with(file));
        }
    }

    void aFileIsDamaged()
    {
        for (const char* file : {"signer.pem", "root.pem", "signer.key"}) {
            const fs::path spoilt = copy((std::string("damaged-") + file).c_str());
            QVERIFY(base::writeFile(spoilt / file, "-----BEGIN", base::FileAccess::ownerOnly));
            QCOMPARE(codeOf(journal::openIdentity(spoilt, passphrase)), std::string("identity.damaged"));
        }
    }

    void keyOfSomebodyElse()
    {
        const fs::path mixed = copy("mixed-key");
        fs::copy(path("other/signer.key"), mixed / "signer.key", fs::copy_options::overwrite_existing);
        QCOMPARE(codeOf(journal::openIdentity(mixed, passphrase)), std::string("identity.key-certificate-mismatch"));
    }

    void rootOfSomebodyElse()
    {
        const fs::path mixed = copy("mixed-root");
        fs::copy(path("other/root.pem"), mixed / "root.pem", fs::copy_options::overwrite_existing);
        QCOMPARE(codeOf(journal::describeIdentity(mixed)), std::string("identity.not-issued-by-root"));
    }
};

QTEST_GUILESS_MAIN(IdentityTest)
#include "identity.moc"
