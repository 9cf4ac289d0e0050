// SPDX-License-Identifier: GPL-3.0-or-later
// record.jsonl: one canonical JSON text a line, in one order only, so that a record has exactly one such file. A line's
// first member, by the order of RFC 8785, tells what it is.
#include "core/journal/record.h"

#include "core/base/digest.h"
#include "core/base/text.h"

#include <fmt/format.h>

#include <algorithm>
#include <tuple>

namespace proofwalk::journal {
namespace {

using base::Json;

constexpr std::string_view format = "proofwalk/record/1";
/// A line holds a whole content of up to 16 MiB, each byte of which may be written as six (\u0000); events keep to
/// their own, narrower bound.
constexpr base::JsonBounds lineBounds{.bytes = std::size_t{128} << 20U, .depth = 32};

/// In the order in which they stand in the file.
enum class Section { first, contents, privates, events, heads, unknown };

Section sectionOf(std::string_view line)
{
    if (line.starts_with(R"({"format":)")) return Section::first;
    if (line.starts_with(R"({"content":)")) return Section::contents;
    if (line.starts_with(R"({"commitment":)")) return Section::privates;
    if (line.starts_with(R"({"alg":)")) return Section::events;
    if (line.starts_with(R"({"chain":)")) return Section::heads;
    return Section::unknown;
}

void put(std::string& out, const Json& line)
{
    out += base::canonical(line);
    out += '\n';
}

Json contentLine(const std::string& hash, const std::string& bytes)
{
    if (base::isUtf8(bytes)) return Json::Object{{"content", hash}, {"text", bytes}};
    return Json::Object{{"content", hash}, {"hex", base::toHex(bytes)}};
}

auto placeOf(const Event& event) { return std::tie(event.chain, event.n, event.hash); }

/// Reads line after line into a record; the place of a line is put to its errors by the caller.
class LineReader {
public:
    Result<void> take(std::string_view line)
    {
        const Section section = sectionOf(line);
        const bool isInOrder = section >= m_section && (section == Section::first) == m_first;
        if (section == Section::events && isInOrder) return takeEvent(line);
        auto json = base::parseCanonical(line, lineBounds);
        if (!json) return passOn(json);
        if (m_first) return takeFirst(*json);
        if (section == Section::unknown) return bad("kind");
        if (!isInOrder) return bad("order");
        m_section = section;
        switch (section) {
        case Section::contents: return takeContent(*json);
        case Section::privates: return takePrivate(*json);
        default: return takeHead(*json);
        }
    }

    bool isEmpty() const { return m_first; }
    Record take() { return std::move(m_record); }

private:
    static std::unexpected<Error> bad(std::string_view detail)
    {
        return failure("record.line", "", {{"detail", std::string(detail)}});
    }

    static bool hasOnly(const Json& line, std::size_t count)
    {
        return line.object() != nullptr && line.object()->size() == count;
    }

    Result<void> takeFirst(const Json& line)
    {
        if (line.text("format") != format) return failure("record.format", "", {{"found", line.text("format")}});
        m_record.job = line.text("job");
        if (!hasOnly(line, 2) || !base::isLowerHex(m_record.job, 32)) return bad("job");
        m_first = false;
        return {};
    }

    Result<void> takeContent(const Json& line)
    {
        const std::string hash = line.text("content");
        const Json *text = line.find("text"), *hex = line.find("hex");
        if (!hasOnly(line, 2) || !base::isLowerHex(hash, 64)) return bad("content");
        std::string bytes;
        if (text != nullptr && text->string() != nullptr) {
            bytes = *text->string();
        } else {
            if (hex == nullptr || hex->string() == nullptr) return bad("content");
            bytes = base::fromHex(*hex->string());
            // Text stands as text: else one record could be written in two ways.
            if (bytes.empty() || base::isUtf8(bytes)) return bad("content");
        }
        if (!isNext(m_record.contents, hash)) return bad("order");
        m_record.contents.emplace_hint(m_record.contents.end(), hash, std::move(bytes));
        return {};
    }

