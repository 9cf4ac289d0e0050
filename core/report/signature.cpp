// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/signature.h"

#include "core/base/digest.h"
#include "core/report/append.h"
#include "core/report/der.h"
#include "core/report/pdfa.h"
#include "core/report/pdftime.h"
#include "core/report/tail.h"

#include <algorithm>
#include <array>
#include <set>

namespace proofwalk::report {
namespace {

using Handle = QPDFObjectHandle;

/// Where the digits stand; both offsets are checked to lie in the file.
struct Hole {
    std::size_t open = 0;
    std::size_t after = 0;
};

Result<Handle> theField(QPDF& pdf)
{
    Handle form = pdf.getRoot().getKey("/AcroForm");
    Handle fields = form.isDictionary() ? form.getKey("/Fields") : Handle::newNull();
    const int count = fields.isArray() ? fields.getArrayNItems() : 0;
    if (count != 1) return failure("seal.fields", "", {{"found", std::int64_t{count}}});
    Handle field = fields.getArrayItem(0);
    if (!field.isIndirect() || !field.isDictionary() || textAt(field, "/T") != installerField
        || nameAt(field, "/FT") != "/Sig" || field.hasKey("/Kids") || field.hasKey("/Parent"))
        return failure("seal.fields", "", {{"found", textAt(field, "/T").value_or("")}});
    return field;
}

Result<void> checkKeys(Handle dictionary)
{
    const std::set<std::string> wanted{"/Type", "/Filter", "/SubFilter", "/M",
                                       "/Name", "/Reason", "/ByteRange", "/Contents"};
    const std::set<std::string> keys = dictionary.getKeys();
    std::set<std::string> odd;
    std::ranges::set_symmetric_difference(keys, wanted, std::inserter(odd, odd.end()));
    if (!odd.empty()) return failure("seal.dictionary", "", {{"key", *odd.begin()}});
    for (const auto& [key, value] : {std::pair{"/Type", "/Sig"}, std::pair{"/Filter", "/Adobe.PPKLite"},
                                     std::pair{"/SubFilter", "/ETSI.CAdES.detached"}}) {
        if (nameAt(dictionary, key) != value) return failure("seal.dictionary", "", {{"key", key}});
    }
    for (const char* key : {"/M", "/Name", "/Reason", "/Contents"}) {
        if (!dictionary.getKey(key).isString()) return failure("seal.dictionary", "", {{"key", key}});
    }
    return {};
}

/// The range begins with the file, leaves out exactly this dictionary's digits, and ends with the file.
Result<Hole> checkRange(Handle dictionary, std::string_view bytes)
{
    Handle range = dictionary.getKey("/ByteRange");
    const auto bad = [&] { return failure("seal.byte-range", "", {{"found", range.unparse()}}); };
    if (!range.isArray() || range.getArrayNItems() != 4) return bad();
    std::array<std::size_t, 4> numbers{};
    for (int i = 0; i < 4; ++i) {
        Handle item = range.getArrayItem(i);
        if (!item.isInteger() || item.getIntValue() < 0
            || static_cast<std::uint64_t>(item.getIntValue()) > bytes.size())
            return bad();
        numbers[static_cast<std::size_t>(i)] = static_cast<std::size_t>(item.getIntValue());
    }
    const auto [start, open, after, length] = numbers;
    if (start != 0 || after != open + contentsDigits + 2 || after + length > bytes.size()) return bad();
    if (after + length < bytes.size())
        return failure("seal.appended", "", {{"bytes", static_cast<std::int64_t>(bytes.size() - after - length)}});
    // The dictionary is the last object of the file, and its digits the last thing in it: so no other string of this
    // file can be the one that is left out.
    constexpr std::string_view before = "/Contents ", behind = " >>\nendobj\n";
    const bool inPlace = bytes[open] == '<' && bytes[after - 1] == '>' && bytes.substr(0, open).ends_with(before)
                      && bytes.substr(after).starts_with(behind) && tableOffset(bytes) == after + behind.size();
    if (!inPlace) return bad();
    return Hole{open, after};
}

/// One DER value in lower-case digits, then zeros; and the same that the parser found in the dictionary.
Result<std::string> readContents(Handle dictionary, std::string_view digits)
{
    const std::string octets = base::fromHex(digits);
    const auto der = DerReader(octets).next();
    if (!der || der->tag != 0x30) return failure("seal.contents", "");
    const auto zero = [](char c) { return c == '\0'; };
    if (!std::ranges::all_of(std::string_view(octets).substr(der->whole.size()), zero))
        return failure("seal.contents", "");
    if (dictionary.getKey("/Contents").getStringValue() != octets) return failure("seal.contents", "");
    return std::string(der->whole);
}

} // namespace

Result<Signature> readSignature(QPDF& pdf, std::string_view bytes)
{
    auto field = theField(pdf);
    if (!field) return passOn(field);
    Handle dictionary = field->getKey("/V");
    if (dictionary.isNull()) return failure("seal.not-signed", "");
    if (!dictionary.isIndirect() || !dictionary.isDictionary()) return failure("seal.dictionary", "", {{"key", "/V"}});
    if (auto keys = checkKeys(dictionary); !keys) return passOn(keys);
    auto hole = checkRange(dictionary, bytes);
    if (!hole) return passOn(hole);
    auto der = readContents(dictionary, bytes.substr(hole->open + 1, contentsDigits));
    if (!der) return passOn(der);
    const std::string time = dictionary.getKey("/M").getStringValue();
    const auto at = readPdfTimeUtc(time);
    if (!at) return failure("seal.time", "", {{"found", time}});
    return Signature{*field,
                     dictionary,
                     *at,
                     dictionary.getKey("/Name").getUTF8Value(),
                     dictionary.getKey("/Reason").getUTF8Value(),
                     std::string(bytes.substr(0, hole->open)).append(bytes.substr(hole->after)),
                     std::move(*der)};
}

} // namespace proofwalk::report
