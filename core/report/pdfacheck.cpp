// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/pdfacheck.h"

#include "core/report/pdfaparts.h"
#include "core/report/pdftime.h"
#include "core/report/xmp.h"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <set>

namespace proofwalk::report {
namespace {

constexpr std::size_t packetLimit = 1U << 20U, profileLimit = 16U << 20U;

void checkHeader(std::string_view bytes, Problems& problems)
{
    const auto high = [](char c) { return static_cast<unsigned char>(c) > 127; };
    const std::string_view comment = bytes.substr(0, std::min<std::size_t>(bytes.size(), 14));
    if (!comment.starts_with("%PDF-1.7\n%") || !std::ranges::all_of(comment.substr(10), high) || comment.size() != 14)
        problems.add("seal.pdfa-header", "");
}

void checkTrailer(QPDFObjectHandle trailer, Problems& problems)
{
    if (trailer.hasKey("/Encrypt")) problems.add("seal.pdfa-encrypted", "");
    QPDFObjectHandle id = trailer.getKey("/ID");
    if (!id.isArray() || id.getArrayNItems() != 2 || !id.getArrayItem(0).isString() || !id.getArrayItem(1).isString())
        problems.add("seal.pdfa-id", "");
}

/// What the information dictionary says must be what the XMP says, in its own way of writing times.
void checkFacts(const QPDFObjectHandle& info, const std::string& packet, Problems& problems)
{
    struct Same {
        const char* key;
        const char* element;
    };
    for (const auto& [key, element] :
         {Same{"/Title", "dc:title"}, Same{"/Creator", "xmp:CreatorTool"}, Same{"/Producer", "pdf:Producer"},
          Same{"/CreationDate", "xmp:CreateDate"}, Same{"/ModDate", "xmp:ModifyDate"}}) {
        const std::string said = textAt(info, key).value_or("");
        std::string wanted = xmpText(packet, element).value_or("");
        if (std::string_view(key).ends_with("Date")) {
            const auto time = base::parseTime(wanted);
            if (!time) problems.add("seal.pdfa-facts", "", {{"key", key}, {"found", wanted}, {"wanted", "RFC 3339"}});
            wanted = time ? pdfTime(*time) : std::string();
        }
        if (said != wanted || said.empty())
            problems.add("seal.pdfa-facts", "", {{"key", key}, {"found", said}, {"wanted", wanted}});
    }
}

void checkMetadata(QPDF& pdf, Problems& problems)
{
    const QPDFObjectHandle stream = pdf.getRoot().getKey("/Metadata");
    auto dictionary = dictionaryOf(stream);
    const auto packet = unpacked(stream, packetLimit);
    if (!packet || nameAt(*dictionary, "/Type") != "/Metadata" || nameAt(*dictionary, "/Subtype") != "/XML"
        || dictionary->hasKey("/Filter"))
        return problems.add("seal.pdfa-metadata", placeOf(stream));
    if (xmpText(*packet, "pdfaid:part") != "3" || xmpText(*packet, "pdfaid:conformance") != "B")
        problems.add("seal.pdfa-part", placeOf(stream));
    checkFacts(pdf.getTrailer().getKey("/Info"), *packet, problems);
}

/// Colour spaces of ICC.1, at octet 16 of a profile's header, with their numbers of components.
int componentsOf(std::string_view profile)
{
    const std::string_view space = profile.size() < 128 ? "" : profile.substr(16, 4);
    return space == "GRAY" ? 1 : space == "RGB " ? 3 : space == "CMYK" ? 4 : 0;
}

void checkIntent(QPDFObjectHandle root, Problems& problems)
{
    QPDFObjectHandle intents = root.getKey("/OutputIntents");
    if (!intents.isArray() || intents.getArrayNItems() != 1) return problems.add("seal.pdfa-intent", "");
    QPDFObjectHandle intent = intents.getArrayItem(0);
    if (nameAt(intent, "/S") != "/GTS_PDFA1" || !textAt(intent, "/OutputConditionIdentifier"))
        return problems.add("seal.pdfa-intent", "");
    QPDFObjectHandle stream = intent.getKey("/DestOutputProfile");
    const auto profile = unpacked(stream, profileLimit);
    if (!profile) return problems.add("seal.pdfa-profile", placeOf(stream));
    QPDFObjectHandle n = stream.getDict().getKey("/N");
    const int components = componentsOf(*profile);
    if (components == 0 || !n.isInteger() || n.getIntValue() != components)
        problems.add("seal.pdfa-profile", placeOf(stream));
}

void checkForm(QPDFObjectHandle root, Problems& problems)
{
    QPDFObjectHandle form = root.getKey("/AcroForm");
    if (!form.isDictionary()) return;
    if (form.hasKey("/XFA")) problems.add("seal.pdfa-form", "", {{"found", "/XFA"}});
    QPDFObjectHandle need = form.getKey("/NeedAppearances");
    if (!need.isNull() && !(need.isBool() && !need.getBoolValue()))
        problems.add("seal.pdfa-form", "", {{"found", "/NeedAppearances"}});
}

/// Each file specification must be named by the catalogue's /AF, or the attachment belongs to nothing.
void checkAssociated(QPDF& pdf, Problems& problems)
{
    std::set<QPDFObjGen> associated;
    QPDFObjectHandle list = pdf.getRoot().getKey("/AF");
    for (int i = 0; list.isArray() && i < list.getArrayNItems(); ++i)
        associated.insert(list.getArrayItem(i).getObjGen());
    for (const QPDFObjectHandle& object : pdf.getAllObjects()) {
        if (nameAt(object, "/Type") == "/Filespec" && !associated.contains(object.getObjGen()))
            problems.add("seal.pdfa-attachment", placeOf(object), {{"found", "/AF"}});
    }
}

} // namespace

std::vector<Error> pdfaProblems(QPDF& pdf, std::string_view bytes)
{
    Problems problems;
    checkHeader(bytes, problems);
    checkTrailer(pdf.getTrailer(), problems);
    checkMetadata(pdf, problems);
    checkIntent(pdf.getRoot(), problems);
    checkForm(pdf.getRoot(), problems);
    checkAssociated(pdf, problems);
    for (const QPDFObjectHandle& object : pdf.getAllObjects()) checkParts(object, placeOf(object), problems, 0);
    return problems.take();
}

} // namespace proofwalk::report
