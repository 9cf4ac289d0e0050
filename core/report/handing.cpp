// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/handing.h"

#include "core/base/digest.h"
#include "core/base/file.h"
#include "core/journal/vouch.h"
#include "core/report/fill.h"
#include "core/report/issue.h"
#include "core/report/pages.h"

#include <algorithm>

namespace proofwalk::report {
namespace {

Result<void> record(walk::Job& job, const walk::Body& body)
{
    std::vector<journal::Draft> drafts(1);
    drafts.front().kind = walk::kindOf(body);
    drafts.front().body = walk::toJson(body, {});
    return job.append(std::move(drafts), base::now());
}

/// The signer answers for this machine's key, once a job.
Result<void> vouchOnce(walk::Job& job, const journal::SigningKey& machine, const journal::Identity& identity)
{
    const std::string key = base::toHex(machine.publicKeyDer());
    const std::string certificate = base::toHex(identity.signerDer);
    const auto& vouches = job.state().vouches;
    if (std::ranges::any_of(
            vouches, [&](const auto& told) { return told.body.key == key && told.body.certificate == certificate; }))
        return {};
    auto vouching = journal::vouchFor(job.id(), key, identity);
    if (!vouching) return passOn(vouching);
    return record(job,
                  walk::VouchBody{vouching->machineKey, vouching->certificate, vouching->root, vouching->signature});
}

/// Whether a file can be made there: one is made, and taken away again.
Result<void> tryFolder(const std::filesystem::path& out)
{
    const auto folder = out.has_parent_path() ? out.parent_path() : std::filesystem::path(".");
    std::error_code none;
    if (!std::filesystem::is_directory(folder, none)) return failure("report.no-folder", folder.string());
    const auto trial = folder / (".proofwalk-" + base::randomHex(8));
    auto written = base::writeFile(trial, "");
    std::filesystem::remove(trial, none);
    if (written) return {};
    return std::unexpected(Error{written.error().code, out.string(), written.error().arguments});
}

} // namespace

Result<void> mayHandOver(const walk::Job& job, const Handing& handing)
{
    std::error_code none;
    if (std::filesystem::exists(handing.out, none)) return failure("report.exists", handing.out.string());
    const auto readiness = walk::readinessOf(job.state(), base::now());
    if (!handing.interim && readiness.blocked()) {
        const auto count = std::ranges::count(readiness.rungs, true, &walk::Rung::blocking);
        return failure("report.refused", "", {{"count", static_cast<std::int64_t>(count)}});
    }
    return tryFolder(handing.out);
}

Result<Handed> handOver(walk::Job& job, const journal::SigningKey& machine, const journal::Identity& identity,
                        const words::Book& book, const Handing& handing)
{
    if (auto may = mayHandOver(job, handing); !may) return passOn(may);
    if (auto vouched = vouchOnce(job, machine, identity); !vouched) return passOn(vouched);
    auto lines = job.record();
    if (!lines) return passOn(lines);
    auto issued = issueReport(*lines, book, identity, {base::now(), handing.interim});
    if (!issued) return passOn(issued);
    if (auto written = base::writeFile(handing.out, issued->pdf); !written) return passOn(written);
    Handed handed{base::sha256Hex(issued->pdf), issued->recordFingerprint, issued->readiness.standing};
    if (auto noted = record(job, walk::HandedOverBody{handed.sha256, handing.interim ? "interim" : "final"}); !noted)
        return passOn(noted);
    return handed;
}

Result<std::string> draftReport(const walk::Job& job, const words::Book& book, const journal::IdentityFacts& signer,
                                bool interim)
{
    auto lines = job.record();
    if (!lines) return passOn(lines);
    auto judged = walk::judgeRecord(*lines);
    if (!judged) return passOn(judged);
    if (!judged->soundness.sound()) return failure("report.record-unsound", "");
    const auto asOf = base::now();
    const auto readiness = walk::readinessOf(judged->state, asOf);
    Contents contents = fillContents(
        {*lines, *judged, readiness, book, signer, asOf, base::sha256Hex(journal::toLines(*lines)), interim});
    // What has no signature says so, in the head of each sheet and in the block; and nothing in it can be compared.
    contents.title = book.phrase(interim ? "report.title.interim-draft" : "report.title.draft");
    contents.titleBlock.signedLine.clear();
    contents.titleBlock.fingerprint.clear();
    contents.titleBlock.code.clear();
    contents.titleBlock.codeNote = book.phrase("report.draft-note");
    return drawPages(contents);
}

} // namespace proofwalk::report
