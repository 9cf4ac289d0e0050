// SPDX-License-Identifier: GPL-3.0-or-later
// Every computation of loops, cables and batteries with every combination of hostile numbers: an error that names an
// input, or a finite result; never a crash, never a number that is none.
#include "core/measure/battery.h"
#include "core/measure/batterytest.h"
#include "core/measure/cable.h"
#include "core/measure/diagnosis.h"
#include "core/measure/drop.h"
#include "core/measure/loop.h"
#include "core/measure/loopfaults.h"
#include "core/measure/loopsight.h"
#include "core/measure/loopstates.h"
#include "core/measure/networktext.h"
#include "core/measure/peukert.h"

#include <QtTest>

#include <array>
#include <cmath>
#include <limits>
#include <random>

using namespace proofwalk;

namespace {

constexpr double infinity = std::numeric_limits<double>::infinity();
const std::array hostile{std::nan(""), infinity, -infinity, 0.0, -1.0, 1e308, 5e-324, 1e300, 0.5, 12.0, 20.0, 1e6};

int failures = 0;
int answers = 0;

void note(const char* name, bool fine)
{
    if (fine) return;
    if (++failures < 20) qWarning("%s", name);
}

bool names(const Error& error)
{
    return !error.code.empty() && (error.code != "measure.out-of-range" || !error.arguments.empty());
}

/// An error that names its input, or numbers that are finite.
template <class T>
void hold(const char* name, const Result<T>& result, std::initializer_list<double> numbers)
{
    if (!result) return note(name, names(result.error()));
    ++answers;
    for (const double each : numbers) note(name, std::isfinite(each));
}
void hold(const char* name, const Result<double>& result) { hold(name, result, {result.value_or(0)}); }

template <class Call>
void each1(Call call)
{
    for (const double a : hostile) call(a);
}
template <class Call>
void each2(Call call)
{
    each1([&](double a) { each1([&](double b) { call(a, b); }); });
}
template <class Call>
void each3(Call call)
{
    each2([&](double a, double b) { each1([&](double c) { call(a, b, c); }); });
}
template <class Call>
void each4(Call call)
{
    each3([&](double a, double b, double c) { each1([&](double d) { call(a, b, c, d); }); });
}

} // namespace

