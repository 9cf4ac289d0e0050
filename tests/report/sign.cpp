// SPDX-License-Identifier: GPL-3.0-or-later
// The judges are pdfsig of poppler (whose exit status says nothing: its words are read), openssl and qpdf, public test
// sources.
#include "core/report/sign.h"

#include "core/report/append.h"
#include "core/report/cms.h"
#include "core/report/sealcheck.h"
#include "tests/report/sample.h"

#include <QRegularExpression>
#include <QtTest>

using namespace proofwalk;

namespace {

/// A key that lies elsewhere: nothing is known of it but what the interface gives.
class FarKey final : public journal::SigningKey {
public:
    explicit FarKey(std::shared_ptr<const journal::SigningKey> near) : m_near(std::move(near)) {}
    Result<std::string> sign(std::string_view bytes) const override { return m_near->sign(bytes); }
    const std::string& publicKeyDer() const override { return m_near->publicKeyDer(); }

private:
    std::shared_ptr<const journal::SigningKey> m_near;
};

class NoKey final : public journal::SigningKey {
public:
    Result<std::string> sign(std::string_view) const override
    {
        return failure("key.cannot-sign", "", {{"detail", "taken away"}});
    }
    const std::string& publicKeyDer() const override { return m_none; }

private:
    std::string m_none;
};

} // namespace

class SignTest : public QObject {
    Q_OBJECT

    QTemporaryDir m_folder;
    std::string m_built, m_signed;
    QString m_file;

    QString put(const char* name, const std::string& bytes)
    {
        const QString file = m_folder.filePath(name);
        if (!base::writeFile(file.toStdString(), bytes)) qFatal("cannot write %s", name);
        return file;
    }

private slots:
    void initTestCase()
    {
        m_built = sample::built().value();
        auto made = report::signReport(m_built, sample::identity(), sample::signing());
        QVERIFY2(made, made ? "" : sample::toText(made.error()).c_str());
        m_signed = *made;
        m_file = put("signed.pdf", m_signed);
        put("root.der", sample::identity().rootDer);
        sample::run("openssl", {"x509", "-inform", "DER", "-in", m_folder.filePath("root.der"), "-out",
                                m_folder.filePath("root.pem")});
    }

    void everyOldByteStands()
    {
        QVERIFY(m_signed.starts_with(m_built));
        QVERIFY(m_signed.size() - m_built.size() < 18000);
    }

    void readersCallItValid()
    {
        const QString words = sample::run("pdfsig", {m_file}).words;
        for (const char* wanted : {"Signature Field Name: Installer", "Signature Type: ETSI.CAdES.detached",
                                   "Signing Hash Algorithm: SHA-256", "Total document signed",
                                   "Signature Validation: Signature is Valid.", "Certificate issuer isn't Trusted"})
            QVERIFY2(words.contains(wanted), qPrintable(QString(wanted) + " in " + words));
        QVERIFY(words.contains(QString::fromUtf8("Zoë Ångström")));
        QCOMPARE(words.count("Signature #"), 1);
    }

    void readersCallAChangedOneInvalid()
    {
        std::string changed = m_signed;
        changed[changed.find("Lantern")] ^= 1;
        const QString words = sample::run("pdfsig", {put("changed.pdf", changed)}).words;
        QVERIFY2(words.contains("Digest Mismatch") && !words.contains("Signature is Valid"), qPrintable(words));
    }

    void anotherToolVerifiesTheSignature()
    {
        // Taken apart here with no help from the code under test.
        const QString text = QString::fromLatin1(m_signed.data(), qsizetype(m_signed.size()));
        const auto range = QRegularExpression("/ByteRange \\[0 (\\d+) (\\d+) (\\d+) *\\]").match(text);
        QVERIFY(range.hasMatch());
        const qsizetype open = range.captured(1).toLongLong(), after = range.captured(2).toLongLong();
        QCOMPARE(after + range.captured(3).toLongLong(), text.size());
        QCOMPARE(text[open], QChar('<'));
        const QByteArray der = QByteArray::fromHex(text.mid(open + 1, after - open - 2).toLatin1());
        put("signature.der", der.toStdString());
        put("content", (text.left(open) + text.mid(after)).toLatin1().toStdString());
        QStringList words{"cms",      "-verify",
                          "-cades",   "-binary",
                          "-inform",  "DER",
                          "-in",      m_folder.filePath("signature.der"),
                          "-content", m_folder.filePath("content"),
                          "-out",     "/dev/null"};
        const auto said = sample::run("openssl", words + QStringList{"-CAfile", m_folder.filePath("root.pem")});
        QVERIFY2(said.status == 0 && said.words.contains("erification successful"), qPrintable(said.words));
        QVERIFY(sample::run("openssl", words).status != 0); // without the root nobody vouches for it
        put("content", text.left(open).toLatin1().toStdString());
        QVERIFY(sample::run("openssl", words + QStringList{"-CAfile", m_folder.filePath("root.pem")}).status != 0);

        // ETSI EN 319 142-1, 6.3 (from memory): the time stands in /M, not in the CMS.
        const QString shown = sample::run("openssl", {"cms", "-cmsout", "-print", "-noout", "-inform", "DER", "-in",
                                                      m_folder.filePath("signature.der")})
                                  .words;
        QVERIFY(shown.contains("signingCertificateV2") && shown.contains("messageDigest"));
        QVERIFY(!shown.contains("signingTime"));
    }

