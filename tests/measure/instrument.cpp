// SPDX-License-Identifier: GPL-3.0-or-later
// Source of the formula: JCGM 100:2008, 4.3.7 and F.2.2.1. Expected values by hand from it, as worked beside each.
#include "core/measure/instrument.h"

#include <QtTest>

using namespace proofwalk;

namespace {

base::Decimal decimal(const char* text) { return base::parseDecimal(text).value(); }
base::Quantity quantity(const char* text) { return base::parseQuantity(text).value(); }

std::string uncertainty(const char* reading, const measure::Accuracy& accuracy)
{
    const auto found = measure::expandedUncertainty(quantity(reading), accuracy);
    return found ? base::toText(*found) : found.error().code;
}

} // namespace

class TestInstrument : public QObject {
    Q_OBJECT

private slots:
    // a = 0, d = 0.01: U = 0.01 / sqrt 3 = 0.0057735.
    void resolutionAlone() { QCOMPARE(uncertainty("3.40 kOhm", {}), std::string("0.0058")); }
    // As typed: 3.4 has a last place ten times coarser than 3.40.
    void theLastPlaceIsThatOfTheReadingAsTyped() { QCOMPARE(uncertainty("3.4 kOhm", {}), std::string("0.058")); }
    // 340 as 34 x 10^1: d = 10, U = 10 / sqrt 3 = 5.7735.
    void aLastPlaceAboveOne()
    {
        const base::Quantity reading{{34, 1}, base::findUnit("Ohm")};
        QCOMPARE(base::toText(measure::expandedUncertainty(reading, {}).value()), std::string("5.8"));
    }
    // a = 1.5, d = 0.1: U = sqrt((4 x 2.25 + 0.01) / 3) = 1.73301.
    void fixedPart() { QCOMPARE(uncertainty("66.2 dB[SPL]", {{}, 0, quantity("1.5 dB[SPL]")}), std::string("1.8")); }
    // 5 Ohm on a reading in kOhm: a = 0.005, d = 0.001: U = sqrt((4 x 25e-6 + 1e-6) / 3) = 0.0058023.
    void fixedPartInAnotherUnitOfTheSameQuantity()
    {
        QCOMPARE(uncertainty("4.723 kOhm", {{}, 0, quantity("5 Ohm")}), std::string("0.0059"));
        QCOMPARE(uncertainty("2 min", {{}, 0, quantity("60 s")}), std::string("1.3")); // sqrt(5 / 3) = 1.29
    }
    // a = 85.76, d = 1: U = sqrt((4 x 7354.8 + 1) / 3) = 99.03: three digits when rounded up, so 100.
    void roundingUpIntoTheNextDecade() { QCOMPARE(uncertainty("8576 Ohm", {decimal("1"), 0, {}}), std::string("100")); }
    void negativeReadingsCountByTheirSize()
    {
        QCOMPARE(uncertainty("-27.14 V", {decimal("0.8"), 3, {}}), uncertainty("27.14 V", {decimal("0.8"), 3, {}}));
    }
    // a = 1.5, d = 0.1: u = sqrt(2.25 / 3 + 0.01 / 12) = 0.86651, the half of 1.73301.
    void inFullDigitsAndParts()
    {
        const auto u = measure::readingUncertainty({66.2, 0, 0, 0.1, 1.5}).value();
        QVERIFY(std::fabs(u.expanded - 1.73301) < 5e-6);
        QVERIFY(std::fabs(u.standard - u.expanded / 2) < 1e-12);
        QVERIFY(std::fabs(u.specification * u.specification - 0.75) < 1e-12);
        // Never less than the rounded-up figure that judges.
        const auto judged = measure::expandedUncertainty(quantity("66.2 dB[SPL]"), {{}, 0, quantity("1.5 dB[SPL]")});
        QVERIFY(base::toDouble(judged.value()) >= u.expanded);
        QVERIFY(!measure::readingUncertainty({66.2, -1, 0, 0.1, 1.5}));
        QVERIFY(!measure::readingUncertainty({std::nan(""), 1, 0, 0.1, 1.5}));
        QVERIFY(!measure::readingUncertainty({1, 1, INFINITY, 0.1, 1.5}));
    }
    void badInput()
    {
        QCOMPARE(uncertainty("1 V", {decimal("-0.5"), 0, {}}), std::string("measure.accuracy-negative"));
        QCOMPARE(uncertainty("1 V", {{}, -1, {}}), std::string("measure.accuracy-negative"));
        QCOMPARE(uncertainty("1 V", {{}, 0, quantity("-1 V")}), std::string("measure.accuracy-negative"));
        QCOMPARE(uncertainty("1 V", {{}, 0, quantity("1 Ohm")}), std::string("measure.unit-mismatch"));
        QCOMPARE(uncertainty("0.000000001 V", {}), std::string("base.decimal-range")); // U = 5.8e-10
    }
};

QTEST_GUILESS_MAIN(TestInstrument)
#include "instrument.moc"
