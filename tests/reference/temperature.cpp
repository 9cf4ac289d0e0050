// SPDX-License-Identifier: GPL-3.0-or-later
// Sources: IEC 60751, NIST SRD 60 (type K), NIST Chemistry WebBook, JCGM 106:2012, public guidance on vaccines and
// food; each beside its vector in measure-vectors.json. Tolerance: that of the vector.
#include "core/measure/conformity.h"
#include "core/measure/guard.h"
#include "core/measure/platinum.h"
#include "core/measure/probe.h"
#include "core/measure/thermistor.h"
#include "core/measure/thermocouple.h"
#include "tests/reference/vectors.h"

using namespace proofwalk;
using namespace proofwalk::measure;
using proofwalk::reference::Vector;

class TemperatureReference : public QObject {
    Q_OBJECT

private:
    /// "m18" for -18, "p5" for 5, as the vectors name them.
    static QString letterOf(double temperature)
    {
        return QString(temperature < 0 ? "m%1" : "p%1").arg(std::fabs(temperature));
    }

private slots:
    void betaEquation()
    {
        const Vector v("temp-01");
        const BetaCurve curve{v.in("r0"), v.in("B")};
        const auto at = v.ins("t_c");
        QVERIFY(v.agrees("r_0", thermistorResistance_ohm(curve, at[0]).value()));
        QVERIFY(v.agrees("r_m18", thermistorResistance_ohm(curve, at[1]).value()));
        QVERIFY(v.agrees("t_31500", thermistorTemperature_c(curve, v.in("ohm")).value()));
        QVERIFY(v.isServed());
    }
    void steinhartHart()
    {
        const Vector v("temp-02");
        const SteinhartHart curve{v.in("A"), v.in("B"), v.in("C")};
        const auto ohm = v.ins("ohm");
        QVERIFY(v.agrees("t_10k", thermistorTemperature_c(curve, ohm[0]).value()));
        QVERIFY(v.agrees("t_32650", thermistorTemperature_c(curve, ohm[1]).value()));
        QVERIFY(v.isServed());
    }
    void platinum()
    {
        const Vector v("temp-03");
        for (const double t : v.ins("t_c"))
            QVERIFY(v.agrees(letterOf(t), platinumResistance_ohm(v.in("r0"), t).value()));
        QVERIFY(v.agrees("t", platinumTemperature_c(v.in("r0"), v.in("ohm")).value()));
        QVERIFY(v.isServed());
    }
    void boiling()
    {
        const Vector v("temp-04");
        const auto bar = v.ins("bar");
        for (int i = 0; i < 3; ++i)
            QVERIFY(v.agrees(QString("t%1").arg(i + 1), boilingPoint_c(bar[static_cast<std::size_t>(i)]).value()));
        QVERIFY(v.isServed());
    }
    void freezerLimit()
    {
        const Vector v("temp-05");
        const auto found =
            correctedTemperature({v.in("y"), v.in("corr"), v.in("correction_U_k2"), v.in("half_width")}).value();
        QVERIFY(v.agrees("value", found.value_c));
        QVERIFY(v.agrees("u", found.standard_c));
        QVERIFY(v.agrees("p_conform",
                         conformanceProbability(found.value_c, found.standard_c, {}, v.in("limit_c")).value()));
        QVERIFY(
            v.agrees("pass_below", acceptanceLimits(2 * found.standard_c, {}, v.in("limit_c")).value().passTo.value()));
        QVERIFY(v.isServed());
    }
    void lag()
    {
        const Vector v("temp-06");
        const Lag probe{v.in("tau"), v.in("a"), v.in("b")};
        QVERIFY(v.agrees("t_m10", timeToThreshold_s(probe, v.in("threshold_c")).value()));
        QVERIFY(v.agrees("at300", probeAfter_c(probe, v.in("after_s")).value()));
        QVERIFY(v.isServed());
    }
    void fahrenheit()
    {
        for (const char* id : {"temp-07-pub", "temp-07"}) {
            const Vector v(id);
            for (const double f : v.ins("fahrenheit")) {
                const QString letter = QString(f < 0 ? "fm%1" : "f%1").arg(std::fabs(f));
                QVERIFY(v.agrees(letter, celsiusOfFahrenheit(f).value()));
            }
            QVERIFY(v.isServed());
        }
    }
    void typeK()
    {
        for (const char* id : {"temp-08-pub", "temp-08", "temp-09"}) {
            const Vector v(id);
            for (const double t : v.ins("t_c")) QVERIFY(v.agrees(letterOf(t), typeKVoltage_mv(t).value()));
            QVERIFY(v.isServed());
        }
    }
    void coldJunction()
    {
        const Vector v("temp-10");
        const double cold_c = v.in("cold_junction_c");
        const double cold_mv = typeKVoltage_mv(cold_c).value();
        QVERIFY(v.agrees("e_cj", cold_mv));
        QVERIFY(v.agrees("e_total", cold_mv + v.in("mv")));
        QVERIFY(v.agrees("t", typeKJunction_c(v.in("mv"), cold_c).value()));
        // The blunder: degrees added.
        QVERIFY(v.agrees("wrong", typeKTemperature_c(v.in("mv")).value() + cold_c));
        QVERIFY(v.isServed());
    }
};

QTEST_GUILESS_MAIN(TemperatureReference)
#include "temperature.moc"
