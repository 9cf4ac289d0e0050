// SPDX-License-Identifier: GPL-3.0-or-later
// Source: IEC 60063:2015 (lists from memory); the whole lists are held against a table in tests/reference/eseries.cpp.
#include "core/measure/eseries.h"

#include <QtTest>

using namespace proofwalk;
using measure::Series;

namespace {

base::Decimal decimal(const char* text) { return base::parseDecimal(text).value(); }

std::string nearest(const char* text, Series series)
{
    const auto found = measure::nearestPreferredValue(decimal(text), series);
    return found ? base::toText(*found) : found.error().code;
}

} // namespace

class TestPreferredValues : public QObject {
    Q_OBJECT

private slots:
    void asWrittenInAPlan()
    {
        QVERIFY(measure::isPreferredValue(decimal("4700"), Series::E12));
        QVERIFY(measure::isPreferredValue(decimal("4700.00"), Series::E12));
        QVERIFY(measure::isPreferredValue(decimal("4.7"), Series::E24));
        QVERIFY(measure::isPreferredValue(decimal("0.47"), Series::E24));
        QVERIFY(measure::isPreferredValue(decimal("10"), Series::E96));
        QVERIFY(!measure::isPreferredValue(decimal("5000"), Series::E24));
        QVERIFY(!measure::isPreferredValue(decimal("4701"), Series::E96));
        QVERIFY(!measure::isPreferredValue(decimal("4700"), Series::E96)); // E96 has 4.64 and 4.75
        QVERIFY(!measure::isPreferredValue(decimal("0"), Series::E12));
        QVERIFY(!measure::isPreferredValue(decimal("-4700"), Series::E12));
    }
    void theNearest()
    {
        QCOMPARE(nearest("5000", Series::E24), std::string("5100"));
        QCOMPARE(nearest("5000", Series::E12), std::string("4700"));
        QCOMPARE(nearest("99", Series::E24), std::string("100"));
        QCOMPARE(nearest("9.85", Series::E96), std::string("9.76")); // 0.09 away, 10 is 0.15
        QCOMPARE(nearest("9.9", Series::E96), std::string("10"));    // 0.10 away, 9.76 is 0.14
    }
    void betweenDecades() { QCOMPARE(nearest("9.96", Series::E12), std::string("10")); }
    void ofTwoEquallyNearTheLower() { QCOMPARE(nearest("105", Series::E24), std::string("100")); }
    void beyondTheLastDigits()
    {
        QCOMPARE(nearest("4700.000001", Series::E12), std::string("4700"));
        // 4.7 and 5.6 in that decade have more places than a Decimal keeps; nothing is made up in their stead.
        QCOMPARE(nearest("0.000000047", Series::E12), std::string("0.000000047"));
    }
    void nothingIsNearNothing()
    {
        QCOMPARE(nearest("0", Series::E24), std::string("measure.resistance-not-positive"));
        QCOMPARE(nearest("-5", Series::E24), std::string("measure.resistance-not-positive"));
    }
};

QTEST_GUILESS_MAIN(TestPreferredValues)
#include "eseries.moc"
