// SPDX-License-Identifier: GPL-3.0-or-later
// Sizing a battery: properties and refusals. Figures with sources stand in tests/reference/battery.
#include "core/measure/battery.h"

#include "tests/measure/refusal.h"

#include <QtTest>

#include <cmath>
#include <limits>

using namespace proofwalk;
using tests::inputOf;

namespace {

constexpr double infinity = std::numeric_limits<double>::infinity();

} // namespace

class TestBattery : public QObject {
    Q_OBJECT

private slots:
    void everyRuleHasItsSource()
    {
        const auto rules = measure::batteryRules().value();
        QVERIFY(rules.size() >= 10);
        for (const auto& each : rules) {
            QVERIFY(!each.source.empty());
            QVERIFY2(each.basis == "published" || each.basis == "from memory", each.name.c_str());
            QVERIFY(each.margin >= 1 && each.standby_h > 0 && each.alarm_min > 0);
        }
    }
    void growsWithEveryLoadAndScales()
    {
        const auto rules = measure::batteryRules().value();
        for (const auto& rule : rules) {
            const double ah = measure::requiredCapacity_ah(rule, 0.3, 1.2).value();
            QVERIFY(measure::requiredCapacity_ah(rule, 0.31, 1.2).value() > ah);
            QVERIFY(measure::requiredCapacity_ah(rule, 0.3, 1.3).value() > ah);
            QVERIFY(std::fabs(measure::requiredCapacity_ah(rule, 0.6, 2.4).value() - 2 * ah) < 1e-9);
        }
    }
    void highLoadsCountMore()
    {
        QCOMPARE(measure::alarmFactor(12, 0.6).value(), 1.0);
        QCOMPARE(measure::alarmFactor(12, 0.61).value(), 1.75);
    }
    void listedAndMeasured()
    {
        const std::vector<double> listed{0.1, 0.05, 0.03};
        QVERIFY(std::fabs(measure::designCurrent(listed, std::nullopt, 0)->current_a - 0.18) < 1e-12);
        const auto below = measure::designCurrent(listed, 0.15, 0.02).value();
        QVERIFY(!below.isMeasured && std::fabs(below.current_a - 0.18) < 1e-12);
        const auto above = measure::designCurrent(listed, 0.17, 0.02).value();
        QVERIFY(above.isMeasured && std::fabs(above.current_a - 0.19) < 1e-12);
        QCOMPARE(measure::designCurrent({}, 0.17, 0)->current_a, 0.17);
        QCOMPARE(measure::designCurrent({}, std::nullopt, 0).error().code, std::string("measure.currents-missing"));
    }
    void coldTakesMoreCells()
    {
        double before = infinity;
        for (double celsius = -3.9; celsius <= 51.7; celsius += 0.1) {
            const double factor = measure::cellTemperatureFactor(celsius).value();
            QVERIFY(factor <= before);
            before = factor;
        }
        QCOMPARE(measure::cellTemperatureFactor(25).value(), 1.0);
        for (const double bad : {-4.0, 51.8, std::nan(""), infinity, -infinity})
            QCOMPARE(inputOf(measure::cellTemperatureFactor(bad)), std::string("temperature_c"));
    }
    // 0.35 A is the 20 hour current of 7 Ah: above it another rule of BS 5839-1 holds, and NFPA 72 has none.
    void aHighLoadHasARuleOfItsOwn()
    {
        const auto bs = measure::batteryRule("bs-5839-1").value();
        QCOMPARE(measure::fittedBattery(bs, 7, 0.05, 0.35).value().holdInstead, std::string());
        QCOMPARE(measure::fittedBattery(bs, 7, 0.05, 0.36).value().holdInstead, std::string("bs-5839-1-high-load"));
        const auto nfpa = measure::batteryRule("nfpa-72-2022").value();
        QCOMPARE(measure::fittedBattery(nfpa, 7, 0.05, 0.36).value().holdInstead, std::string());
        const auto rules = measure::batteryRules().value();
        for (const auto& rule : rules) QVERIFY(rule.highLoadRule.empty() || measure::batteryRule(rule.highLoadRule));
        QVERIFY(measure::fittedBattery(bs, 1, 1, 1).value().spare_ah < 0);
        QCOMPARE(inputOf(measure::fittedBattery(bs, -1, 0.05, 0.3)), std::string("capacity_ah"));
    }
    void unknownRule()
    {
        const auto found = measure::batteryRule("nfpa-72");
        QCOMPARE(found.error().code, std::string("measure.battery-rule"));
        QVERIFY(std::get<std::string>(found.error().arguments.at(1).value).starts_with("nfpa-72"));
    }
    void aTableOfRules()
    {
        const std::string head = "name,standby_h,alarm_min,alarm_factor,margin,high_load_rule,source,basis\n";
        const auto codeOf = [](const std::string& bytes) {
            const auto rules = measure::readBatteryRules(bytes, "t.csv");
            return rules ? std::string() : rules.error().code;
        };
        QCOMPARE(codeOf(head + "a,24,5,1,1.2,,s,published\n"), std::string());
        QCOMPARE(codeOf(head + "a,24,5,1,0.9,,s,published\n"), std::string("measure.table-number"));
        QCOMPARE(codeOf(head + "a,-1,5,1,1.2,,s,published\n"), std::string("measure.table-number"));
        QCOMPARE(codeOf(head + "a,24,\"5,5\",1,1.2,,s,published\n"), std::string("measure.table-number"));
        QCOMPARE(codeOf(head + "a,24,5,1,1.2,,s,p\na,24,5,1,1.2,,s,p\n"), std::string("measure.table-twice"));
        QCOMPARE(codeOf("name,standby_h\na,24\n"), std::string("measure.table-column"));
    }
    void refusedByName()
    {
        for (const double bad : {-1.0, infinity, -infinity, std::nan(""), 1e308}) {
            QCOMPARE(inputOf(measure::dutyCapacity_ah({bad, 24, 1, 0.1})), std::string("standby_a"));
            QCOMPARE(inputOf(measure::dutyCapacity_ah({1, bad, 1, 0.1})), std::string("standby_h"));
            QCOMPARE(inputOf(measure::dutyCapacity_ah({1, 24, bad, 0.1})), std::string("alarm_a"));
            QCOMPARE(inputOf(measure::dutyCapacity_ah({1, 24, 1, bad})), std::string("alarm_h"));
            QCOMPARE(inputOf(measure::dutyCapacity_ah({1, 24, 1, 0.1}, bad)), std::string("alarm_factor"));
            QCOMPARE(inputOf(measure::alarmFactor(bad, 1)), std::string("capacity_ah"));
            QCOMPARE(inputOf(measure::alarmFactor(7, bad)), std::string("alarm_a"));
            QCOMPARE(inputOf(measure::sizedCapacity_ah({bad, 1, 1, 1})), std::string("uncorrected_ah"));
            QCOMPARE(inputOf(measure::sizedCapacity_ah({7, bad, 1, 1})), std::string("temperature_factor"));
            QCOMPARE(inputOf(measure::sizedCapacity_ah({7, 1, bad, 1})), std::string("design_margin"));
            QCOMPARE(inputOf(measure::sizedCapacity_ah({7, 1, 1, bad})), std::string("ageing"));
            QCOMPARE(inputOf(measure::designCurrent(std::vector{bad}, std::nullopt, 0)), std::string("listed_a"));
            QCOMPARE(inputOf(measure::designCurrent({}, bad, 0)), std::string("measured_a"));
            QCOMPARE(inputOf(measure::designCurrent({}, 1, bad)), std::string("expanded_a"));
        }
        QCOMPARE(inputOf(measure::alarmFactor(0, 1)), std::string("capacity_ah"));
    }
};

QTEST_GUILESS_MAIN(TestBattery)
#include "battery.moc"
