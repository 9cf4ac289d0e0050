// SPDX-License-Identifier: GPL-3.0-or-later
// How members of bodies become JSON and are read from it. For bodies.cpp alone.
#pragma once

#include "core/walk/bodies.h"

#include "core/base/digest.h"

#include <algorithm>
#include <array>
#include <limits>
#include <set>

namespace proofwalk::walk {

using base::Json;

// One description of each body serves both ways: `describe(io, body)` names every member once, and is called with a
// Writer to make JSON and with a Reader to read it, so that the two cannot drift apart.

inline Json numberJson(const base::Decimal& number)
{
    return Json::Object{{"m", number.mantissa}, {"e", number.exponent}};
}

inline Json stepJson(const StepKey& key) { return Json::Array{key.subject, key.signal, key.name}; }

/// Bounds as Decimal states them; what lies outside was not written by this format.
inline std::optional<base::Decimal> numberFrom(const Json& json, bool withUnit)
{
    const Json* mantissa = json.find("m");
    const Json* exponent = json.find("e");
    if (mantissa == nullptr || exponent == nullptr || json.object()->size() != (withUnit ? 3U : 2U)) return {};
    const std::int64_t* m = mantissa->integer();
    const std::int64_t* e = exponent->integer();
    constexpr std::int64_t limit = 1'000'000'000'000'000;
    if (m == nullptr || e == nullptr || *m <= -limit || *m >= limit || *e < -9 || *e > 9) return {};
    return base::Decimal{*m, static_cast<int>(*e)};
}

inline std::optional<StepKey> stepFrom(const Json& json)
{
    const Json::Array* parts = json.array();
    if (parts == nullptr || parts->size() != 3) return {};
    std::array<std::string, 3> words;
    for (std::size_t i = 0; i < 3; ++i) {
        const std::string* word = (*parts)[i].string();
        if (word == nullptr || word->empty()) return {};
        words[i] = *word;
    }
    return StepKey{words[0], words[1], words[2]};
}

class Writer {
public:
    Json json;

    void text(const char* name, const std::string& value) { json[name] = value; }
    void maybeText(const char* name, const std::string& value)
    {
        if (!value.empty()) json[name] = value;
    }
    void whole(const char* name, std::int64_t value) { json[name] = value; }
    void maybeWhole(const char* name, const std::optional<std::int64_t>& value)
    {
        if (value) json[name] = *value;
    }
    void hidden(const char* name, const PrivateRef& value)
    {
        if (value.there()) json[name] = Json::Object{{"private", value.commitment}};
    }
    void step(const char* name, const StepKey& value) { json[name] = stepJson(value); }
    void steps(const char* name, const std::vector<StepKey>& values)
    {
        Json::Array array;
        for (const StepKey& value : values) array.push_back(stepJson(value));
        json[name] = std::move(array);
    }
    void texts(const char* name, const std::vector<std::string>& values)
    {
        json[name] = Json::Array(values.begin(), values.end());
    }
    void listed(const char* name, const StartBody::Listed& values)
    {
        Json::Array array;
        for (const auto& [path, hash] : values) array.emplace_back(Json::Array{path, hash});
        json[name] = std::move(array);
    }
    template <class Enum, class From>
    void word(const char* name, const Enum& value, From)
    {
        json[name] = wordOf(value);
    }
    void number(const char* name, const std::optional<base::Decimal>& value)
    {
        if (value) json[name] = numberJson(*value);
    }
    void quantity(const char* name, const std::optional<base::Quantity>& value)
    {
        if (!value) return;
        Json number = numberJson(value->value);
        number["unit"] = value->unit->code;
        json[name] = std::move(number);
    }
    void measures(const char* name, const std::vector<Measure>& values)
    {
        Json::Array array;
        for (const Measure& value : values) {
            Writer each;
            each.text("quantity", value.quantity);
            each.number("percent", value.accuracy.percentOfReading);
            each.whole("digits", value.accuracy.digits);
            each.quantity("fixed", value.accuracy.fixed);
            array.push_back(std::move(each.json));
        }
        json[name] = std::move(array);
    }
};

/// Reads members, remembering which were asked for and the first that was wrong.
class Reader {
public:
    explicit Reader(const Json& json) : m_json(json) {}

