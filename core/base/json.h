// SPDX-License-Identifier: GPL-3.0-or-later
// JSON as the record uses it: integers, strings, booleans, arrays and objects with ASCII keys; no float, no null.
// Written in the canonical form of RFC 8785, read strictly and within bounds.
#pragma once

#include "core/base/result.h"

#include <cstdint>
#include <map>
#include <string>
#include <string_view>
#include <variant>
#include <vector>

namespace proofwalk::base {

/// A JSON value that cannot hold what the record forbids.
class Json {
public:
    using Array = std::vector<Json>;
    using Object = std::map<std::string, Json, std::less<>>; ///< ASCII keys: byte order is the RFC's order

    Json() : m_value(Object{}) {}
    Json(bool value) : m_value(value) {}
    Json(std::int64_t value) : m_value(value) {}
    Json(int value) : m_value(std::int64_t{value}) {}
    Json(std::string value) : m_value(std::move(value)) {}
    Json(std::string_view value) : m_value(std::string(value)) {}
    Json(const char* value) : m_value(std::string(value)) {}
    Json(Array value) : m_value(std::move(value)) {}
    Json(Object value) : m_value(std::move(value)) {}

    /// The value as that type, or nullptr if it is of another.
    const bool* boolean() const { return std::get_if<bool>(&m_value); }
    const std::int64_t* integer() const { return std::get_if<std::int64_t>(&m_value); }
    const std::string* string() const { return std::get_if<std::string>(&m_value); }
    const Array* array() const { return std::get_if<Array>(&m_value); }
    const Object* object() const { return std::get_if<Object>(&m_value); }
    Array* array() { return std::get_if<Array>(&m_value); }
    Object* object() { return std::get_if<Object>(&m_value); }

    /// The member with that key, or nullptr if this is no object or has none.
    const Json* find(std::string_view key) const;
    /// The string member with that key; empty if there is none (for optional words).
    std::string text(std::string_view key) const;
    /// Sets a member; this must be an object.
    Json& operator[](std::string_view key);

    friend bool operator==(const Json&, const Json&) = default;

private:
    std::variant<bool, std::int64_t, std::string, Array, Object> m_value;
};

/// RFC 8785: no white space, keys in order, the least escaping. Integers must lie within +-(2^53-1) and strings be
/// UTF-8; both hold for everything parseJson returns, and are assertions for what we make ourselves.
std::string canonical(const Json& value);

/// Bounds on what is read from elsewhere.
struct JsonBounds {
    std::size_t bytes = 1U << 20U;
    std::size_t depth = 32;
};

/// Reads one JSON text. Refused: floats and exponents, null, keys that are not printable ASCII or occur twice,
/// integers beyond +-(2^53-1), -0, a byte order mark, bad UTF-8, anything after the value, more than the bounds.
/// Errors: json.syntax {detail}; json.number {found}; json.null; json.key {found}; json.key-twice {found};
/// json.too-deep; json.too-long; json.bom.
Result<Json> parseJson(std::string_view text, const JsonBounds& bounds = {});

/// As parseJson, and the text must be its own canonical form, byte for byte. Error besides: json.not-canonical.
Result<Json> parseCanonical(std::string_view text, const JsonBounds& bounds = {});

} // namespace proofwalk::base
