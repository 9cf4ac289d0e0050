// SPDX-License-Identifier: GPL-3.0-or-later
// Rings of resistors; the colours' meaning after IEC 60062, from memory. A figure of it stands in tests/reference/loop.
#include "core/measure/colourcode.h"

#include "core/measure/eseries.h"

#include <QtTest>

using namespace proofwalk;
using base::Decimal;

namespace {

std::string read(const std::vector<std::string>& rings)
{
    const auto coded = measure::readRings(rings);
    return coded ? base::toText(coded->ohm) + " " + base::toText(coded->tolerance_pct) : coded.error().code;
}

} // namespace

class TestColourCode : public QObject {
    Q_OBJECT

private slots:
    void reads()
    {
        QCOMPARE(read({"yellow", "violet", "red", "gold"}), std::string("4700 5"));
        QCOMPARE(read({"red", "red", "brown"}), std::string("220 20"));
        QCOMPARE(read({"brown", "black", "black", "red", "brown"}), std::string("10000 1"));
        QCOMPARE(read({"gray", "red", "gold", "silver"}), std::string("8.2 10"));
    }
    // Every value of E24 and E96 over seven decades comes back from its rings.
    void thereAndBack()
    {
        int seen = 0;
        for (const auto series : {measure::Series::E24, measure::Series::E96})
            for (const int digits : measure::digitsOf(series))
                for (int power = -2; power <= 4; ++power) {
                    const Decimal ohm{digits, power};
                    const auto rings = measure::ringsOf(ohm, {1, 0});
                    QVERIFY2(rings.has_value(), base::toText(ohm).c_str());
                    const auto coded = measure::readRings(*rings).value();
                    QVERIFY(base::compare(coded.ohm, ohm) == std::strong_ordering::equal);
                    QVERIFY(base::compare(coded.tolerance_pct, {1, 0}) == std::strong_ordering::equal);
                    ++seen;
                }
        QCOMPARE(seen, (24 + 96) * 7);
    }
    // 12 kilohm, brown red orange brown: orange or brown for red, and so on; from the other end brown orange red brown,
    // 1.3 kilohm. 4.7 kilohm in four rings, yellow violet red brown: brown or orange for red; from the other end brown
    // red violet is 12 x 10^7, with yellow for its tolerance.
    void misread()
    {
        const auto twelve = measure::misreadingsOf({12, 3}, {1, 0}).value();
        const auto holds = [](const std::vector<Decimal>& values, Decimal wanted) {
            return std::ranges::any_of(values, [&](const Decimal& each) { return base::compare(each, wanted) == 0; });
        };
        for (const Decimal wanted : {Decimal{13, 3}, Decimal{11, 3}, Decimal{22, 3}, Decimal{32, 3}, Decimal{12, 2},
                                     Decimal{12, 1}, Decimal{13, 2}})
            QVERIFY2(holds(twelve, wanted), base::toText(wanted).c_str());
        QVERIFY(!holds(twelve, {12, 3}));
        const auto other = measure::misreadingsOf({47, 2}, {1, 0}).value();
        QVERIFY(holds(other, {47, 1}) && holds(other, {47, 3}) && holds(other, {12, 7}));
        QVERIFY(
            std::ranges::is_sorted(twelve, [](const Decimal& a, const Decimal& b) { return base::compare(a, b) < 0; }));
        QCOMPARE(measure::misreadingsOf({0, 0}, {1, 0}).error().code, std::string("measure.resistance-not-positive"));
    }
    void refused()
    {
        QCOMPARE(read({"red", "red"}), std::string("measure.rings"));
        QCOMPARE(read({"red", "red", "red", "red", "red", "red"}), std::string("measure.rings"));
        QCOMPARE(read({"gold", "red", "red", "gold"}), std::string("measure.ring")); // read from the wrong end
        QCOMPARE(read({"red", "red", "red", "white"}), std::string("measure.ring"));
        QCOMPARE(read({"red", "turquoise", "red", "gold"}), std::string("measure.ring"));
        QCOMPARE(measure::ringsOf({0, 0}, {1, 0}).error().code, std::string("measure.resistance-not-positive"));
        QCOMPARE(measure::ringsOf({-47, 0}, {1, 0}).error().code, std::string("measure.resistance-not-positive"));
        QCOMPARE(measure::ringsOf({1234, 0}, {1, 0}).error().code, std::string("measure.rings-none"));
        QCOMPARE(measure::ringsOf({47, -6}, {1, 0}).error().code, std::string("measure.rings-none"));
        QCOMPARE(measure::ringsOf({47, 2}, {3, 0}).error().code, std::string("measure.ring-tolerance"));
    }
};

QTEST_GUILESS_MAIN(TestColourCode)
#include "colourcode.moc"
