// SPDX-License-Identifier: GPL-3.0-or-later
// The commands around the testing itself: how it was found, what is on test, what is temporary, the kit, the customer.
#include "core/walk/drafting.h"

#include "core/base/text.h"

#include <algorithm>
#include <set>

namespace proofwalk::walk {
namespace {

Result<std::string> accountOf(const State& state, Line& line)
{
    auto account = line.text("account");
    if (!account) return account;
    std::vector<std::string> known;
    for (const plan::Area& area : state.scope->plan->areas) known.push_back(area.account);
    if (std::ranges::find(known, *account) != known.end()) return account;
    return failure("walk.account-unknown", "", {{"found", *account}, {"nearest", base::nearestWord(*account, known)}});
}

Result<base::Decimal> decimalOf(Line& line, const char* name)
{
    auto text = line.maybeText(name);
    if (!text) return passOn(text);
    if (text->empty()) return base::Decimal{};
    auto number = base::parseDecimal(*text);
    if (!number) return passOn(number);
    return *number;
}

Result<Measure> measureFrom(Line& line)
{
    Measure measure;
    auto quantity = line.text("quantity");
    auto percent = decimalOf(line, "percent");
    auto digits = line.maybeWhole("digits");
    auto fixed = line.maybeText("fixed");
    if (!quantity) return passOn(quantity);
    if (!percent) return passOn(percent);
    if (!digits) return passOn(digits);
    if (!fixed) return passOn(fixed);
    std::set<std::string> known;
    for (const base::Unit& unit : base::units()) known.emplace(unit.quantity);
    if (!known.contains(*quantity)) {
        const std::vector<std::string> words(known.begin(), known.end());
        return failure("walk.quantity-unknown", "",
                       {{"found", *quantity}, {"nearest", base::nearestWord(*quantity, words)}});
    }
    measure.quantity = *quantity;
    measure.accuracy.percentOfReading = *percent;
    const std::int64_t counts = digits->value_or(0);
    if (counts < 0 || counts > 10'000)
        return failure("command.value", "",
                       {{"key", "digits"}, {"found", std::to_string(counts)}, {"wanted", "0 to 10000"}});
    measure.accuracy.digits = static_cast<int>(counts);
    if (!fixed->empty()) {
        auto value = base::parseQuantity(*fixed);
        if (!value) return passOn(value);
        if (value->unit->quantity != *quantity)
            return failure("walk.unit-mismatch", "fixed",
                           {{"found", std::string(value->unit->code)}, {"wanted", *quantity}});
        measure.accuracy.fixed = *value;
    }
    if (auto finished = line.finish(); !finished) return passOn(finished);
    return measure;
}

Result<std::int64_t> wholeOf(Line& line, const char* name)
{
    auto value = line.maybeWhole(name);
    if (!value) return passOn(value);
    if (!*value) return failure("command.key-missing", "", {{"wanted", name}});
    return **value;
}

/// A body whose members are words only, each private.
template <class B>
Drafts wordsOnly(Line& line, B body, PrivateRef B::* words, bool required)
{
    Sealing sealing;
    auto sealed = sealing.seal(line, "words", required);
    if (!sealed) return passOn(sealed);
    body.*words = *sealed;
    return sealing.draft(line, body);
}

/// Strokes of [x, y] in thousandths of the box, as the customer drew them.
Result<std::string> inkOf(Line& line)
{
    const base::Json* ink = line.raw("ink");
    if (ink == nullptr) return failure("command.key-missing", "", {{"wanted", "ink"}});
    const auto bad = [&] {
        return failure("command.value", "",
                       {{"key", "ink"},
                        {"found", base::canonical(*ink).substr(0, 60)},
                        {"wanted", "strokes of [x, y], 0 to 1000"}});
    };
    if (ink->array() == nullptr || ink->array()->empty()) return bad();
    for (const base::Json& stroke : *ink->array()) {
        if (stroke.array() == nullptr || stroke.array()->empty()) return bad();
        for (const base::Json& point : *stroke.array()) {
            if (point.array() == nullptr || point.array()->size() != 2) return bad();
            for (const base::Json& value : *point.array())
                if (value.integer() == nullptr || *value.integer() < 0 || *value.integer() > 1000) return bad();
        }
    }
    return base::canonical(*ink);
}

} // namespace

Drafts asFoundCommand(const CommandGround&, Line& line)
{
    Sealing sealing;
    auto words = sealing.seal(line, "words", true);
    auto display = sealing.seal(line, "display");
    if (!words) return passOn(words);
    if (!display) return passOn(display);
    return sealing.draft(line, AsFoundBody{*words, *display});
}

Drafts kitCommand(const CommandGround&, Line& line)
{
    Sealing sealing;
    KitBody kit;
    auto name = line.text("name");
    auto calibrated = line.maybeText("calibrated");
    auto serial = sealing.seal(line, "serial");
    auto measures = line.lines("measures");
    if (!name) return passOn(name);
    if (!calibrated) return passOn(calibrated);
    if (!serial) return passOn(serial);
    if (!measures) return passOn(measures);
    if (!calibrated->empty() && !base::parseTime(*calibrated + "T00:00:00Z"))
        return failure("command.value", "",
                       {{"key", "calibrated"}, {"found", *calibrated}, {"wanted", "a day as 2026-03-02"}});
    for (Line& each : *measures) {
        auto measure = measureFrom(each);
        if (!measure) return passOn(measure);
        kit.measures.push_back(std::move(*measure));
    }
    kit.name = *name;
    kit.calibrated = *calibrated;
    kit.serial = *serial;
    return sealing.draft(line, kit);
}

Drafts clockCommand(const CommandGround&, Line& line)
{
    Sealing sealing;
    auto of = line.text("of");
    auto offset = wholeOf(line, "offset_ms");
    auto uncertainty = wholeOf(line, "uncertainty_ms");
    if (!of) return passOn(of);
    if (!offset) return passOn(offset);
    if (!uncertainty) return passOn(uncertainty);
    if ((*of != "panel" && *of != "station") || *uncertainty < 0)
        return failure("command.value", "", {{"key", "of"}, {"found", *of}, {"wanted", "panel or station"}});
    return sealing.draft(line, ClockBody{*of, *offset, *uncertainty});
}

Drafts stateCommand(const CommandGround& ground, Line& line)
{
    Sealing sealing;
    auto area = subjectOf(*ground.state.scope, line);
    auto word = line.text("state");
    auto modeName = line.maybeText("mode");
    if (!area) return passOn(area);
    if (!word) return passOn(word);
    if (!modeName) return passOn(modeName);
    const plan::Plan& plan = *ground.state.scope->plan;
    if (std::ranges::find(plan.areas, *area, &plan::Area::id) == plan.areas.end())
        return failure("command.key-missing", "", {{"wanted", "area"}});
    const auto state = catalogue::stateFrom(*word);
    if (!state)
        return failure("command.value", "",
                       {{"key", "state"}, {"found", *word}, {"wanted", "unpowered, unset, walk-test or set"}});
    StateBody body{*area, *state, ""};
    if (!modeName->empty()) {
        const auto mode = std::ranges::find(plan.modes, *modeName, &plan::Mode::mode);
        if (mode == plan.modes.end()) return failure("walk.mode-unknown", "", {{"found", *modeName}});
        body.mode = mode->id;
    }
    return sealing.draft(line, body);
}

Drafts onTestCommand(const CommandGround& ground, Line& line)
{
    Sealing sealing;
    auto account = accountOf(ground.state, line);
    auto until = line.maybeText("until");
    auto told = sealing.seal(line, "told", true);
    auto reference = sealing.seal(line, "reference");
    if (!account) return passOn(account);
    if (!until) return passOn(until);
    if (!told) return passOn(told);
    if (!reference) return passOn(reference);
    if (!until->empty())
        if (auto time = base::parseTime(*until); !time) return passOn(time);
    return sealing.draft(line, OnTestBody{*account, *told, *reference, *until});
}

Drafts offTestCommand(const CommandGround& ground, Line& line)
{
    Sealing sealing;
    auto account = accountOf(ground.state, line);
    auto told = sealing.seal(line, "told", true);
    auto reference = sealing.seal(line, "reference");
    if (!account) return passOn(account);
    if (!told) return passOn(told);
    if (!reference) return passOn(reference);
    return sealing.draft(line, OffTestBody{*account, *told, *reference});
}

Drafts temporaryCommand(const CommandGround& ground, Line& line)
{
    TemporaryBody body;
    auto name = line.text("name");
    if (!name) return passOn(name);
    body.name = *name;
    if (line.has("device") || line.has("zone") || line.has("area")) {
        auto subject = subjectOf(*ground.state.scope, line);
        if (!subject) return passOn(subject);
        body.subject = *subject;
    }
    return wordsOnly(line, body, &TemporaryBody::words, false);
}

Drafts putBackCommand(const CommandGround& ground, Line& line)
{
    Sealing sealing;
    auto name = line.text("name");
    if (!name) return passOn(name);
    std::set<std::string> back;
    for (const auto& told : ground.state.putBacks)
        if (ground.state.stands(told.fact)) back.insert(told.body.event);
    std::vector<std::string> waiting;
    for (const auto& told : ground.state.temporaries) {
        if (!ground.state.stands(told.fact) || back.contains(told.fact.event)) continue;
        if (told.body.name == *name) return sealing.draft(line, PutBackBody{told.fact.event});
        waiting.push_back(told.body.name);
    }
    return failure("walk.not-temporary", "", {{"found", *name}, {"nearest", base::nearestWord(*name, waiting)}});
}

Drafts shownCommand(const CommandGround&, Line& line)
{
    auto topic = line.text("topic");
    if (!topic) return passOn(topic);
    return wordsOnly(line, ShownBody{*topic, {}}, &ShownBody::words, false);
}

Drafts noteCommand(const CommandGround& ground, Line& line)
{
    NoteBody body;
    if (line.has("device") || line.has("zone") || line.has("area")) {
        auto subject = subjectOf(*ground.state.scope, line);
        if (!subject) return passOn(subject);
        body.subject = *subject;
    }
    return wordsOnly(line, body, &NoteBody::words, true);
}

Drafts acceptanceCommand(const CommandGround&, Line& line)
{
    Sealing sealing;
    auto name = sealing.seal(line, "name", true);
    auto words = sealing.seal(line, "words", true);
    auto ink = inkOf(line);
    if (!name) return passOn(name);
    if (!words) return passOn(words);
    if (!ink) return passOn(ink);
    return sealing.draft(line, AcceptanceBody{*name, *words, sealing.seal(*ink)});
}

} // namespace proofwalk::walk
