// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/examinedwords.h"

#include "core/walk/readiness.h"

#include <algorithm>

namespace proofwalk::report {
namespace {

/// As many digits of a chain's id as tell it from another by eye.
constexpr std::size_t shortChain = 12;

std::string countsOf(const words::Book& book, const walk::State& state)
{
    const auto counts = walk::countVerdicts(state);
    std::string line;
    for (std::size_t i = 0; i < counts.size(); ++i) {
        if (counts[i] == 0) continue;
        line += (line.empty() ? "" : ", ") + std::to_string(counts[i]) + " "
              + book.phrase("verdict." + std::string(walk::wordOf(static_cast<walk::Verdict>(i))));
    }
    return line;
}

void tellSeal(const Examined& examined, const words::Book& book, const std::string& file,
              std::vector<std::string>& lines)
{
    if (!examined.seal) return;
    const SealFindings& seal = *examined.seal;
    lines.push_back(book.phrase("verify.report", {{"file", file},
                                                  {"name", seal.signerName},
                                                  {"firm", seal.firm},
                                                  {"day", words::longDate(seal.signedAt)},
                                                  {"time", base::localTime(seal.signedAt)}}));
    lines.push_back(book.phrase("verify.root", {{"root", seal.rootFingerprint}}));
    if (!examined.recordFingerprint.empty())
        lines.push_back(book.phrase("verify.record", {{"record", examined.recordFingerprint}}));
}

} // namespace

std::vector<std::string> unvouchedChains(const Examined& examined)
{
    std::vector<std::string> chains;
    if (!examined.judged) return chains;
    for (const auto& [chain, count] : examined.judged->soundness.soundEvents)
        if (std::ranges::find(examined.vouched, chain, &VouchedChain::chain) == examined.vouched.end())
            chains.push_back(chain);
    return chains;
}

std::vector<std::string> tellContents(const Examined& examined, const words::Book& book, const std::string& file)
{
    std::vector<std::string> lines;
    tellSeal(examined, book, file, lines);
    if (!examined.judged) return lines;
    const auto& sound = examined.judged->soundness.soundEvents;
    lines.push_back(book.phrase("verify.chains", {{"events", static_cast<std::int64_t>(examined.record.events.size())},
                                                  {"chains", static_cast<std::int64_t>(sound.size())}}));
    for (const auto& [chain, count] : sound)
        if (!examined.sound())
            lines.push_back(
                book.phrase("verify.chain-sound", {{"chain", chain.substr(0, shortChain)}, {"count", count}}));
    for (const VouchedChain& vouched : examined.vouched)
        lines.push_back(
            book.phrase("verify.vouched", {{"name", vouched.name}, {"chain", vouched.chain.substr(0, shortChain)}}));
    for (const std::string& chain : unvouchedChains(examined))
        lines.push_back(book.phrase("verify.unvouched", {{"chain", chain.substr(0, shortChain)}}));
    lines.push_back(book.phrase("verify.counts", {{"counts", countsOf(book, examined.judged->state)}}));
    return lines;
}

std::vector<std::string> tellSoundness(const Examined& examined, const words::Book& book)
{
    std::vector<std::string> lines;
    if (examined.sound()) {
        lines.push_back(book.phrase(examined.seal ? "verify.sound.report" : "verify.sound.job"));
        if (!examined.seal) lines.push_back(book.phrase("verify.nobody-knows"));
        return lines;
    }
    lines.push_back(book.phrase("verify.not-sound"));
    for (const Error& problem : examined.problems) lines.push_back("  " + book.sentence(problem));
    return lines;
}

} // namespace proofwalk::report
