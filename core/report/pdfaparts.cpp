// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/pdfaparts.h"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <string_view>

namespace proofwalk::report {
namespace {

constexpr int depthLimit = 64;

/// Actions that would make the document do something (ISO 19005-3, 6.5.1; from memory).
constexpr std::array<std::string_view, 12> actions{"/JavaScript", "/Launch",     "/Sound",      "/Movie",
                                                   "/ResetForm",  "/ImportData", "/Hide",       "/SetOCGState",
                                                   "/Rendition",  "/Trans",      "/GoTo3DView", "/SubmitForm"};

// Annotation flags, ISO 32000-1, 12.5.3.
constexpr long long invisible = 1, hidden = 2, print = 4, noView = 32, toggleNoView = 256;

bool isStreamAt(QPDFObjectHandle dictionary, const char* key) { return dictionary.getKey(key).isStream(); }

void checkDescriptor(const QPDFObjectHandle& font, QPDFObjectHandle descriptor, const std::string& where,
                     Problems& problems)
{
    const std::string name = nameAt(font, "/BaseFont");
    const auto missing = [&](const char* part) {
        problems.add("seal.pdfa-font", where, {{"font", name}, {"part", part}});
    };
    if (!descriptor.isDictionary()) return missing("/FontDescriptor");
    if (!isStreamAt(descriptor, "/FontFile") && !isStreamAt(descriptor, "/FontFile2")
        && !isStreamAt(descriptor, "/FontFile3"))
        missing("/FontFile");
    if (nameAt(descriptor, "/FontName") != name) missing("/FontName");
    if (descriptor.hasKey("/CIDSet")) missing("/CIDSet");
}

/// Descendants are looked at from the font that has them, since only there both names can be compared.
void checkFont(QPDFObjectHandle font, const std::string& where, Problems& problems)
{
    const std::string kind = nameAt(font, "/Subtype"), name = nameAt(font, "/BaseFont");
    if (kind == "/Type3" || kind.starts_with("/CIDFont")) return;
    if (kind != "/Type0") return checkDescriptor(font, font.getKey("/FontDescriptor"), where, problems);
    if (!isStreamAt(font, "/ToUnicode"))
        problems.add("seal.pdfa-font", where, {{"font", name}, {"part", "/ToUnicode"}});
    QPDFObjectHandle descendants = font.getKey("/DescendantFonts");
    if (!descendants.isArray() || descendants.getArrayNItems() != 1 || !descendants.getArrayItem(0).isDictionary())
        return problems.add("seal.pdfa-font", where, {{"font", name}, {"part", "/DescendantFonts"}});
    QPDFObjectHandle descendant = descendants.getArrayItem(0);
    if (nameAt(descendant, "/BaseFont") != name)
        problems.add("seal.pdfa-font", where, {{"font", name}, {"part", "/BaseFont"}});
    checkDescriptor(descendant, descendant.getKey("/FontDescriptor"), where, problems);
}

void checkActions(QPDFObjectHandle dictionary, const std::string& where, Problems& problems)
{
    const std::string kind = nameAt(dictionary, "/S");
    if (std::ranges::find(actions, kind) != actions.end()) problems.add("seal.pdfa-action", where, {{"found", kind}});
    for (const char* key : {"/AA", "/OpenAction", "/JS", "/JavaScript"}) {
        if (dictionary.hasKey(key)) problems.add("seal.pdfa-action", where, {{"found", key}});
    }
}

void checkFilter(QPDFObjectHandle filter, const std::string& where, Problems& problems)
{
    if (!filter.isName()) return;
    for (const char* bad : {"/LZWDecode", "/LZW", "/Crypt"}) {
        if (filter.getName() == bad) problems.add("seal.pdfa-stream", where, {{"found", bad}});
    }
}

void checkStream(QPDFObjectHandle dictionary, const std::string& where, Problems& problems)
{
    for (const char* key : {"/F", "/FFilter", "/FDecodeParms"}) {
        if (dictionary.hasKey(key)) problems.add("seal.pdfa-stream", where, {{"found", key}});
    }
    QPDFObjectHandle filter = dictionary.getKey("/Filter");
    checkFilter(filter, where, problems);
    for (int i = 0; filter.isArray() && i < filter.getArrayNItems(); ++i)
        checkFilter(filter.getArrayItem(i), where, problems);
    QPDFObjectHandle smooth = dictionary.getKey("/Interpolate");
    if (smooth.isBool() && smooth.getBoolValue()) problems.add("seal.pdfa-image", where, {{"found", "/Interpolate"}});
    for (const char* key : {"/Alternates", "/OPI", "/Ref", "/PS"}) {
        if (dictionary.hasKey(key)) problems.add("seal.pdfa-image", where, {{"found", key}});
    }
    if (nameAt(dictionary, "/Type") == "/EmbeddedFile" && nameAt(dictionary, "/Subtype").empty())
        problems.add("seal.pdfa-attachment", where, {{"found", "/Subtype"}});
}

bool hasArea(QPDFObjectHandle box)
{
    const auto rectangle = box.getArrayAsRectangle();
    return rectangle.llx != rectangle.urx && rectangle.lly != rectangle.ury;
}

void checkAnnotation(QPDFObjectHandle note, const std::string& where, Problems& problems)
{
    const auto bad = [&](const char* key) { problems.add("seal.pdfa-annotation", where, {{"found", key}}); };
    const std::string kind = nameAt(note, "/Subtype");
    if (kind == "/Popup") return;
    QPDFObjectHandle flags = note.getKey("/F");
    const long long bits = flags.isInteger() ? flags.getIntValue() : 0;
    if ((bits & print) == 0 || (bits & (invisible | hidden | noView | toggleNoView)) != 0) bad("/F");
    if (kind == "/Link") return;
    QPDFObjectHandle looks = note.getKey("/AP"), box = note.getKey("/Rect");
    if (!box.isRectangle()) return bad("/Rect");
    if (hasArea(box) && (!looks.isDictionary() || looks.getKeys() != std::set<std::string>{"/N"})) bad("/AP");
}

void checkFilespec(QPDFObjectHandle spec, const std::string& where, Problems& problems)
{
    for (const char* key : {"/F", "/UF"}) {
        if (!textAt(spec, key)) problems.add("seal.pdfa-attachment", where, {{"found", key}});
    }
    if (nameAt(spec, "/AFRelationship").empty())
        problems.add("seal.pdfa-attachment", where, {{"found", "/AFRelationship"}});
    QPDFObjectHandle files = spec.getKey("/EF");
    if (!files.isDictionary() || !isStreamAt(files, "/F"))
        problems.add("seal.pdfa-attachment", where, {{"found", "/EF"}});
}

void checkDictionary(const QPDFObjectHandle& dictionary, const std::string& where, Problems& problems)
{
    const std::string type = nameAt(dictionary, "/Type");
    checkActions(dictionary, where, problems);
    if (type == "/Font") checkFont(dictionary, where, problems);
    if (type == "/Filespec") checkFilespec(dictionary, where, problems);
    if (type == "/Annot") checkAnnotation(dictionary, where, problems);
}

} // namespace

std::string placeOf(const QPDFObjectHandle& object)
{
    return object.isIndirect() ? fmt::format("object {}", object.getObjectID()) : std::string();
}

void checkParts(QPDFObjectHandle object, const std::string& where, Problems& problems, int depth)
{
    if (depth > depthLimit) return problems.add("seal.pdfa-stream", where, {{"found", "nesting"}});
    if (object.isStream()) checkStream(object.getDict(), where, problems);
    const auto inside = [&](const QPDFObjectHandle& child) {
        if (!child.isIndirect()) checkParts(child, where, problems, depth + 1);
    };
    if (const auto dictionary = dictionaryOf(object)) {
        checkDictionary(*dictionary, where, problems);
        for (auto& [key, value] : QPDFObjectHandle(*dictionary).getDictAsMap()) inside(value);
    } else if (object.isArray()) {
        for (int i = 0; i < object.getArrayNItems(); ++i) inside(object.getArrayItem(i));
    }
}

} // namespace proofwalk::report
