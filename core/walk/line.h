// SPDX-License-Identifier: GPL-3.0-or-later
// One command as it was given: a JSON object whose members are asked for one by one, so that a member nobody asked
// for is a mistake that gets told.
#pragma once

#include "core/base/instant.h"
#include "core/base/json.h"

#include <optional>
#include <set>
#include <string>
#include <string_view>
#include <vector>

namespace proofwalk::walk {

class Line {
public:
    /// Errors: json.*; command.not-object.
    static Result<Line> read(std::string_view text);
    /// An object within a line ({"device":…,"step":…} in a list).
    explicit Line(base::Json json) : m_json(std::move(json)) {}

    bool has(const char* name);
    /// Errors: command.key-missing {wanted}; command.value {key, found, wanted}.
    Result<std::string> text(const char* name);
    /// Empty if it is not there; there but not a text, or empty, is an error.
    Result<std::string> maybeText(const char* name);
    Result<std::optional<std::int64_t>> maybeWhole(const char* name);
    Result<std::vector<std::string>> texts(const char* name);
    Result<std::vector<Line>> lines(const char* name);
    /// The member as it is, or nullptr.
    const base::Json* raw(const char* name);
    /// The member `at`, RFC 3339.
    Result<std::optional<base::WallClock>> at();

    /// To be called last. Error: command.key-unknown {found, nearest}.
    Result<void> finish() const;

private:
    base::Json m_json;
    std::set<std::string> m_asked;
};

} // namespace proofwalk::walk
