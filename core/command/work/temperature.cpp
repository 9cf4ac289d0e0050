// SPDX-License-Identifier: GPL-3.0-or-later
// proofwalk work temperature: probes and their checks (core/measure/probe.h, thermistor.h, platinum.h, thermocouple.h).
#include "core/command/work/topic.h"

#include "core/measure/conformity.h"
#include "core/measure/guard.h"
#include "core/measure/platinum.h"
#include "core/measure/probe.h"
#include "core/measure/thermistor.h"
#include "core/measure/thermocouple.h"

#include <fmt/format.h>

namespace proofwalk::command::work {
namespace {

constexpr Range temperatures{-273.15, 3000};
constexpr Range resistances{0, 1e9, true};

/// A temperature from a resistance, or the reverse: whichever was given.
Result<void> needOne(const Given& given, const char* one, const char* other)
{
    if (given.has(one) != given.has(other)) return {};
    if (given.has(one)) return failure("work.temperature.one-of-two", other, {{"wanted", one}});
    return failure("work.missing", "", {{"wanted", std::string(one)}});
}

Result<Worked> thermistor(const Given& given)
{
    if (auto sound = needOne(given, "resistance_ohm", "temperature_c"); !sound) return passOn(sound);
    const measure::BetaCurve curve{given.number("at25c_ohm"), given.number("beta_k")};
    Worked worked;
    worked.limits = {"work.temperature.beta"};
    worked.sources = {"work.temperature.beta-equation"};
    if (given.has("resistance_ohm")) {
        auto t = measure::thermistorTemperature_c(curve, given.number("resistance_ohm"));
        if (!t) return passOn(t);
        worked.lines = {{"1/T = 1/298.15 + ln(R/R25)/B",
                         fmt::format("1/298.15 + ln({}/{})/{}", shown(given.number("resistance_ohm")),
                                     shown(curve.at25c_ohm), shown(curve.beta_k)),
                         "temperature_c", *t}};
        return worked;
    }
    auto r = measure::thermistorResistance_ohm(curve, given.number("temperature_c"));
    if (!r) return passOn(r);
    worked.lines = {{"R = R25 exp(B (1/T − 1/298.15))",
                     fmt::format("{} exp({} (1/{} − 1/298.15))", shown(curve.at25c_ohm), shown(curve.beta_k),
                                 shown(given.number("temperature_c") + 273.15)),
                     "resistance_ohm", *r}};
    return worked;
}

Result<Worked> steinhartHart(const Given& given)
{
    auto t = measure::thermistorTemperature_c(measure::SteinhartHart{given.number("coefficient1"),
                                                                     given.number("coefficient2"),
                                                                     given.number("coefficient3")},
                                              given.number("resistance_ohm"));
    if (!t) return passOn(t);
    Worked worked;
    worked.lines = {
        {"1/T = A + B ln R + C (ln R)³",
         fmt::format("{} + {} ln R + {} (ln R)³, R = {}", given.word("coefficient1"), given.word("coefficient2"),
                     given.word("coefficient3"), shown(given.number("resistance_ohm"))),
         "temperature_c", *t}};
    worked.limits = {"work.temperature.fitted"};
    worked.sources = {"work.temperature.steinhart-hart"};
    return worked;
}

Result<Worked> platinum(const Given& given)
{
    if (auto sound = needOne(given, "resistance_ohm", "temperature_c"); !sound) return passOn(sound);
    const double atZero = given.number("at_zero_ohm");
    Worked worked;
    worked.limits = {"work.temperature.leads"};
    worked.sources = {"work.temperature.iec-60751"};
    double temperature = given.maybe("temperature_c").value_or(0);
    if (given.has("resistance_ohm")) {
        auto t = measure::platinumTemperature_c(atZero, given.number("resistance_ohm"));
        if (!t) return passOn(t);
        temperature = *t;
        worked.lines = {{"t of R/R0 = 1 + A t + B t² (+ C (t − 100) t³ below 0 °C)",
                         fmt::format("R/R0 = {}/{}", shown(given.number("resistance_ohm")), shown(atZero)),
                         "temperature_c", *t}};
    } else {
        auto r = measure::platinumResistance_ohm(atZero, temperature);
        if (!r) return passOn(r);
        worked.lines = {{"R = R0 (1 + A t + B t²) (+ C (t − 100) t³ below 0 °C)",
                         fmt::format("R0 = {}, t = {}", shown(atZero), shown(temperature)), "resistance_ohm", *r}};
    }
    auto tolerance = measure::platinumTolerance_c(measure::PlatinumClass::b, temperature);
    if (!tolerance) return passOn(tolerance);
    worked.lines.push_back({"class B: 0.30 + 0.005 |t|", "", "class_b_c", *tolerance});
    return worked;
}

Result<Worked> typeK(const Given& given)
{
    if (auto sound = needOne(given, "voltage_mv", "temperature_c"); !sound) return passOn(sound);
    const double cold = given.number("cold_junction_c");
    auto ofCold = measure::typeKVoltage_mv(cold);
    if (!ofCold) return passOn(ofCold);
    Worked worked;
    worked.limits = {"work.temperature.class-2"};
    worked.sources = {"work.temperature.srd-60"};
    worked.lines = {{"E of the cold junction", shown("cold_c", cold), "cold_junction_mv", *ofCold}};
    if (given.has("temperature_c")) {
        auto e = measure::typeKVoltage_mv(given.number("temperature_c"));
        if (!e) return passOn(e);
        worked.lines.push_back(
            {"E(t), reference at 0 °C", shown("t_c", given.number("temperature_c")), "reference_mv", *e});
        worked.lines.push_back(
            {"at the meter: E(t) − E(cold)", shown(*e) + " − " + shown(*ofCold), "meter_mv", *e - *ofCold});
        return worked;
    }
    auto t = measure::typeKJunction_c(given.number("voltage_mv"), cold);
    if (!t) return passOn(t);
    worked.lines.push_back({"E = meter + E(cold): millivolts, never degrees",
                            shown(given.number("voltage_mv")) + " + " + shown(*ofCold), "total_mv",
                            given.number("voltage_mv") + *ofCold});
    worked.lines.push_back({"t of E by the reference function", "", "temperature_c", *t});
    return worked;
}

Result<Worked> iceCheck(const Given& given)
{
    auto found = measure::icePointCheck(given.numbers("readings_c"), given.number("bath_c"));
    if (!found) return passOn(found);
    Worked worked;
    worked.lines = {{"correction = 0 − mean of the readings",
                     fmt::format("{} readings", given.numbers("readings_c").size()), "correction_c",
                     found->correction_c},
                    {"U = k √(s²/n + a²/3), k of Student's distribution at 95.45 %",
                     "a = " + shown("bath_c", given.number("bath_c")), "expanded_c", found->expanded_c}};
    worked.limits = {"work.temperature.ice"};
    worked.sources = {"work.source.jcgm-100"};
    return worked;
}

Result<Worked> verdict(const Given& given)
{
    const measure::ProbeReading reading{given.number("shown_c"), given.number("correction_c"),
                                        given.number("correction_expanded_c"), given.number("half_width_c")};
    auto found = measure::correctedTemperature(reading);
    if (!found) return passOn(found);
    const double u2 = 2 * found->standard_c;
    const auto least = given.maybe("least_c");
    const auto most = given.maybe("most_c");
    auto limits = measure::acceptanceLimits(u2, least, most);
    if (!limits) return passOn(limits);
    auto judged = measure::judgeComputed(found->value_c, u2, least, most);
    if (!judged) return passOn(judged);
    Worked worked;
    worked.lines = {{"t = shown + correction", shown(reading.shown_c) + " + " + shown(reading.correction_c), "value_c",
                     found->value_c},
                    {"u = √(a²/3 + (U/2)²)",
                     fmt::format("√({}²/3 + ({}/2)²)", shown(reading.halfWidth_c), shown(reading.correctionExpanded_c)),
                     "standard_c", found->standard_c}};
    if (limits->passFrom) worked.lines.push_back({"pass from least + 2 u", "", "pass_from_c", *limits->passFrom});
    if (limits->passTo) worked.lines.push_back({"pass to most − 2 u", "", "pass_to_c", *limits->passTo});
    if (found->standard_c > 0) {
        auto p = measure::conformanceProbability(found->value_c, found->standard_c, least, most);
        if (!p) return passOn(p);
        worked.lines.push_back({"p = Φ((most − t)/u) − Φ((least − t)/u)", "", "p_conform", *p});
    }
    const char* word = *judged == measure::Conformity::pass ? "pass"
                     : *judged == measure::Conformity::fail ? "fail"
                                                            : "undecided";
    worked.lines.push_back({"t against these limits", "", "verdict", word});
    worked.remarks = {{"conformity." + std::string(word), {}}};
    worked.limits = {"work.temperature.goods-or-air", "work.limit.normal-errors"};
    worked.sources = {"work.source.jcgm-106", "work.source.ilac-g8"};
    return worked;
}

Result<Worked> lag(const Given& given)
{
    const measure::Lag probe{given.number("time_constant_s"), given.number("from_c"), given.number("into_c")};
    if (!given.has("threshold_c") && !given.has("after_s"))
        return failure("work.missing", "", {{"wanted", "threshold_c"}});
    Worked worked;
    if (given.has("threshold_c")) {
        auto t = measure::timeToThreshold_s(probe, given.number("threshold_c"));
        if (!t) return passOn(t);
        worked.lines.push_back(
            {"t = τ ln((into − from)/(into − threshold))",
             fmt::format("{} ln(({} − {})/({} − {}))", shown(probe.timeConstant_s), shown(probe.into_c),
                         shown(probe.from_c), shown(probe.into_c), shown(given.number("threshold_c"))),
             "reached_s", *t});
    }
    if (given.has("after_s")) {
        auto t = measure::probeAfter_c(probe, given.number("after_s"));
        if (!t) return passOn(t);
        worked.lines.push_back(
            {"T = into + (from − into) exp(−t/τ)",
             fmt::format("{} + ({} − {}) exp(−{}/{})", shown(probe.into_c), shown(probe.from_c), shown(probe.into_c),
                         shown(given.number("after_s")), shown(probe.timeConstant_s)),
             "reading_c", *t});
    }
    worked.limits = {"work.temperature.first-order"};
    worked.sources = {"work.temperature.step-response"};
    return worked;
}

Result<Worked> boiling(const Given& given)
{
    auto t = measure::boilingPoint_c(given.number("pressure_bar"));
    if (!t) return passOn(t);
    Worked worked;
    worked.lines = {{"T = B/(A − log10 p) − C, A 5.08354, B 1663.125, C −45.622",
                     "p = " + shown("p_bar", given.number("pressure_bar")), "boiling_c", *t}};
    worked.limits = {"work.temperature.scald"};
    worked.sources = {"work.temperature.antoine"};
    return worked;
}

Result<Worked> fahrenheit(const Given& given)
{
    auto t = measure::celsiusOfFahrenheit(given.number("value_f"));
    if (!t) return passOn(t);
    Worked worked;
    worked.lines = {
        {"°C = (°F − 32) 5/9", fmt::format("({} − 32) 5/9", shown(given.number("value_f"))), "value_c", *t}};
    worked.limits = {"work.temperature.printed-rounded"};
    worked.sources = {"work.radio.units"};
    return worked;
}

} // namespace

Topic temperatureTopic()
{
    const Input temperature = optional("temperature_c", temperatures);
    const Input resistance = optional("resistance_ohm", resistances);
    return {"temperature",
            {{"verdict",
              {needed("shown_c", temperatures), usual("correction_c", "0", {-100, 100}),
               usual("correction_expanded_c", "0", {0, 100}), usual("half_width_c", "0", {0, 100}),
               optional("least_c", temperatures), optional("most_c", temperatures)},
              verdict,
              "shown_c=-18.6 correction_c=0.2 correction_expanded_c=0.1 half_width_c=0.5 most_c=-18"},
             {"ice",
              {neededList("readings_c", {-10, 10}), usual("bath_c", "0.1", {0, 1, true})},
              iceCheck,
              "readings_c=-0.2,-0.3,-0.2"},
             {"thermistor",
              {usual("at25c_ohm", "10000", resistances), needed("beta_k", {500, 10000}), resistance, temperature},
              thermistor,
              "beta_k=3950 resistance_ohm=31500"},
             {"steinhart-hart",
              {needed("coefficient1", {-1, 1}), needed("coefficient2", {-1, 1}), needed("coefficient3", {-1, 1}),
               needed("resistance_ohm", resistances)},
              steinhartHart,
              "coefficient1=1.129148e-3 coefficient2=2.34125e-4 coefficient3=8.76741e-8 resistance_ohm=32650"},
             {"platinum",
              {needed("at_zero_ohm", {0, 10000, true}), optional("resistance_ohm", resistances),
               optional("temperature_c", {-200, 850})},
              platinum,
              "at_zero_ohm=100 resistance_ohm=100.78"},
             {"type-k",
              {optional("voltage_mv", {-20, 60}), optional("temperature_c", {-270, 1372}),
               usual("cold_junction_c", "0", {-20, 70})},
              typeK,
              "voltage_mv=3.000 cold_junction_c=22"},
             {"lag",
              {needed("time_constant_s", {0, 1e6, true}), needed("from_c", temperatures),
               needed("into_c", temperatures), optional("threshold_c", temperatures), optional("after_s", {0, 1e9})},
              lag,
              "time_constant_s=180 from_c=-20 into_c=4 threshold_c=-10 after_s=300"},
             {"boiling", {needed("pressure_bar", {0.324, 1.02})}, boiling, "pressure_bar=0.95"},
             {"fahrenheit", {needed("value_f", {-459.67, 5432})}, fahrenheit, "value_f=41"}}};
}

} // namespace proofwalk::command::work
