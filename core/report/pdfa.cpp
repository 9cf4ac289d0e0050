// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/pdfa.h"

#include "core/base/text.h"
#include "core/report/pdfacheck.h"
#include "core/report/pdftime.h"
#include "core/report/xmp.h"

#include <qpdf/Buffer.hh>
#include <qpdf/QPDFEFStreamObjectHelper.hh>
#include <qpdf/QPDFEmbeddedFileDocumentHelper.hh>
#include <qpdf/QPDFFileSpecObjectHelper.hh>
#include <qpdf/QPDFPageDocumentHelper.hh>
#include <qpdf/QPDFWriter.hh>

#include <fmt/format.h>

#include <algorithm>
#include <exception>
#include <memory>
#include <set>

namespace proofwalk::report {
namespace {

using Handle = QPDFObjectHandle;

/// A text that both XML 1.0 and a PDF string can hold.
bool isWritable(const std::string& text)
{
    return !text.empty() && base::isUtf8(text)
        && std::ranges::none_of(text, [](char c) { return static_cast<unsigned char>(c) < 0x20 || c == 0x7F; });
}

bool isAttachmentName(const std::string& name)
{
    const auto plain = [](char c) {
        return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || (c >= '0' && c <= '9') || c == '.' || c == '-'
            || c == '_';
    };
    return !name.empty() && name.size() <= 128 && name[0] != '.' && std::ranges::all_of(name, plain);
}

Result<void> checkWords(const DocumentFacts& facts, std::span<const Attachment> attachments)
{
    struct Fact {
        const char* name;
        const std::string& text;
    };
    for (const auto& [name, text] : {Fact{"title", facts.title}, Fact{"creator", facts.creator},
                                     Fact{"producer", facts.producer}, Fact{"language", facts.language}}) {
        if (!isWritable(text)) return failure("seal.fact-missing", "", {{"found", name}});
    }
    std::set<std::string> names;
    for (const Attachment& attachment : attachments) {
        if (!isAttachmentName(attachment.name) || attachment.mime.find('/') == std::string::npos)
            return failure("seal.attachment-name", "", {{"found", attachment.name}});
        if (!names.insert(attachment.name).second)
            return failure("seal.attachment-twice", "", {{"found", attachment.name}});
    }
    return {};
}

/// Qt names the subset in the descriptor only, and lists a /CIDSet that PDF/A-3 does not ask for.
void putFontsRight(QPDF& pdf)
{
    for (Handle font : pdf.getAllObjects()) {
        if (nameAt(font, "/Type") != "/Font" || nameAt(font, "/Subtype") != "/Type0") continue;
        Handle descendants = font.getKey("/DescendantFonts");
        if (!descendants.isArray() || descendants.getArrayNItems() != 1) continue;
        Handle descendant = descendants.getArrayItem(0);
        if (!descendant.isDictionary() || !descendant.getKey("/FontDescriptor").isDictionary()) continue;
        Handle descriptor = descendant.getKey("/FontDescriptor"), name = descriptor.getKey("/FontName");
        if (!name.isName()) continue;
        font.replaceKey("/BaseFont", name);
        descendant.replaceKey("/BaseFont", name);
        descriptor.removeKey("/CIDSet");
    }
}

void sayWhatItIs(QPDF& pdf, const DocumentFacts& facts)
{
    Handle info = Handle::newDictionary();
    const auto time = Handle::newString(pdfTime(facts.made));
    info.replaceKey("/Title", Handle::newUnicodeString(facts.title));
    info.replaceKey("/Creator", Handle::newUnicodeString(facts.creator));
    info.replaceKey("/Producer", Handle::newUnicodeString(facts.producer));
    info.replaceKey("/CreationDate", time);
    info.replaceKey("/ModDate", time);
    pdf.getTrailer().replaceKey("/Info", pdf.makeIndirectObject(info));
    pdf.getTrailer().removeKey("/ID"); // Qt's is new each time; the writer makes one of the contents

    Handle packet = Handle::newStream(&pdf, xmpPacket(facts));
    packet.getDict().replaceKey("/Type", Handle::newName("/Metadata"));
    packet.getDict().replaceKey("/Subtype", Handle::newName("/XML"));
    Handle root = pdf.getRoot();
    root.replaceKey("/Metadata", packet);
    root.replaceKey("/Lang", Handle::newUnicodeString(facts.language));
    root.replaceKey("/ViewerPreferences", Handle::parse("<< /DisplayDocTitle true >>"));
}

void attach(QPDF& pdf, const DocumentFacts& facts, std::span<const Attachment> attachments)
{
    if (attachments.empty()) return;
    QPDFEmbeddedFileDocumentHelper files(pdf);
    Handle associated = Handle::newArray();
    for (const Attachment& attachment : attachments) {
        auto stream = QPDFEFStreamObjectHelper::createEFStream(pdf, attachment.bytes);
        stream.setSubtype(attachment.mime);
        stream.setCreationDate(pdfTime(facts.made)).setModDate(pdfTime(facts.made));
        auto spec = QPDFFileSpecObjectHelper::createFileSpec(pdf, attachment.name, stream);
        if (!attachment.description.empty()) spec.setDescription(attachment.description);
        Handle object = spec.getObjectHandle();
        object.replaceKey("/AFRelationship", Handle::newName("/Data"));
        files.replaceEmbeddedFile(attachment.name, spec);
        associated.appendItem(object);
    }
    pdf.getRoot().replaceKey("/AF", associated);
}

/// The field's rectangle on its page, upwards from the lower left corner as PDF has it.
Result<Handle::Rectangle> rectangleOn(Handle page, const SignaturePlace& place)
{
    const Handle::Rectangle paper = page.getKey("/MediaBox").getArrayAsRectangle();
    const bool inside = place.left_pt >= 0 && place.top_pt >= 0 && place.width_pt > 0 && place.height_pt > 0
                     && place.left_pt + place.width_pt <= paper.urx - paper.llx
                     && place.top_pt + place.height_pt <= paper.ury - paper.lly;
    if (!inside) return failure("seal.field-outside", "", {{"page", std::int64_t{place.page}}});
    const double left = paper.llx + place.left_pt, top = paper.ury - place.top_pt;
    return Handle::Rectangle(left, top - place.height_pt, left + place.width_pt, top);
}

/// Nothing is drawn in it: the page already shows whose field it is. PDF/A wants an appearance all the same.
Handle emptyBox(QPDF& pdf, const SignaturePlace& place)
{
    Handle box = Handle::newStream(&pdf, "");
    box.replaceDict(
        Handle::parse(fmt::format("<< /Type /XObject /Subtype /Form /BBox [0 0 {:.2f} {:.2f}] /Resources << >> >>",
                                  place.width_pt, place.height_pt)));
    return box;
}

Result<void> addField(QPDF& pdf, const SignaturePlace& place)
{
    const auto& pages = pdf.getAllPages();
    if (place.page < 0 || static_cast<std::size_t>(place.page) >= pages.size())
        return failure("seal.field-page", "",
                       {{"found", std::int64_t{place.page}}, {"pages", static_cast<std::int64_t>(pages.size())}});
    if (pdf.getRoot().hasKey("/AcroForm")) return failure("seal.has-form", "");
    Handle page = pages[static_cast<std::size_t>(place.page)];
    auto rectangle = rectangleOn(page, place);
    if (!rectangle) return passOn(rectangle);

    // 132 = Print and Locked (ISO 32000-1, 12.5.3).
    Handle field = pdf.makeIndirectObject(Handle::parse("<< /Type /Annot /Subtype /Widget /FT /Sig /F 132 >>"));
    field.replaceKey("/T", Handle::newString(std::string(installerField)));
    field.replaceKey("/Rect", Handle::newFromRectangle(*rectangle));
    field.replaceKey("/P", page);
    Handle looks = Handle::newDictionary();
    looks.replaceKey("/N", emptyBox(pdf, place));
    field.replaceKey("/AP", looks);

    Handle notes = page.getKey("/Annots");
    auto all = notes.isArray() ? notes.getArrayAsVector() : std::vector<Handle>();
    all.push_back(field);
    page.replaceKey("/Annots", Handle::newArray(all)); // a list of this page's own, whomever the old one belonged to
    Handle form = Handle::parse("<< /SigFlags 3 >>");
    form.replaceKey("/Fields", Handle::newArray(std::vector<Handle>{field}));
    pdf.getRoot().replaceKey("/AcroForm", pdf.makeIndirectObject(form));
    return {};
}

/// Without object streams the file ends in a classic table, which a signature can lengthen by a classic section.
std::string written(QPDF& pdf)
{
    QPDFWriter writer(pdf);
    writer.setOutputMemory();
    writer.setMinimumPDFVersion("1.7");
    writer.setObjectStreamMode(qpdf_o_disable);
    writer.setDeterministicID(true);
    writer.setNewlineBeforeEndstream(true);
    writer.write();
    const auto buffer = writer.getBufferSharedPointer();
    return {reinterpret_cast<const char*>(buffer->getBuffer()), buffer->getSize()};
}

} // namespace

Result<std::string> buildPdfA(std::string_view drawn, const DocumentFacts& facts,
                              std::span<const Attachment> attachments, const SignaturePlace& place)
{
    if (auto fit = checkWords(facts, attachments); !fit) return passOn(fit);
    auto pdf = openPdf(drawn);
    if (!pdf) return passOn(pdf);
    std::string bytes;
    try {
        putFontsRight(**pdf);
        sayWhatItIs(**pdf, facts);
        attach(**pdf, facts, attachments);
        if (auto added = addField(**pdf, place); !added) return passOn(added);
        bytes = written(**pdf);
    } catch (const std::exception& problem) {
        return failure("seal.syntax", "", {{"detail", std::string(problem.what())}});
    }
    auto back = openPdf(bytes);
    if (!back) return passOn(back);
    if (const auto problems = pdfaProblems(**back, bytes); !problems.empty()) return std::unexpected(problems.front());
    return bytes;
}

} // namespace proofwalk::report