class TestExtremes : public QObject {
    Q_OBJECT

private slots:
    void init() { failures = answers = 0; }
    void cleanup()
    {
        QCOMPARE(failures, 0);
        QVERIFY(answers > 0); // some of the numbers are in order
    }
    void cables()
    {
        each3([](double a, double b, double c) {
            hold("pairResistance", measure::pairResistance_ohm(measure::CableRun{a, b, c}));
            hold("resistanceAtTemperature", measure::resistanceAtTemperature_ohm({a, b, c}));
            hold("temperatureFromResistance", measure::temperatureFromResistance_c(a, b, c));
            const auto state = measure::regulatedState(a, b, c);
            const auto at = state.value_or(measure::RegulatedState{});
            hold("regulatedState", state, {at.voltage_v, at.current_a, at.mostPower_w});
        });
        each4([](double a, double b, double c, double d) {
            hold("resistanceByCoefficient", measure::resistanceByCoefficient_ohm({a, b, c}, d));
            hold("runDrop", measure::runDrop_v({1, a, b}, c, d));
            const auto run = measure::longestRun({a, b, b}, c, d);
            const auto found = run.value_or(measure::LongestRun{});
            hold("longestRun", run, {found.loop_ohm, found.length_m});
        });
        each2([](double a, double b) {
            hold("strandedSection",
                 measure::strandedSection_mm2(static_cast<int>(std::isfinite(a) ? std::fmod(a, 1e6) : 0), b));
        });
    }
    void circuits()
    {
        each4([](double a, double b, double c, double d) {
            const std::array appliances{measure::Appliance{b, c, d}, measure::Appliance{1, 0.1, 0}};
            const measure::Supply supply{a, 1, 1};
            const auto at = measure::pointToPoint(supply, appliances);
            hold("pointToPoint", at,
                 {at ? at->back().voltage_v : 0, at ? at->front().current_a : 0, at ? at->front().drop_v : 0});
            hold("lumpDrop", measure::lumpDrop_v(supply, appliances));
        });
    }
    void loops()
    {
        each2([](double a, double b) {
            hold("leakage", measure::leakage_ohm(a, b));
            hold("withLeakage", measure::withLeakage_ohm(a, b));
            hold("leastHiddenLeakage", measure::leastHiddenLeakage_ohm(a, b));
            hold("greatestTolerance", measure::greatestTolerance_pct(a, b));
        });
        each3([](double a, double b, double c) {
            hold("terminal", measure::terminal_v({a, b}, c));
            hold("loopFromVoltage", measure::loopFromVoltage_ohm({a, b}, c));
            hold("ohmsPerVolt", measure::ohmsPerVolt({a, b}, c));
        });
        each4([](double a, double b, double c, double d) {
            hold("distanceToShort", measure::distanceToShort_m({a, b, c, 20, d}));
            const auto earth = measure::earthLeakage({a, b, c, d});
            // No leakage is an answer here, and infinite.
            hold("earthLeakage", earth, {earth && std::isnan(earth->plus_ohm) ? earth->plus_ohm : 0});
            const auto window = measure::resistorWindow(a, b, c, d);
            hold("resistorWindow", window, {window ? window->least_ohm : 0, window ? window->most_ohm : 0});
            for (const auto state : {measure::LoopState::closed, measure::LoopState::alarm, measure::LoopState::open}) {
                const auto of = measure::loopWindow({2, false, true, a, b, c, d}, state);
                hold("loopWindow", of, {of ? of->lower_ohm.value_or(0) : 0, of ? of->upper_ohm.value_or(0) : 0});
            }
        });
    }
    void diagnoses()
    {
        const auto network = measure::readNetwork("cable=12 + t:nc + (a:nc | z=4700) + e=2200", 1).value();
        each4([&](double a, double b, double c, double d) {
            measure::LoopQuestion question;
            question.readings = {{{}, a, b}, {{.end = measure::FarEnd::shorted}, c, 1}};
            question.toEarth_ohm = d;
            const auto findings = measure::diagnose(network, question);
            double sum = 0, size = 0;
            if (findings)
                for (const auto& each : *findings) {
                    sum += each.share;
                    if (each.size) size += each.size->lower_ohm.value_or(0) + each.size->upper_ohm.value_or(0);
                }
            hold("diagnose", findings, {sum, size});
            note("shares", !findings || findings->empty() || std::fabs(sum - 1) < 1e-9);
        });
        each3([&](double a, double b, double c) {
            measure::LoopQuestion question;
            question.readings = {{{}, 2200, a}};
            question.range_ohm = b;
            question.leastToEarth_ohm = c;
            hold("diagnose", measure::diagnose(network, question), {});
        });
    }
    void batteries()
    {
        each4([](double a, double b, double c, double d) {
            hold("dutyCapacity", measure::dutyCapacity_ah({a, b, c, d}));
            hold("sizedCapacity", measure::sizedCapacity_ah({a, b, c, d}));
            hold("lastsFor", measure::lastsFor_h({a, b, c}, d));
            hold("equivalentCurrent", measure::equivalentCurrent_a({a, b, c}, d));
            const std::array loads{measure::Load{c, d}};
            const auto use = measure::dutyUse({a, 20, b}, loads);
            hold("dutyUse", use, {use ? use->used : 0, use ? use->needed_ah : 0});
            const auto line = measure::loadLine({a, b, c, d, 0.01});
            hold("loadLine", line,
                 {line ? line->resistance_ohm : 0, line ? line->emf_v : 0, line ? line->standard_ohm : 0});
            const auto charger = measure::chargerCurrent({a, b, c, 0.1}, d);
            hold("chargerCurrent", charger, {charger ? charger->total_a : 0});
            hold("rechargeTime", measure::rechargeTime_h({a, b, c, 0.1}, d));
            const std::array readings{measure::DischargeReading{1, c}, measure::DischargeReading{d, 12}};
            const auto judged = measure::judgeDischarge({a, b, 0.05}, readings);
            hold("judgeDischarge", judged, {judged ? judged->straightOn_v.value_or(0) : 0});
        });
        each3([](double a, double b, double c) {
            hold("oneAmpereForm", measure::lastsForOneAmpereForm_h(a, b, c));
            hold("floatVoltage", measure::floatVoltage_v(6, a, b, c));
            const auto design = measure::designCurrent(std::array{a}, b, c);
            hold("designCurrent", design, {design ? design->current_a : 0});
        });
        each1([](double a) { hold("cellTemperatureFactor", measure::cellTemperatureFactor(a)); });
    }
    // Anything may be typed as a loop. Seed printed on failure.
    void loopsAsText()
    {
        const std::array<std::string, 24> pieces{"cable", "=",   "12",    "..",  "+",    "|",  "(",   ")",
                                                 "a",     ":nc", ":no",   "eol", "4700", "1%", " ",   "-",
                                                 "0",     ".5",  "1e308", "é",   "\t",   "%",  "b=1", "c=2"};
        for (unsigned seed = 1; seed <= 20000; ++seed) {
            std::mt19937 engine(seed);
            std::string text;
            for (unsigned i = 0; i < seed % 17; ++i) text += pieces[engine() % pieces.size()];
            const auto network = measure::readNetwork(text, 1, measure::CableOhm{0, 5});
            if (!network) {
                note(text.c_str(), names(network.error()));
                continue;
            }
            ++answers;
            const auto span = measure::spanOf(*network, {});
            note(text.c_str(), !std::isnan(span.nominal_ohm) && span.least_ohm <= span.most_ohm);
            measure::LoopQuestion question;
            question.readings = {{{}, 1000, 10}};
            const auto findings = measure::diagnose(*network, question);
            note(text.c_str(), findings.has_value());
        }
    }
};

QTEST_GUILESS_MAIN(TestExtremes)
#include "extremes.moc"
