// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/journal/event.h"

#include "core/base/digest.h"

#include <algorithm>
#include <array>
#include <optional>

namespace proofwalk::journal {
namespace {

using base::Json;

constexpr std::array<std::string_view, 12> members{"alg",        "body", "chain", "job",   "kind", "n",
                                                   "offset_min", "prev", "seen",  "stamp", "utc",  "v"};
constexpr std::int64_t integerLimit = 9'007'199'254'740'991; // 2^53-1, as in core/base/json

Json seenMember(const std::vector<Head>& seen)
{
    Json::Array heads;
    for (const Head& head : seen) heads.emplace_back(Json::Array{head.chain, head.n, head.hash});
    return heads;
}

std::unexpected<Error> badValue(std::string_view member, const Json& found)
{
    return failure("event.value", "", {{"member", std::string(member)}, {"found", base::canonical(found)}});
}

/// Reads typed members out of an object and keeps the first thing that was wrong.
class Members {
public:
    explicit Members(const Json& object) : m_object(object) {}

    std::string hex(std::string_view key, std::size_t digits)
    {
        return textWhere(key, [&](const std::string& text) { return base::isLowerHex(text, digits); });
    }

    template <class Good>
    std::string textWhere(std::string_view key, Good good)
    {
        const Json* member = m_object.find(key);
        const std::string* text = member->string();
        if (text != nullptr && good(*text)) return *text;
        reject(key, *member);
        return {};
    }

    std::int64_t integer(std::string_view key, std::int64_t least, std::int64_t most)
    {
        const Json* member = m_object.find(key);
        const std::int64_t* number = member->integer();
        if (number != nullptr && *number >= least && *number <= most) return *number;
        reject(key, *member);
        return 0;
    }

    void reject(std::string_view key, const Json& found)
    {
        if (!m_problem) m_problem = badValue(key, found).error();
    }

    const std::optional<Error>& problem() const { return m_problem; }

private:
    const Json& m_object;
    std::optional<Error> m_problem;
};

bool isKind(const std::string& text)
{
    const auto letter = [](char c) { return c >= 'a' && c <= 'z'; };
    return !text.empty() && text.size() <= 40 && letter(text.front())
        && std::ranges::all_of(text, [&](char c) { return letter(c) || (c >= '0' && c <= '9') || c == '-'; });
}

bool isUtcText(const std::string& text)
{
    const auto time = base::parseTime(text);
    return time && base::toUtcText(time->utc_ms) == text;
}

/// [chain, n, hash]; nothing if it is anything else.
std::optional<Head> readHead(const Json& value)
{
    const Json::Array* parts = value.array();
    if (parts == nullptr || parts->size() != 3) return {};
    const auto *chain = (*parts)[0].string(), *hash = (*parts)[2].string();
    const auto* n = (*parts)[1].integer();
    if (chain == nullptr || n == nullptr || hash == nullptr) return {};
    if (!base::isLowerHex(*chain, 32) || *n < 1 || !base::isLowerHex(*hash, 64)) return {};
    return Head{*chain, *n, *hash};
}

/// Heads of other chains, sorted by chain, each chain once.
bool readSeen(const Json& value, const std::string& ownChain, std::vector<Head>& seen)
{
    const Json::Array* heads = value.array();
    if (heads == nullptr) return false;
    for (const Json& each : *heads) {
        auto head = readHead(each);
        if (!head || head->chain == ownChain) return false;
        if (!seen.empty() && seen.back().chain >= head->chain) return false;
        seen.push_back(std::move(*head));
    }
    return true;
}

bool readStamp(const Json& value, Stamp& stamp)
{
    const Json::Array* parts = value.array();
    if (parts == nullptr || parts->size() != 2) return false;
    const auto *ms = (*parts)[0].integer(), *count = (*parts)[1].integer();
    if (ms == nullptr || count == nullptr || *ms < 0 || *count < 0) return false;
    stamp = {*ms, *count};
    return true;
}

/// That the object has the members of an event, all of them and no other.
std::optional<Error> checkMembers(const Json& object)
{
    for (const auto& [key, value] : *object.object())
        if (!std::ranges::binary_search(members, key)) return Error{"event.member", "", {{"found", key}}};
    for (const std::string_view wanted : members)
        if (object.find(wanted) == nullptr) return Error{"event.missing", "", {{"wanted", std::string(wanted)}}};
    return {};
}

} // namespace

std::string canonicalText(const Event& event)
{
    return base::canonical(Json::Object{{"alg", event.alg},
                                        {"body", event.body},
                                        {"chain", event.chain},
                                        {"job", event.job},
                                        {"kind", event.kind},
                                        {"n", event.n},
                                        {"offset_min", event.at.offset_min},
                                        {"prev", event.prev},
                                        {"seen", seenMember(event.seen)},
                                        {"stamp", Json::Array{event.stamp.ms, event.stamp.count}},
                                        {"utc", base::toUtcText(event.at.utc_ms)},
                                        {"v", event.v}});
}

Result<Event> readEvent(std::string_view text)
{
    auto json = base::parseCanonical(text);
    if (!json) return passOn(json);
    if (json->object() == nullptr) return failure("event.value", "", {{"member", "event"}, {"found", "no object"}});
    // Another algorithm may come with other members: say which one it is before finding fault with those.
    if (json->find("alg") != nullptr && json->text("alg") != "sha256")
        return failure("event.alg", "", {{"found", base::canonical(*json->find("alg"))}});
    if (auto wrong = checkMembers(*json)) return std::unexpected(std::move(*wrong));

    Event event;
    Members read(*json);
    event.v = read.integer("v", 1, integerLimit);
    event.job = read.hex("job", 32);
    event.chain = read.hex("chain", 32);
    event.n = read.integer("n", 1, integerLimit);
    event.prev = event.n == 1 ? read.hex("prev", 0) : read.hex("prev", 64);
    event.kind = read.textWhere("kind", isKind);
    event.at.offset_min = static_cast<int>(read.integer("offset_min", -1439, 1439));
    if (const auto utc = base::parseTime(read.textWhere("utc", isUtcText))) event.at.utc_ms = utc->utc_ms;
    if (!readSeen(*json->find("seen"), event.chain, event.seen)) read.reject("seen", *json->find("seen"));
    if (!readStamp(*json->find("stamp"), event.stamp)) read.reject("stamp", *json->find("stamp"));
    event.body = *json->find("body");
    if (event.body.object() == nullptr) read.reject("body", event.body);
    if (read.problem()) return std::unexpected(*read.problem());

    event.hash = base::sha256Hex(text);
    return event;
}

} // namespace proofwalk::journal
