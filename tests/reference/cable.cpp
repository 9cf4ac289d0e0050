// SPDX-License-Identifier: GPL-3.0-or-later
// Sources: IEC 60228:2004, IEC 60028:1925, ASTM B258, NFPA 70 Table 8; each beside its vector in
// measure-vectors.json. NBS Handbook 100 below is from memory, to half of its last digit.
#include "core/measure/cable.h"
#include "core/measure/drop.h"
#include "tests/reference/vectors.h"

#include <fmt/format.h>

using namespace proofwalk;
using proofwalk::reference::Vector;

namespace {

/// Ohms per 1000 ft of both conductors, as the American table prints them.
measure::Supply perThousandFeet(double r, double source_v = 24)
{
    const double ohm_per_km = r / measure::metresPerFoot;
    return {source_v, ohm_per_km, ohm_per_km};
}

} // namespace

class CableReference : public QObject {
    Q_OBJECT

private slots:
    void oneRun()
    {
        for (const char* id : {"cable-01-pub", "cable-01"}) {
            const Vector v(id);
            const double drop =
                measure::runDrop_v(perThousandFeet(v.in("r")), v.in("L") * measure::metresPerFoot, v.in("I")).value();
            QVERIFY(v.agrees("drop_v", drop));
            QVERIFY(v.agrees("percent_of_24", 100 * drop / 24));
            QVERIFY(v.isServed());
        }
    }
    void pointToPointAndLump()
    {
        const Vector v("cable-02");
        std::vector<measure::Appliance> appliances;
        for (const auto& [length, current] : {std::pair{"l1", "i1"}, {"l2", "i2"}, {"l3", "i3"}})
            appliances.push_back({v.in(length)*measure::metresPerFoot, v.in(current), 0});
        const measure::Supply supply = perThousandFeet(v.in("r"), v.in("vs"));
        const auto named = measure::conductorByName("AWG 14 solid").value();
        QVERIFY(std::fabs(named.resistance_ohm_per_km - supply.feed_ohm_per_km) < 0.00005); // its last digit
        const auto at = measure::pointToPoint(supply, appliances).value();
        for (int i = 0; i < 3; ++i) {
            QVERIFY(v.agrees(QString("d%1").arg(i + 1), at[static_cast<std::size_t>(i)].drop_v));
            QVERIFY(v.agrees(QString("v%1").arg(i + 1), at[static_cast<std::size_t>(i)].voltage_v));
        }
        QVERIFY(v.agrees("ptp_drop", supply.source_v - at.back().voltage_v));
        const double lump = measure::lumpDrop_v(supply, appliances).value();
        QVERIFY(v.agrees("lump_drop", lump));
        QVERIFY(v.agrees("v_end_lump", supply.source_v - lump));
        QVERIFY(v.isServed());
    }
    void longestRun()
    {
        const Vector v("cable-06");
        const auto run = measure::longestRun(perThousandFeet(v.in("r"), v.in("vs")), v.in("vmin"), v.in("I")).value();
        QVERIFY(v.agrees("rmax_ohm", run.loop_ohm));
        QVERIFY(v.agrees("lmax_m", run.length_m));
        QVERIFY(v.agrees("lmax_ft", run.length_m / measure::metresPerFoot));
        QVERIFY(v.isServed());
    }
    void evenlySpread()
    {
        const Vector v("cable-07");
        const std::vector<measure::Appliance> appliances(static_cast<std::size_t>(v.in("n")),
                                                         {v.in("L") / v.in("n"), v.in("i"), 0});
        const measure::Supply supply{24, v.in("r"), v.in("r")};
        const double lump = measure::lumpDrop_v(supply, appliances).value();
        const double spread = 24 - measure::pointToPoint(supply, appliances).value().back().voltage_v;
        QVERIFY(v.agrees("lump_drop", lump));
        QVERIFY(v.agrees("distributed_drop", spread));
        QVERIFY(v.agrees("ratio", spread / lump));
        QVERIFY(v.isServed());
    }
    void regulatedAppliance()
    {
        const Vector v("cable-08");
        const auto state = measure::regulatedState(v.in("vs"), v.in("R"), v.in("P")).value();
        QVERIFY(v.agrees("v_load", state.voltage_v));
        QVERIFY(v.agrees("i_load", state.current_a));
        QVERIFY(v.agrees("p_max", state.mostPower_w));
        // What the current at 24 V would make, which hides that less voltage means more current.
        const measure::Supply supply{24, v.in("R") * 1000, 0};
        QVERIFY(v.agrees("drop_if_nominal_current", measure::runDrop_v(supply, 1, v.in("P") / 24).value()));
        QVERIFY(v.isServed());
        // The general way round agrees with the closed form, from two sides.
        const std::vector<measure::Appliance> one{{1, 0, v.in("P")}};
        const auto at = measure::pointToPoint({v.in("vs"), v.in("R") * 1000, 0}, one).value();
        QVERIFY(std::fabs(at[0].voltage_v / v.out("v_load") - 1) < 1e-9);
    }
    void temperatureOfTheCable()
    {
        const Vector v("cable-11");
        QVERIFY(v.agrees("t2", measure::temperatureFromResistance_c(v.in("r1"), v.in("t1"), v.in("r2")).value()));
        QVERIFY(v.isServed());
    }
    void unlikeConductors()
    {
        const Vector v("cable-12");
        QVERIFY(v.agrees("drop_v", measure::runDrop_v({24, v.in("ra"), v.in("rb")}, v.in("L"), v.in("I")).value()));
        QVERIFY(v.isServed());
    }
    void solidConductorAtItsMaximum()
    {
        const Vector v("cable-03");
        const auto conductor = measure::conductorByName("1.5 mm2").value();
        QCOMPARE(conductor.resistance_ohm_per_km, v.in("r"));
        QVERIFY(conductor.isMaximum);
        QVERIFY(
            v.agrees("loop_ohm", measure::pairResistance_ohm(measure::ConductorRun{conductor, v.in("L"), 20}).value()));
        QVERIFY(v.agrees("drop_v", measure::runDrop_v({24, v.in("r"), v.in("r")}, v.in("L"), v.in("I")).value()));
        QVERIFY(v.isServed());
    }
    void warmerCable()
    {
        const Vector v("cable-04");
        QVERIFY(v.agrees("r_t", measure::resistanceAtTemperature_ohm({v.in("r20"), 20, v.in("t")}).value()));
        QVERIFY(
            v.agrees("r_t", measure::resistanceByCoefficient_ohm({v.in("r20"), 20, v.in("t")}, v.in("alpha")).value()));
        QVERIFY(v.isServed());
    }
    void fromSeventyFiveDegrees()
    {
        const Vector v("cable-05");
        const double cold = measure::resistanceAtTemperature_ohm({v.in("r75"), 75, v.in("t")}).value();
        QVERIFY(v.agrees("exact_by_alpha20", cold));
        const auto by = [&](const char* coefficient) {
            return measure::resistanceByCoefficient_ohm({v.in("r75"), 75, v.in("t")}, v.in(coefficient)).value();
        };
        QVERIFY(v.agrees("r_t", by("alpha75")));
        QVERIFY(v.agrees("wrong_if_alpha20_used", by("alpha20")));
        QVERIFY(v.isServed());
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
        // Of one conductor: half of a pair of a kilometre.
        QVERIFY(v.agrees("ohm_per_km", measure::pairResistance_ohm(measure::CableRun{500, section, 20}).value()));
        QVERIFY(v.isServed());
    }
    void gauge22()
    {
        const Vector v("cable-10");
        const double section = measure::gaugeSection_mm2(static_cast<int>(v.in("g"))).value();
        QVERIFY(v.agrees("d_mm", measure::gaugeDiameter_mm(static_cast<int>(v.in("g"))).value()));
        QVERIFY(v.agrees("area_mm2", section));
        QVERIFY(v.agrees("ohm_per_km_20", measure::pairResistance_ohm(measure::CableRun{500, section, 20}).value()));
        QVERIFY(v.agrees("ohm_per_km_75", measure::pairResistance_ohm(measure::CableRun{500, section, 75}).value()));
        QVERIFY(v.isServed());
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
