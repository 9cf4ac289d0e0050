// SPDX-License-Identifier: GPL-3.0-or-later
// Every case here is a report that some reader lets pass. PROOFWALK_LONG=1 flips a bit in every byte.
#include "core/report/sealcheck.h"

#include "core/base/digest.h"
#include "core/report/cmscheck.h"
#include "tests/report/forgery.h"

#include <QtTest>

#include <functional>

using namespace proofwalk;

// Before the class: g++ that optimises asks for it while it reads the class.
Q_DECLARE_METATYPE(std::function<void(forgery::Update&)>)

class SealCheckTest : public QObject {
    Q_OBJECT

    QTemporaryDir m_folder;
    std::string m_built, m_signed;

    static std::string codeOf(const std::string& pdf) { return sample::codeOf(report::checkSeal(pdf)); }

    std::size_t digitsAt() const { return m_signed.rfind("/Contents <") + 11; }

private slots:
    void initTestCase()
    {
        m_built = sample::built().value();
        m_signed = report::signReport(m_built, sample::identity(), sample::signing()).value();
    }

    void tellsWhoSignedWhatAndWhen()
    {
        const auto before = base::now().utc_ms;
        const auto made = report::signReport(m_built, sample::identity(), sample::signing());
        const auto found = report::checkSeal(*made);
        QVERIFY2(found, found ? "" : sample::toText(found.error()).c_str());
        QCOMPARE(found->signerName, std::string("Zoë Ångström"));
        QCOMPARE(found->firm, std::string("Kłos & Söhne (Alarms)"));
        QCOMPARE(found->rootFingerprint, base::sha256Hex(sample::identity().rootDer));
        QVERIFY(found->signedAt.utc_ms >= before / 1000 * 1000 && found->signedAt.utc_ms <= base::now().utc_ms);
        QCOMPARE(found->reason, sample::signing().reason);
        QVERIFY(found->problems.empty());
        QCOMPARE(found->attachments.size(), std::size_t{3});
        for (const auto& attachment : sample::attachments())
            QCOMPARE(found->attachments.at(attachment.name), attachment.bytes);
    }

    void cutAnywhere()
    {
        QCOMPARE(codeOf(m_signed.substr(0, m_signed.size() / 2)), std::string("seal.cut-short"));
        QCOMPARE(codeOf(m_signed.substr(0, m_signed.size() - 1)), std::string("seal.cut-short"));
        QCOMPARE(codeOf(m_built), std::string("seal.not-signed"));
        QCOMPARE(codeOf(""), std::string("seal.not-a-pdf"));
        QCOMPARE(codeOf("%PDF-1.7\n"), std::string("seal.cut-short"));
        for (std::size_t length = 0; length < m_signed.size(); length += 997)
            QVERIFY2(codeOf(m_signed.substr(0, length)) != "no error", qPrintable(QString::number(length)));
    }

    void somethingBefore()
    {
        QVERIFY(codeOf("\n" + m_signed) != "no error");
        QVERIFY(codeOf(m_signed.substr(1)) != "no error");
    }

    void bytesBehindTheEnd()
    {
        QCOMPARE(codeOf(m_signed + "\n"), std::string("seal.cut-short"));
        QCOMPARE(codeOf(m_signed + std::string(1, '\0')), std::string("seal.cut-short"));
        QCOMPARE(codeOf(m_signed + m_signed), std::string("seal.appended")); // its last table lies in the first half
    }

    /// The page is drawn anew in an update of its own; the signature stays sound for the bytes it covers.
    void pageReplacedAfterwards()
    {
        const auto table = m_signed.size() + std::string("2 0 obj\n<< /Title (Another) >>\nendobj\n").size();
        const auto info = m_signed.find("/Info ", m_signed.rfind("trailer")) + 6;
        const std::string number = m_signed.substr(info, m_signed.find(' ', info) - info);
        const auto last = m_signed.rfind("startxref\n") + 10;
        const auto words = m_signed.rfind("/Size");
        const std::string update =
            m_signed + "2 0 obj\n<< /Title (Another) >>\nendobj\n"
            + fmt::format("xref\n0 1\n0000000000 65535 f \n{} 1\n{:010} 00000 n \ntrailer << {} /Prev {} >>\n"
                          "startxref\n{}\n%%EOF\n",
                          number, m_signed.size(), m_signed.substr(words, m_signed.find("/Prev", words) - words),
                          m_signed.substr(last, m_signed.find('\n', last) - last), table);
        const auto found = report::checkSeal(update);
        QVERIFY2(sample::codeOf(found) == "seal.appended", found ? "no error" : sample::toText(found.error()).c_str());
        // The judge agrees that this is a case: a reader still calls it valid (pdfsig, a public test source).
        const QString file = m_folder.filePath("updated.pdf");
        QVERIFY(base::writeFile(file.toStdString(), update));
        const QString said = sample::run("pdfsig", {file}).words;
        QVERIFY2(said.contains("Signature is Valid") && said.contains("Not total document signed"), qPrintable(said));
    }

