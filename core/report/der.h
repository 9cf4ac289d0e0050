// SPDX-License-Identifier: GPL-3.0-or-later
// A reader of DER (X.690) that knows only its strict half: one-octet tags, definite lengths in their shortest form.
// What it reads it does not copy.
#pragma once

#include <optional>
#include <string_view>

namespace proofwalk::report {

/// One value: its tag, what is in it, and all of it with tag and length.
struct DerValue {
    unsigned char tag = 0;
    std::string_view content;
    std::string_view whole;
};

/// Values one after another.
class DerReader {
public:
    explicit DerReader(std::string_view bytes) : m_rest(bytes) {}

    /// The next value; nullopt if there is none, or none in DER. Then nothing is consumed.
    std::optional<DerValue> next();
    /// The next value if it has that tag; else nullopt, and nothing is consumed.
    std::optional<DerValue> next(unsigned char tag);
    /// Consumes exactly these bytes; false if others stand there.
    bool skip(std::string_view bytes);

    bool atEnd() const { return m_rest.empty(); }
    std::string_view rest() const { return m_rest; }

private:
    std::string_view m_rest;
};

} // namespace proofwalk::report
