// SPDX-License-Identifier: GPL-3.0-or-later
// Sources: JCGM 106:2012 (its worked examples), JCGM 100:2008, ILAC-G8:09/2019; each beside its vector in
// measure-vectors.json. Tolerance: that of the vector, 1e-9.
#include "core/measure/conformity.h"
#include "core/measure/distribution.h"
#include "core/measure/guard.h"
#include "core/measure/instrument.h"
#include "core/measure/uncertainty.h"
#include "tests/reference/vectors.h"

using namespace proofwalk;
using proofwalk::reference::Vector;

namespace {

base::Decimal decimal(const char* text) { return base::parseDecimal(text).value(); }

} // namespace

class ConformityReference : public QObject {
    Q_OBJECT

private slots:
    void oneUpperLimit()
    {
        const Vector v("conf-01");
        QVERIFY(v.agrees("p", measure::conformanceProbability(v.in("y"), v.in("u"), {}, v.in("TU")).value()));
    }
    void oneLowerLimit()
    {
        const Vector v("conf-02");
        QVERIFY(v.agrees("p", measure::conformanceProbability(v.in("y"), v.in("u"), v.in("TL"), {}).value()));
    }
    void twoLimits()
    {
        const Vector v("conf-03");
        QVERIFY(v.agrees("p", measure::conformanceProbability(v.in("y"), v.in("u"), v.in("TL"), v.in("TU")).value()));
        QVERIFY(v.agrees("capability_index", measure::capabilityIndex(v.in("u"), v.in("TL"), v.in("TU")).value()));
        // Where in the tolerance it lies: the chance of a rectangular quantity from TL to TU being below y.
        const double half = (v.in("TU") - v.in("TL")) / 2;
        QVERIFY(v.agrees("y_norm",
                         measure::conformanceProbabilityRectangular(v.in("TL") + half, half, {}, v.in("y")).value()));
        QVERIFY(v.isServed());
    }
    void oneLimitUnderARectangularPart()
    {
        const Vector v("conf-10");
        const double u = measure::standardOfHalfWidth(v.in("a"), measure::Shape::rectangular).value();
        QVERIFY(v.agrees("p_normal", measure::conformanceProbability(-v.in("d"), u, {}, 0.0).value()));
        QVERIFY(v.agrees("p_rect", measure::conformanceProbabilityRectangular(-v.in("d"), v.in("a"), {}, 0.0).value()));
        QVERIFY(v.isServed());
    }

    // conf-04: acceptance from al_u = 13.1 to au_u = 15.7 for limits 12.5 and 16.3 with U = 0.6.
    void acceptanceLimits_data()
    {
        QTest::addColumn<QString>("value");
        QTest::addColumn<int>("verdict");
        const auto row = [](const char* value, measure::Conformity verdict) {
            QTest::newRow(value) << QString(value) << static_cast<int>(verdict);
        };
        using enum measure::Conformity;
        row("13.1", pass);
        row("13.099", undecided);
        row("15.7", pass);
        row("15.70", pass);
        row("15.701", undecided);
        row("16.9", undecided);
        row("16.901", fail);
        row("11.9", undecided);
        row("11.899", fail);
    }
    void acceptanceLimits()
    {
        const Vector v("conf-04");
        QCOMPARE(v.out("al_u"), 13.1);
        QCOMPARE(v.out("au_u"), 15.7);
        QFETCH(QString, value);
        QFETCH(int, verdict);
        const auto judged =
            measure::judge(decimal(qPrintable(value)), decimal("0.6"), {decimal("12.5"), decimal("16.3")});
        QCOMPARE(static_cast<int>(judged.value()), verdict);
    }

