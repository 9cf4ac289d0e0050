// SPDX-License-Identifier: GPL-3.0-or-later
// The last sheet: how to check this report with tools that anybody has, and what that proves.
#include "core/report/filling.h"

#include "core/base/text.h"

namespace proofwalk::report {
namespace {

CheckStep step(const Filling& filling, const std::string& name, std::vector<std::string> commands,
               const std::vector<Argument>& arguments = {})
{
    const std::string code = "report.check." + name;
    return {filling.phrase(code), filling.phrase(code + ".words", arguments), std::move(commands),
            filling.ground.book.has(code + ".expect") ? filling.phrase(code + ".expect", arguments) : std::string()};
}

} // namespace

void fillChecking(const Filling& filling, Contents& contents)
{
    const std::string record = base::join(fingerprintGroups(filling.ground.recordFingerprint, 8), " ");
    const std::string root = base::join(fingerprintGroups(filling.ground.signer.rootFingerprint, 16), " ");
    contents.checkingLine = filling.phrase("report.checking-line");
    contents.checking = {
        step(filling, "signature", {"pdfsig report.pdf"}, {{"name", filling.ground.signer.name}}),
        step(filling, "signer", {"pdfsig -dump report.pdf"}, {{"root", root}}),
        step(filling, "record", {"pdfdetach -saveall report.pdf", "sha256sum record.jsonl"}, {{"record", record}}),
        step(filling, "verdicts", {"proofwalk verify report.pdf"}),
    };
    contents.checkingClosing = filling.phrase("report.checking-closing");
}

} // namespace proofwalk::report
