// SPDX-License-Identifier: GPL-3.0-or-later
// proofwalk work conformity: readings against limits (core/measure/conformity.h, instrument.h).
#include "core/command/work/topic.h"

#include "core/measure/conformity.h"

#include <fmt/format.h>

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

Result<Worked> verdict(const Given& given)
{
    auto value = given.decimal("value");
    auto expanded = given.decimal("expanded");
    auto lower = given.decimal("lower");
    auto upper = given.decimal("upper");
    for (auto* each : {&value, &expanded, &lower, &upper})
        if (!*each) return passOn(*each);
    auto judged = measure::judge(**value, *expanded, {*lower, *upper});
    if (!judged) return passOn(judged);
    Worked worked;
    worked.lines.push_back(
        {"lower + U <= y <= upper - U: pass; y < lower - U or y > upper + U: fail; else undecided",
         fmt::format("y = {}, U = {}", given.word("value"), given.has("expanded") ? given.word("expanded") : "0"),
         "verdict", wordOf(*judged)});
    worked.remarks.push_back({"conformity." + wordOf(*judged), {}});
    worked.limits = {"work.limit.normal-errors"};
    worked.sources = {"work.source.ilac-g8"};
    return worked;
}

} // namespace

Topic conformityTopic()
{
    return {"conformity",
            {{"verdict",
              {ofAnyUnit(needed("value", anyNumber)), ofAnyUnit(optional("expanded", notNegative)),
               ofAnyUnit(optional("lower", anyNumber)), ofAnyUnit(optional("upper", anyNumber))},
              verdict,
              "value_dba=66.2 expanded_dba=1.9 lower_dba=65"}}};
}

} // namespace proofwalk::command::work
