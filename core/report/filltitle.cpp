// SPDX-License-Identifier: GPL-3.0-or-later
// The block at the foot of page one: who tested, who agreed to what, and how to tell this record from another.
#include "core/report/filling.h"

#include "core/base/text.h"

#include <algorithm>

namespace proofwalk::report {
namespace {

/// A box five wide and two high, in which commands give thousandths.
constexpr double inkWidth = 1000;
constexpr double inkHeight = 400;

/// Strokes of [x, y]; what does not read is not drawn (it was checked when it was recorded).
Ink inkFrom(const std::string& text)
{
    Ink ink{inkWidth, inkHeight, {}};
    const auto json = base::parseJson(text);
    if (!json || json->array() == nullptr) return {};
    for (const base::Json& stroke : *json->array()) {
        if (stroke.array() == nullptr) return {};
        std::vector<InkPoint> points;
        for (const base::Json& point : *stroke.array()) {
            const auto* pair = point.array();
            if (pair == nullptr || pair->size() != 2 || (*pair)[0].integer() == nullptr
                || (*pair)[1].integer() == nullptr)
                return {};
            points.push_back({static_cast<double>(*(*pair)[0].integer()),
                              static_cast<double>(*(*pair)[1].integer()) * inkHeight / inkWidth});
        }
        ink.strokes.push_back(std::move(points));
    }
    return ink;
}

/// From the first observation to the last.
std::string whenTested(const Filling& filling)
{
    const base::WallClock* first = nullptr;
    const base::WallClock* last = nullptr;
    for (const auto& [key, attempts] : filling.state.attempts) {
        for (const walk::Attempt& attempt : attempts) {
            if (first == nullptr || attempt.fact.at.utc_ms < first->utc_ms) first = &attempt.fact.at;
            if (last == nullptr || attempt.fact.at.utc_ms > last->utc_ms) last = &attempt.fact.at;
        }
    }
    if (first == nullptr) return filling.phrase("report.nothing-tested");
    const bool oneDay = base::localDate(*first) == base::localDate(*last);
    return filling.phrase(oneDay ? "report.tested-on" : "report.tested-from-to", {{"day", words::longDate(*first)},
                                                                                  {"last", words::longDate(*last)},
                                                                                  {"from", base::localTime(*first)},
                                                                                  {"to", base::localTime(*last)}});
}

std::string whatItSeals(const Filling& filling)
{
    std::int64_t answers = 0;
    for (const auto& [key, attempts] : filling.state.attempts) answers += static_cast<std::int64_t>(attempts.size());
    return filling.phrase("report.seals", {{"devices", static_cast<std::int64_t>(filling.views.size())},
                                           {"answers", answers},
                                           {"withdrawn", static_cast<std::int64_t>(filling.state.withdrawn.size())}});
}

} // namespace

void fillTitleBlock(const Filling& filling, Contents& contents)
{
    const Ground& ground = filling.ground;
    TitleBlock& block = contents.titleBlock;
    block.tester = ground.signer.name;
    block.testedWhen = whenTested(filling);
    const std::string tester = filling.plan.siteFact("tester");
    block.testerNote = ground.signer.firm + (tester.empty() || ground.signer.firm.empty() ? "" : "; ") + tester;
    block.key = base::join(fingerprintGroups(ground.signer.rootFingerprint, 3), " ");
    block.signedLine = filling.phrase("report.signed-at", {{"time", base::localTime(ground.asOf)}});
    block.sealsLine = whatItSeals(filling);
    block.fingerprint = fingerprintGroups(ground.recordFingerprint, 8);
    block.code = "proofwalk:record:" + ground.recordFingerprint;
    block.codeNote = filling.phrase("report.code-note");
    block.lastLine = filling.phrase("report.last-line");

    const walk::Told<walk::AcceptanceBody>* accepted = nullptr;
    for (const auto& told : filling.state.acceptances)
        if (filling.state.stands(told.fact)) accepted = &told;
    if (accepted == nullptr) {
        block.agreed = filling.phrase("report.not-agreed");
        return;
    }
    block.customerLine = filling.phrase("report.customer-signed", {{"time", base::localTime(accepted->fact.at)}});
    block.customerName = filling.reveal(accepted->body.name);
    block.agreed = filling.reveal(accepted->body.words);
    block.ink = inkFrom(filling.reveal(accepted->body.ink));
}

} // namespace proofwalk::report
