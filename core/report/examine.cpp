// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/examine.h"

#include "core/base/digest.h"
#include "core/base/file.h"
#include "core/journal/journal.h"
#include "core/journal/vouch.h"
#include "core/walk/results.h"

#include <algorithm>

namespace proofwalk::report {
namespace {

/// Judges the record and collects what is wrong with it.
Result<void> judge(Examined& examined)
{
    auto judged = walk::judgeRecord(examined.record);
    if (!judged) {
        if (judged.error().code == "walk.judgement-unknown") return passOn(judged);
        const auto soundness = journal::checkRecord(examined.record);
        examined.problems.insert(examined.problems.end(), soundness.problems.begin(), soundness.problems.end());
        examined.problems.push_back(std::move(judged.error()));
        return {};
    }
    const auto& problems = judged->soundness.problems;
    examined.problems.insert(examined.problems.end(), problems.begin(), problems.end());
    examined.judged = std::move(*judged);
    return {};
}

/// Which person answers for which chain; a vouching that does not check is a problem.
void checkVouchings(Examined& examined)
{
    if (!examined.judged) return;
    for (const auto& told : examined.judged->state.vouches) {
        const auto& body = told.body;
        auto name = journal::checkVouching(examined.record.job, {body.key, body.certificate, body.root, body.signature},
                                           told.fact.stamp.ms);
        if (!name) {
            examined.problems.push_back(
                {"verify.vouch", told.fact.event.substr(0, 12), {{"detail", name.error().code}}});
            continue;
        }
        for (const journal::Event& event : examined.record.events)
            if (event.n == 1 && event.body.text("key") == body.key) examined.vouched.push_back({event.chain, *name});
    }
}

/// Every attachment that is neither record nor summary is a photograph under its hash.
void takePhotographs(Examined& examined)
{
    for (const auto& [name, bytes] : examined.seal->attachments) {
        if (name == "record.jsonl" || name == "results.csv") continue;
        const std::string hash = name.substr(0, name.find('.'));
        if (hash != base::sha256Hex(bytes))
            examined.problems.push_back({"verify.photograph", name, {{"found", hash.substr(0, 12)}}});
        else examined.record.photographs[hash] = bytes;
    }
}

Result<Examined> examineReport(std::string_view bytes, const std::string& name)
{
    Examined examined;
    auto seal = checkSeal(bytes);
    if (!seal) {
        examined.problems.push_back(std::move(seal.error()));
        return examined;
    }
    examined.seal = std::move(*seal);
    examined.problems = examined.seal->problems;
    const auto lines = examined.seal->attachments.find("record.jsonl");
    const auto results = examined.seal->attachments.find("results.csv");
    if (lines == examined.seal->attachments.end() || results == examined.seal->attachments.end()) {
        examined.problems.push_back(
            {lines == examined.seal->attachments.end() ? "verify.no-record" : "verify.no-results", name, {}});
        return examined;
    }
    examined.recordFingerprint = base::sha256Hex(lines->second);
    auto record = journal::fromLines(lines->second);
    if (!record) {
        examined.problems.push_back(std::move(record.error()));
        return examined;
    }
    examined.record = std::move(*record);
    takePhotographs(examined);
    if (auto judged = judge(examined); !judged) return passOn(judged);
    checkVouchings(examined);
    if (examined.judged) {
        const std::string difference = walk::firstDifference(results->second, walk::resultsCsv(examined.judged->state));
        if (!difference.empty())
            examined.problems.push_back({"verify.results-differ", name, {{"difference", difference}}});
    }
    return examined;
}

Result<Examined> examineJob(const std::filesystem::path& file)
{
    Examined examined;
    auto record = journal::Journal::read(file);
    if (!record) return passOn(record);
    examined.record = std::move(*record);
    if (auto judged = judge(examined); !judged) return passOn(judged);
    checkVouchings(examined);
    return examined;
}

} // namespace

Result<Examined> examine(const std::filesystem::path& file)
{
    constexpr std::size_t largestReport = std::size_t{512} << 20U;
    auto bytes = base::readFile(file, largestReport);
    if (!bytes) return passOn(bytes);
    if (bytes->starts_with("%PDF-")) return examineReport(*bytes, file.filename().string());
    constexpr std::string_view database("SQLite format 3\0", 16);
    if (bytes->starts_with(database)) return examineJob(file);
    return failure("verify.foreign", file.string());
}

} // namespace proofwalk::report