    Result<void> takePrivate(const Json& line)
    {
        Private value{line.text("commitment"), line.text("salt"), line.text("value")};
        const Json* text = line.find("value");
        if (!hasOnly(line, 3) || text == nullptr || text->string() == nullptr || !base::isLowerHex(value.commitment, 64)
            || !base::isLowerHex(value.salt, 32))
            return bad("private");
        if (!isNext(m_record.privates, value.commitment)) return bad("order");
        const std::string key = value.commitment;
        m_record.privates.emplace_hint(m_record.privates.end(), key, std::move(value));
        return {};
    }

    Result<void> takeEvent(std::string_view line)
    {
        m_section = Section::events;
        auto event = readEvent(line);
        if (!event) return passOn(event);
        if (!m_record.events.empty() && placeOf(m_record.events.back()) >= placeOf(*event)) return bad("order");
        m_record.events.push_back(std::move(*event));
        return {};
    }

    Result<void> takeHead(const Json& line)
    {
        const Json* n = line.find("n");
        if (!hasOnly(line, 4) || n == nullptr || n->integer() == nullptr || *n->integer() < 1) return bad("head");
        HeadSignature signature{{line.text("chain"), *n->integer(), line.text("hash")}, line.text("signature")};
        if (!base::isLowerHex(signature.head.chain, 32) || !base::isLowerHex(signature.head.hash, 64)
            || base::fromHex(signature.signature).empty())
            return bad("head");
        if (!m_record.heads.empty() && m_record.heads.back().head.chain >= signature.head.chain) return bad("order");
        m_record.heads.push_back(std::move(signature));
        return {};
    }

    template <class Map>
    static bool isNext(const Map& map, const std::string& key)
    {
        return map.empty() || map.rbegin()->first < key;
    }

    Record m_record;
    Section m_section = Section::first;
    bool m_first = true;
};

} // namespace

std::string toLines(const Record& record)
{
    std::string out;
    put(out, Json::Object{{"format", format}, {"job", record.job}});
    for (const auto& [hash, bytes] : record.contents) put(out, contentLine(hash, bytes));
    for (const auto& [commitment, sealed] : record.privates)
        put(out, Json::Object{{"commitment", commitment}, {"salt", sealed.salt}, {"value", sealed.value}});

    std::vector<const Event*> events;
    for (const Event& event : record.events) events.push_back(&event);
    std::ranges::sort(events, {}, [](const Event* event) { return placeOf(*event); });
    for (const Event* event : events) {
        out += canonicalText(*event);
        out += '\n';
    }

    std::vector<HeadSignature> heads = record.heads;
    std::ranges::sort(heads, {}, [](const HeadSignature& each) { return each.head.chain; });
    for (const auto& [head, signature] : heads)
        put(out, Json::Object{{"chain", head.chain}, {"hash", head.hash}, {"n", head.n}, {"signature", signature}});
    return out;
}

Result<Record> fromLines(std::string_view lines)
{
    LineReader reader;
    for (int number = 1; !lines.empty(); ++number) {
        const auto place = [&](Error error) { return std::move(error).within(fmt::format("record.jsonl:{}", number)); };
        const std::size_t end = lines.find('\n');
        // Every line is ended by a newline: a file cut short inside its last line is not taken for whole.
        if (end == std::string_view::npos)
            return std::unexpected(place({"record.line", "", {{"detail", "cut short"}}}));
        auto taken = reader.take(lines.substr(0, end));
        if (!taken) return std::unexpected(place(std::move(taken.error())));
        lines.remove_prefix(end + 1);
    }
    if (reader.isEmpty()) return failure("record.format", "record.jsonl:1", {{"found", ""}});
    return reader.take();
}

} // namespace proofwalk::journal
