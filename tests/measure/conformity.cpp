// SPDX-License-Identifier: GPL-3.0-or-later
// The decision rule at its edges and on bad input. Source of the rule: ILAC-G8:09/2019, 4.2, w = U, as quoted on a
// public page; the worked values stand in tests/reference/conformity.cpp.
#include "core/measure/conformity.h"

#include <QtTest>

#include <limits>

using namespace proofwalk;
using measure::Conformity;

namespace {

base::Decimal decimal(const char* text) { return base::parseDecimal(text).value(); }

std::string codeOf(const Result<Conformity>& result) { return result ? "" : result.error().code; }
std::string codeOf(const Result<double>& result) { return result ? "" : result.error().code; }

} // namespace

class TestConformity : public QObject {
    Q_OBJECT

private slots:
    // 3.4 +- 0.5 against 3.0 to 5.0: 3.4 lies above 3.0 and within 0.5 of it.
    void tooCloseToTheLowerLimit()
    {
        const measure::Tolerance limits{decimal("3.0"), decimal("5.0")};
        QVERIFY(measure::judge(decimal("3.4"), decimal("0.5"), limits).value() == Conformity::undecided);
        QVERIFY(measure::judge(decimal("3.5"), decimal("0.5"), limits).value() == Conformity::pass);
        QVERIFY(measure::judge(decimal("2.5"), decimal("0.5"), limits).value() == Conformity::undecided);
        QVERIFY(measure::judge(decimal("2.49"), decimal("0.5"), limits).value() == Conformity::fail);
    }
    // 0.1 + 0.2 is 0.3 here; in binary floats it is not, and the verdict would hang on that.
    void exactWhereFloatsAreNot()
    {
        QVERIFY(measure::judge(decimal("0.3"), decimal("0.2"), {decimal("0.1"), {}}).value() == Conformity::pass);
        QVERIFY(measure::judge(decimal("-0.1"), decimal("0.2"), {decimal("0.1"), {}}).value() == Conformity::undecided);
        QVERIFY(measure::judge(decimal("0.1"), decimal("0.2"), {{}, decimal("0.3")}).value() == Conformity::pass);
    }
    void withoutUncertaintyItIsJudgedAsItStands()
    {
        const measure::Tolerance limits{decimal("3"), decimal("5")};
        QVERIFY(measure::judge(decimal("3.00"), {}, limits).value() == Conformity::pass);
        QVERIFY(measure::judge(decimal("5"), {}, limits).value() == Conformity::pass);
        QVERIFY(measure::judge(decimal("2.999"), {}, limits).value() == Conformity::fail);
        QVERIFY(measure::judge(decimal("5.001"), decimal("0"), limits).value() == Conformity::fail);
    }
    void guardsThatMeetInTheMiddleLeaveNothingToPass()
    {
        const measure::Tolerance limits{decimal("3"), decimal("5")};
        QVERIFY(measure::judge(decimal("4"), decimal("1"), limits).value() == Conformity::pass);
        QVERIFY(measure::judge(decimal("4"), decimal("1.1"), limits).value() == Conformity::undecided);
        QVERIFY(measure::judge(decimal("6.2"), decimal("1.1"), limits).value() == Conformity::fail);
    }
    void oneValueAllowed()
    {
        QVERIFY(measure::judge(decimal("3.40"), {}, {decimal("3.4"), decimal("3.4")}).value() == Conformity::pass);
    }
    void badInput()
    {
        QCOMPARE(codeOf(measure::judge(decimal("1"), {}, {})), std::string("measure.tolerance-missing"));
        QCOMPARE(codeOf(measure::judge(decimal("1"), {}, {decimal("2"), decimal("1.99")})),
                 std::string("measure.tolerance-empty"));
        QCOMPARE(codeOf(measure::judge(decimal("1"), decimal("-0.1"), {decimal("2"), {}})),
                 std::string("measure.uncertainty-negative"));
        QCOMPARE(codeOf(measure::judge({999'999'999'999'999, 9}, {}, {decimal("0.000000001"), {}})),
                 std::string("base.decimal-range"));
    }
    void probabilityFarOutKeepsItsDigits()
    {
        // Phi(-10) = 7.61985302416e-24 (standard normal table, e.g. Abramowitz and Stegun 26.2; from memory).
        const double p = measure::conformanceProbability(10, 1, {}, 0.0).value();
        QVERIFY(std::fabs(p / 7.61985302416e-24 - 1) < 1e-9);
        QVERIFY(measure::conformanceProbability(0, 1, -1.0, 1.0).value() > 0.6826);
    }
    // A quantity anywhere from 9 to 11, limits 10.5 and 9.5: a half and a quarter of it by hand.
    void rectangularShares()
    {
        const auto share = [](std::optional<double> lower, std::optional<double> upper) {
            return measure::conformanceProbabilityRectangular(10, 1, lower, upper).value();
        };
        QCOMPARE(share(9.5, 10.5), 0.5);
        QCOMPARE(share(10.5, {}), 0.25);
        QCOMPARE(share({}, 8.0), 0.0);
        QCOMPARE(share(11.0, 12.0), 0.0);
        QCOMPARE(share(0.0, 20.0), 1.0);
        QCOMPARE(codeOf(measure::conformanceProbabilityRectangular(1, 0, 0.0, {})),
                 std::string("measure.out-of-range"));
        QCOMPARE(codeOf(measure::conformanceProbabilityRectangular(1, 1, {}, {})),
                 std::string("measure.tolerance-missing"));
    }
    void probabilityBadInput()
    {
        constexpr double nan = std::numeric_limits<double>::quiet_NaN();
        QCOMPARE(codeOf(measure::conformanceProbability(1, 0, 0.0, {})), std::string("measure.out-of-range"));
        QCOMPARE(codeOf(measure::conformanceProbability(1, -1, 0.0, {})), std::string("measure.out-of-range"));
        QCOMPARE(codeOf(measure::conformanceProbability(nan, 1, 0.0, {})), std::string("measure.out-of-range"));
        QCOMPARE(codeOf(measure::conformanceProbability(1, 1, nan, {})), std::string("measure.out-of-range"));
        QCOMPARE(codeOf(measure::conformanceProbability(1, 1, {}, nan)), std::string("measure.out-of-range"));
        QCOMPARE(codeOf(measure::conformanceProbability(1, 1, {}, {})), std::string("measure.tolerance-missing"));
        QCOMPARE(codeOf(measure::conformanceProbability(1, 1, 2.0, 1.0)), std::string("measure.tolerance-empty"));
    }
};

QTEST_GUILESS_MAIN(TestConformity)
#include "conformity.moc"
