// SPDX-License-Identifier: GPL-3.0-or-later
// The rules of the Distinguished Encoding Rules as ITU-T X.690 has them (clauses 8.1 and 10.1; from memory).
#include "core/report/der.h"

#include <QtTest>

#include <string>

using namespace proofwalk;
using namespace std::string_literals;
using namespace std::string_view_literals;

class DerTest : public QObject {
    Q_OBJECT

private slots:
    void valuesOneAfterAnother()
    {
        report::DerReader reader("\x02\x01\x05\x30\x03\x04\x01\xFF"sv);
        const auto number = reader.next(0x02);
        QVERIFY(number && number->content == "\x05"sv && number->whole == "\x02\x01\x05"sv);
        QVERIFY(!reader.next(0x02));
        const auto list = reader.next(0x30);
        QVERIFY(list && list->content == "\x04\x01\xFF"sv);
        QVERIFY(reader.atEnd());
        QVERIFY(!reader.next());
    }

    void lengthsInTheirShortestForm()
    {
        const std::string of127 = "\x04\x7F" + std::string(127, 'a'), of128 = "\x04\x81\x80" + std::string(128, 'a'),
                          of256 = "\x04\x82\x01"s + '\0' + std::string(256, 'a');
        QCOMPARE(report::DerReader(of127).next()->content.size(), std::size_t{127});
        QCOMPARE(report::DerReader(of128).next()->content.size(), std::size_t{128});
        QCOMPARE(report::DerReader(of256).next()->content.size(), std::size_t{256});
    }

    void refused_data()
    {
        QTest::addColumn<QByteArray>("bytes");
        QTest::newRow("nothing") << QByteArray();
        QTest::newRow("tag alone") << QByteArray("\x04");
        QTest::newRow("shorter than it says") << QByteArray("\x04\x02\x61");
        QTest::newRow("indefinite length") << QByteArray("\x30\x80\x00\x00", 4);
        QTest::newRow("long form for a short length") << QByteArray("\x04\x81\x01\x61");
        QTest::newRow("long form for 127") << QByteArray("\x04\x81\x7F") + QByteArray(127, 'a');
        QTest::newRow("needless zero in the length") << QByteArray("\x04\x82\x00\x80", 4) + QByteArray(128, 'a');
        QTest::newRow("length of five octets") << QByteArray("\x04\x85\x01\x00\x00\x00\x00", 7) + QByteArray(8, 'a');
        QTest::newRow("length near the largest") << QByteArray("\x04\x84\xFF\xFF\xFF\xFF") + QByteArray(8, 'a');
        QTest::newRow("tag of two octets") << QByteArray("\x1F\x20\x01\x61");
    }
    void refused()
    {
        QFETCH(QByteArray, bytes);
        QVERIFY(!report::DerReader({bytes.constData(), static_cast<std::size_t>(bytes.size())}).next());
    }

    void skipsOnlyWhatIsThere()
    {
        report::DerReader reader("\x02\x01\x05"sv);
        QVERIFY(!reader.skip("\x02\x01\x06"sv));
        QCOMPARE(reader.rest().size(), std::size_t{3});
        QVERIFY(reader.skip("\x02\x01\x05"sv) && reader.atEnd());
    }
};

QTEST_GUILESS_MAIN(DerTest)
#include "der.moc"