    void oneBitAnywhere()
    {
        const bool all = qEnvironmentVariable("PROOFWALK_LONG") == "1";
        const std::size_t zerosAt = m_signed.find(std::string(600, '0'), digitsAt());
        int flips = 0;
        for (std::size_t at = 0; at < m_signed.size(); ++at) {
            const bool inUpdate = at >= m_built.size() && (at < zerosAt || at > digitsAt() + 16380);
            if (!all && at % (inUpdate ? 7 : 101) != 0) continue;
            std::string changed = m_signed;
            changed[at] = static_cast<char>(changed[at] ^ (1 << (at % 8)));
            QVERIFY2(codeOf(changed) != "no error", qPrintable(QString("byte %1").arg(at)));
            ++flips;
        }
        QVERIFY(flips > 500);
    }

    /// The signature without the file around it: one bit of every byte, all eight in the long run.
    void oneBitOfTheSignature()
    {
        const std::string content = "content", der = report::signedData(content, sample::identity()).value();
        QVERIFY(report::checkSignedData(der, content));
        QCOMPARE(sample::codeOf(report::checkSignedData(der, "Content")), std::string("seal.digest"));
        const std::size_t step = qEnvironmentVariable("PROOFWALK_LONG") == "1" ? 1 : 9;
        int unseen = 0;
        for (std::size_t bit = 0; bit < der.size() * 8; bit += step) {
            std::string changed = der;
            changed[bit / 8] = static_cast<char>(changed[bit / 8] ^ (1 << (bit % 8)));
            const auto by = report::checkSignedData(changed, content);
            // The root lies in it as it came: that is for the chain and for the printed fingerprint.
            if (by && base::sha256Hex(by->rootDer) == base::sha256Hex(sample::identity().rootDer)) ++unseen;
        }
        QCOMPARE(unseen, 0);
        QVERIFY(!report::checkSignedData(der + '\0', content));
        QVERIFY(!report::checkSignedData("", content));
        for (std::size_t length = 0; length < der.size(); length += 7)
            QVERIFY(!report::checkSignedData(der.substr(0, length), content));
    }

    void digitsOfThePaddingAndOfTheCase()
    {
        std::string changed = m_signed;
        const auto letter = changed.find_first_of("abcdef", digitsAt());
        changed[letter] = static_cast<char>(changed[letter] - 'a' + 'A');
        QCOMPARE(codeOf(changed), std::string("seal.contents"));
        changed = m_signed;
        changed[digitsAt() + 16383] = '1';
        QCOMPARE(codeOf(changed), std::string("seal.contents"));
        changed = m_signed;
        changed[digitsAt() + 16000] = ' ';
        QVERIFY(codeOf(changed) != "no error");
    }

