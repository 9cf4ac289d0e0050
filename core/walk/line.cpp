// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/walk/line.h"

#include "core/base/text.h"

#include <algorithm>

namespace proofwalk::walk {
namespace {

std::unexpected<Error> badValue(const char* key, const base::Json& found, const char* wanted)
{
    return failure("command.value", "", {{"key", key}, {"found", base::canonical(found)}, {"wanted", wanted}});
}

} // namespace

Result<Line> Line::read(std::string_view text)
{
    auto json = base::parseJson(text);
    if (!json) return passOn(json);
    if (json->object() == nullptr) return failure("command.not-object", "");
    return Line(std::move(*json));
}

const base::Json* Line::raw(const char* name)
{
    m_asked.insert(name);
    return m_json.find(name);
}

bool Line::has(const char* name) { return raw(name) != nullptr; }

Result<std::string> Line::text(const char* name)
{
    if (!has(name)) return failure("command.key-missing", "", {{"wanted", name}});
    return maybeText(name);
}

Result<std::string> Line::maybeText(const char* name)
{
    const base::Json* member = raw(name);
    if (member == nullptr) return std::string();
    if (member->string() == nullptr || member->string()->empty()) return badValue(name, *member, "a text");
    return *member->string();
}

Result<std::optional<std::int64_t>> Line::maybeWhole(const char* name)
{
    const base::Json* member = raw(name);
    if (member == nullptr) return std::optional<std::int64_t>{};
    if (member->integer() == nullptr) return badValue(name, *member, "a whole number");
    return std::optional(*member->integer());
}

Result<std::vector<std::string>> Line::texts(const char* name)
{
    const base::Json* member = raw(name);
    if (member == nullptr) return failure("command.key-missing", "", {{"wanted", name}});
    std::vector<std::string> values;
    if (member->array() != nullptr)
        for (const base::Json& each : *member->array())
            if (each.string() != nullptr) values.push_back(*each.string());
    if (values.empty() || values.size() != member->array()->size()) return badValue(name, *member, "a list of texts");
    return values;
}

Result<std::vector<Line>> Line::lines(const char* name)
{
    const base::Json* member = raw(name);
    if (member == nullptr) return failure("command.key-missing", "", {{"wanted", name}});
    std::vector<Line> values;
    if (member->array() != nullptr)
        for (const base::Json& each : *member->array())
            if (each.object() != nullptr) values.emplace_back(each);
    if (values.empty() || values.size() != member->array()->size()) return badValue(name, *member, "a list of objects");
    return values;
}

Result<std::optional<base::WallClock>> Line::at()
{
    auto given = maybeText("at");
    if (!given) return passOn(given);
    if (given->empty()) return std::optional<base::WallClock>{};
    auto time = base::parseTime(*given);
    if (!time) return passOn(time);
    return std::optional(*time);
}

Result<void> Line::finish() const
{
    const std::vector<std::string> known(m_asked.begin(), m_asked.end());
    for (const auto& [name, member] : *m_json.object())
        if (!m_asked.contains(name))
            return failure("command.key-unknown", "", {{"found", name}, {"nearest", base::nearestWord(name, known)}});
    return {};
}

} // namespace proofwalk::walk
