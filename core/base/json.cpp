// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/base/json.h"

#include "core/base/text.h"

#include <fmt/format.h>
#include <simdjson.h>

#include <algorithm>
#include <cassert>

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
            if (static_cast<unsigned char>(c) < 0x20)
                out += fmt::format("\\u{:04x}", static_cast<unsigned>(c));
            else
                out += c;
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

Result<Json> convert(const simdjson::dom::element& element)
{
    using simdjson::dom::element_type;
    switch (element.type()) {
    case element_type::BOOL: return Json(bool(element));
    case element_type::STRING: return Json(std::string_view(element));
    case element_type::INT64: {
        const std::int64_t number = element;
        if (number > integerLimit || number < -integerLimit)
            return failure("json.number", "", {{"found", std::to_string(number)}});
        return Json(number);
    }
    case element_type::UINT64: return failure("json.number", "", {{"found", std::to_string(std::uint64_t(element))}});
    case element_type::DOUBLE: return failure("json.number", "", {{"found", fmt::format("{}", double(element))}});
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

/// simdjson reads "-0" as the integer 0: look for it outside strings.
bool hasMinusZero(std::string_view text)
{
    bool inString = false;
    for (std::size_t i = 0; i < text.size(); ++i) {
        if (inString && text[i] == '\\') ++i;
        else if (text[i] == '"') inString = !inString;
        else if (!inString && text[i] == '-' && i + 1 < text.size() && text[i + 1] == '0') return true;
    }
    return false;
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
    if (error) return failure("json.syntax", "", {{"detail", simdjson::error_message(error)}});
    if (hasMinusZero(text)) return failure("json.number", "", {{"found", "-0"}});
    return convert(root);
}

Result<Json> parseCanonical(std::string_view text, const JsonBounds& bounds)
{
    auto value = parseJson(text, bounds);
    if (value && canonical(*value) != text) return failure("json.not-canonical", "");
    return value;
}

} // namespace proofwalk::base
