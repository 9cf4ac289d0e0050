// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/base/json.h"

#include "core/base/text.h"

#include <fmt/format.h>
#include <simdjson.h>

#include <algorithm>
#include <cassert>
#include <charconv>

namespace proofwalk::base {
namespace {

constexpr std::int64_t integerLimit = 9'007'199'254'740'991; // 2^53-1, RFC 8785 (IEEE 754 doubles)

/// RFC 8785, 3.2.2.2: two-character escapes where JSON has one, \u00xx for other controls, the rest as it is.
void writeString(std::string& out, std::string_view text)
{
    assert(isUtf8(text));
    out += '"';
    for (const char c : text) {
        switch (c) {
        case '"': out += "\\\""; break;
        case '\\': out += "\\\\"; break;
        case '\b': out += "\\b"; break;
        case '\f': out += "\\f"; break;
        case '\n': out += "\\n"; break;
        case '\r': out += "\\r"; break;
        case '\t': out += "\\t"; break;
        default:
            if (static_cast<unsigned char>(c) < 0x20) out += fmt::format("\\u{:04x}", static_cast<unsigned>(c));
            else out += c;
        }
    }
    out += '"';
}

void write(std::string& out, const Json& value)
{
    if (const auto* boolean = value.boolean()) {
        out += *boolean ? "true" : "false";
    } else if (const auto* integer = value.integer()) {
        assert(*integer <= integerLimit && *integer >= -integerLimit);
        out += std::to_string(*integer);
    } else if (const auto* text = value.string()) {
        writeString(out, *text);
    } else if (const auto* array = value.array()) {
        out += '[';
        for (const Json& each : *array) {
            if (&each != array->data()) out += ',';
            write(out, each);
        }
        out += ']';
    } else {
        out += '{';
        bool first = true;
        for (const auto& [key, member] : *value.object()) {
            if (!first) out += ',';
            first = false;
            writeString(out, key);
            out += ':';
            write(out, member);
        }
        out += '}';
    }
}

bool isAsciiKey(std::string_view key)
{
    return std::ranges::all_of(key, [](char c) { return c >= 0x20 && c < 0x7f; });
}

/// Whether the number, as typed, is a whole number within the limit: 0 or no leading zero, no -0, no point, no
/// exponent.
bool isPlainInteger(std::string_view number)
{
    std::int64_t value = 0;
    const auto [end, error] = std::from_chars(number.data(), number.data() + number.size(), value);
    return error == std::errc() && end == number.data() + number.size() && std::to_string(value) == number
        && value <= integerLimit && value >= -integerLimit;
}

/// The first number, as typed, that may not stand in a record; empty if there is none. simdjson reads -0 as 0 and says
/// nothing of what it found, so the text is searched, outside strings.
std::string_view badNumber(std::string_view text)
{
    for (std::size_t i = 0; i < text.size(); ++i) {
        if (text[i] == '"') {
            while (++i < text.size() && text[i] != '"')
                if (text[i] == '\\') ++i;
        } else if (text[i] == '-' || (text[i] >= '0' && text[i] <= '9')) {
            const std::size_t end = std::min(text.find_first_not_of("+-.0123456789eE", i), text.size());
            const std::string_view number = text.substr(i, end - i);
            if (!isPlainInteger(number)) return number;
            i = end - 1;
        }
    }
    return {};
}

std::unexpected<Error> numberFailure(std::string_view number)
{
    constexpr std::size_t shown = 40;
    return failure(
        "json.number", "",
        {{"found", number.size() <= shown ? std::string(number) : std::string(number.substr(0, shown)) + "…"}});
}

Result<Json> convert(const simdjson::dom::element& element)
{
    using simdjson::dom::element_type;
    switch (element.type()) {
    case element_type::BOOL: return Json(bool(element));
    case element_type::STRING: return Json(std::string_view(element));
    case element_type::INT64: return Json(std::int64_t(element));
    case element_type::UINT64: return numberFailure(std::to_string(std::uint64_t(element)));
    case element_type::DOUBLE: return numberFailure(fmt::format("{}", double(element)));
    case element_type::NULL_VALUE: return failure("json.null", "");
    case element_type::ARRAY: {
        Json::Array array;
        for (const auto& each : simdjson::dom::array(element)) {
            auto item = convert(each);
            if (!item) return item;
            array.push_back(std::move(*item));
        }
        return Json(std::move(array));
    }
    case element_type::OBJECT: break;
    }
    Json::Object object;
    for (const auto& [key, each] : simdjson::dom::object(element)) {
        if (!isAsciiKey(key)) return failure("json.key", "", {{"found", std::string(key)}});
        auto member = convert(each);
        if (!member) return member;
        if (!object.emplace(key, std::move(*member)).second)
            return failure("json.key-twice", "", {{"found", std::string(key)}});
    }
    return Json(std::move(object));
}

} // namespace

const Json* Json::find(std::string_view key) const
{
    const Object* members = object();
    if (members == nullptr) return nullptr;
    const auto found = members->find(key);
    return found == members->end() ? nullptr : &found->second;
}

std::string Json::text(std::string_view key) const
{
    const Json* member = find(key);
    const std::string* value = member == nullptr ? nullptr : member->string();
    return value == nullptr ? std::string() : *value;
}

Json& Json::operator[](std::string_view key)
{
    Object* members = object();
    assert(members != nullptr && isAsciiKey(key));
    return (*members)[std::string(key)];
}

std::string canonical(const Json& value)
{
    std::string out;
    write(out, value);
    return out;
}

Result<Json> parseJson(std::string_view text, const JsonBounds& bounds)
{
    if (text.starts_with("\xEF\xBB\xBF")) return failure("json.bom", "");
    if (text.size() > bounds.bytes)
        return failure("json.too-long", "", {{"bytes", static_cast<std::int64_t>(bounds.bytes)}});
    simdjson::dom::parser parser;
    if (const auto error = parser.allocate(std::max<std::size_t>(text.size(), 64), bounds.depth))
        return failure("json.syntax", "", {{"detail", simdjson::error_message(error)}});
    simdjson::dom::element root;
    const auto error = parser.parse(text.data(), text.size()).get(root);
    if (error == simdjson::DEPTH_ERROR) return failure("json.too-deep", "");
    if (!error || error == simdjson::NUMBER_ERROR)
        if (const auto number = badNumber(text); !number.empty()) return numberFailure(number);
    if (error) return failure("json.syntax", "", {{"detail", simdjson::error_message(error)}});
    return convert(root);
}

Result<Json> parseCanonical(std::string_view text, const JsonBounds& bounds)
{
    auto value = parseJson(text, bounds);
    if (value && canonical(*value) != text) return failure("json.not-canonical", "");
    return value;
}

} // namespace proofwalk::base