    void text(const char* name, std::string& value)
    {
        maybeText(name, value);
        if (value.empty()) wrong(name);
    }
    void maybeText(const char* name, std::string& value)
    {
        const Json* member = ask(name);
        if (member == nullptr) return;
        if (const std::string* found = member->string()) value = *found;
        else wrong(name);
    }
    void whole(const char* name, std::int64_t& value)
    {
        std::optional<std::int64_t> found;
        maybeWhole(name, found);
        if (found) value = *found;
        else wrong(name);
    }
    void maybeWhole(const char* name, std::optional<std::int64_t>& value)
    {
        const Json* member = ask(name);
        if (member == nullptr) return;
        if (const std::int64_t* found = member->integer()) value = *found;
        else wrong(name);
    }
    void hidden(const char* name, PrivateRef& value)
    {
        const Json* member = ask(name);
        if (member == nullptr) return;
        value.commitment = member->text("private");
        if (!base::isLowerHex(value.commitment, 64)) wrong(name);
    }
    void step(const char* name, StepKey& value)
    {
        const Json* member = ask(name);
        const auto found = member == nullptr ? std::nullopt : stepFrom(*member);
        if (found) value = *found;
        else wrong(name);
    }
    void steps(const char* name, std::vector<StepKey>& values)
    {
        each(name, [&](const Json& item) {
            auto found = stepFrom(item);
            if (found) values.push_back(std::move(*found));
            return found.has_value();
        });
    }
    void texts(const char* name, std::vector<std::string>& values)
    {
        each(name, [&](const Json& item) {
            if (item.string() != nullptr) values.push_back(*item.string());
            return item.string() != nullptr;
        });
    }
    void listed(const char* name, StartBody::Listed& values)
    {
        each(name, [&](const Json& item) {
            const Json::Array* pair = item.array();
            if (pair == nullptr || pair->size() != 2) return false;
            const std::string* path = (*pair)[0].string();
            const std::string* hash = (*pair)[1].string();
            if (path == nullptr || hash == nullptr) return false;
            values.emplace_back(*path, *hash);
            return true;
        });
    }
    template <class Enum, class From>
    void word(const char* name, Enum& value, From from)
    {
        std::string found;
        text(name, found);
        if (const std::optional<Enum> known = from(found)) value = *known;
        else wrong(name);
    }
    void number(const char* name, std::optional<base::Decimal>& value)
    {
        const Json* member = ask(name);
        if (member == nullptr) return;
        value = numberFrom(*member, false);
        if (!value) wrong(name);
    }
    void quantity(const char* name, std::optional<base::Quantity>& value)
    {
        const Json* member = ask(name);
        if (member == nullptr) return;
        const auto number = numberFrom(*member, true);
        const base::Unit* unit = base::findUnit(member->text("unit"));
        if (number && unit != nullptr) value = base::Quantity{*number, unit};
        else wrong(name);
    }
    void measures(const char* name, std::vector<Measure>& values)
    {
        each(name, [&](const Json& item) {
            Reader reader(item);
            Measure value;
            std::optional<base::Decimal> percent;
            std::int64_t digits = -1;
            reader.text("quantity", value.quantity);
            reader.number("percent", percent);
            reader.whole("digits", digits);
            reader.quantity("fixed", value.accuracy.fixed);
            if (!percent || digits < 0 || digits > std::numeric_limits<int>::max() || !reader.fault().empty())
                return false;
            value.accuracy.percentOfReading = *percent;
            value.accuracy.digits = static_cast<int>(digits);
            values.push_back(std::move(value));
            return true;
        });
    }

    /// The first member that is missing, malformed or unknown; empty if all is well.
    std::string fault() const
    {
        if (!m_wrong.empty()) return m_wrong;
        if (m_json.object() == nullptr) return "body";
        for (const auto& [name, member] : *m_json.object())
            if (!m_asked.contains(name)) return name;
        return {};
    }

    const Json* ask(const char* name)
    {
        m_asked.insert(name);
        return m_json.find(name);
    }
    void wrong(const char* name)
    {
        if (m_wrong.empty()) m_wrong = name;
    }

private:
    template <class Take>
    void each(const char* name, Take take)
    {
        const Json* member = ask(name);
        const Json::Array* array = member == nullptr ? nullptr : member->array();
        if (array == nullptr || !std::ranges::all_of(*array, take)) wrong(name);
    }

    const Json& m_json;
    std::set<std::string, std::less<>> m_asked;
    std::string m_wrong;
};

} // namespace proofwalk::walk
