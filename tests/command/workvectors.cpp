// SPDX-License-Identifier: GPL-3.0-or-later
// `proofwalk work loop`, `cable` and `battery` as a person types them, against the worked values of
// tests/reference/measure-vectors.json, whose letters are mapped to our names here. Sources stand beside each vector.
#include "core/command/command.h"
#include "tests/reference/vectors.h"

#include <sstream>

using namespace proofwalk;
using proofwalk::reference::Vector;

namespace {

/// The results of one line, as JSON gives them.
QJsonObject answered(const QString& line)
{
    std::vector<std::string> words{"work"};
    for (const QString& word : line.split(' ')) words.push_back(word.toStdString());
    words.emplace_back("--json");
    std::ostringstream out;
    std::ostringstream err;
    const auto status = static_cast<int>(command::runWords(words, out, err));
    if (status != 0) qWarning("%s: %s", qPrintable(line), err.str().c_str());
    return QJsonDocument::fromJson(QByteArray::fromStdString(out.str())).object()["results"].toObject();
}

} // namespace

class WorkVectors : public QObject {
    Q_OBJECT

private slots:
    void initTestCase() { qputenv("PROOFWALK_DATA", PROOFWALK_SOURCE "/core"); }

    void agree_data()
    {
        QTest::addColumn<QString>("id");
        QTest::addColumn<QString>("line");
        QTest::addColumn<QString>("names"); // ours = the vector's letter, item of a list after a dot
        const auto row = [](const char* id, const char* line, const char* names) {
            QTest::addRow("%s %s", id, names) << id << line << names;
        };
        row("cable-01", "cable length_ft=100 current_a=4 wire_ohm_per_kft=4.99 source_v=24",
            "drop_v=drop_v drop_pct=percent_of_24");
        row("cable-02", "cable segments_ft=25,50,50 currents_a=0.75,1.05,0.75 source_v=20.4 wire_ohm_per_kft=3.07",
            "drops_v.0=d1 drops_v.1=d2 drops_v.2=d3 voltages_v.0=v1 voltages_v.1=v2 voltages_v.2=v3 drop_v=ptp_drop "
            "lump_drop_v=lump_drop lump_end_v=v_end_lump");
        row("cable-03", "cable length_m=60 current_a=0.5 wire_ohm_per_km=12.1", "loop_ohm=loop_ohm drop_v=drop_v");
        row("cable-04", "cable resistance_ohm=12.1 wanted_c=50", "warm_ohm=r_t");
        row("cable-05", "cable resistance_ohm=3.07 known_c=75 wanted_c=20 coefficient_per_k=0.00323", "warm_ohm=r_t");
        row("cable-05", "cable resistance_ohm=3.07 known_c=75 wanted_c=20", "warm_ohm=exact_by_alpha20");
        row("cable-06", "cable source_v=20.4 least_v=16 current_a=2 wire_ohm_per_kft=1.98",
            "loop_ohm=rmax_ohm length_ft=lmax_ft length_m=lmax_m");
        row("cable-07",
            "cable segments_m=10,10,10,10,10,10,10,10,10,10 currents_a=0.1,0.1,0.1,0.1,0.1,0.1,0.1,0.1,0.1,0.1 "
            "source_v=24 wire_ohm_per_km=12.1",
            "lump_drop_v=lump_drop drop_v=distributed_drop ratio=ratio");
        row("cable-08", "cable source_v=20.4 loop_ohm=2.5 power_w=12", "load_v=v_load load_a=i_load most_w=p_max");
        row("cable-09", "cable count=7 diameter_mm=0.2 length_m=100",
            "section_mm2=area_mm2 at_20c_ohm_per_km=ohm_per_km loop_ohm=loop_ohm");
        row("cable-10", "cable gauge=22",
            "diameter_mm=d_mm section_mm2=area_mm2 at_20c_ohm_per_km=ohm_per_km_20 at_75c_ohm_per_km=ohm_per_km_75");
        row("cable-11", "cable resistance_ohm=1.452 known_c=20 found_ohm=1.561", "temperature_c=t2");
        row("cable-12", "cable length_m=80 current_ma=300 wire_ohm_per_km=36 return_ohm_per_km=18.1", "drop_v=drop_v");
        row("loop-01", "loop loop=cable+eol=4700 tolerance_pct=1 length_m=100 wire_ohm_per_km=84.2151",
            "rest_nominal_ohm=nominal rest_from_ohm=lo rest_to_ohm=hi");
        row("loop-02", "loop loop=cable=40+(alarm:nc|zone=4700)+eol=4700 tolerance_pct=1",
            "rest_from_ohm=normal_lo rest_to_ohm=normal_hi alarm_from_ohm=alarm_lo alarm_to_ohm=alarm_hi "
            "threshold_rest_alarm_ohm=threshold_mid");
        row("loop-02", "loop eol_ohm=4700 alarm_ohm=4700 cable_ohm=40",
            "rest_from_ohm=normal_lo rest_to_ohm=normal_hi alarm_from_ohm=alarm_lo alarm_to_ohm=alarm_hi");
        row("loop-03", "loop eol_kohm=10 alarm_kohm=1 tolerance_pct=10",
            "rest_to_ohm=normal_hi alarm_from_ohm=alarm_lo");
        row("loop-10", "loop eol_ohm=3900 alarm_ohm=680 cable_ohm=15 rest=open tolerance_pct=0",
            "rest_to_ohm=normal alarm_to_ohm=alarm shorted_to_ohm=short");
        row("loop-03", "loop loop=(alarm:nc|zone=1000)+eol=10000 tolerance_pct=10",
            "rest_to_ohm=normal_hi alarm_from_ohm=alarm_lo");
        row("loop-04", "loop sound_ohm=4700 leak_kohm=22", "found_ohm=measured deviation_pct=deviation_percent");
        row("loop-04", "loop sound_ohm=4700 found_ohm=3872.65917602996", "leak_ohm=leak_from_measured");
        row("loop-05", "loop sound_ohm=4700 below_pct=5", "leak_ohm=leak_min");
        row("loop-06", "loop found_ohm=3.20 leads_ohm=0.15 wire_ohm_per_km=84.2151", "distance_m=metres");
        row("loop-06", "loop found_ohm=3.20 leads_ohm=0.15 wire_ohm_per_km=84.2151 cable_c=35",
            "distance_m=metres_at_35C");
        row("loop-07", "loop loop=cable=12..12+(a:nc|ra=4700)+(b:nc|rb=4700)+eol=2200",
            "rest_nominal_ohm=normal a_nominal_ohm=one b_nominal_ohm=one a-and-b_nominal_ohm=two");
        row("loop-08", "loop source_v=5 pull_up_ohm=2200 loop_ohm=4716.84", "terminal_v=v_loop");
        row("loop-08", "loop source_v=5 pull_up_ohm=2200 terminal_v=3.41",
            "loop_ohm=r_from_v ohm_per_volt=ohm_per_volt_at_vm");
        row("loop-09", "loop supply_v=27.3 plus_v=12 minus_v=3 meter_megohm=10", "plus_ohm=r_plus minus_ohm=r_minus");
        row("loop-10", "loop loop=cable=15..15+(call:no+ra=680|eol=3900)",
            "rest_nominal_ohm=normal call_nominal_ohm=alarm shorted_to_ohm=short");
        row("loop-11", "loop rings=yellow,violet,black,brown,brown", "resistance_ohm=ohm from_ohm=lo to_ohm=hi");
        row("loop-12", "loop nominal_ohm=5600 tolerance_pct=1 coefficient_ppm_per_k=100 change_k=40",
            "from_ohm=lo to_ohm=hi half_width_ohm=half_width");
        row("battery-01", "battery standby_a=0.42 standby_h=24 alarm_a=3.8 alarm_min=5 margin=1.2",
            "net_ah=net_ah required_ah=with_20");
        row("battery-01", "battery rule=nfpa-72-2022 listed_standby_ma=420 listed_alarm_a=3.8", "required_ah=with_25");
        row("battery-02", "battery standby_a=0.25 standby_h=24 alarm_a=1.5 alarm_min=5", "net_ah=net_ah");
        row("battery-03", "battery rule=bs-5839-1 listed_standby_a=0.05 listed_alarm_a=0.3", "required_ah=d1");
        row("battery-03", "battery rule=bs-5839-1-high-load listed_standby_a=0.05 listed_alarm_a=0.3",
            "required_ah=d175");
        row("battery-04", "battery rule=bs-5839-1-unattended-high-load listed_standby_a=0.31 listed_alarm_a=2.4",
            "required_ah=cmin");
        row("battery-05", "battery standby_a=0.284 standby_h=11.75 alarm_a=0.731 alarm_min=15 margin=1.25",
            "net_ah=net_ah required_ah=rated_ah");
        row("battery-06", "battery uncorrected_ah=10.4 temperature_c=10 design_margin=1.1 ageing=1.25",
            "required_ah=sized without_margin_ah=without_margin");
        row("battery-07", "battery uncorrected_ah=1 temperature_c=7", "temperature_factor=f7");
        row("battery-07", "battery uncorrected_ah=1 temperature_c=0", "temperature_factor=f0");
        row("battery-08", "battery capacity_ah=120 exponent=1.4 current_a=120", "lasts_h=hours");
        row("battery-09", "battery capacity_1a_ah=100 exponent=1.2 current_a=5", "lasts_h=one_ampere_form");
        row("battery-09", "battery capacity_ah=100 exponent=1.2 current_a=5", "lasts_h=rated_form");
        row("battery-10", "battery capacity_ah=7 exponent=1.15 current_a=2", "lasts_h=h2 delivered_ah=ah2");
        row("battery-10", "battery capacity_ah=7 exponent=1.15 current_a=3.8", "equivalent_a=ieq");
        row("battery-11", "battery capacity_ah=18 exponent=1.15 currents_a=0.42,3.8 times_h=24,0.08333333333333333",
            "lasts_h.0=t1 lasts_h.1=t2 used=used needed_ah=needed_ah");
        row("battery-12", "battery light_v=12.72 light_a=0.05 heavy_v=12.31 heavy_a=5.05 at_a=10",
            "internal_ohm=r_ohm emf_v=emf terminal_v=v_at_10A standard_ohm=u_r");
        row("battery-13", "battery what=recharge capacity_ah=17 load_a=0.42", "charge_a=i_charge charger_a=i_total");
        row("battery-14", "battery cells=6 temperature_c=35", "float_v=v");
    }
    void agree()
    {
        QFETCH(QString, id);
        QFETCH(QString, line);
        QFETCH(QString, names);
        const Vector vector(id);
        const QJsonObject results = answered(line);
        for (const QString& pair : names.split(' ')) {
            const QString ours = pair.section('=', 0, 0);
            const QJsonValue value = results[ours.section('.', 0, 0)];
            const QJsonValue one = value.isArray() ? value.toArray()[ours.section('.', 1).toInt()] : value;
            QVERIFY2(one.isDouble(), qPrintable(ours));
            QVERIFY(vector.agrees(pair.section('=', 1), one.toDouble()));
        }
    }
    // What a person gets to read of a resistor at the panel: the explanation, and what tells it from a sound loop.
    void diagnosis()
    {
        const QString loop = "loop loop=cable=12+tamper:nc+(alarm:nc|zone=4700)+eol=2200 ";
        const auto one = answered(loop + "rest_ohm=2210")["findings"].toArray();
        QCOMPARE(one.at(0).toString(), "none");
        QVERIFY(one.contains("resistor-at-panel eol"));
        const auto two = answered(loop + "rest_ohm=2210 shorted_ohm=2208")["findings"].toArray();
        QCOMPARE(two.at(0).toString(), "resistor-at-panel eol");
        QVERIFY(!two.contains("none"));
        const auto four = answered(loop + "rest_kohm=4.71 acted_ohm=6910 over_range=cover shorted_ohm=10");
        QCOMPARE(four["findings"].toArray().at(0).toString(), "resistors-swapped zone eol");
    }
    void refused_data()
    {
        QTest::addColumn<QString>("line");
        for (const char* line : {"loop loop=cable+eol=4700",
                                 "loop loop=cable+eol=4700 length_m=100",
                                 "loop loop=eol",
                                 "loop loop=eol=4700 thresholds_ohm=100 shows=short",
                                 "loop loop=eol=4700 shows=short",
                                 "loop loop=eol=4700 thresholds_ohm=200,100 shows=a,b,c",
                                 "loop what=diagnosis loop=eol=4700",
                                 "loop loop=eol=4700 acted_ohm=5",
                                 "loop loop=eol=4700 rest_ohm=5 over_range=rest",
                                 "loop loop=eol=4700 over_range=later",
                                 "loop loop=eol=4700+cable=5 shorted_ohm=5",
                                 "loop loop=eol=4700+eol=4700",
                                 "loop rings=yellow,violet",
                                 "loop rings=yellow,mauve,red,gold",
                                 "cable length_m=60 current_a=0.5",
                                 "cable length_m=60 current_a=0.5 conductor=none",
                                 "cable length_m=60 current_a=0.5 conductor=0.5 wire_ohm_per_km=36",
                                 "cable segments_m=1,2 currents_a=1 source_v=24 wire_ohm_per_km=36",
                                 "cable segments_m=1 source_v=24 wire_ohm_per_km=36",
                                 "cable segments_m=10000 currents_a=9 source_v=24 wire_ohm_per_km=36",
                                 "cable source_v=24 loop_ohm=100 power_w=100",
                                 "battery rule=none listed_standby_a=1 listed_alarm_a=1",
                                 "battery rule=bs-5839-1 listed_standby_a=1",
                                 "battery uncorrected_ah=1 temperature_c=60",
                                 "battery capacity_ah=7 exponent=1.1 currents_a=1,2 times_h=1",
                                 "battery times_min=15,30 voltages_v=12 end_v=10.5 required_min=60"})
            QTest::newRow(line) << line;
    }
    void refused()
    {
        QFETCH(QString, line);
        std::vector<std::string> words{"work"};
        for (const QString& word : line.split(' ')) words.push_back(word.toStdString());
        std::ostringstream out;
        std::ostringstream err;
        QCOMPARE(static_cast<int>(command::runWords(words, out, err)), 2);
        QVERIFY(out.str().empty() && !err.str().empty());
        QVERIFY2(!QString::fromStdString(err.str()).contains('{'),
                 err.str().c_str()); // every sentence has its arguments
        qInfo("%s", err.str().c_str());
    }
};

QTEST_GUILESS_MAIN(WorkVectors)
#include "workvectors.moc"
