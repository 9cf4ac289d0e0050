// SPDX-License-Identifier: GPL-3.0-or-later
// What is asked of the file is asked through other programs, public test sources: qpdf, and those of poppler. The rules
// of PDF/A-3b are from memory of ISO 19005-3.
#include "core/report/pdfa.h"

#include "core/report/pdfacheck.h"
#include "tests/report/sample.h"

#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>
#include <QXmlStreamReader>
#include <QtTest>

#include <qpdf/Buffer.hh>
#include <qpdf/QPDFWriter.hh>

#include <functional>

using namespace proofwalk;

// Before the class: g++ that optimises asks for it while it reads the class.
Q_DECLARE_METATYPE(std::function<void(QPDF&)>)

namespace {

using Handle = QPDFObjectHandle;

/// The first object of that type.
Handle firstOf(QPDF& pdf, const char* type, const char* subtype = nullptr)
{
    for (Handle object : pdf.getAllObjects()) {
        auto dictionary = report::dictionaryOf(object);
        if (dictionary && report::nameAt(*dictionary, "/Type") == type
            && (subtype == nullptr || report::nameAt(*dictionary, "/Subtype") == subtype))
            return *dictionary;
    }
    throw std::runtime_error(std::string("no ") + type);
}

} // namespace

class PdfaTest : public QObject {
    Q_OBJECT

    QTemporaryDir m_folder;
    std::string m_built;
    QString m_file;
    QJsonObject m_objects;

    QJsonObject value(const QString& reference) const
    {
        return m_objects["obj:" + reference].toObject()["value"].toObject();
    }

private slots:
    void initTestCase()
    {
        auto built = sample::built();
        QVERIFY2(built, built ? "" : sample::toText(built.error()).c_str());
        m_built = *built;
        m_file = m_folder.filePath("built.pdf");
        QVERIFY(base::writeFile(m_file.toStdString(), m_built));
        const auto json = sample::run("qpdf", {"--json=2", m_file}).words.toUtf8();
        m_objects = QJsonDocument::fromJson(json)["qpdf"][1].toObject();
        QVERIFY(m_objects.contains("trailer"));
    }

    void anotherToolFindsNoFault()
    {
        const auto said = sample::run("qpdf", {"--check", m_file});
        QCOMPARE(said.status, 0);
        QVERIFY2(said.words.contains("PDF Version: 1.7\n")
                     && said.words.contains("No syntax or stream encoding errors"),
                 qPrintable(said.words));
    }

    void fontsAreEmbeddedAndNamedAsSubsets()
    {
        const QStringList lines = sample::run("pdffonts", {m_file}).words.trimmed().split('\n').mid(2);
        QCOMPARE(lines.size(), 2);
        for (const QString& line : lines)
            QVERIFY2(line.contains(QRegularExpression("yes +yes +yes")), qPrintable(line));
    }

    void wordsCanBeFound()
    {
        const QString words = sample::run("pdftotext", {m_file, "-"}).words;
        QVERIFY2(words.contains(QString::fromUtf8("verified: 3.40 kΩ, Küche, grzejnik, “office”")), qPrintable(words));
    }

    void saysWhatItIs()
    {
        const QString words = sample::run("pdfinfo", {"-isodates", m_file}).words;
        QVERIFY(words.contains(QString::fromUtf8("Lantern Mill: walk test & handover <Küche>\n")));
        QVERIFY(words.contains(QRegularExpression("Creator: +Proofwalk 0.1.0\n")));
        QVERIFY2(words.contains(QRegularExpression("CreationDate: +2026-11-25T10:02:00\\+01\n")), qPrintable(words));
        QVERIFY(words.contains(QRegularExpression("JavaScript: +no\n")));
    }

    void packetIsSoundXmlAndSaysPartThree()
    {
        QXmlStreamReader xml(sample::run("pdfinfo", {"-meta", m_file}).words);
        QMap<QString, QString> texts;
        QString last;
        while (!xml.atEnd()) {
            xml.readNext();
            if (xml.isStartElement()) last = xml.namespaceUri().toString() + xml.name().toString();
            if (xml.isCharacters() && !xml.isWhitespace()) texts[last] += xml.text().toString();
        }
        QVERIFY2(!xml.hasError(), qPrintable(xml.errorString()));
        QCOMPARE(texts["http://www.aiim.org/pdfa/ns/id/part"], "3");
        QCOMPARE(texts["http://www.aiim.org/pdfa/ns/id/conformance"], "B");
        QCOMPARE(texts["http://www.w3.org/1999/02/22-rdf-syntax-ns#li"],
                 QString::fromUtf8("Lantern Mill: walk test & handover <Küche>"));
        QCOMPARE(texts["http://ns.adobe.com/xap/1.0/CreateDate"], "2026-11-25T10:02:00+01:00");
        QCOMPARE(texts["http://ns.adobe.com/xap/1.0/ModifyDate"], "2026-11-25T10:02:00+01:00");
    }

