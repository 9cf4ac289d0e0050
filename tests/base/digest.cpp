// SPDX-License-Identifier: GPL-3.0-or-later
// Source: FIPS 180-4 example values, and NIST CAVP for the empty message, as kept in tests/reference/record-vectors.json.
// Hex after RFC 4648, section 8 (lower case is ours).
#include "core/base/digest.h"

#include <QFile>
#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>
#include <QtTest>

using namespace proofwalk;

class TestDigest : public QObject {
    Q_OBJECT

private slots:
    void publishedDigests()
    {
        QFile file(PROOFWALK_SOURCE "/tests/reference/record-vectors.json");
        QVERIFY(file.open(QIODevice::ReadOnly));
        const QJsonArray cases = QJsonDocument::fromJson(file.readAll())["sha256"]["cases"].toArray();
        QCOMPARE(cases.size(), 5);
        for (const auto& each : cases) {
            const QJsonObject repeat = each.toObject()["message_repeat"].toObject();
            QByteArray message = each.toObject()["message_utf8"].toString().toUtf8();
            if (!repeat.isEmpty()) message = repeat["byte_utf8"].toString().toUtf8().repeated(repeat["count"].toInt());
            QCOMPARE(base::sha256Hex(message.toStdString()), each.toObject()["digest"].toString().toStdString());
        }
    }
    void hexThereAndBack()
    {
        std::string all;
        for (int i = 0; i < 256; ++i) all += static_cast<char>(i);
        QCOMPARE(base::fromHex(base::toHex(all)), all);
        QCOMPARE(base::toHex("foobar"), std::string("666f6f626172")); // RFC 4648, section 10
        QCOMPARE(base::toHex(""), std::string());
    }
    void badHex()
    {
        for (const char* bad : {"0", "0A", "0g", " 00", "00 ", "0x00"}) QCOMPARE(base::fromHex(bad), std::string());
        QVERIFY(base::isLowerHex("00ff", 4));
        QVERIFY(!base::isLowerHex("00ff", 5));
        QVERIFY(!base::isLowerHex("00fF", 4));
        QVERIFY(!base::isLowerHex(std::string_view("00\0f", 4), 4));
    }
    void randomIdsAreFresh()
    {
        const std::string a = base::randomHex(16), b = base::randomHex(16);
        QVERIFY(base::isLowerHex(a, 32) && base::isLowerHex(b, 32));
        QVERIFY(a != b);
    }
};

QTEST_GUILESS_MAIN(TestDigest)
#include "digest.moc"
