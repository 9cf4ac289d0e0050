// SPDX-License-Identifier: GPL-3.0-or-later
// Sources: NFPA 72, BS 5839-1, IEEE 485, IEC 60896-21, EN 54-4 and public worked examples, each beside its vector in
// measure-vectors.json with what is from memory.
#include "core/measure/battery.h"
#include "core/measure/batterytest.h"
#include "core/measure/peukert.h"
#include "tests/reference/vectors.h"

using namespace proofwalk;
using proofwalk::reference::Vector;

namespace {

double dutyOf(const Vector& v)
{
    return measure::dutyCapacity_ah({v.in("i1"), v.in("t1"), v.in("i2"), v.in("m") / 60}).value();
}

double byRule(const char* rule, const Vector& v)
{
    return measure::requiredCapacity_ah(measure::batteryRule(rule).value(), v.in("i1"), v.in("i2")).value();
}

} // namespace

class BatteryReference : public QObject {
    Q_OBJECT

private slots:
    void northAmerican()
    {
        const Vector printed("battery-01-pub"), full("battery-01");
        QVERIFY(printed.agrees("net_ah", dutyOf(printed)));
        QVERIFY(printed.agrees("with_20", byRule("nfpa-72-2019", printed)));
        QVERIFY(printed.isServed());
        QVERIFY(full.agrees("net_ah", dutyOf(full)));
        QVERIFY(full.agrees("with_20", byRule("nfpa-72-2019", full)));
        QVERIFY(full.agrees("with_25", byRule("nfpa-72-2022", full)));
        QVERIFY(full.isServed());
    }
    void withoutMargin()
    {
        for (const char* id : {"battery-02-pub", "battery-02"}) {
            const Vector v(id);
            QVERIFY(v.agrees("net_ah", dutyOf(v)));
            QVERIFY(v.isServed());
        }
    }
    void british()
    {
        const Vector v("battery-03");
        QVERIFY(v.agrees("d1", byRule("bs-5839-1", v)));
        QVERIFY(v.agrees("d175", byRule("bs-5839-1-high-load", v)));
        // The shortcut takes a whole hour of alarm, which is no rule of ours: the same margin on an hour's duty.
        const double margin = measure::batteryRule("bs-5839-1").value().margin;
        QVERIFY(
            v.agrees("shortcut", margin * measure::dutyCapacity_ah({v.in("i1"), v.in("t1"), v.in("i2"), 1}).value()));
        QVERIFY(v.isServed());
    }
    void britishThreeDays()
    {
        const Vector v("battery-04");
        QCOMPARE(measure::batteryRule("bs-5839-1-unattended-high-load").value().standby_h, v.in("t1"));
        QCOMPARE(measure::batteryRule("bs-5839-1-unattended-high-load").value().alarmFactor, v.in("D"));
        QVERIFY(v.agrees("cmin", byRule("bs-5839-1-unattended-high-load", v)));
        QVERIFY(v.isServed());
    }
    void intruderToTheEndOfLife()
    {
        const Vector v("battery-05");
        const double net =
            measure::dutyCapacity_ah({v.in("i1"), v.in("hours_quiet"), v.in("i2"), v.in("hours_alarm")}).value();
        QVERIFY(v.agrees("net_ah", net));
        QVERIFY(v.agrees("rated_ah",
                         measure::sizedCapacity_ah({.uncorrected_ah = net, .ageing = 1 / v.in("usable")}).value()));
        QVERIFY(v.isServed());
    }
    void sizedForCold()
    {
        const Vector v("battery-06");
        QCOMPARE(measure::cellTemperatureFactor(10).value(), v.in("temperature_factor"));
        measure::Sizing sizing{v.in("c"), v.in("temperature_factor"), v.in("design_margin"), v.in("ageing")};
        QVERIFY(v.agrees("sized", measure::sizedCapacity_ah(sizing).value()));
        sizing.designMargin = 1;
        QVERIFY(v.agrees("without_margin", measure::sizedCapacity_ah(sizing).value()));
        QVERIFY(v.isServed());
    }
    void betweenRowsOfTheTable()
    {
        const Vector v("battery-07");
        QVERIFY(v.agrees("f7", measure::cellTemperatureFactor(v.in("t7")).value()));
        QVERIFY(v.agrees("f0", measure::cellTemperatureFactor(v.in("t0")).value()));
        QVERIFY(v.isServed());
    }
    void theTableItself()
    {
        const Vector v("battery-15");
        std::vector<double> factors;
        for (const double celsius : v.ins("celsius"))
            factors.push_back(measure::cellTemperatureFactor(celsius).value());
        QVERIFY(v.agrees("factor", factors));
        QVERIFY(v.isServed());
    }
    void peukertRatedForm()
    {
        for (const char* id : {"battery-08-pub", "battery-08"}) {
            const Vector v(id);
            QVERIFY(v.agrees("hours", measure::lastsFor_h({v.in("C"), v.in("H"), v.in("k")}, v.in("I")).value()));
            QVERIFY(v.isServed());
        }
    }
    void peukertOneAmpereForm()
    {
        for (const char* id : {"battery-09-pub", "battery-09"}) {
            const Vector v(id);
            QVERIFY(
                v.agrees("one_ampere_form", measure::lastsForOneAmpereForm_h(v.in("C"), v.in("k"), v.in("I")).value()));
            if (v.expected().contains("rated_form"))
                QVERIFY(v.agrees("rated_form",
                                 measure::lastsFor_h({v.in("C"), v.in("rated_hours"), v.in("k")}, v.in("I")).value()));
            QVERIFY(v.isServed());
        }
    }
    void peukertDelivered()
    {
        const Vector v("battery-10");
        const measure::PeukertBattery battery{v.in("C"), v.in("H"), v.in("k")};
        const auto loads = v.ins("loads_a");
        const double hours = measure::lastsFor_h(battery, loads.at(0)).value();
        QVERIFY(v.agrees("h2", hours));
        QVERIFY(v.agrees("ah2", loads.at(0) * hours));
        QVERIFY(v.agrees("ieq", measure::equivalentCurrent_a(battery, loads.at(1)).value()));
        QVERIFY(v.isServed());
    }
    void peukertDuty()
    {
        const Vector v("battery-11");
        const measure::PeukertBattery battery{v.in("C"), v.in("H"), v.in("k")};
        std::vector<measure::Load> loads;
        for (int i = 0; i < v.rowCount("duty"); ++i) loads.push_back({v.row("duty", i).at(0), v.row("duty", i).at(1)});
        QVERIFY(v.agrees("t1", measure::lastsFor_h(battery, loads.at(0).current_a).value()));
        QVERIFY(v.agrees("t2", measure::lastsFor_h(battery, loads.at(1).current_a).value()));
        const auto use = measure::dutyUse(battery, loads).value();
        QVERIFY(v.agrees("used", use.used));
        QVERIFY(v.agrees("needed_ah", use.needed_ah));
        QVERIFY(v.isServed());
    }
    void internalResistance()
    {
        const Vector v("battery-12");
        const auto line = measure::loadLine({.light_v = v.in("v1"),
                                             .light_a = v.in("i1"),
                                             .heavy_v = v.in("v2"),
                                             .heavy_a = v.in("i2"),
                                             .resolution_v = 0.01})
                              .value();
        QVERIFY(v.agrees("r_ohm", line.resistance_ohm));
        QVERIFY(v.agrees("emf", line.emf_v));
        QVERIFY(v.agrees("v_at_10A", measure::terminalVoltage_v(line, 10).value()));
        QVERIFY(v.agrees("u_r", line.standard_ohm));
        QVERIFY(v.isServed());
    }
    void recharge()
    {
        const Vector v("battery-13");
        const measure::Recharge recharge{v.in("C"), v.in("share"), v.in("efficiency"), v.in("load_a")};
        const auto current = measure::chargerCurrent(recharge, v.in("hours")).value();
        QVERIFY(v.agrees("i_charge", current.battery_a));
        QVERIFY(v.agrees("i_total", current.total_a));
        QVERIFY(v.isServed());
    }
    void floating()
    {
        const Vector v("battery-14");
        QVERIFY(v.agrees("v", measure::floatVoltage_v(static_cast<int>(v.in("cells")), v.in("v_cell_20"),
                                                      v.in("mv_per_k_cell"), v.in("t"))
                                  .value()));
        QVERIFY(v.isServed());
    }
};

QTEST_GUILESS_MAIN(BatteryReference)
#include "battery.moc"