    void attachedFilesComeOutAsTheyWentIn()
    {
        for (const auto& attachment : sample::attachments()) {
            const QString out = m_folder.filePath("out-" + QString::fromStdString(attachment.name));
            QCOMPARE(sample::run("pdfdetach", {"-savefile", QString::fromStdString(attachment.name), "-o", out, m_file})
                         .status,
                     0);
            QCOMPARE(base::readFile(out.toStdString()).value(), attachment.bytes);
        }
        QVERIFY(sample::run("pdfdetach", {"-list", m_file}).words.startsWith("3 embedded files"));
    }

    void catalogueHoldsWhatAnArchiveAsksFor()
    {
        const auto trailer = m_objects["trailer"].toObject()["value"].toObject();
        QCOMPARE(trailer["/ID"].toArray().size(), 2);
        const auto root = value(trailer["/Root"].toString());
        QCOMPARE(root["/Lang"].toString(), "u:en-GB");
        QCOMPARE(root["/OutputIntents"].toArray().size(), 1);
        QCOMPARE(root["/AF"].toArray().size(), 3);
        QCOMPARE(root["/ViewerPreferences"]["/DisplayDocTitle"].toBool(), true);
        for (const auto& reference : root["/AF"].toArray()) {
            const auto spec = value(reference.toString());
            QCOMPARE(spec["/AFRelationship"].toString(), "/Data");
            QVERIFY(spec.contains("/F") && spec.contains("/UF"));
            const auto stream =
                m_objects.value("obj:" + spec.value("/EF")["/F"].toString())["stream"]["dict"].toObject();
            QVERIFY(stream["/Subtype"].toString().contains('/'));
            QVERIFY(stream["/Params"].toObject().contains("/ModDate"));
        }
        QVERIFY(!QJsonDocument(m_objects).toJson().contains("/CIDSet"));
        QVERIFY(!QJsonDocument(m_objects).toJson().contains("/ObjStm"));
    }

    /// A4 is 842 points high in Qt's file: 600 from the top with a height of 60 lies at 182 to 242.
    void oneEmptyFieldWhereItWasDrawn()
    {
        const auto trailer = m_objects["trailer"].toObject()["value"].toObject();
        const auto root = value(trailer["/Root"].toString());
        const auto fields = value(root["/AcroForm"].toString())["/Fields"].toArray();
        QCOMPARE(fields.size(), 1);
        const auto field = value(fields[0].toString());
        QCOMPARE(field["/T"].toString(), "u:Installer");
        QCOMPARE(field["/F"].toInt(), 132);
        QVERIFY(!field.contains("/V"));
        QCOMPARE(field["/Rect"].toArray(), QJsonArray({60, 182, 260, 242}));
        QVERIFY(value(field["/P"].toString())["/Annots"].toArray().contains(fields[0]));
        QCOMPARE(field["/AP"].toObject().keys(), QStringList{"/N"});
    }

    /// The second drawing has another identifier and another title of Qt's own.
    void sameRecordSameBytes()
    {
        const std::string other = sample::drawn("another title");
        QVERIFY(other != sample::drawn());
        QCOMPARE(report::buildPdfA(other, sample::facts(), sample::attachments(), sample::place).value(), m_built);
    }

    void withoutAttachments()
    {
        auto built = report::buildPdfA(sample::drawn(), sample::facts(), {}, sample::place);
        QCOMPARE(sample::codeOf(built), std::string("no error"));
    }

    void manyAttachments()
    {
        std::vector<report::Attachment> many;
        for (int i = 0; i < 200; ++i) many.push_back({std::to_string(i) + ".txt", "text/plain", std::to_string(i), ""});
        auto built = report::buildPdfA(sample::drawn(), sample::facts(), many, sample::place);
        QVERIFY(built);
        const QString file = m_folder.filePath("many.pdf");
        QVERIFY(base::writeFile(file.toStdString(), *built));
        QVERIFY(sample::run("pdfdetach", {"-list", file}).words.startsWith("200 embedded files"));
    }

