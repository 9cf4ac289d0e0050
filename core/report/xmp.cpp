// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/xmp.h"

#include "core/report/pdftime.h"

#include <fmt/format.h>

#include <array>
#include <utility>

namespace proofwalk::report {
namespace {

constexpr std::array<std::pair<std::string_view, std::string_view>, 3> escapes{
    {{"&lt;", "<"}, {"&gt;", ">"}, {"&amp;", "&"}}};

std::string escaped(std::string_view text)
{
    std::string out;
    for (const char c : text) {
        if (c == '<') out += "&lt;";
        else if (c == '>') out += "&gt;";
        else if (c == '&') out += "&amp;";
        else out += c;
    }
    return out;
}

std::string unescaped(std::string_view text)
{
    std::string out;
    while (!text.empty()) {
        std::size_t taken = 1;
        char c = text[0];
        for (const auto& [written, meant] : escapes) {
            if (!text.starts_with(written)) continue;
            taken = written.size();
            c = meant[0];
            break;
        }
        out += c;
        text.remove_prefix(taken);
    }
    return out;
}

} // namespace

std::string xmpPacket(const DocumentFacts& facts)
{
    return fmt::format("<?xpacket begin=\"\xEF\xBB\xBF\" id=\"W5M0MpCehiHzreSzNTczkc9d\"?>\n"
                       "<x:xmpmeta xmlns:x=\"adobe:ns:meta/\">\n"
                       " <rdf:RDF xmlns:rdf=\"http://www.w3.org/1999/02/22-rdf-syntax-ns#\">\n"
                       "  <rdf:Description rdf:about=\"\" xmlns:pdfaid=\"http://www.aiim.org/pdfa/ns/id/\">\n"
                       "   <pdfaid:part>3</pdfaid:part>\n"
                       "   <pdfaid:conformance>B</pdfaid:conformance>\n"
                       "  </rdf:Description>\n"
                       "  <rdf:Description rdf:about=\"\" xmlns:dc=\"http://purl.org/dc/elements/1.1/\">\n"
                       "   <dc:format>application/pdf</dc:format>\n"
                       "   <dc:title><rdf:Alt><rdf:li xml:lang=\"x-default\">{}</rdf:li></rdf:Alt></dc:title>\n"
                       "  </rdf:Description>\n"
                       "  <rdf:Description rdf:about=\"\" xmlns:xmp=\"http://ns.adobe.com/xap/1.0/\">\n"
                       "   <xmp:CreatorTool>{}</xmp:CreatorTool>\n"
                       "   <xmp:CreateDate>{}</xmp:CreateDate>\n"
                       "   <xmp:ModifyDate>{}</xmp:ModifyDate>\n"
                       "  </rdf:Description>\n"
                       "  <rdf:Description rdf:about=\"\" xmlns:pdf=\"http://ns.adobe.com/pdf/1.3/\">\n"
                       "   <pdf:Producer>{}</pdf:Producer>\n"
                       "  </rdf:Description>\n"
                       " </rdf:RDF>\n"
                       "</x:xmpmeta>\n"
                       "<?xpacket end=\"w\"?>",
                       escaped(facts.title), escaped(facts.creator), xmpTime(facts.made), xmpTime(facts.made),
                       escaped(facts.producer));
}

std::optional<std::string> xmpText(std::string_view packet, const std::string& element)
{
    const std::string open = "<" + element + ">", close = "</" + element + ">";
    const auto from = packet.find(open);
    if (from == std::string_view::npos || packet.find(open, from + 1) != std::string_view::npos) return std::nullopt;
    const auto to = packet.find(close, from);
    if (to == std::string_view::npos) return std::nullopt;
    std::string_view inner = packet.substr(from + open.size(), to - from - open.size());
    constexpr std::string_view before = "<rdf:Alt><rdf:li xml:lang=\"x-default\">", after = "</rdf:li></rdf:Alt>";
    if (inner.starts_with(before) && inner.ends_with(after)) {
        inner.remove_prefix(before.size());
        inner.remove_suffix(after.size());
    }
    return unescaped(inner);
}

} // namespace proofwalk::report
