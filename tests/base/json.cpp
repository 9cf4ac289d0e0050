// SPDX-License-Identifier: GPL-3.0-or-later
// Source: RFC 8785 (its samples) and RFC 8259, as kept in tests/reference/record-vectors.json, where each was recomputed
// with a published canonicalizer. If npm's package "canonicalize" can be loaded by node here, it is asked as well.
#include "core/base/json.h"

#include <QFile>
#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>
#include <QProcess>
#include <QStandardPaths>
#include <QtTest>

using namespace proofwalk;
using base::Json;

namespace {

QJsonObject vectors()
{
    QFile file(PROOFWALK_SOURCE "/tests/reference/record-vectors.json");
    if (!file.open(QIODevice::ReadOnly)) qFatal("cannot open the vectors");
    return QJsonDocument::fromJson(file.readAll())["jcs"].toObject();
}

std::string bytesOf(const QJsonValue& hex) { return QByteArray::fromHex(hex.toString().toLatin1()).toStdString(); }

template <class T>
std::string codeOf(const Result<T>& result)
{
    return result ? "" : result.error().code;
}

} // namespace

class TestJson : public QObject {
    Q_OBJECT

private slots:
    // The RFC's own sample with its floats and its null cannot stand in a record, and is refused for the floats.
    void theSampleOfTheRfc()
    {
        const std::string sample = vectors()["sample"].toObject()["input"].toString().toStdString();
        const auto refused = base::parseJson(sample);
        QCOMPARE(codeOf(refused), std::string("json.number"));
        QVERIFY(refused.error().arguments == (std::vector<Argument>{{"found", std::string("333333333.33333329")}}));
    }
    // Its string, escapes and all, and its literals, but for null.
    void theStringOfTheSample()
    {
        const QJsonObject sample = vectors()["sample_integers_only"].toObject();
        std::string input = sample["input"].toString().toStdString();
        std::string wanted = bytesOf(sample["canonical_utf8_hex"]);
        for (std::string* text : {&input, &wanted}) text->erase(text->find("null,"), 5);
        QCOMPARE(base::canonical(base::parseJson(input).value()), wanted);
        QCOMPARE(codeOf(base::parseCanonical(input)), std::string("json.not-canonical"));
        QVERIFY(base::parseCanonical(wanted).has_value());
    }
    void controlCharacters()
    {
        const QJsonObject controls = vectors()["control_characters"].toObject();
        QCOMPARE(base::canonical(base::parseJson(controls["input"].toString().toStdString()).value()),
                 bytesOf(controls["canonical_utf8_hex"]));
    }
    // Sorting by UTF-16 (RFC 8785, 3.2.3) and by bytes agree for ASCII, which is why no other key is allowed.
    void keysBeyondAsciiAreRefused()
    {
        QCOMPARE(codeOf(base::parseJson(vectors()["sorting"].toObject()["input"].toString().toStdString())),
                 std::string("json.key"));
        QCOMPARE(codeOf(base::parseJson("{\"a\\n\":1}")), std::string("json.key"));
        QCOMPARE(base::canonical(base::parseJson("{ \"b\":1, \"a\":2, \"B\":3, \"\":4, \"a-\":5, \"a0\":6 }").value()),
                 std::string("{\"\":4,\"B\":3,\"a\":2,\"a-\":5,\"a0\":6,\"b\":1}"));
    }
    void integers()
    {
        const QJsonObject integers = vectors()["integers_only"].toObject();
        for (const auto& each : integers["accept"].toArray()) {
            const std::string text = each.toString().toStdString();
            QCOMPARE(base::canonical(base::parseCanonical(text).value()), text);
        }
        for (const auto& each : integers["refuse"].toArray()) {
            const std::string text = each.toString().toStdString();
            for (const std::string& whole : {text, "[" + text + "]", "{\"a\":" + text + ",\"b\":\"1\"}"})
                QVERIFY2(!base::parseJson(whole), whole.c_str());
        }
    }
    void numbersAreQuotedAsFound_data()
    {
        QTest::addColumn<QString>("number");
        for (const char* number : {"-0", "0.5", "-0.0", "1.0", "1e3", "1E+2", "9007199254740992", "-9007199254740992",
                                   "9223372036854775808", "18446744073709551616", "1e999"})
            QTest::newRow(number) << QString(number);
    }
    void numbersAreQuotedAsFound()
    {
        QFETCH(QString, number);
        const auto refused = base::parseJson(("{\"a\":[\"-0 1.5 \\\"-0\",7," + number + "]}").toStdString());
        QCOMPARE(codeOf(refused), std::string("json.number"));
        QVERIFY(refused.error().arguments == (std::vector<Argument>{{"found", number.toStdString()}}));
    }
    void aNumberOfAThousandDigitsIsNotRepeated()
    {
        const auto refused = base::parseJson(std::string(1000, '9'));
        QCOMPARE(codeOf(refused), std::string("json.number"));
        QVERIFY(std::get<std::string>(refused.error().arguments.at(0).value).size() < 60);
    }
    void numbersInStringsAreStrings()
    {
        QVERIFY(base::parseJson("[\"-0\",\"1.5\",\"\\\\\",\"-0\"]").has_value());
        QVERIFY(base::parseJson("{\"-0\":\"1e3\"}").has_value());
    }

