// SPDX-License-Identifier: GPL-3.0-or-later
// Source: RFC 3339, section 5.8 (its examples) and 5.6 (grammar), from memory. Seconds since 1970 were recomputed with GNU date
// (`date -u -d ... +%s`), a general tool.
#include "core/base/instant.h"

#include <QtTest>

#include <ctime>

using namespace proofwalk;
using base::WallClock;

class TestInstant : public QObject {
    Q_OBJECT

private slots:
    void examples_data()
    {
        QTest::addColumn<QString>("text");
        QTest::addColumn<qint64>("utc_ms");
        QTest::addColumn<int>("offset_min");
        const auto row = [](const char* text, qint64 ms, int offset) {
            QTest::newRow(text) << QString(text) << ms << offset;
        };
        row("1985-04-12T23:20:50.52Z", 482196050'520, 0); // RFC 3339, 5.8
        row("1996-12-19T16:39:57-08:00", 851042397'000, -480); // RFC 3339, 5.8
        row("1996-12-20T00:39:57Z", 851042397'000, 0); // the same moment, says the RFC
        row("2026-11-25T10:02:00+01:00", 1795597320'000, 60);
        row("2026-11-25T10:02:00.250Z", 1795600920'250, 0);
        row("2026-11-25T10:02:00.9999999Z", 1795600920'999, 0); // finer than a millisecond is dropped
        row("2026-11-25t10:02:00.2z", 1795600920'200, 0); // 5.6: small letters are allowed
        row("2026-11-25T10:02:00-00:00", 1795600920'000, 0); // 4.3: offset unknown
        row("2000-02-29T00:00:00Z", 951782400'000, 0);
        row("1970-01-01T00:00:00Z", 0, 0);
        row("9999-12-31T23:59:59.999Z", 253402300799'999, 0);
        row("2026-01-01T00:00:00+23:59", 1767139260'000, 1439);
    }
    void examples()
    {
        QFETCH(QString, text);
        QFETCH(qint64, utc_ms);
        QFETCH(int, offset_min);
        const auto time = base::parseTime(text.toStdString());
        QVERIFY(time.has_value());
        QCOMPARE(static_cast<qint64>(time->utc_ms), utc_ms);
        QCOMPARE(time->offset_min, offset_min);
    }
    void refused()
    {
        for (const char* bad : {
                 "",
                 "2026-11-25",
                 "10:02:00",
                 "2026-11-25T10:02:00",
                 "2026-11-25 10:02:00Z",
                 "2026-11-25T10:02Z",
                 "2026-13-01T00:00:00Z",
                 "2026-00-01T00:00:00Z",
                 "2026-02-29T00:00:00Z",
                 "1900-02-29T00:00:00Z",
                 "2026-04-31T00:00:00Z",
                 "2026-11-25T24:00:00Z",
                 "2026-11-25T10:60:00Z",
                 "2026-11-25T10:02:61Z",
                 "1990-12-31T23:59:60Z", // RFC 3339, 5.8: a leap second, which milliseconds since 1970 cannot hold
                 "1937-01-01T12:00:27.87+00:20", // RFC 3339, 5.8: before 1970
                 "1970-01-01T00:00:00+01:00",
                 "9999-12-31T23:59:59-01:00", // outside in UTC
                 "2026-11-25T10:02:00.Z",
                 "2026-11-25T10:02:00,5Z",
                 "2026-11-25T10:02:00+1:00",
                 "2026-11-25T10:02:00+0100",
                 "2026-11-25T10:02:00+24:00",
                 "2026-11-25T10:02:00+01:60",
                 "2026-11-25T10:02:00Z ",
                 "2026-11-25T10:02:00ZZ",
                 "2026-11-25T10:02:00.",
                 "26-11-25T10:02:00Z",
                 "-026-11-25T10:02:00Z",
                 "2026-11-25T10:02:00.5",
             }) {
            const auto time = base::parseTime(bad);
            QVERIFY2(!time, bad);
            QCOMPARE(time.error().code, std::string("base.time-form"));
            QVERIFY(time.error().arguments == (std::vector<Argument>{{"found", std::string(bad)}}));
        }
    }
    void written()
    {
        QCOMPARE(base::toUtcText(482196050'520), std::string("1985-04-12T23:20:50.520Z"));
        QCOMPARE(base::toUtcText(0), std::string("1970-01-01T00:00:00.000Z"));
        QCOMPARE(base::toUtcText(253402300799'999), std::string("9999-12-31T23:59:59.999Z"));
        const WallClock west{0, -60}; // the day before there
        QCOMPARE(base::localDate(west), std::string("1969-12-31"));
        QCOMPARE(base::localTime(west), std::string("23:00"));
        const WallClock east = base::parseTime("2026-12-01T00:30:00+01:00").value();
        QCOMPARE(base::localDate(east), std::string("2026-12-01"));
        QCOMPARE(base::localTime(east), std::string("00:30"));
    }
    void thereAndBack()
    {
        for (std::int64_t ms = 0; ms < 253402300799'999; ms += 7'777'777'777'777)
            QCOMPARE(base::parseTime(base::toUtcText(ms)).value().utc_ms, ms);
    }
    void nowIsNow()
    {
        const std::int64_t before = std::int64_t{std::time(nullptr)} * 1000;
        const WallClock now = base::now();
        QVERIFY(now.utc_ms >= before && now.utc_ms < before + 10'000);
    }
    // POSIX zone strings: "XST-5:30" lies five and a half hours east.
    void theOffsetIsThatOfThePlace()
    {
        qputenv("TZ", "XST-5:30");
        ::tzset();
        QCOMPARE(base::now().offset_min, 330);
        qputenv("TZ", "UTC");
        ::tzset();
        QCOMPARE(base::now().offset_min, 0);
    }
};

QTEST_GUILESS_MAIN(TestInstant)
#include "instant.moc"
