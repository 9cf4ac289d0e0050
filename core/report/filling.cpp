// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/filling.h"

#include <algorithm>
#include <array>

namespace proofwalk::report {

Filling::Filling(const Ground& given)
    : ground(given), state(given.judged.state), scope(*given.judged.state.scope), plan(*scope.plan),
      findings(walk::allFindings(state))
{
    for (const walk::ScopeDevice& device : scope.devices) views.push_back(walk::viewDevice(state, device));
}

std::string Filling::verdictWord(walk::Verdict verdict) const
{
    return phrase("verdict." + std::string(walk::wordOf(verdict)));
}

std::string Filling::lineOf(const walk::Finding& finding) const
{
    if (!finding.described.empty())
        if (std::string words = reveal(finding.described.back()->body.words); !words.empty()) return words;
    if (finding.lastFail == nullptr) return finding.step.name;
    const walk::AnswerBody& answer = finding.lastFail->answer;
    if (std::string seen = reveal(answer.seen); !seen.empty()) return seen;
    if (std::string reading = readingText(answer); !reading.empty()) {
        const walk::ScopeStep* step = scope.step(finding.step);
        return phrase("report.reading-outside", {{"step", finding.step.name},
                                                 {"reading", reading},
                                                 {"limit", step == nullptr ? std::string() : limitText(*step)}});
    }
    return finding.step.name;
}

Verdict markOf(walk::Verdict verdict)
{
    switch (verdict) {
    case walk::Verdict::fail: return Verdict::fail;
    case walk::Verdict::retest: return Verdict::retest;
    case walk::Verdict::tooClose: return Verdict::tooClose;
    case walk::Verdict::noAccess: return Verdict::noAccess;
    case walk::Verdict::running: return Verdict::running;
    case walk::Verdict::toDo: return Verdict::toDo;
    case walk::Verdict::pass: return Verdict::pass;
    case walk::Verdict::notApplicable: return Verdict::notApplicable;
    }
    return Verdict::toDo;
}

namespace {

/// The uncertainty to the last place of the reading, upwards: "2.05 ± 0.01", not "2.05 ± 0.0063". The record keeps
/// it whole.
base::Decimal roundedUp(base::Decimal uncertainty, int lastPlace)
{
    while (uncertainty.exponent < lastPlace) {
        uncertainty.mantissa = (uncertainty.mantissa + 9) / 10;
        ++uncertainty.exponent;
    }
    return uncertainty;
}

} // namespace

std::string readingText(const walk::AnswerBody& answer)
{
    if (answer.hits && answer.tries) return std::to_string(*answer.hits) + " of " + std::to_string(*answer.tries);
    if (!answer.reading) return {};
    if (!answer.uncertainty) return base::toText(*answer.reading);
    return base::toText(answer.reading->value) + " ± "
         + base::toText({roundedUp(*answer.uncertainty, answer.reading->value.exponent), answer.reading->unit});
}

double inUnitOf(const walk::ScopeStep& step, const base::Decimal& inBase)
{
    const base::Unit* unit = base::findUnit(step.step.unit);
    return base::toDouble(inBase) / (unit == nullptr ? 1.0 : base::toDouble(unit->scale));
}

namespace {

/// A limit's side as people write it: in the step's unit, with no more digits than it has.
std::string sideText(const walk::ScopeStep& step, const base::Decimal& side)
{
    auto shown = base::fromDouble(inUnitOf(step, side), -4);
    std::string text = shown ? base::toText(*shown) : base::toText(side);
    while (text.find('.') != std::string::npos && (text.back() == '0' || text.back() == '.')) {
        const bool point = text.back() == '.';
        text.pop_back();
        if (point) break;
    }
    return text;
}

} // namespace

std::string limitText(const walk::ScopeStep& step)
{
    if (step.step.trialsWanted > 0)
        return std::to_string(step.step.trialsNeeded) + " of " + std::to_string(step.step.trialsWanted);
    const base::Unit* unit = base::findUnit(step.step.unit);
    const std::string ending =
        unit == nullptr || unit->written.empty() ? std::string() : " " + std::string(unit->written);
    const auto& [lower, upper, strict, from] = step.confirmed;
    if (lower && upper) return sideText(step, *lower) + " to " + sideText(step, *upper) + ending;
    if (lower) return "≥ " + sideText(step, *lower) + ending;
    if (upper) return "≤ " + sideText(step, *upper) + ending;
    return {};
}

std::optional<Scale> scaleOf(const walk::ScopeStep& step, const walk::Attempt& attempt)
{
    const walk::AnswerBody& answer = attempt.answer;
    if (!answer.reading || step.confirmed.empty()) return {};
    const auto value = base::inBaseUnit(*answer.reading);
    if (!value) return {};
    Scale scale;
    if (step.confirmed.lower) scale.lower = inUnitOf(step, *step.confirmed.lower);
    if (step.confirmed.upper) scale.upper = inUnitOf(step, *step.confirmed.upper);
    scale.value = inUnitOf(step, *value);
    if (answer.uncertainty)
        if (const auto expanded = base::inBaseUnit({*answer.uncertainty, answer.reading->unit}))
            scale.uncertainty = inUnitOf(step, *expanded);
    scale.verdict = markOf(attempt.verdict);
    return scale;
}

std::vector<std::string> fingerprintGroups(const std::string& hex, std::size_t groups)
{
    std::vector<std::string> parts;
    for (std::size_t i = 0; i < groups && i * 4 + 4 <= hex.size(); ++i) parts.push_back(hex.substr(i * 4, 4));
    return parts;
}

std::string shortDay(const std::string& day)
{
    constexpr std::array months{"Jan", "Feb", "Mar", "Apr", "May", "Jun", "Jul", "Aug", "Sep", "Oct", "Nov", "Dec"};
    if (day.size() != 10) return day;
    const auto tens = static_cast<std::size_t>(day[5] - '0');
    const auto ones = static_cast<std::size_t>(day[6] - '0');
    const std::size_t month = tens * 10 + ones;
    if (month < 1 || month > 12) return day;
    return (day[8] == '0' ? day.substr(9) : day.substr(8)) + " " + months[month - 1];
}

Contents fillContents(const Ground& ground)
{
    const Filling filling(ground);
    Contents contents;
    fillSummary(filling, contents);
    fillTitleBlock(filling, contents);
    fillFloors(filling, contents);
    fillDevices(filling, contents);
    fillFindings(filling, contents);
    fillReadings(filling, contents);
    fillGrounds(filling, contents);
    fillChecking(filling, contents);
    return contents;
}

} // namespace proofwalk::report
