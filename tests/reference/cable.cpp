// SPDX-License-Identifier: GPL-3.0-or-later
// Sources: IEC 60228:2004, IEC 60028:1925, ASTM B258, NFPA 70 Table 8; each beside its vector in
// measure-vectors.json. NBS Handbook 100 below is from memory, to half of its last digit.
#include "core/measure/cable.h"
#include "tests/reference/vectors.h"

#include <fmt/format.h>

using namespace proofwalk;
using proofwalk::reference::Vector;

class CableReference : public QObject {
    Q_OBJECT

private slots:
    void solidConductorAtItsMaximum()
    {
        const Vector v("cable-03");
        const auto conductor = measure::conductorByName("1.5 mm2").value();
        QCOMPARE(conductor.resistance_ohm_per_km, v.in("r"));
        QVERIFY(conductor.isMaximum);
        QVERIFY(
            v.agrees("loop_ohm", measure::pairResistance_ohm(measure::ConductorRun{conductor, v.in("L"), 20}).value()));
    }
    void warmerCable()
    {
        const Vector v("cable-04");
        QVERIFY(v.agrees("r_t", measure::resistanceAtTemperature_ohm({v.in("r20"), 20, v.in("t")}).value()));
    }
    void fromSeventyFiveDegrees()
    {
        const Vector v("cable-05");
        const double cold = measure::resistanceAtTemperature_ohm({v.in("r75"), 75, v.in("t")}).value();
        QVERIFY(v.agrees("exact_by_alpha20", cold));
        // NFPA 70 rounds its coefficient to 0.00323: the two agree to 0.02 %, the blunder is 5 % off.
        QVERIFY(std::fabs(cold / v.out("r_t") - 1) < 0.0002);
        QVERIFY(cold / v.out("wrong_if_alpha20_used") > 1.045);
    }
    void sevenWires()
    {
        const Vector v("cable-09");
        const double section = measure::strandedSection_mm2(7, v.in("d")).value();
        QVERIFY(v.agrees("area_mm2", section));
        QVERIFY(v.agrees("loop_ohm", measure::pairResistance_ohm(measure::CableRun{v.in("L"), section, 20}).value()));
    }
    void gauge22()
    {
        const Vector v("cable-10");
        const double section = measure::gaugeSection_mm2(static_cast<int>(v.in("g"))).value();
        QVERIFY(v.agrees("area_mm2", section));
        QVERIFY(v.agrees("ohm_per_km_20", measure::pairResistance_ohm(measure::CableRun{500, section, 20}).value()));
        QVERIFY(v.agrees("ohm_per_km_75", measure::pairResistance_ohm(measure::CableRun{500, section, 75}).value()));
    }

    // NBS Handbook 100, Table 5, ohms per km at 20 °C; from memory. Tolerance: a unit of the last digit.
    void copperWireTables_data()
    {
        QTest::addColumn<int>("gauge");
        QTest::addColumn<double>("printed");
        QTest::addColumn<double>("unit");
        QTest::newRow("24") << 24 << 84.22 << 0.01;
        QTest::newRow("22") << 22 << 52.96 << 0.01;
        QTest::newRow("20") << 20 << 33.31 << 0.01;
        QTest::newRow("18") << 18 << 20.95 << 0.01;
        QTest::newRow("16") << 16 << 13.17 << 0.01;
        QTest::newRow("14") << 14 << 8.286 << 0.001;
        QTest::newRow("12") << 12 << 5.211 << 0.001;
        QTest::newRow("10") << 10 << 3.277 << 0.001;
    }
    void copperWireTables()
    {
        QFETCH(int, gauge);
        QFETCH(double, printed);
        QFETCH(double, unit);
        const double section = measure::gaugeSection_mm2(gauge).value();
        QVERIFY(std::fabs(measure::pairResistance_ohm(measure::CableRun{500, section, 20}).value() - printed) <= unit);
        const auto named = measure::conductorByName(fmt::format("AWG {}", gauge)).value();
        QVERIFY(std::fabs(named.resistance_ohm_per_km - printed) <= unit);
    }
};

QTEST_GUILESS_MAIN(CableReference)
#include "cable.moc"
