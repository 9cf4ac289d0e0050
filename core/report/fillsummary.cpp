// SPDX-License-Identifier: GPL-3.0-or-later
// Page one, in plain words: what works, what does not, what was not tested and why, what the customer must do.
#include "core/report/filling.h"

#include "core/base/text.h"

#include <algorithm>
#include <map>
#include <set>

namespace proofwalk::report {
namespace {

std::string capitalized(std::string text)
{
    if (!text.empty() && text[0] >= 'a' && text[0] <= 'z') text[0] = static_cast<char>(text[0] - 'a' + 'A');
    return text;
}

/// "Two did not, one is too close to its limit to tell, and one could not be reached."
std::string shortfall(const Filling& filling, const std::array<int, 8>& counts)
{
    constexpr std::array order{walk::Verdict::fail,     walk::Verdict::retest,  walk::Verdict::tooClose,
                               walk::Verdict::noAccess, walk::Verdict::running, walk::Verdict::toDo};
    std::vector<std::string> parts;
    for (const walk::Verdict verdict : order) {
        const int count = counts[static_cast<std::size_t>(verdict)];
        if (count == 0) continue;
        parts.push_back(
            filling.phrase("report.headline." + std::string(walk::wordOf(verdict)) + (count == 1 ? ".one" : ".many"),
                           {{"count", words::countInWords(count)}}));
    }
    if (parts.empty()) return {};
    std::string text = parts.front();
    for (std::size_t i = 1; i < parts.size(); ++i) text += (i + 1 == parts.size() ? " and " : ", ") + parts[i];
    return " " + capitalized(text) + ".";
}

std::string headline(const Filling& filling, const std::array<int, 8>& counts)
{
    const auto all = static_cast<std::int64_t>(filling.views.size());
    const std::int64_t passed = counts[static_cast<std::size_t>(walk::Verdict::pass)];
    const std::string head =
        passed == all ? filling.phrase("report.headline.all", {{"all", words::countInWords(all)}})
                      : filling.phrase("report.headline", {{"passed", words::countInWords(passed)}, {"all", all}});
    return capitalized(head) + shortfall(filling, counts);
}

void fillCounts(const Filling& filling, const std::array<int, 8>& counts, Contents& contents)
{
    constexpr std::array shown{walk::Verdict::pass,     walk::Verdict::fail,    walk::Verdict::tooClose,
                               walk::Verdict::noAccess, walk::Verdict::running, walk::Verdict::retest,
                               walk::Verdict::toDo};
    for (const walk::Verdict verdict : shown) {
        const int count = counts[static_cast<std::size_t>(verdict)];
        const bool always =
            verdict == walk::Verdict::pass || verdict == walk::Verdict::fail || verdict == walk::Verdict::toDo;
        if (count > 0 || always) contents.counts.push_back({markOf(verdict), count, filling.verdictWord(verdict)});
    }
}

void fillWorks(const Filling& filling, Contents& contents)
{
    std::map<std::string, int> proved;
    std::int64_t received = 0;
    std::set<const plan::Zone*> zones;
    for (const walk::DeviceView& view : filling.views) {
        if (view.verdict == walk::Verdict::pass) ++proved[view.device->kind->title];
        const bool arrived = view.proof(walk::ProofKind::received).state == walk::ProofState::lit;
        if (arrived && zones.insert(view.device->zone).second) ++received;
    }
    std::vector<std::string> kinds;
    for (const auto& [title, count] : proved)
        kinds.push_back(title + (count > 1 ? " (" + std::to_string(count) + ")" : ""));
    if (!kinds.empty())
        contents.works.push_back(filling.phrase("report.works.kinds", {{"kinds", base::join(kinds, ", ")}}));
    std::vector<std::string> rest;
    if (received > 0) rest.push_back(filling.phrase("report.works.received", {{"count", received}}));
    std::vector<std::string> sequences;
    for (const walk::ScopeSequence& sequence : filling.scope.sequences) {
        const bool whole = std::ranges::all_of(sequence.steps, [&](const walk::StepKey& key) {
            const auto verdict = walk::viewStep(filling.state, key).verdict;
            return verdict == walk::Verdict::pass
                || (verdict == walk::Verdict::toDo && !filling.scope.step(key)->step.core);
        });
        if (whole) sequences.push_back(sequence.title);
    }
    if (!sequences.empty())
        rest.push_back(filling.phrase("report.works.sequence", {{"sequence", base::join(sequences, ", ")}}));
    if (!rest.empty()) contents.works.push_back(base::join(rest, " "));
}

void fillDoesNot(const Filling& filling, Contents& contents)
{
    for (const walk::Finding& finding : filling.findings) {
        if (!finding.pending()) continue;
        const bool toRetest = finding.status == walk::FindingStatus::putRight;
        contents.doesNot.push_back({toRetest ? Verdict::retest : Verdict::fail,
                                    walk::nameOfSubject(filling.scope, finding.step),
                                    filling.phrase("report.finding." + std::string(walk::wordOf(finding.status)),
                                                   {{"words", filling.lineOf(finding)}})});
    }
    for (const walk::DeviceView& view : filling.views) {
        if (view.verdict != walk::Verdict::tooClose) continue;
        for (const walk::StepKey& key : view.device->steps) {
            const walk::StepView step = walk::viewStep(filling.state, key);
            if (step.verdict != walk::Verdict::tooClose) continue;
            contents.doesNot.push_back(
                {Verdict::tooClose, view.device->device->tag,
                 filling.phrase("report.too-close", {{"step", key.name},
                                                     {"reading", readingText(step.newest->answer)},
                                                     {"limit", limitText(*filling.scope.step(key))}})});
        }
    }
}

std::string reasonOf(const Filling& filling, const walk::DeviceView& view)
{
    for (const walk::StepKey& key : view.device->steps) {
        const walk::StepView step = walk::viewStep(filling.state, key);
        if (step.verdict == walk::Verdict::noAccess) return filling.reveal(step.newest->answer.reason);
    }
    return {};
}

void fillNotTested(const Filling& filling, Contents& contents)
{
    std::vector<std::string> withoutSheet;
    bool standsFor = false;
    for (const walk::DeviceView& view : filling.views) {
        const std::string& tag = view.device->device->tag;
        standsFor = standsFor || view.proof(walk::ProofKind::response).standIn != nullptr;
        if (view.device->kind == nullptr) {
            withoutSheet.push_back(tag);
        } else if (view.verdict == walk::Verdict::noAccess) {
            contents.notTested.push_back({Verdict::noAccess, tag,
                                          filling.phrase("report.no-access", {{"device", view.device->kind->title},
                                                                              {"reason", reasonOf(filling, view)}})});
        } else if (view.verdict == walk::Verdict::toDo || view.verdict == walk::Verdict::running) {
            std::vector<std::string> open;
            for (const walk::ProofKind kind : view.openProofs())
                open.emplace_back(filling.phrase("proof." + std::string(walk::wordOf(kind))));
            contents.notTested.push_back({markOf(view.verdict), tag,
                                          filling.phrase("report.to-do", {{"device", view.device->kind->title},
                                                                          {"answered", std::int64_t{view.answered}},
                                                                          {"steps", std::int64_t{view.steps}},
                                                                          {"open", base::join(open, ", ")}})});
        }
    }
    if (!withoutSheet.empty())
        contents.notTested.push_back(
            {Verdict::toDo, "",
             filling.phrase("report.without-sheet", {{"count", static_cast<std::int64_t>(withoutSheet.size())}})});
    if (standsFor) contents.notTestedNote = filling.phrase("report.stands-for");
}

void fillDuties(const Filling& filling, Contents& contents)
{
    for (const walk::Finding& finding : filling.findings) {
        if (!finding.pending()) continue;
        const std::string subject = walk::nameOfSubject(filling.scope, finding.step);
        for (const auto* accept : finding.accepts)
            if (const std::string words = filling.reveal(accept->body.words); !words.empty())
                contents.duties.push_back({words, filling.phrase("report.until-put-right")});
        const std::string due = finding.described.empty() ? std::string() : finding.described.back()->body.due;
        contents.duties.push_back({filling.phrase("report.let-us-in", {{"subject", subject}}),
                                   due.empty() ? filling.phrase("report.by-agreement")
                                               : filling.phrase("report.due", {{"day", shortDay(due)}})});
    }
    for (const walk::DeviceView& view : filling.views)
        if (view.verdict == walk::Verdict::noAccess)
            contents.duties.push_back({filling.phrase("report.make-way", {{"subject", view.device->device->tag}}),
                                       filling.phrase("report.by-agreement")});
    contents.duties.push_back({filling.phrase("report.try-monthly"), filling.phrase("report.from-now-on")});
}

bool leadsTo(const plan::Plan& plan, std::string_view whom)
{
    return std::ranges::any_of(plan.paths, [&](const plan::Path& path) { return path.to == whom; });
}

/// "Since 15:25: accounts 7301, 7302 off test."; empty if nothing was ever on test.
std::string offTestWords(const Filling& filling)
{
    std::vector<std::string> accounts;
    std::string time;
    for (const auto& told : filling.state.offTests) {
        if (!filling.state.stands(told.fact)) continue;
        accounts.push_back(told.body.account);
        time = base::localTime(told.fact.at);
    }
    if (accounts.empty()) return {};
    return filling.phrase("report.off-test", {{"time", time}, {"accounts", base::join(accounts, ", ")}});
}

/// Live: nothing on test, nothing temporary, no area in a test, and somebody receives.
void fillLive(const Filling& filling, Contents& contents)
{
    const std::set<std::string> against{"ready.on-test", "ready.put-back", "ready.state"};
    std::vector<std::string> lines;
    for (const walk::Rung& rung : filling.ground.readiness.rungs) {
        if (!against.contains(rung.code)) continue;
        std::vector<Argument> arguments = rung.arguments;
        arguments.push_back({"subject", rung.subject});
        lines.push_back(filling.phrase(rung.code, arguments));
    }
    const bool receiver = leadsTo(filling.plan, "station") || leadsTo(filling.plan, "owner");
    const bool live = lines.empty() && receiver;
    contents.liveWord = filling.phrase(live ? "report.yes" : "report.no");
    contents.liveVerdict = live ? Verdict::pass : Verdict::fail;
    if (!receiver) lines.push_back(filling.phrase("report.nobody-receives"));
    if (live) lines.push_back(offTestWords(filling));
    const auto temporaries = static_cast<std::int64_t>(filling.state.temporaries.size());
    if (live && temporaries > 0)
        lines.push_back(
            filling.phrase(temporaries == 1 ? "report.one-put-back" : "report.all-put-back", {{"count", temporaries}}));
    if (live && temporaries == 0) lines.push_back(filling.phrase("report.nothing-left"));
    std::erase(lines, std::string());
    // One paragraph: page one has no room for more.
    if (!lines.empty()) contents.liveLines = {base::join(lines, " ")};
}

void fillContacts(const Filling& filling, Contents& contents)
{
    const std::string& firm = filling.ground.signer.firm;
    contents.contacts = {
        {filling.phrase("report.call.fault"),
         filling.phrase("report.call.fault.whom", {{"firm", firm.empty() ? filling.ground.signer.name : firm}})},
        {filling.phrase("report.call.false"),
         filling.phrase(leadsTo(filling.plan, "station") ? "report.call.false.station" : "report.call.false.owner")},
        {filling.phrase("report.call.danger"), filling.phrase("report.call.danger.whom")},
    };
}

} // namespace

void fillSummary(const Filling& filling, Contents& contents)
{
    const auto counts = walk::countVerdicts(filling.state);
    contents.site = filling.plan.siteFact("name");
    if (contents.site.empty()) contents.site = filling.phrase("report.unnamed-site");
    contents.subtitle = filling.phrase("report.subtitle");
    contents.date = words::longDate(filling.ground.asOf);
    if (filling.ground.interim) contents.title = filling.phrase("report.title.interim");
    else if (filling.ground.readiness.standing == walk::Standing::notCompleteInformed)
        contents.title = filling.phrase("report.title.informed");
    contents.headline = headline(filling, counts);
    contents.testedAgainst = filling.phrase("report.tested-against");
    fillCounts(filling, counts, contents);
    fillWorks(filling, contents);
    fillDoesNot(filling, contents);
    fillNotTested(filling, contents);
    fillDuties(filling, contents);
    fillLive(filling, contents);
    fillContacts(filling, contents);
}

} // namespace proofwalk::report