    void refusesWhatItWasGiven_data()
    {
        QTest::addColumn<QByteArray>("name");
        QTest::addColumn<QByteArray>("code");
        QTest::newRow("no name") << QByteArray("") << QByteArray("seal.attachment-name");
        QTest::newRow("a path") << QByteArray("../x") << QByteArray("seal.attachment-name");
        QTest::newRow("hidden") << QByteArray(".x") << QByteArray("seal.attachment-name");
        QTest::newRow("a name there already") << QByteArray("results.csv") << QByteArray("seal.attachment-twice");
    }
    void refusesWhatItWasGiven()
    {
        QFETCH(QByteArray, name);
        QFETCH(QByteArray, code);
        auto attachments = sample::attachments();
        attachments.push_back({name.toStdString(), "text/plain", "x", ""});
        QCOMPARE(sample::codeOf(report::buildPdfA(sample::drawn(), sample::facts(), attachments, sample::place)),
                 code.toStdString());
    }

    void refusesFieldsThatLieNowhere()
    {
        const auto built = [](report::SignaturePlace place) {
            return sample::codeOf(report::buildPdfA(sample::drawn(), sample::facts(), {}, place));
        };
        QCOMPARE(built({2, 0, 0, 10, 10}), std::string("seal.field-page"));
        QCOMPARE(built({-1, 0, 0, 10, 10}), std::string("seal.field-page"));
        QCOMPARE(built({0, 590, 0, 10, 10}), std::string("seal.field-outside"));
        QCOMPARE(built({0, 0, 840, 10, 10}), std::string("seal.field-outside"));
        QCOMPARE(built({0, -1, 0, 10, 10}), std::string("seal.field-outside"));
        QCOMPARE(built({0, 0, 0, 0, 10}), std::string("seal.field-outside"));
    }

    void refusesMissingFacts()
    {
        auto facts = sample::facts();
        facts.title = "";
        QCOMPARE(sample::codeOf(report::buildPdfA(sample::drawn(), facts, {}, sample::place)),
                 std::string("seal.fact-missing"));
        facts.title = std::string("a\0b", 3);
        QCOMPARE(sample::codeOf(report::buildPdfA(sample::drawn(), facts, {}, sample::place)),
                 std::string("seal.fact-missing"));
    }

    void refusesWhatQtDidNotWriteThatWay()
    {
        const auto code = [](const std::string& drawn) {
            return sample::codeOf(report::buildPdfA(drawn, sample::facts(), {}, sample::place));
        };
        QCOMPARE(code(""), std::string("seal.syntax"));
        QCOMPARE(code("not a PDF at all"), std::string("seal.syntax"));
        QCOMPARE(code(sample::drawn().substr(0, 5000)), std::string("seal.syntax"));
        QCOMPARE(code(m_built), std::string("seal.has-form"));
        QCOMPARE(code(sample::drawn("", QPagedPaintDevice::PdfVersion_1_6)), std::string("seal.pdfa-intent"));
    }

