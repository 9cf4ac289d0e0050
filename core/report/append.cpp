// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/append.h"

#include "core/base/digest.h"
#include "core/report/qpdf.h"
#include "core/report/tail.h"

#include <fmt/format.h>

#include <exception>
#include <iterator>

namespace proofwalk::report {
namespace {

using Handle = QPDFObjectHandle;

constexpr std::string_view rangePlace = "                                  ";

std::string quoted(const std::string& text) { return Handle::newUnicodeString(text).unparse(); }

Result<Handle> findField(QPDF& pdf, const std::string& name)
{
    Handle form = pdf.getRoot().getKey("/AcroForm");
    Handle fields = form.isDictionary() ? form.getKey("/Fields") : Handle::newNull();
    for (int i = 0; fields.isArray() && i < fields.getArrayNItems(); ++i) {
        Handle field = fields.getArrayItem(i);
        if (!field.isIndirect() || textAt(field, "/T") != name || nameAt(field, "/FT") != "/Sig") continue;
        if (field.hasKey("/V")) return failure("seal.already-signed", "", {{"found", name}});
        return field;
    }
    return failure("seal.field-missing", "", {{"found", name}});
}

/// The field as it was, and its value.
std::string fieldObject(Handle field, int signature)
{
    std::string text = fmt::format("{} {} obj\n<<", field.getObjectID(), field.getGeneration());
    for (auto& [key, value] : field.getDictAsMap()) text += fmt::format(" {} {}", key, value.unparse());
    return text + fmt::format(" /V {} 0 R >>\nendobj\n", signature);
}

std::string signatureObject(int number, const SignatureWords& words)
{
    return fmt::format(
        "{} 0 obj\n<< /Type /Sig /Filter /Adobe.PPKLite /SubFilter /ETSI.CAdES.detached /M ({}) /Name {} "
        "/Reason {} /ByteRange [0 {}] /Contents <{}> >>\nendobj\n",
        number, words.time, quoted(words.name), quoted(words.reason), rangePlace, std::string(contentsDigits, '0'));
}

/// A section of the table for one object: its heading, and an entry of 20 bytes.
std::string tableEntry(int number, int generation, std::size_t offset)
{
    return fmt::format("{} 1\n{:010} {:05} n \n", number, offset, generation);
}

std::string trailer(Handle old, int size, std::size_t previousTable, std::size_t table)
{
    return fmt::format("trailer << /Size {} /Root {} /Info {} /ID {} /Prev {} >>\nstartxref\n{}\n%%EOF\n", size,
                       old.getKey("/Root").unparse(), old.getKey("/Info").unparse(), old.getKey("/ID").unparse(),
                       previousTable, table);
}

Unsealed withUpdate(std::string_view pdf, const SignatureWords& words, const Handle& field, Handle oldTrailer,
                    std::size_t previousTable)
{
    const int number = static_cast<int>(oldTrailer.getKey("/Size").getIntValueAsInt());
    Unsealed made{std::string(pdf), 0, 0};
    const std::size_t fieldAt = made.bytes.size();
    made.bytes += fieldObject(field, number);
    const std::size_t signatureAt = made.bytes.size();
    made.bytes += signatureObject(number, words);
    made.after = made.bytes.size() - std::string_view(" >>\nendobj\n").size();
    made.open = made.after - contentsDigits - 2;
    const std::size_t table = made.bytes.size();
    made.bytes += "xref\n0 1\n0000000000 65535 f \n" + tableEntry(field.getObjectID(), field.getGeneration(), fieldAt)
                + tableEntry(number, 0, signatureAt) + trailer(oldTrailer, number + 1, previousTable, table);

    const std::string range = fmt::format("{} {} {}", made.open, made.after, made.bytes.size() - made.after);
    const std::size_t place = made.bytes.rfind(std::string("/ByteRange [0 ").append(rangePlace), made.open);
    made.bytes.replace(place + std::string_view("/ByteRange [0 ").size(), range.size(), range);
    return made;
}

} // namespace

Result<Unsealed> appendUpdate(std::string_view pdf, const SignatureWords& words)
{
    auto parsed = openPdf(pdf);
    if (!parsed) return passOn(parsed);
    try {
        auto field = findField(**parsed, words.field);
        if (!field) return passOn(field);
        const auto previousTable = tableOffset(pdf);
        if (!previousTable) return failure("seal.cut-short", "");
        return withUpdate(pdf, words, *field, (*parsed)->getTrailer(), *previousTable);
    } catch (const std::exception& problem) {
        return failure("seal.syntax", "", {{"detail", std::string(problem.what())}});
    }
}

std::string coveredBytes(const Unsealed& unsealed)
{
    return unsealed.bytes.substr(0, unsealed.open) + unsealed.bytes.substr(unsealed.after);
}

Result<std::string> fillIn(Unsealed unsealed, std::string_view signatureDer)
{
    const std::string digits = base::toHex(signatureDer);
    if (digits.size() > contentsDigits)
        return failure("seal.no-room", "", {{"bytes", static_cast<std::int64_t>(signatureDer.size())}});
    unsealed.bytes.replace(unsealed.open + 1, digits.size(), digits);
    return std::move(unsealed.bytes);
}

} // namespace proofwalk::report