    void refusedTexts()
    {
        const QJsonObject published = vectors();
        for (const auto& each : published["refuse_text"].toArray()) {
            const std::string text = each.toString().toStdString();
            QVERIFY2(!base::parseJson(text), text.c_str());
        }
        for (const auto& each : published["refuse_bytes_hex"].toArray())
            QVERIFY2(!base::parseJson(bytesOf(each)), qPrintable(each.toString()));
    }
    void refusedWithTheirCodes_data()
    {
        QTest::addColumn<QByteArray>("text");
        QTest::addColumn<QByteArray>("code");
        const auto row = [](const char* name, QByteArray text, const char* code) {
            QTest::newRow(name) << text << QByteArray(code);
        };
        row("empty", "", "json.syntax");
        row("white space", "  \n", "json.syntax");
        row("NUL", QByteArray("{}\0", 3), "json.syntax");
        row("NUL in a string", QByteArray("\"a\0b\"", 5), "json.syntax");
        row("byte order mark", "\xEF\xBB\xBF{}", "json.bom");
        row("something after", "{} {}", "json.syntax");
        row("cut short", "{\"a\":[1,2", "json.syntax");
        row("string cut short", "{\"a", "json.syntax");
        row("comma too many", "[1,]", "json.syntax");
        row("single quotes", "{'a':1}", "json.syntax");
        row("raw line end in a string", "\"a\nb\"", "json.syntax");
        row("bad escape", "\"\\x41\"", "json.syntax");
        row("half a surrogate pair, first", "\"\\ud800\"", "json.syntax");
        row("half a surrogate pair, second", "\"\\udc00\"", "json.syntax");
        row("two first halves", "\"\\ud800\\ud800\"", "json.syntax");
        row("bad UTF-8", "\"\xFF\"", "json.syntax");
        row("overlong UTF-8", "\"\xC0\xAF\"", "json.syntax");
        row("a surrogate in UTF-8", "\"\xED\xA0\x80\"", "json.syntax");
        row("null", "null", "json.null");
        row("null within", "{\"a\":[null]}", "json.null");
        row("key twice", "{\"a\":1,\"a\":2}", "json.key-twice");
        row("key twice, one escaped", "{\"a\":1,\"\\u0061\":2}", "json.key-twice");
        row("a key that is half a pair", "{\"\\udc00\":1}", "json.syntax");
        row("True", "True", "json.syntax");
        row("comment", "{} // x", "json.syntax");
    }
    void refusedWithTheirCodes()
    {
        QFETCH(QByteArray, text);
        QFETCH(QByteArray, code);
        QCOMPARE(codeOf(base::parseJson(text.toStdString())), code.toStdString());
    }