    void signedUpdates_data()
    {
        using Change = std::function<void(forgery::Update&)>;
        QTest::addColumn<Change>("change");
        QTest::addColumn<QByteArray>("code");
        const auto row = [](const char* name, const char* code, Change change) {
            QTest::newRow(name) << change << QByteArray(code);
        };
        using Update = forgery::Update;
        row("as it should be", "no error", [](Update&) {});
        row("digits in capitals", "seal.contents", [](Update& u) { u.capitals = true; });
        row("padding that is not zero", "seal.contents", [](Update& u) { u.padding = "01"; });
        row("range begins later", "seal.byte-range", [](Update& u) { u.range = "9 {} {} {}"; });
        row("range of three", "seal.byte-range", [](Update& u) { u.range = "0 {} {}"; });
        row("range of six", "seal.byte-range", [](Update& u) { u.range = "0 {} {} {} 0 0"; });
        row("range beyond the end", "seal.byte-range", [](Update& u) { u.range = "0 {} {} {}9"; });
        row("range of another hole", "seal.byte-range", [](Update& u) { u.range = "0 5 {1} {2}"; });
        row("range that ends early", "seal.appended", [](Update& u) { u.range = "0 {} {} 11"; });
        row("negative range", "seal.byte-range", [](Update& u) { u.range = "0 -1 16385 9"; });
        row("another kind of signature", "seal.dictionary",
            [](Update& u) { u.type = "/Type /Sig /Filter /Adobe.PPKLite /SubFilter /adbe.pkcs7.detached"; });
        row("more in the dictionary", "seal.dictionary", [](Update& u) { u.words += " /Location (elsewhere)"; });
        row("no reason", "seal.dictionary", [](Update& u) { u.words = "/Name (x)"; });
        row("name that is no string", "seal.dictionary", [](Update& u) { u.words = "/Name /x /Reason (why)"; });
        row("contents before the contents", "seal.dictionary",
            [](Update& u) { u.words = "/Name (x) /Reason (why) /Prop_Build << /X 1 >>"; });
        row("more behind the digits", "seal.dictionary", [](Update& u) { u.behind = " /X 1 >>\nendobj\n"; });
        row("contents twice", "seal.syntax", [](Update& u) { u.behind = " /Contents <00> >>\nendobj\n"; });
        row("name of somebody else", "seal.name", [](Update& u) { u.words = "/Name (Somebody) /Reason (why)"; });
        row("time in another form", "seal.time", [](Update& u) { u.time = "D:20261125113000+00'00'"; });
        row("time before the certificate", "certificate.chain", [](Update& u) { u.time = "D:20200101000000Z"; });
        row("time after the certificate", "certificate.chain", [](Update& u) { u.time = "D:20990101000000Z"; });
        row("field made larger", "seal.revision", [](Update& u) { u.fieldWords += " /MK << >>"; });
        row("field moved", "seal.revision",
            [](Update& u) { u.fieldWords.replace(u.fieldWords.find("/Rect [ "), 8, "/Rect [ 1"); });
        row("value without the key", "seal.not-signed", [](Update& u) { u.value = "/DV"; });
        row("one object more", "seal.revision", [](Update& u) {
            u.extra = "20 0 obj\n<< /Type /Page >>\nendobj\n";
            u.extraEntries = "20 1\n{} 00000 n \n";
        });
        row("one object more, in no table", "seal.revision", [](Update& u) { u.extra = "x"; });
        row("identifier of another document", "seal.revision",
            [](Update& u) { u.trailerWords.replace(u.trailerWords.find('<') + 1, 2, "00"); });
        row("more in the trailer", "seal.revision", [](Update& u) { u.trailerWords += " /X 1"; });
        row("no file before", "seal.syntax", [](Update& u) { u.previous = "0"; });
    }
    void signedUpdates()
    {
        QFETCH(std::function<void(forgery::Update&)>, change);
        QFETCH(QByteArray, code);
        forgery::Update update = forgery::of(m_built);
        update.time = nowInPdf();
        change(update);
        const auto found = report::checkSeal(forgery::sealed(update));
        QVERIFY2(sample::codeOf(found) == code.toStdString(),
                 found ? "no error" : sample::toText(found.error()).c_str());
    }

    /// An update of its own before the signed one: what was looked at before signing is not the file's one revision.
    void unseenRevisionBeforeSigning()
    {
        forgery::Update update = forgery::of(m_built);
        update.time = nowInPdf();
        const auto at = update.before.size();
        update.before +=
            fmt::format("xref\n0 1\n0000000000 65535 f \ntrailer << /Size {} {} /Prev {} >>\nstartxref\n{}\n%%EOF\n",
                        update.size, update.trailerWords, update.previous, at);
        update.previous = std::to_string(at);
        const auto found = report::checkSeal(forgery::sealed(update));
        QVERIFY(!found);
        QCOMPARE(sample::toText(found.error()), std::string(" seal.revision part=/Prev"));
    }

