// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/qpdf.h"

#include <qpdf/Pipeline.hh>
#include <qpdf/QPDFExc.hh>

#include <exception>
#include <stdexcept>

namespace proofwalk::report {
namespace {

/// Collects bytes, and gives up before a small stream has unpacked into a large one.
class Bounded final : public Pipeline {
public:
    explicit Bounded(std::size_t limit) : Pipeline("bounded", nullptr), m_limit(limit) {}

    void write(const unsigned char* data, std::size_t length) override
    {
        if (length > m_limit - m_bytes.size()) throw std::length_error("a stream unpacks into too much");
        m_bytes.append(reinterpret_cast<const char*>(data), length);
    }
    void finish() override {}

    std::string take() { return std::move(m_bytes); }

private:
    std::size_t m_limit;
    std::string m_bytes;
};

} // namespace

Result<std::shared_ptr<QPDF>> openPdf(std::string_view bytes)
{
    const auto limit = static_cast<std::int64_t>(reportLimit);
    if (bytes.size() > reportLimit) return failure("seal.too-large", "", {{"limit", limit}});
    try {
        auto pdf = QPDF::create();
        pdf->setSuppressWarnings(true);
        pdf->setAttemptRecovery(false);
        pdf->processMemoryFile("report", bytes.data(), bytes.size());
        if (pdf->isEncrypted()) return failure("seal.encrypted", "");
        if (pdf->getObjectCount() > objectLimit) return failure("seal.too-large", "", {{"limit", limit}});
        for (QPDFObjectHandle object : pdf->getAllObjects()) (void)object.getTypeCode(); // a look at it parses it
        const auto warnings = pdf->getWarnings();
        if (!warnings.empty()) return failure("seal.syntax", "", {{"detail", std::string(warnings.front().what())}});
        return pdf;
    } catch (const std::exception& problem) {
        return failure("seal.syntax", "", {{"detail", std::string(problem.what())}});
    }
}

std::optional<std::string> unpacked(QPDFObjectHandle stream, std::size_t limit)
{
    if (!stream.isStream()) return std::nullopt;
    try {
        Bounded bytes(limit);
        // Success means that the filters could be undone; a broken stream still does not throw but warns.
        bool filtered = false;
        const bool good = stream.pipeStreamData(&bytes, &filtered, 0, qpdf_dl_all, true, false);
        const bool hasFilter = stream.getDict().hasKey("/Filter");
        if (!good || (hasFilter && !filtered)) return std::nullopt;
        return bytes.take();
    } catch (const std::exception&) {
        return std::nullopt;
    }
}

std::optional<QPDFObjectHandle> dictionaryOf(QPDFObjectHandle object)
{
    if (object.isStream()) return object.getDict();
    if (object.isDictionary()) return object;
    return std::nullopt;
}

std::string nameAt(QPDFObjectHandle dictionary, const std::string& key)
{
    if (!dictionary.isDictionary()) return {};
    QPDFObjectHandle member = dictionary.getKey(key);
    return member.isName() ? member.getName() : std::string();
}

std::optional<std::string> textAt(QPDFObjectHandle dictionary, const std::string& key)
{
    if (!dictionary.isDictionary()) return std::nullopt;
    QPDFObjectHandle member = dictionary.getKey(key);
    if (!member.isString()) return std::nullopt;
    return member.getUTF8Value();
}

} // namespace proofwalk::report
