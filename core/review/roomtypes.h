// SPDX-License-Identifier: GPL-3.0-or-later
// Which sort of room a name in a plan speaks of: core/catalogue/rooms.toml, the only place where words of a plan are
// looked at for what they mean.
#pragma once

#include "core/base/result.h"

#include <map>
#include <string>
#include <string_view>
#include <vector>

namespace proofwalk::review {

class RoomTypes {
public:
    /// Reads a list: a table for each type with words = [...]. Errors, with `where` = "NAME:LINE" or NAME:
    /// review.rooms-syntax {detail}; review.rooms-value {found} (a type without a list of words).
    static Result<RoomTypes> read(std::string_view text, const std::string& name);

    /// The types whose words stand in the room's name as whole words, capitals or not: "Van garage" is a garage,
    /// "garaged" is not.
    std::vector<std::string> typesOf(std::string_view room) const;

private:
    std::map<std::string, std::vector<std::string>> m_words;
};

} // namespace proofwalk::review
