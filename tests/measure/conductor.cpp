// SPDX-License-Identifier: GPL-3.0-or-later
// The shipped table and damaged ones. Sources of figures stand in the table itself; its numbers are held against
// printed ones in tests/reference/cable.cpp.
#include "core/measure/conductor.h"
#include "core/base/file.h"

#include <QtTest>

using namespace proofwalk;

namespace {

const std::string header = "name,section_mm2,resistance_ohm_per_km,temperature_c,bound,source,basis\n";

std::string refusal(const std::string& bytes)
{
    const auto table = measure::readConductors(bytes, "t.csv");
    return table ? "" : table.error().where + " " + table.error().code;
}

} // namespace

class TestConductor : public QObject {
    Q_OBJECT

private slots:
    void everyRowHasItsSource()
    {
        const auto bytes = base::readFile(PROOFWALK_SOURCE "/core/measure/conductors.csv").value();
        const auto table = measure::readConductors(bytes, "conductors.csv").value();
        QVERIFY(table.size() > 50);
        for (const auto& each : table) {
            QVERIFY2(!each.source.empty() && !each.basis.empty(), each.name.c_str());
            // 1/58 ohm mm2/m is pure copper's: nothing sold is better by more than rounding, nor twice as bad.
            const double ideal = 1000.0 / 58 / each.section_mm2 * (1 + 0.00393 * (each.temperature_c - 20));
            QVERIFY2(each.resistance_ohm_per_km > 0.99 * ideal, each.name.c_str());
            QVERIFY2(each.resistance_ohm_per_km < 1.35 * ideal, each.name.c_str());
        }
    }
    void namesAsPlansWriteThem()
    {
        QCOMPARE(measure::conductorByName("0.22 mm2").value().resistance_ohm_per_km, 96.0);
        QCOMPARE(measure::conductorByName(" 0.22 mm² ").value().name, std::string("0.22 mm2"));
        QVERIFY(!measure::conductorByName("AWG 22").value().isMaximum);
    }
    void anUnknownNameNamesTheNearest()
    {
        const auto unknown = measure::conductorByName("AGW 22");
        QVERIFY(!unknown);
        QCOMPARE(unknown.error().code, std::string("measure.conductor-unknown"));
        QCOMPARE(std::get<std::string>(unknown.error().arguments.at(1).value), std::string("AWG 22"));
        QVERIFY(!measure::conductorByName(""));
    }
    // 100 m of 0.5 mm2 at 20 °C: 2 x 0.1 km x 36.0 = 7.2 ohm (IEC 60228:2004, Table 1).
    void resistanceOfARun()
    {
        const auto conductor = measure::conductorByName("0.5 mm2").value();
        QCOMPARE(measure::pairResistance_ohm(measure::ConductorRun{conductor, 100, 20}).value(), 7.2);
        QVERIFY(!measure::pairResistance_ohm(measure::ConductorRun{conductor, 0, 20}));
        QVERIFY(!measure::pairResistance_ohm(measure::ConductorRun{conductor, 10, 91}));
    }
    void damagedTables()
    {
        QCOMPARE(refusal(""), std::string("t.csv csv.empty"));
        QCOMPARE(refusal("name,section_mm2\n"), std::string("t.csv measure.table-column"));
        QCOMPARE(refusal(header + "x,1,1,20,maximum,s\n"), std::string("t.csv:2 csv.cells"));
        QCOMPARE(refusal(header + "x,\"1,5\",1,20,maximum,s,b\n"), std::string("t.csv:2 measure.table-number"));
        QCOMPARE(refusal(header + "x,1,0,20,maximum,s,b\n"), std::string("t.csv:2 measure.table-number"));
        QCOMPARE(refusal(header + "x,1,1,20,most,s,b\n"), std::string("t.csv:2 measure.table-word"));
        QCOMPARE(refusal(header + "x,1,1,20,nominal,s,b\nx,1,1,20,nominal,s,b\n"),
                 std::string("t.csv:3 measure.table-twice"));
    }
};

QTEST_GUILESS_MAIN(TestConductor)
#include "conductor.moc"
