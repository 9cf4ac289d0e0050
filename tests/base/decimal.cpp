// SPDX-License-Identifier: GPL-3.0-or-later
// Decimals are school arithmetic: expected values by hand. Floats are IEEE 754 doubles.
#include "core/base/decimal.h"

#include <QtTest>

#include <limits>

using namespace proofwalk;
using base::Decimal;

namespace {

Decimal decimal(const char* text) { return base::parseDecimal(text).value(); }

std::string shown(const Result<Decimal>& number)
{
    return number ? std::to_string(number->mantissa) + "e" + std::to_string(number->exponent) : number.error().code;
}

} // namespace

class TestDecimal : public QObject {
    Q_OBJECT

private slots:
    void parsed_data()
    {
        QTest::addColumn<QString>("text");
        QTest::addColumn<QString>("wanted");
        const auto row = [](const char* text, const char* wanted) {
            QTest::newRow(text) << QString(text) << QString(wanted);
        };
        row("3.40", "340e-2");
        row("-12.50", "-1250e-2");
        row("0", "0e0");
        row("-0", "0e0");
        row("007", "7e0");
        row("0.000000001", "1e-9");
        row("999999999999999", "999999999999999e0");
        row("999999.999999999", "999999999999999e-9");
        row("1000000000000000", "base.decimal-range");
        row("0.0000000001", "base.decimal-range");
        for (const char* bad : {"", "-", ".", "-.", ".5", "-.5", "5.", "1.2.3", "1e3", "+1", "1,5", " 1", "1 ", "0x1f",
                                "NaN", "inf", "--1", "1-", "1_000"})
            row(bad, "base.decimal-form");
        QTest::newRow("Arabic digits") << QString::fromUtf8("١٢") << QString("base.decimal-form");
        QTest::newRow("NUL") << QString(QChar(0)) << QString("base.decimal-form");
    }
    void parsed()
    {
        QFETCH(QString, text);
        QFETCH(QString, wanted);
        QCOMPARE(shown(base::parseDecimal(text.toStdString())), wanted.toStdString());
    }
    void aRefusalQuotesWhatWasFound()
    {
        const auto refused = base::parseDecimal("12,5");
        QVERIFY(refused.error().arguments == (std::vector<Argument>{{"found", std::string("12,5")}}));
    }
    void writtenAsTyped()
    {
        for (const char* text : {"3.40", "-12.50", "0", "0.05", "-0.050", "340", "0.000000001", "999999.999999999"})
            QCOMPARE(base::toText(decimal(text)), std::string(text));
        QCOMPARE(base::toText({34, 1}), std::string("340"));
        QCOMPARE(base::toText({0, 3}), std::string("0"));
        QCOMPARE(base::toText({0, -2}), std::string("0.00"));
        QCOMPARE(base::toText({-5, -9}), std::string("-0.000000005"));
    }
    void sizeAndSamenessDiffer()
    {
        QVERIFY(decimal("3.40") != decimal("3.4"));
        QVERIFY(base::compare(decimal("3.40"), decimal("3.4")) == 0);
        QVERIFY(base::compare(decimal("-1"), decimal("0")) < 0);
        QVERIFY(base::compare(decimal("-0.1"), decimal("-0.2")) > 0);
        QVERIFY(base::compare({999'999'999'999'999, 9}, {1, -9}) > 0);
        QVERIFY(base::compare({-999'999'999'999'999, 9}, {-999'999'999'999'999, -9}) < 0);
    }
    void sums()
    {
        QCOMPARE(shown(base::add(decimal("0.1"), decimal("0.2"))), std::string("3e-1"));
        QCOMPARE(shown(base::add(decimal("1.50"), decimal("0.5"))), std::string("200e-2"));
        QCOMPARE(shown(base::subtract(decimal("3"), decimal("3.00"))), std::string("0e-2"));
        QCOMPARE(shown(base::subtract(decimal("-1"), decimal("-1.5"))), std::string("5e-1"));
        // Zeros may go to make room, digits may not.
        QCOMPARE(shown(base::add({999'999'999'999'999, 0}, {1, 0})), std::string("100000000000000e1"));
        QCOMPARE(shown(base::add({999'999'999'999'999, 0}, {2, 0})), std::string("base.decimal-range"));
        QCOMPARE(shown(base::add({999'999'999'999'999, 9}, {1, -9})), std::string("base.decimal-range"));
    }
    void products()
    {
        QCOMPARE(shown(base::multiply(decimal("0.5"), decimal("0.04"))), std::string("20e-3"));
        QCOMPARE(shown(base::multiply(decimal("-3"), decimal("1.5"))), std::string("-45e-1"));
        QCOMPARE(shown(base::multiply({1, 9}, {1, 1})), std::string("10e9"));       // 10^10 is 10 x 10^9
        QCOMPARE(shown(base::multiply({10, -9}, {1, -1})), std::string("1e-9"));    // a zero goes
        QCOMPARE(shown(base::multiply({0, -9}, {1, -3})), std::string("0e-9"));     // nothing stays nothing
        QCOMPARE(shown(base::multiply({0, 9}, {5, 9})), std::string("0e9"));
        QCOMPARE(shown(base::multiply({1, -9}, {1, -1})), std::string("base.decimal-range"));
        QCOMPARE(shown(base::multiply({1, 9}, {1, 9})), std::string("1000000000e9")); // 10^18
        QCOMPARE(shown(base::multiply({999'999'999'999'999, 0}, {999'999'999'999'999, 0})),
                 std::string("base.decimal-range"));
    }
    // The double nearest to what was typed, as the compiler itself reads it.
    void doubles()
    {
        QVERIFY(base::toDouble(decimal("3.40")) == 3.40);
        QVERIFY(base::toDouble(decimal("0.000000003")) == 0.000000003);
        QVERIFY(base::toDouble(decimal("123456.789")) == 123456.789);
        QVERIFY(base::toDouble(decimal("4.35")) == 4.35);
        QVERIFY(base::toDouble({-7, 9}) == -7e9);
        int off = 0;
        for (int m = 1; m < 100'000; ++m) {
            const std::string text = base::toText({m, -4});
            off += base::toDouble({m, -4}) == std::strtod(text.c_str(), nullptr) ? 0 : 1;
        }
        QCOMPARE(off, 0);
    }
    void fromDoubles()
    {
        QCOMPARE(shown(base::fromDouble(3.14159, -2)), std::string("314e-2"));
        QCOMPARE(shown(base::fromDouble(2.5, 0)), std::string("3e0"));
        QCOMPARE(shown(base::fromDouble(-2.5, 0)), std::string("-2e0"));
        QCOMPARE(shown(base::fromDouble(1234, 2)), std::string("12e2"));
        constexpr double nan = std::numeric_limits<double>::quiet_NaN();
        constexpr double infinite = std::numeric_limits<double>::infinity();
        for (const double bad : {nan, infinite, -infinite, 1e15, 1e300})
            QCOMPARE(shown(base::fromDouble(bad, 0)), std::string("base.decimal-range"));
        QCOMPARE(shown(base::fromDouble(1, 10)), std::string("base.decimal-range"));
        QCOMPARE(shown(base::fromDouble(1, -10)), std::string("base.decimal-range"));
    }
};

QTEST_GUILESS_MAIN(TestDecimal)
#include "decimal.moc"
