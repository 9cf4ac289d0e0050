// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/sealcheck.h"

#include "core/base/digest.h"
#include "core/journal/certificate.h"
#include "core/report/attachments.h"
#include "core/report/cmscheck.h"
#include "core/report/pdfacheck.h"
#include "core/report/revision.h"
#include "core/report/signature.h"
#include "core/report/tail.h"

#include <exception>

namespace proofwalk::report {
namespace {

Result<void> checkFrame(std::string_view pdf)
{
    if (pdf.size() > reportLimit)
        return failure("seal.too-large", "", {{"limit", static_cast<std::int64_t>(reportLimit)}});
    if (!pdf.starts_with("%PDF-1.")) return failure("seal.not-a-pdf", "");
    if (!tableOffset(pdf)) return failure("seal.cut-short", "");
    return {};
}

/// The certificates at the time of signing, and the name the signature gives itself.
Result<void> judgeSigner(const SignedBy& by, const Signature& signature, SealFindings& findings)
{
    const auto signer = journal::certificateOf(by.signerDer), root = journal::certificateOf(by.rootDer);
    if (signer == nullptr || root == nullptr) return failure("seal.certificate", "", {{"part", "DER"}});
    // Some octets of a certificate are under no signature: the form in which its own signature is written.
    for (const X509* each : {signer.get(), root.get()}) {
        const std::string& der = each == signer.get() ? by.signerDer : by.rootDer;
        if (journal::derOf(i2d_X509, each) != der) return failure("seal.certificate", "", {{"part", "DER"}});
        if (X509_get_version(each) != X509_VERSION_3) return failure("seal.certificate", "", {{"part", "version"}});
    }
    if (auto chain = journal::checkChain(signer.get(), root.get(), signature.at.utc_ms); !chain) return chain;
    findings.signerName = journal::commonName(signer.get());
    findings.firm = journal::organisation(signer.get());
    findings.rootFingerprint = base::sha256Hex(by.rootDer);
    if (findings.signerName.empty() || findings.signerName != signature.name)
        return failure("seal.name", "", {{"found", signature.name}, {"wanted", findings.signerName}});
    return {};
}

Result<SealFindings> checkParsed(std::string_view bytes, QPDF& pdf)
{
    auto signature = readSignature(pdf, bytes);
    if (!signature) return passOn(signature);
    auto by = checkSignedData(signature->der, signature->covered);
    if (!by) return passOn(by);
    SealFindings findings;
    findings.signedAt = signature->at;
    findings.reason = signature->reason;
    if (auto good = judgeSigner(*by, *signature, findings); !good) return passOn(good);
    if (auto good = checkRevision(bytes, pdf, *signature); !good) return passOn(good);
    auto attachments = readAttachments(pdf);
    if (!attachments) return passOn(attachments);
    findings.attachments = std::move(*attachments);
    findings.problems = pdfaProblems(pdf, bytes);
    return findings;
}

} // namespace

Result<SealFindings> checkSeal(std::string_view pdf)
{
    if (auto frame = checkFrame(pdf); !frame) return passOn(frame);
    auto parsed = openPdf(pdf);
    if (!parsed) return passOn(parsed);
    try {
        return checkParsed(pdf, **parsed);
    } catch (const std::exception& problem) { // the library's word for what it cannot follow
        return failure("seal.syntax", "", {{"detail", std::string(problem.what())}});
    }
}

} // namespace proofwalk::report
