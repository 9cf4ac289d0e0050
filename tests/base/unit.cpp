// SPDX-License-Identifier: GPL-3.0-or-later
// Sources: the SI brochure's prefixes; UCUM codes from memory. Conversions by hand.
#include "core/base/unit.h"

#include <QtTest>

#include <set>

using namespace proofwalk;

namespace {

std::string codeOf(const Result<base::Quantity>& result) { return result ? "" : result.error().code; }

std::string inBase(const char* text)
{
    const auto value = base::inBaseUnit(base::parseQuantity(text).value());
    return value ? base::toText(*value) : value.error().code;
}

} // namespace

class TestUnit : public QObject {
    Q_OBJECT

private slots:
    void theListIsSound()
    {
        std::set<std::string_view> codes, bases;
        for (const base::Unit& unit : base::units()) {
            QVERIFY2(codes.insert(unit.code).second, "a code twice");
            QVERIFY(base::findUnit(unit.code) == &unit);
            QVERIFY(!unit.quantity.empty() && unit.scale.mantissa > 0);
            if (unit.scale == base::Decimal{1, 0}) QVERIFY2(bases.insert(unit.quantity).second, "a base unit twice");
        }
        for (const base::Unit& unit : base::units()) QVERIFY2(bases.contains(unit.quantity), "no base unit");
        QVERIFY(base::findUnit("kohm") == nullptr); // UCUM is case sensitive
        QVERIFY(base::findUnit("") == nullptr);
    }
    void conversions()
    {
        QCOMPARE(inBase("3.40 kOhm"), std::string("3400")); // 340 x 10^1: the zeros are as many as it takes
        QCOMPARE(inBase("1.5 MOhm"), std::string("1500000"));
        QCOMPARE(inBase("250 mV"), std::string("0.250"));
        QCOMPARE(inBase("1.5 min"), std::string("90.0"));
        QCOMPARE(inBase("0.5 h"), std::string("1800.0"));
        QCOMPARE(inBase("12 cm"), std::string("0.12"));
        QCOMPARE(inBase("-5.5 Cel"), std::string("-5.5"));
        QCOMPARE(inBase("0.000000000 mV"), std::string("0.000000000"));
        QCOMPARE(inBase("0.000000001 mV"), std::string("base.decimal-range"));
    }
    void forPeople()
    {
        QCOMPARE(base::toText(base::parseQuantity("3.40 kOhm").value()), std::string("3.40 kΩ"));
        QCOMPARE(base::toText(base::parseQuantity("66.2 dB[SPL]").value()), std::string("66.2 dB(A)"));
        QCOMPARE(base::toText(base::parseQuantity("3 1").value()), std::string("3"));
    }
    void badInput()
    {
        for (const char* bad : {"", "3.40", "3.40kOhm", "kOhm"})
            QCOMPARE(codeOf(base::parseQuantity(bad)), std::string("base.quantity-form"));
        for (const char* bad : {"3.40 ", "3.40  kOhm", "3.40 kohm", "3.40 kOhm ", "3 V V"})
            QCOMPARE(codeOf(base::parseQuantity(bad)), std::string("base.unit-unknown"));
        for (const char* bad : {" V", "3,4 V", "1e3 V", "x V"})
            QCOMPARE(codeOf(base::parseQuantity(bad)), std::string("base.decimal-form"));
        QCOMPARE(codeOf(base::parseQuantity("1000000000000000 V")), std::string("base.decimal-range"));
        const auto unknown = base::parseQuantity("3.40 kohm");
        QVERIFY(unknown.error().arguments
                == (std::vector<Argument>{{"found", std::string("kohm")}, {"nearest", std::string("kOhm")}}));
    }
};

QTEST_GUILESS_MAIN(TestUnit)
#include "unit.moc"
