// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/catalogue/figure.h"

#include "core/base/text.h"
#include "core/base/unit.h"
#include "core/catalogue/vocabulary.h"

namespace proofwalk::catalogue {
namespace {

std::optional<base::Decimal> readDecimal(const Keys& keys, std::string_view key)
{
    if (!keys.has(key)) return std::nullopt;
    const std::string text = keys.text(key);
    if (text.empty()) return std::nullopt;
    auto value = base::parseDecimal(text);
    if (value) return *value;
    keys.refuse(key, value.error().code, value.error().arguments);
    return std::nullopt;
}

} // namespace

Source readSource(const Keys& keys)
{
    const Node* node = keys.find("source");
    if (node == nullptr) {
        keys.refuse("source", "catalogue.key-missing", {{"wanted", "source"}});
        return {};
    }
    const Keys table(*node, keys.reading(), {"standard", "edition", "clause", "clause-basis", "basis", "note"});
    Source source;
    source.basis = table.word("basis", basisWords());
    source.standard = table.optionalText("standard");
    source.edition = table.optionalText("edition");
    source.clause = table.optionalText("clause");
    source.clauseBasis = table.word("clause-basis", clauseBasisWords(), "");
    source.note = table.optionalText("note");
    if (source.basis == "read" && source.standard.empty())
        keys.refuse("source", "catalogue.source", {{"found", "read"}, {"wanted", "standard"}});
    if (source.clause.empty() != source.clauseBasis.empty())
        keys.refuse("source", "catalogue.source",
                    {{"found", source.clause.empty() ? "clause-basis" : "clause"},
                     {"wanted", source.clause.empty() ? "clause" : "clause-basis"}});
    return source;
}

Limit readLimit(const Keys& keys, std::string quantity, std::string unit)
{
    Limit limit;
    limit.quantity = std::move(quantity);
    limit.unit = std::move(unit);
    limit.lower = readDecimal(keys, "lower");
    limit.upper = readDecimal(keys, "upper");
    limit.binding = bindingOf(keys.word("binding", bindingWords()));
    limit.confirmed = keys.truth("confirmed");
    limit.source = readSource(keys);
    if (!keys.has("lower") && !keys.has("upper")) keys.refuse("", "catalogue.limit-empty", {});
    if (limit.lower && limit.upper && base::compare(*limit.lower, *limit.upper) > 0)
        keys.refuse("upper", "catalogue.limit-crossed",
                    {{"found", base::toText(*limit.upper)}, {"wanted", base::toText(*limit.lower)}});
    if (limit.confirmed && limit.source.basis != "read")
        keys.refuse("confirmed", "catalogue.confirmed-unread", {{"found", limit.source.basis}});
    return limit;
}

std::string readUnit(const Keys& keys)
{
    std::string code = keys.text("unit");
    if (!code.empty() && base::findUnit(code) == nullptr) {
        std::vector<std::string> known;
        for (const base::Unit& each : base::units()) known.emplace_back(each.code);
        keys.refuse("unit", "base.unit-unknown", {{"found", code}, {"nearest", base::nearestWord(code, known)}});
    }
    return code;
}

} // namespace proofwalk::catalogue