    void depth()
    {
        const auto nested = [](std::size_t depth) { return std::string(depth, '[') + std::string(depth, ']'); };
        QVERIFY(base::parseJson(nested(32)).has_value());
        QCOMPARE(codeOf(base::parseJson(nested(33))), std::string("json.too-deep"));
        QCOMPARE(codeOf(base::parseJson(nested(200'000))), std::string("json.too-deep"));
        QVERIFY(!base::parseJson(std::string(200'000, '[')));
        QVERIFY(base::parseJson(nested(3), {.depth = 3}).has_value());
        QCOMPARE(codeOf(base::parseJson(nested(4), {.depth = 3})), std::string("json.too-deep"));
    }
    void length()
    {
        const std::string text = '"' + std::string(100, 'x') + '"';
        QVERIFY(base::parseJson(text, {.bytes = 102}).has_value());
        QCOMPARE(codeOf(base::parseJson(text, {.bytes = 101})), std::string("json.too-long"));
        QCOMPARE(codeOf(base::parseJson(std::string((1U << 20U) + 1, ' '))), std::string("json.too-long"));
    }

    void members()
    {
        Json event;
        event["n"] = 7;
        event["kind"] = "answer";
        event["body"]["pass"] = true;
        QCOMPARE(base::canonical(event), std::string("{\"body\":{\"pass\":true},\"kind\":\"answer\",\"n\":7}"));
        QCOMPARE(event.text("kind"), std::string("answer"));
        QCOMPARE(event.text("n"), std::string());
        QVERIFY(event.find("none") == nullptr);
        QVERIFY(Json(3).find("a") == nullptr);
        QCOMPARE(*event.find("n")->integer(), std::int64_t{7});
    }
    void canonicalReadsBack()
    {
        Json::Array all;
        for (int c = 0; c < 0x250; ++c) all.emplace_back(QString(QChar(c)).toStdString());
        const Json value{all};
        QVERIFY(base::parseCanonical(base::canonical(value)).value() == value);
    }

    // A second opinion by a program that shares nothing with ours.
    void theNodePackageAgrees()
    {
        const QString node = QStandardPaths::findExecutable("node");
        if (node.isEmpty()) QSKIP("node is not installed: the package canonicalize cannot be asked");
        const QString script = "const m=require('canonicalize');const c=m.default||m;"
                               "process.stdout.write(c(JSON.parse(require('fs').readFileSync(0,'utf8'))))";
        QProcess probe;
        probe.start(node, {"-e", "require('canonicalize')"});
        if (!probe.waitForFinished() || probe.exitCode() != 0) QSKIP("node has no package canonicalize here");
        Json::Object object;
        for (int i = 0; i < 500; ++i)
            object.emplace(
                QString::number(i * 7919 % 1000, 36).toStdString(),
                Json::Array{i - 250, i % 2 == 0, (QString(QChar(i)) + QString::fromUtf8("😀\\\"/")).toStdString()});
        QProcess process;
        process.start(node, {"-e", script});
        // Written the other way round and with white space, so that there is something to canonicalize.
        QByteArray spread;
        for (auto member = object.rbegin(); member != object.rend(); ++member)
            spread += (spread.isEmpty() ? "{ \"" : ",\n \"") + QByteArray::fromStdString(member->first)
                    + "\" : " + QByteArray::fromStdString(base::canonical(member->second));
        process.write(spread + "}");
        process.closeWriteChannel();
        QVERIFY(process.waitForFinished());
        QCOMPARE(process.readAllStandardOutput().toStdString(), base::canonical(Json(object)));
    }
};

QTEST_GUILESS_MAIN(TestJson)
#include "json.moc"
