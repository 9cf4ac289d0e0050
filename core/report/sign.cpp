// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/sign.h"

#include "core/report/append.h"
#include "core/report/cms.h"
#include "core/report/pdfa.h"
#include "core/report/pdftime.h"
#include "core/report/sealcheck.h"

namespace proofwalk::report {

Result<std::string> signReport(std::string_view pdf, const journal::Identity& identity, const Signing& signing)
{
    const auto& facts = identity.facts;
    if (signing.at.utc_ms < facts.validFrom_utc_ms || signing.at.utc_ms > facts.validUntil_utc_ms)
        return failure("seal.signed-outside-life", "", {{"found", base::toUtcText(signing.at.utc_ms)}});
    if (signing.reason.empty()) return failure("seal.fact-missing", "", {{"found", "reason"}});
    auto unsealed =
        appendUpdate(pdf, {std::string(installerField), pdfTimeUtc(signing.at), facts.name, signing.reason});
    if (!unsealed) return passOn(unsealed);
    auto signature = signedData(coveredBytes(*unsealed), identity);
    if (!signature) return passOn(signature);
    auto sealed = fillIn(std::move(*unsealed), *signature);
    if (!sealed) return sealed;
    // What our own check would not take must not leave the house.
    auto findings = checkSeal(*sealed);
    if (!findings) return passOn(findings);
    if (!findings->problems.empty()) return std::unexpected(findings->problems.front());
    return sealed;
}

} // namespace proofwalk::report