    /// Whoever changes the report can sign it anew, but not as the root whose fingerprint was printed.
    void signedAnewBySomebodyElse()
    {
        const auto folder = std::filesystem::path(m_folder.filePath("other").toStdString());
        QVERIFY(journal::createIdentity(folder, {"Zoë Ångström", "Kłos & Söhne (Alarms)"}, sample::passphrase));
        const auto other = journal::openIdentity(folder, sample::passphrase);
        const auto made = report::signReport(m_built, *other, sample::signing());
        const auto found = report::checkSeal(*made);
        QVERIFY(found);
        QCOMPARE(found->signerName, std::string("Zoë Ångström"));
        QVERIFY(found->rootFingerprint != report::checkSeal(m_signed)->rootFingerprint);
    }

    void rootThatDidNotIssueTheSigner()
    {
        const auto folder = std::filesystem::path(m_folder.filePath("stranger").toStdString());
        QVERIFY(journal::createIdentity(folder, {"Stranger", ""}, sample::passphrase));
        journal::Identity mixed = sample::identity();
        mixed.rootDer = journal::openIdentity(folder, sample::passphrase)->rootDer;
        QCOMPARE(sample::codeOf(report::signReport(m_built, mixed, sample::signing())),
                 std::string("certificate.chain"));
    }

    /// What another tool makes of the same key: valid, yet not of the one form (openssl, a public test source).
    void signaturesOfOtherForms()
    {
        const auto folder = std::filesystem::path(m_folder.filePath("forms").toStdString());
        QVERIFY(journal::createIdentity(folder, {"Form", ""}, sample::passphrase));
        QVERIFY(base::writeFile(folder / "content", "content"));
        const auto made = [&](const QStringList& more) {
            const QString in = QString::fromStdString(folder.string());
            const auto said =
                sample::run("openssl",
                            QStringList{"cms", "-sign", "-binary", "-outform", "DER", "-in", "content", "-signer",
                                        "signer.pem", "-inkey", "signer.key", "-passin",
                                        "pass:" + QString::fromStdString(sample::passphrase), "-out", "out.der"}
                                + more,
                            in);
            if (said.status != 0) return std::string("openssl: " + said.words.toStdString());
            const auto found = report::checkSignedData(base::readFile(folder / "out.der").value(), "content");
            return found ? std::string("no error") : sample::toText(found.error());
        };
        const QStringList root{"-certfile", "root.pem"};
        QCOMPARE(made(root + QStringList{"-cades", "-md", "sha256"}),
                 std::string(" seal.cms part=message-digest")); // a time
        QCOMPARE(made(QStringList{"-cades", "-md", "sha256"}), std::string(" seal.cms part=certificates"));
        QCOMPARE(made(root + QStringList{"-cades", "-md", "sha384"}), std::string(" seal.cms part=digestAlgorithms"));
        QCOMPARE(made(root + QStringList{"-noattr", "-md", "sha256"}),
                 std::string(" seal.cms part=SignerInfo.signedAttrs"));
        QCOMPARE(made(root + QStringList{"-nodetach", "-cades", "-md", "sha256"}),
                 std::string(" seal.cms part=encapContentInfo"));
        QCOMPARE(made(root + QStringList{"-keyid", "-cades", "-md", "sha256"}), std::string(" seal.cms part=version"));
    }

    void rubbish()
    {
        for (const char* text :
             {"%PDF-1.7\nstartxref\n0\n%%EOF\n", "%PDF-1.7\nxref\n0 1\n0000000000 65535 f \ntrailer << /Size 1 "
                                                 "/Root 1 0 R >>\nstartxref\n9\n%%EOF\n"})
            QCOMPARE(codeOf(text), std::string("seal.syntax"));
        std::string nested = "%PDF-1.7\n1 0 obj\n" + std::string(100000, '[')
                           + "\nendobj\nxref\n0 2\n0000000000 65535 f \n0000000009 00000 n \n";
        nested += "trailer << /Size 2 /Root 1 0 R >>\nstartxref\n" + std::to_string(nested.find("xref")) + "\n%%EOF\n";
        QCOMPARE(codeOf(nested), std::string("seal.syntax"));
    }

private:
    static std::string nowInPdf()
    {
        return "D:" + QDateTime::currentDateTimeUtc().toString("yyyyMMddHHmmss").toStdString() + "Z";
    }
};

QTEST_MAIN(SealCheckTest)
#include "sealcheck.moc"
