// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/catalogue/rulesfile.h"

#include "core/catalogue/figure.h"
#include "core/catalogue/parts.h"

namespace proofwalk::catalogue {

RulesFile readRulesFile(const Node& document, const std::string& name, Reading& reading)
{
    const Keys keys(document, reading, {"format", "title", "jurisdiction", "figures"});
    readFormat(keys);
    RulesFile file;
    file.rules.name = name;
    file.rules.title = keys.text("title");
    file.rules.jurisdiction = keys.text("jurisdiction");
    for (const Node* each : keys.tables("figures")) {
        const Keys figure(*each, reading,
                          {"quantity", "unit", "lower", "upper", "binding", "confirmed", "when", "source"});
        Limit limit = readLimit(figure, figure.name("quantity"), readUnit(figure));
        limit.rules = name;
        file.figures.push_back({limit, readCondition(figure)});
        file.rules.limits.push_back(std::move(limit));
    }
    if (file.figures.empty()) keys.refuse("figures", "catalogue.key-missing", {{"wanted", "figures"}});
    return file;
}

} // namespace proofwalk::catalogue
