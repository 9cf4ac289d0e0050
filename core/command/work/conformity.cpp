// SPDX-License-Identifier: GPL-3.0-or-later
// proofwalk work conformity: readings against limits (core/measure/conformity.h, guard.h, instrument.h, uncertainty.h).
#include "core/command/work/topic.h"

#include "core/measure/calibration.h"
#include "core/measure/conformity.h"
#include "core/measure/distribution.h"
#include "core/measure/guard.h"
#include "core/measure/instrument.h"
#include "core/measure/uncertainty.h"

#include <fmt/format.h>

#include <cmath>

namespace proofwalk::command::work {
namespace {

std::string wordOf(measure::Conformity verdict)
{
    switch (verdict) {
    case measure::Conformity::pass: return "pass";
    case measure::Conformity::fail: return "fail";
    case measure::Conformity::undecided: return "undecided";
    }
    return {};
}

std::string wordOf(measure::FourWords verdict)
{
    switch (verdict) {
    case measure::FourWords::pass: return "pass";
    case measure::FourWords::conditionalPass: return "conditional-pass";
    case measure::FourWords::conditionalFail: return "conditional-fail";
    case measure::FourWords::fail: return "fail";
    }
    return {};
}

Input number(std::string_view name) { return ofAnyUnit(needed(name, anyNumber)); }
Input maybeNumber(std::string_view name) { return ofAnyUnit(optional(name, anyNumber)); }

/// The acceptance limits that there are, a line each, under the unit of the run.
void addAcceptance(Worked& worked, const Given& given, const measure::AcceptanceLimits& limits, double guard)
{
    const auto add = [&](const char* formula, const char* limit, const char* sign, const char* name,
                         const std::optional<double>& value) {
        if (!value) return;
        worked.lines.push_back({formula, fmt::format("{} {} {}", shown(given.number(limit)), sign, shown(guard)),
                                name + given.ending(), *value});
    };
    add("pass from lower + w", "lower", "+", "pass_from", limits.passFrom);
    add("pass to upper − w", "upper", "−", "pass_to", limits.passTo);
    add("fail below lower − w", "lower", "−", "fail_below", limits.failBelow);
    add("fail above upper + w", "upper", "+", "fail_above", limits.failAbove);
    if (limits.nothingPasses) worked.remarks.push_back({"work.conformity.nothing-passes", {}});
}

struct Reading {
    base::Decimal value;
    std::optional<base::Decimal> expanded;
    measure::Tolerance tolerance;
};

Result<Reading> readingOf(const Given& given)
{
    auto value = given.decimal("value");
    auto expanded = given.decimal("expanded");
    auto lower = given.decimal("lower");
    auto upper = given.decimal("upper");
    for (auto* each : {&value, &expanded, &lower, &upper})
        if (!*each) return passOn(*each);
    return Reading{**value, *expanded, {*lower, *upper}};
}

Result<void> addMarginAndProbability(Worked& worked, const Given& given)
{
    const double value = given.number("value");
    const auto lower = given.maybe("lower");
    const auto upper = given.maybe("upper");
    const bool nearLower = lower && (!upper || value - *lower <= *upper - value);
    worked.lines.push_back({nearLower ? "margin = y − lower" : "margin = upper − y",
                            nearLower ? fmt::format("{} − {}", shown(value), shown(*lower))
                                      : fmt::format("{} − {}", shown(*upper), shown(value)),
                            "margin" + given.ending(), nearLower ? value - *lower : *upper - value});
    const double expanded = given.maybe("expanded").value_or(0);
    if (expanded <= 0) return {};
    auto p = measure::conformanceProbability(value, expanded / 2, lower, upper);
    if (!p) return passOn(p);
    worked.lines.push_back({"p = Φ((upper − y)/u) − Φ((lower − y)/u), u = U/2",
                            fmt::format("normal errors of u = {}", shown("u" + given.ending(), expanded / 2)),
                            "p_conform", *p});
    return {};
}

Result<Worked> verdict(const Given& given)
{
    auto reading = readingOf(given);
    if (!reading) return passOn(reading);
    const bool plain = given.word("rule") == "simple";
    const bool four = given.word("rule") == "four-words";
    const auto expanded = plain ? std::optional<base::Decimal>() : reading->expanded;
    auto judged = measure::judge(reading->value, expanded, reading->tolerance);
    if (!judged) return passOn(judged);
    auto inFour = measure::judgeInFourWords(reading->value, expanded, reading->tolerance);
    if (!inFour) return passOn(inFour);

    Worked worked;
    const double guard = plain ? 0 : given.maybe("expanded").value_or(0);
    auto limits = measure::acceptanceLimits(guard, given.maybe("lower"), given.maybe("upper"));
    if (!limits) return passOn(limits);
    addAcceptance(worked, given, *limits, guard);
    if (auto added = addMarginAndProbability(worked, given); !added) return passOn(added);
    worked.lines.push_back(
        {four ? "the four words of the guard band w = U" : "the reading against these limits, exactly", "", "verdict",
         four ? wordOf(*inFour) : wordOf(*judged)});
    worked.remarks.push_back({four ? "work.conformity.said." + wordOf(*inFour) : "conformity." + wordOf(*judged), {}});
    if (!given.has("expanded")) worked.remarks.push_back({"work.conformity.as-it-stands", {}});
    worked.limits = {plain ? "work.limit.simple-acceptance" : "work.limit.normal-errors"};
    worked.sources = {"work.source.ilac-g8", "work.source.jcgm-106"};
    return worked;
}

/// Days since calibration; true if the data sheet may still be believed, or nothing was said of it.
Result<bool> addCalibration(Worked& worked, const Given& given)
{
    if (!given.has("calibrated")) return true;
    if (!given.has("read_on")) return failure("work.missing", "", {{"wanted", "read_on"}});
    auto age = measure::calibrationAge(given.word("calibrated"), given.word("read_on"), given.count("interval_days"));
    if (!age) return passOn(age);
    worked.lines.push_back({"days since calibration", given.word("read_on") + " − " + given.word("calibrated"),
                            "calibration_days", static_cast<double>(age->days)});
    worked.remarks.push_back({age->overdue ? "work.conformity.overdue" : "work.conformity.in-date", {}});
    return !age->overdue;
}

/// The verdict of a reading whose uncertainty was computed, where there are limits.
Result<void> addInstrumentVerdict(Worked& worked, const Given& given, double expanded)
{
    const auto lower = given.maybe("lower");
    const auto upper = given.maybe("upper");
    if (!lower && !upper) return {};
    auto limits = measure::acceptanceLimits(expanded, lower, upper);
    if (!limits) return passOn(limits);
    addAcceptance(worked, given, *limits, expanded);
    auto judged = measure::judgeComputed(given.number("reading"), expanded, lower, upper);
    if (!judged) return passOn(judged);
    worked.lines.push_back({"the reading against these limits", "", "verdict", wordOf(*judged)});
    worked.remarks.push_back({"conformity." + wordOf(*judged), {}});
    worked.sources.emplace_back("work.source.ilac-g8");
    return {};
}

Result<Worked> instrument(const Given& given)
{
    const measure::ReadingAccuracy accuracy{given.number("reading"), given.number("accuracy_pct"),
                                            given.number("digits"), given.number("last_place"),
                                            given.maybe("fixed").value_or(0)};
    auto u = measure::readingUncertainty(accuracy);
    if (!u) return passOn(u);
    Worked worked;
    const std::string& unit = given.ending();
    worked.lines = {
        {"a = |reading| p/100 + n d + fixed",
         fmt::format("{} × {}/100 + {} × {} + {}", shown(std::fabs(accuracy.reading)), shown(accuracy.percentOfReading),
                     shown(accuracy.digits), shown(accuracy.lastPlace), shown(accuracy.fixed)),
         "half_width" + unit, u->halfWidth},
        {"u_spec = a/√3", fmt::format("{}/√3", shown(u->halfWidth)), "u_spec" + unit, u->specification},
        {"u_res = d/√12", fmt::format("{}/√12", shown(accuracy.lastPlace)), "u_res" + unit, u->resolution},
        {"u = √(u_spec² + u_res²)", fmt::format("√({}² + {}²)", shown(u->specification), shown(u->resolution)),
         "standard" + unit, u->standard},
        {"U = 2 u", fmt::format("2 × {}", shown(u->standard)), "expanded" + unit, u->expanded},
        {"from reading − U", "", "from" + unit, accuracy.reading - u->expanded},
        {"to reading + U", "", "to" + unit, accuracy.reading + u->expanded}};
    worked.limits = {"work.limit.data-sheet", "work.limit.rectangular-tails"};
    worked.sources = {"work.source.jcgm-100"};
    auto believed = addCalibration(worked, given);
    if (!believed) return passOn(believed);
    if (!*believed) return worked;
    if (auto added = addInstrumentVerdict(worked, given, u->expanded); !added) return passOn(added);
    return worked;
}

Result<Worked> guard(const Given& given)
{
    const double u = given.number("standard");
    const double risk = given.number("risk");
    auto w = measure::guardForRisk(u, risk);
    if (!w) return passOn(w);
    auto limits = measure::acceptanceLimits(*w, given.maybe("lower"), given.maybe("upper"));
    if (!limits) return passOn(limits);
    Worked worked;
    worked.lines.push_back(
        {"w = z u, Φ(z) = 1 − risk", fmt::format("{} × {}", shown(*w / u), shown(u)), "guard" + given.ending(), *w});
    addAcceptance(worked, given, *limits, *w);
    if (given.has("lower") && given.has("upper")) {
        auto index = measure::capabilityIndex(u, given.number("lower"), given.number("upper"));
        if (!index) return passOn(index);
        worked.lines.push_back(
            {"C = (upper − lower)/(4 u)",
             fmt::format("({} − {})/(4 × {})", shown(given.number("upper")), shown(given.number("lower")), shown(u)),
             "capability_index", *index});
        auto both = measure::acceptanceByProbability(u, given.number("lower"), given.number("upper"), 1 - risk);
        if (!both) worked.remarks.push_back({"work.conformity.nothing-passes", {}});
        if (both) {
            worked.lines.push_back(
                {"both limits at once: p(y) = 1 − risk, from", "", "both_from" + given.ending(), both->from});
            worked.lines.push_back(
                {"both limits at once: p(y) = 1 − risk, to", "", "both_to" + given.ending(), both->to});
        }
    }
    worked.limits = {"work.limit.normal-errors", "work.limit.near-limits"};
    worked.sources = {"work.source.jcgm-106", "work.source.iso-14253"};
    return worked;
}

Result<Worked> relative(const Given& given)
{
    const double fractionOf = given.number("relative_pct") / 100;
    auto z = measure::normalQuantile(given.number("assurance"));
    if (!z) return passOn(z);
    auto least = measure::leastReadingToExceed(given.number("limit"), fractionOf, given.number("assurance"));
    if (!least) return passOn(least);
    Worked worked;
    worked.lines = {{"Φ(z) = assurance", shown(given.number("assurance")), "z", *z},
                    {"y = limit/(1 − z r)",
                     fmt::format("{}/(1 − {} × {})", shown(given.number("limit")), shown(*z), shown(fractionOf)),
                     "least" + given.ending(), *least}};
    worked.limits = {"work.limit.normal-errors"};
    worked.sources = {"work.source.jcgm-106"};
    return worked;
}

Result<measure::Shape> shapeOf(const std::string& word)
{
    if (word == "triangular") return measure::Shape::triangular;
    if (word == "arcsine") return measure::Shape::arcsine;
    return word == "normal-95" ? measure::Shape::normal95 : measure::Shape::rectangular;
}

Result<Worked> halfWidth(const Given& given)
{
    auto shape = shapeOf(given.word("shape"));
    if (!shape) return passOn(shape);
    auto u = measure::standardOfHalfWidth(given.number("half_width"), *shape);
    if (!u) return passOn(u);
    Worked worked;
    worked.lines = {{"u = a/divisor; √3 rectangular, √6 triangular, √2 arcsine, 1.96 normal-95",
                     given.word("half_width") + ", " + given.word("shape"), "standard" + given.ending(), *u}};
    worked.sources = {"work.source.jcgm-100"};
    return worked;
}

Result<Worked> repeatedReadings(const Given& given)
{
    auto spread = measure::repeated(given.numbers("readings"));
    if (!spread) return passOn(spread);
    const double n = static_cast<double>(given.numbers("readings").size());
    auto bound = measure::standardOfHalfWidth(given.number("half_width"), measure::Shape::rectangular);
    if (!bound) return passOn(bound);
    const std::vector<measure::UncertaintyPart> parts{{spread->ofMean, n - 1}, {*bound}};
    auto all = measure::combine(parts);
    if (!all) return passOn(all);
    Worked worked;
    const std::string& unit = given.ending();
    worked.lines = {
        {"mean of the readings", "", "mean" + unit, spread->mean},
        {"s, with n − 1", fmt::format("{} readings", shown(n)), "deviation" + unit, spread->deviation},
        {"u_A = s/√n", fmt::format("{}/√{}", shown(spread->deviation), shown(n)), "u_a" + unit, spread->ofMean},
        {"u_B = a/√3", fmt::format("{}/√3", shown(given.number("half_width"))), "u_b" + unit, *bound},
        {"u = √(u_A² + u_B²)", fmt::format("√({}² + {}²)", shown(spread->ofMean), shown(*bound)), "standard" + unit,
         all->standard},
        {"k of Student's distribution at 95.45 %, ν = u⁴/(u_A⁴/(n − 1)) rounded down",
         std::isfinite(all->degreesOfFreedom) ? fmt::format("ν = {}", shown(all->degreesOfFreedom)) : "ν unlimited",
         "coverage", all->coverage},
        {"U = k u", fmt::format("{} × {}", shown(all->coverage), shown(all->standard)), "expanded" + unit,
         all->expanded}};
    worked.limits = {"work.limit.independent-readings"};
    worked.sources = {"work.source.jcgm-100"};
    return worked;
}

} // namespace

Topic conformityTopic()
{
    const Input reading = number("value");
    Input day = word("calibrated", {});
    day.required = false;
    Input readOn = word("read_on", {});
    readOn.required = false;
    return {"conformity",
            {{"verdict",
              {reading, ofAnyUnit(optional("expanded", notNegative)), maybeNumber("lower"), maybeNumber("upper"),
               word("rule", {"guard", "simple", "four-words"}, "guard")},
              verdict,
              "value_dba=66.2 expanded_dba=1.9 lower_dba=65"},
             {"instrument",
              {number("reading"), usual("accuracy_pct", "0", {0, 1000}), usual("digits", "0", {0, 1e6}),
               ofAnyUnit(needed("last_place", notNegative)), ofAnyUnit(optional("fixed", notNegative)), day, readOn,
               whole(usual("interval_days", "365", {1, 36500})), maybeNumber("lower"), maybeNumber("upper")},
              instrument,
              "reading_ohm=4723 accuracy_pct=0.5 digits=2 last_place_ohm=1 calibrated=2026-03-02 read_on=2026-11-25 "
              "lower_ohm=4653 upper_ohm=4787"},
             {"guard",
              {ofAnyUnit(needed("standard", positive)), maybeNumber("lower"), maybeNumber("upper"),
               usual("risk", "0.05", {1e-12, 0.5})},
              guard,
              "standard_db=0.8 lower_db=65"},
             {"relative",
              {ofAnyUnit(needed("limit", positive)), needed("relative_pct", {0, 100, true}),
               usual("assurance", "0.95", {0.5, 0.999999})},
              relative,
              "limit_v=100 relative_pct=2 assurance=0.999"},
             {"half-width",
              {ofAnyUnit(needed("half_width", notNegative)),
               word("shape", {"rectangular", "triangular", "arcsine", "normal-95"}, "rectangular")},
              halfWidth,
              "half_width_v=1 shape=triangular"},
             {"repeated",
              {ofAnyUnit(neededList("readings", anyNumber)), ofAnyUnit(usual("half_width", "0", notNegative))},
              repeatedReadings,
              "readings_s=29.81,30.02,29.94 half_width_s=0.1"}}};
}

} // namespace proofwalk::command::work