    void guardBands()
    {
        const Vector v("conf-04");
        const double u = v.in("u");
        const auto limits = measure::acceptanceLimits(2 * u, v.in("TL"), v.in("TU")).value();
        QVERIFY(v.agrees("al_u", limits.passFrom.value()));
        QVERIFY(v.agrees("au_u", limits.passTo.value()));
        const double five = measure::guardForRisk(u, 0.05).value();
        QVERIFY(v.agrees("w5", five));
        QVERIFY(v.agrees("au_5", measure::acceptanceLimits(five, {}, v.in("TU")).value().passTo.value()));
        QVERIFY(v.agrees("w25", measure::guardForRisk(u, 0.025).value()));
        QVERIFY(v.agrees("pfa_at_au_u", measure::riskOfGuard(2 * u, u).value()));
        QVERIFY(v.agrees("pfa_at_limit", measure::riskOfGuard(0, u).value()));
        QVERIFY(v.isServed());
    }
    void anUncertaintyThatGrowsWithTheQuantity()
    {
        const Vector v("conf-05");
        QVERIFY(v.agrees("z", measure::normalQuantile(v.in("assurance")).value()));
        QVERIFY(v.agrees("v_min", measure::leastReadingToExceed(v.in("lim"), v.in("rel"), v.in("assurance")).value()));
        QVERIFY(v.isServed());
    }
    void divisors()
    {
        const Vector v("conf-08");
        using enum measure::Shape;
        const auto u = [&](measure::Shape shape) { return measure::standardOfHalfWidth(v.in("a"), shape).value(); };
        QVERIFY(v.agrees("rect", u(rectangular)));
        QVERIFY(v.agrees("tri", u(triangular)));
        QVERIFY(v.agrees("arcsine", u(arcsine)));
        QVERIFY(v.agrees("norm95", u(normal95)));
        QVERIFY(v.isServed());
    }
    void fewReadingsAndABound()
    {
        const Vector v("conf-09");
        const double ofMean = v.in("s") / std::sqrt(v.in("n"));
        const double bound = measure::standardOfHalfWidth(v.in("a"), measure::Shape::rectangular).value();
        QVERIFY(v.agrees("ua", ofMean));
        QVERIFY(v.agrees("ub", bound));
        const std::vector<measure::UncertaintyPart> parts{{ofMean, v.in("n") - 1}, {bound}};
        const auto all = measure::combine(parts).value();
        QVERIFY(v.agrees("u", all.standard));
        QVERIFY(v.agrees("nu", all.degreesOfFreedom));
        QVERIFY(v.agrees("k", all.coverage));
        QVERIFY(v.agrees("U", all.expanded));
        QVERIFY(v.isServed());
    }
    void oneLimitWithNinetyFivePercent()
    {
        const Vector v("conf-11");
        const double guard = measure::guardForRisk(v.in("u"), 1 - v.in("confidence")).value();
        const auto limits = measure::acceptanceLimits(guard, v.in("lim"), {}).value();
        QVERIFY(v.agrees("pass_from", limits.passFrom.value()));
        QVERIFY(v.agrees("fail_below", limits.failBelow.value()));
        QVERIFY(v.agrees("pass_from_old_2u",
                         measure::acceptanceLimits(2 * v.in("u"), v.in("lim"), {}).value().passFrom.value()));
        QVERIFY(v.isServed());
    }

    // conf-11, the earlier rule (k = 2): 65 dB must be exceeded, u = 0.8 dB: proved from 66.6.
    void aLowerLimitGuardsUpward()
    {
        QVERIFY(Vector("conf-11").agrees("pass_from_old_2u", 66.6));
        const measure::Tolerance atLeast65{decimal("65"), {}};
        QVERIFY(measure::judge(decimal("66.6"), decimal("1.6"), atLeast65).value() == measure::Conformity::pass);
        QVERIFY(measure::judge(decimal("66.5"), decimal("1.6"), atLeast65).value() == measure::Conformity::undecided);
        QVERIFY(measure::judge(decimal("63.3"), decimal("1.6"), atLeast65).value() == measure::Conformity::fail);
    }

    // conf-06: U = 29.583..., so 30 in two digits, upwards; conf-07 leaves resolution out (0.28535 V), which moves
    // it by 0.00003 V: 0.29 either way.
    void multimeterResistance()
    {
        const Vector v("conf-06");
        QVERIFY(v.out("U") > 29 && v.out("U") < 30);
        const auto all =
            measure::readingUncertainty({v.in("rd"), v.in("pc") * 100, v.in("dg"), v.in("res"), 0}).value();
        QVERIFY(v.agrees("a", all.halfWidth));
        QVERIFY(v.agrees("u_spec", all.specification));
        QVERIFY(v.agrees("u_res", all.resolution));
        QVERIFY(v.agrees("u", all.standard));
        QVERIFY(v.agrees("U", all.expanded));
        QVERIFY(v.isServed());
        const auto u = measure::expandedUncertainty(base::parseQuantity("4723 Ohm").value(), {decimal("0.5"), 2, {}});
        QVERIFY(base::compare(u.value(), decimal("30")) == 0);
        const auto kilo =
            measure::expandedUncertainty(base::parseQuantity("4.723 kOhm").value(), {decimal("0.5"), 2, {}});
        QCOMPARE(base::toText(kilo.value()), std::string("0.030"));
    }
    void multimeterVoltage()
    {
        const Vector v("conf-07");
        QVERIFY(v.out("U") > 0.28 && v.out("U") < 0.29);
        const auto all =
            measure::readingUncertainty({v.in("rd"), v.in("pc") * 100, v.in("dg"), v.in("res"), 0}).value();
        QVERIFY(v.agrees("a", all.halfWidth));
        QVERIFY(v.agrees("u", all.specification));
        QVERIFY(v.agrees("U", 2 * all.specification));
        QVERIFY(v.agrees("lo", v.in("rd") - 2 * all.specification));
        QVERIFY(v.agrees("hi", v.in("rd") + 2 * all.specification));
        QVERIFY(v.isServed());
        const auto u = measure::expandedUncertainty(base::parseQuantity("27.14 V").value(), {decimal("0.8"), 3, {}});
        QCOMPARE(base::toText(u.value()), std::string("0.29"));
    }
};

QTEST_GUILESS_MAIN(ConformityReference)
#include "conformity.moc"
