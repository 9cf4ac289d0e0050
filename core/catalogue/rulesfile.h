// SPDX-License-Identifier: GPL-3.0-or-later
// rules/NAME.toml: the limits of one body of rules in one place, each with its source.
#pragma once

#include "core/catalogue/catalogue.h"
#include "core/catalogue/condition.h"

#include <string>
#include <vector>

namespace proofwalk::catalogue {

/// One figure of a rule set and what it applies to.
struct Figure {
    Limit limit;
    Condition when;
};

struct RulesFile {
    RuleSet rules; ///< its limits are those of the figures, in order
    std::vector<Figure> figures;
};

/// Reads one rule set. Errors: those of Keys and figure.h.
RulesFile readRulesFile(const Node& document, const std::string& name, Reading& reading);

} // namespace proofwalk::catalogue
