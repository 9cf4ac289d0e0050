// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/walk/bodies.h"

#include "core/walk/bodyio.h"

#include <algorithm>
#include <array>

namespace proofwalk::walk {
namespace {

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
