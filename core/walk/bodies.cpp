// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/walk/bodies.h"

#include "core/base/digest.h"

#include <algorithm>
#include <array>
#include <limits>
#include <set>

namespace proofwalk::walk {
namespace {

using base::Json;

// One description of each body serves both ways: `describe(io, body)` names every member once, and is called with a
// Writer to make JSON and with a Reader to read it, so that the two cannot drift apart.

Json numberJson(const base::Decimal& number) { return Json::Object{{"m", number.mantissa}, {"e", number.exponent}}; }

Json stepJson(const StepKey& key) { return Json::Array{key.subject, key.signal, key.name}; }

/// Bounds as Decimal states them; what lies outside was not written by this format.
std::optional<base::Decimal> numberFrom(const Json& json, bool withUnit)
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

std::optional<StepKey> stepFrom(const Json& json)
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
        for (const auto& [path, hash] : values) array.push_back(Json::Array{path, hash});
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

template <class Io, class B>
void describe(Io& io, B& body)
{
    using Kind = std::remove_const_t<B>;
    if constexpr (std::is_same_v<Kind, StartBody>) {
        io.text("key", body.key);
        io.text("program", body.program);
        io.whole("judgement", body.judgement);
        io.text("plan", body.plan);
        io.listed("catalogue", body.catalogue);
        io.listed("tables", body.tables);
        io.listed("words", body.words);
    } else if constexpr (std::is_same_v<Kind, OpenBody>) {
        io.text("key", body.key);
        io.text("program", body.program);
    } else if constexpr (std::is_same_v<Kind, AnswerBody>) {
        io.step("step", body.step);
        io.word("result", body.outcome, outcomeFrom);
        io.word("how", body.how, howFrom);
        io.word("state", body.state, catalogue::stateFrom);
        io.quantity("reading", body.reading);
        io.number("uncertainty", body.uncertainty);
        io.maybeText("instrument", body.instrument);
        io.maybeWhole("hits", body.hits);
        io.maybeWhole("tries", body.tries);
        io.hidden("reason", body.reason);
        io.hidden("seen", body.seen);
    } else if constexpr (std::is_same_v<Kind, NoAccessBody>) {
        io.text("subject", body.subject);
        io.hidden("reason", body.reason);
    } else if constexpr (std::is_same_v<Kind, FindingBody>) {
        io.step("step", body.step);
        io.word("grade", body.grade, gradeFrom);
        io.hidden("words", body.words);
        io.maybeText("due", body.due);
    } else if constexpr (std::is_same_v<Kind, PhotographBody>) {
        io.step("step", body.step);
        io.hidden("photograph", body.photograph);
        io.hidden("words", body.words);
    } else if constexpr (std::is_same_v<Kind, RepairBody>) {
        io.steps("findings", body.findings);
        io.texts("touched", body.touched);
        io.steps("retest", body.retest);
        io.hidden("words", body.words);
    } else if constexpr (std::is_same_v<Kind, AcceptBody>) {
        io.steps("findings", body.findings);
        io.hidden("name", body.name);
        io.hidden("words", body.words);
    } else if constexpr (std::is_same_v<Kind, WithdrawBody>) {
        io.text("event", body.event);
        io.hidden("reason", body.reason);
    } else if constexpr (std::is_same_v<Kind, KitBody>) {
        io.text("name", body.name);
        io.measures("measures", body.measures);
        io.maybeText("calibrated", body.calibrated);
        io.hidden("serial", body.serial);
    } else if constexpr (std::is_same_v<Kind, ClockBody>) {
        io.text("of", body.of);
        io.whole("offset_ms", body.offset_ms);
        io.whole("uncertainty_ms", body.uncertainty_ms);
    } else if constexpr (std::is_same_v<Kind, StateBody>) {
        io.text("area", body.area);
        io.word("state", body.state, catalogue::stateFrom);
        io.maybeText("mode", body.mode);
    } else if constexpr (std::is_same_v<Kind, OnTestBody>) {
        io.text("account", body.account);
        io.hidden("told", body.told);
        io.hidden("reference", body.reference);
        io.maybeText("until", body.until);
    } else if constexpr (std::is_same_v<Kind, OffTestBody>) {
        io.text("account", body.account);
        io.hidden("told", body.told);
        io.hidden("reference", body.reference);
    } else if constexpr (std::is_same_v<Kind, AsFoundBody>) {
        io.hidden("words", body.words);
        io.hidden("display", body.display);
    } else if constexpr (std::is_same_v<Kind, TemporaryBody>) {
        io.text("name", body.name);
        io.maybeText("subject", body.subject);
        io.hidden("words", body.words);
    } else if constexpr (std::is_same_v<Kind, PutBackBody>) {
        io.text("event", body.event);
    } else if constexpr (std::is_same_v<Kind, ShownBody>) {
        io.text("topic", body.topic);
        io.hidden("words", body.words);
    } else if constexpr (std::is_same_v<Kind, NoteBody>) {
        io.maybeText("subject", body.subject);
        io.hidden("words", body.words);
    } else if constexpr (std::is_same_v<Kind, AcceptanceBody>) {
        io.hidden("name", body.name);
        io.hidden("words", body.words);
        io.hidden("ink", body.ink);
    } else if constexpr (std::is_same_v<Kind, VouchBody>) {
        io.text("key", body.key);
        io.text("certificate", body.certificate);
        io.text("root", body.root);
        io.text("signature", body.signature);
    } else {
        static_assert(std::is_same_v<Kind, HandedOverBody>);
        io.text("report", body.report);
        io.text("form", body.form);
    }
}

constexpr std::array<std::string_view, std::variant_size_v<Body>> kindWords{
    "start",    "open",  "answer", "no-access",  "finding", "photograph", "repair",   "accept",
    "withdraw", "kit",   "clock",  "state",      "on-test", "off-test",   "as-found", "temporary",
    "put-back", "shown", "note",   "acceptance", "vouch",   "handed-over"};

/// An empty body of the kind with that index.
template <std::size_t index = 0>
Body emptyBody(std::size_t wanted)
{
    if constexpr (index + 1 < std::variant_size_v<Body>) {
        if (wanted != index) return emptyBody<index + 1>(wanted);
    }
    return Body(std::in_place_index<index>);
}

std::optional<base::WallClock> clockFrom(const Json& json)
{
    auto time = base::parseTime(json.text("utc"));
    const Json* offset = json.find("offset_min");
    if (!time || time->offset_min != 0 || offset == nullptr || offset->integer() == nullptr) return {};
    if (*offset->integer() < -1439 || *offset->integer() > 1439) return {};
    time->offset_min = static_cast<int>(*offset->integer());
    return *time;
}

} // namespace

std::string_view kindOf(const Body& body) { return kindWords[body.index()]; }

base::Json toJson(const Body& body, const std::optional<base::WallClock>& observed)
{
    Writer writer;
    std::visit([&](const auto& each) { describe(writer, each); }, body);
    if (observed)
        writer.json["at"] =
            Json::Object{{"utc", base::toUtcText(observed->utc_ms)}, {"offset_min", observed->offset_min}};
    return std::move(writer.json);
}

Result<Body> bodyFrom(std::string_view kind, std::int64_t version, const base::Json& json)
{
    const auto found = std::ranges::find(kindWords, kind);
    if (found == kindWords.end() || version != 1)
        return failure("walk.kind-unknown", "", {{"found", std::string(kind)}, {"version", version}});
    Body body = emptyBody(static_cast<std::size_t>(found - kindWords.begin()));
    Reader reader(json);
    std::visit([&](auto& each) { describe(reader, each); }, body);
    if (const Json* at = reader.ask("at"); at != nullptr && !clockFrom(*at)) reader.wrong("at");
    if (std::string fault = reader.fault(); !fault.empty())
        return failure("walk.body", "", {{"kind", std::string(kind)}, {"member", std::move(fault)}});
    return body;
}

std::optional<base::WallClock> observedAt(const base::Json& body)
{
    const Json* at = body.find("at");
    return at == nullptr ? std::nullopt : clockFrom(*at);
}

} // namespace proofwalk::walk