    void everyRuleIsKept_data()
    {
        using Change = std::function<void(QPDF&)>;
        QTest::addColumn<Change>("change");
        QTest::addColumn<QByteArray>("code");
        const auto row = [](const char* name, const char* code, Change change) {
            QTest::newRow(name) << change << QByteArray(code);
        };
        const auto set = [&](const char* name, const char* code, const char* type, const char* key, const char* value) {
            row(name, code, [=](QPDF& pdf) { firstOf(pdf, type).replaceKey(key, Handle::parse(value)); });
        };
        row("nothing changed", "", [](QPDF&) {});
        row("no identifier", "seal.pdfa-id", [](QPDF& pdf) { pdf.getTrailer().removeKey("/ID"); });
        row("no packet", "seal.pdfa-metadata", [](QPDF& pdf) { pdf.getRoot().removeKey("/Metadata"); });
        row("another part", "seal.pdfa-part", [](QPDF& pdf) {
            Handle packet = pdf.getRoot().getKey("/Metadata");
            std::string text = *report::unpacked(packet, 100000);
            text.replace(text.find("part>3"), 6, "part>2");
            packet.replaceStreamData(text, Handle::newNull(), Handle::newNull());
        });
        row("title differs", "seal.pdfa-facts",
            [](QPDF& pdf) { pdf.getTrailer().getKey("/Info").replaceKey("/Title", Handle::newString("Another")); });
        row("time differs", "seal.pdfa-facts", [](QPDF& pdf) {
            pdf.getTrailer().getKey("/Info").replaceKey("/ModDate", Handle::newString("D:20261125100201+01'00'"));
        });
        row("no intent", "seal.pdfa-intent", [](QPDF& pdf) { pdf.getRoot().removeKey("/OutputIntents"); });
        row("profile of four colours", "seal.pdfa-profile", [](QPDF& pdf) {
            Handle intent = pdf.getRoot().getKey("/OutputIntents").getArrayItem(0);
            intent.getKey("/DestOutputProfile").getDict().replaceKey("/N", Handle::newInteger(4));
        });
        row("font file gone", "seal.pdfa-font",
            [](QPDF& pdf) { firstOf(pdf, "/FontDescriptor").removeKey("/FontFile2"); });
        row("font without words", "seal.pdfa-font",
            [](QPDF& pdf) { firstOf(pdf, "/Font", "/Type0").removeKey("/ToUnicode"); });
        row("font of another name", "seal.pdfa-font",
            [](QPDF& pdf) { firstOf(pdf, "/Font", "/Type0").replaceKey("/BaseFont", Handle::newName("/Other")); });
        set("CIDSet", "seal.pdfa-font", "/FontDescriptor", "/CIDSet", "(x)");
        set("open action", "seal.pdfa-action", "/Catalog", "/OpenAction", "<< /S /JavaScript /JS (app.alert) >>");
        set("page action", "seal.pdfa-action", "/Page", "/AA", "<< /O << /S /Named >> >>");
        set("launch deep inside", "seal.pdfa-action", "/Page", "/X", "[ << /Y [ << /S /Launch >> ] >> ]");
        set("needs appearances", "seal.pdfa-form", "/Catalog", "/AcroForm", "<< /NeedAppearances true >>");
        set("form in XML", "seal.pdfa-form", "/Catalog", "/AcroForm", "<< /XFA [] >>");
        set("hidden field", "seal.pdfa-annotation", "/Annot", "/F", "6");
        set("field not printed", "seal.pdfa-annotation", "/Annot", "/F", "128");
        set("field without looks", "seal.pdfa-annotation", "/Annot", "/AP", "<< >>");
        set("field with two looks", "seal.pdfa-annotation", "/Annot", "/AP", "<< /N null /D (x) >>");
        set("stream from elsewhere", "seal.pdfa-stream", "/EmbeddedFile", "/F", "(elsewhere)");
        set("file of no type", "seal.pdfa-attachment", "/EmbeddedFile", "/Subtype", "null");
        set("file of no relationship", "seal.pdfa-attachment", "/Filespec", "/AFRelationship", "null");
        set("file of one name", "seal.pdfa-attachment", "/Filespec", "/UF", "null");
        set("file that belongs to nothing", "seal.pdfa-attachment", "/Catalog", "/AF", "[]");
        row("smoothed picture", "seal.pdfa-image",
            [](QPDF& pdf) { firstOf(pdf, "/XObject", "/Image").replaceKey("/Interpolate", Handle::newBool(true)); });
    }
    void everyRuleIsKept()
    {
        QFETCH(std::function<void(QPDF&)>, change);
        QFETCH(QByteArray, code);
        auto pdf = report::openPdf(m_built);
        QVERIFY(pdf);
        change(**pdf);
        std::string found;
        for (const Error& problem : report::pdfaProblems(**pdf, m_built)) found += problem.code + ' ';
        if (code.isEmpty()) QCOMPARE(found, std::string());
        QVERIFY2(found.find(code.toStdString()) != std::string::npos, found.c_str());
    }

    /// A million zeros pack into a thousand bytes.
    void unpacksNoMoreThanIsAllowed()
    {
        const std::vector<report::Attachment> zeros{
            {"zeros", "application/octet-stream", std::string(1000000, '\0'), ""}};
        const auto built = report::buildPdfA(sample::drawn(), sample::facts(), zeros, sample::place).value();
        QVERIFY(built.size() < 100000);
        auto pdf = report::openPdf(built);
        for (Handle object : (*pdf)->getAllObjects()) {
            const auto dictionary = report::dictionaryOf(object);
            if (!dictionary || report::nameAt(*dictionary, "/Type") != "/EmbeddedFile") continue;
            QVERIFY(!report::unpacked(object, 999999));
            QCOMPARE(report::unpacked(object, 1000000).value(), zeros[0].bytes);
            return;
        }
        QFAIL("no file inside");
    }

    void headerOfAnotherVersion()
    {
        auto pdf = report::openPdf(m_built);
        std::string other = m_built;
        other[7] = '4';
        QCOMPARE(report::pdfaProblems(**pdf, other).front().code, std::string("seal.pdfa-header"));
        other = m_built;
        other[11] = 'x';
        QCOMPARE(report::pdfaProblems(**pdf, other).front().code, std::string("seal.pdfa-header"));
        QCOMPARE(report::pdfaProblems(**pdf, "").front().code, std::string("seal.pdfa-header"));
    }
};

QTEST_MAIN(PdfaTest)
#include "pdfa.moc"