    void stillWholeAndWithItsFiles()
    {
        QCOMPARE(sample::run("qpdf", {"--check", m_file}).status, 0);
        const QString out = m_folder.filePath("record.jsonl");
        sample::run("pdfdetach", {"-savefile", "record.jsonl", "-o", out, m_file});
        QCOMPARE(base::readFile(out.toStdString()).value(), sample::attachments()[0].bytes);
    }

    void awkwardReasons()
    {
        for (const char* reason :
             {"closed (twice)) and \\ back", "Ελληνικά Ω", "<<>> /Contents <00>", "endobj\nxref\n", "%"}) {
            auto made = report::signReport(m_built, sample::identity(), {base::now(), reason});
            QVERIFY2(made, made ? "" : sample::toText(made.error()).c_str());
            QCOMPARE(report::checkSeal(*made)->reason, std::string(reason));
            QVERIFY(sample::run("pdfsig", {put("awkward.pdf", *made)}).words.contains("Signature is Valid"));
        }
    }

    void keyThatLiesElsewhere()
    {
        journal::Identity far = sample::identity();
        far.key = std::make_shared<FarKey>(far.key);
        QCOMPARE(sample::codeOf(report::signReport(m_built, far, sample::signing())), std::string("no error"));
        far.key = std::make_shared<NoKey>();
        QCOMPARE(sample::codeOf(report::signReport(m_built, far, sample::signing())), std::string("key.cannot-sign"));
    }

    void keyOfAnotherCertificateNeverLeaves()
    {
        journal::Identity mixed = sample::identity();
        const auto machine = journal::openMachineKey(m_folder.filePath("machine").toStdString());
        mixed.key = machine.value();
        QCOMPARE(sample::codeOf(report::signReport(m_built, mixed, sample::signing())), std::string("seal.signature"));
    }

    void signedTwice()
    {
        QCOMPARE(sample::codeOf(report::signReport(m_signed, sample::identity(), sample::signing())),
                 std::string("seal.already-signed"));
    }

    void withoutAReason()
    {
        QCOMPARE(sample::codeOf(report::signReport(m_built, sample::identity(), {base::now(), ""})),
                 std::string("seal.fact-missing"));
    }

    void outsideTheCertificatesLife()
    {
        for (const std::int64_t at : {std::int64_t{0}, sample::identity().facts.validUntil_utc_ms + 1000})
            QCOMPARE(sample::codeOf(report::signReport(m_built, sample::identity(), {{at, 0}, "why"})),
                     std::string("seal.signed-outside-life"));
    }

    void nothingToSign()
    {
        const auto code = [](const std::string& pdf) {
            return sample::codeOf(report::signReport(pdf, sample::identity(), sample::signing()));
        };
        QCOMPARE(code(""), std::string("seal.syntax"));
        QCOMPARE(code(m_built.substr(0, m_built.size() / 2)), std::string("seal.syntax"));
        QCOMPARE(code(m_built + "x"), std::string("seal.cut-short"));
        QCOMPARE(code(sample::drawn()), std::string("seal.field-missing"));
    }

    void noRoomForASignature()
    {
        auto unsealed = report::appendUpdate(m_built, {"Installer", "D:20261125090200Z", "n", "r"});
        QVERIFY(unsealed);
        QCOMPARE(sample::codeOf(report::fillIn(*unsealed, std::string(8193, 'x'))), std::string("seal.no-room"));
        QCOMPARE(sample::codeOf(report::fillIn(*unsealed, std::string(8192, 'x'))), std::string("no error"));
    }
};

QTEST_MAIN(SignTest)
#include "sign.moc"
