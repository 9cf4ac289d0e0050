// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/issue.h"

#include "core/base/digest.h"
#include "core/report/fill.h"
#include "core/report/pages.h"
#include "core/report/pdfa.h"
#include "core/report/sign.h"
#include "core/walk/results.h"

#include <algorithm>

namespace proofwalk::report {
namespace {

/// Whether it may be signed at all, and as what.
Result<void> mayIssue(const walk::Judged& judged, const walk::Readiness& readiness, const Issue& issue)
{
    if (!judged.soundness.sound()) return failure("report.record-unsound", "");
    if (!judged.state.unjudged.empty())
        return failure("report.unjudged", "", {{"count", static_cast<std::int64_t>(judged.state.unjudged.size())}});
    if (readiness.blocked() && !issue.interim)
        return failure(
            "report.refused", "",
            {{"count", static_cast<std::int64_t>(std::ranges::count(readiness.rungs, true, &walk::Rung::blocking))}});
    return {};
}

bool isJpeg(const std::string& bytes) { return bytes.starts_with("\xFF\xD8"); }

std::vector<Attachment> attachmentsOf(const journal::Record& record, std::string lines, const walk::State& state)
{
    std::vector<Attachment> attachments;
    attachments.push_back(
        {"record.jsonl", "application/json", std::move(lines), "Everything that was recorded, line by line"});
    attachments.push_back({"results.csv", "text/csv", walk::resultsCsv(state), "Every verdict as it was signed"});
    for (const auto& [hash, bytes] : record.photographs)
        attachments.push_back({hash + (isJpeg(bytes) ? ".jpg" : ".png"), isJpeg(bytes) ? "image/jpeg" : "image/png",
                               bytes, "A photograph of the record"});
    return attachments;
}

} // namespace

Result<Issued> issueReport(const journal::Record& record, const words::Book& book, const journal::Identity& identity,
                           const Issue& issue)
{
    auto judged = walk::judgeRecord(record);
    if (!judged) return passOn(judged);
    Issued issued;
    issued.readiness = walk::readinessOf(judged->state, issue.asOf);
    if (auto may = mayIssue(*judged, issued.readiness, issue); !may) return passOn(may);

    std::string lines = journal::toLines(record);
    issued.recordFingerprint = base::sha256Hex(lines);
    const Contents contents = fillContents(
        {record, *judged, issued.readiness, book, identity.facts, issue.asOf, issued.recordFingerprint, issue.interim});
    auto drawn = drawPages(contents);
    if (!drawn) return passOn(drawn);

    const DocumentFacts facts{contents.site + ", " + book.phrase("report.subtitle"), "Proofwalk " PROOFWALK_VERSION,
                              "Qt and qpdf", "en-GB", issue.asOf};
    auto document = buildPdfA(*drawn, facts, attachmentsOf(record, std::move(lines), judged->state), installerPlace);
    if (!document) return passOn(document);
    const std::string reason = contents.title.empty() ? book.phrase("report.subtitle") : contents.title;
    auto signedBytes = signReport(*document, identity, {issue.asOf, reason});
    if (!signedBytes) return passOn(signedBytes);
    issued.pdf = std::move(*signedBytes);
    return issued;
}

} // namespace proofwalk::report
