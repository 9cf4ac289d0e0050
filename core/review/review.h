// SPDX-License-Identifier: GPL-3.0-or-later
// What is wrong with a plan, told while it is cheap: before anybody climbs a ladder.
#pragma once

#include "core/catalogue/catalogue.h"
#include "core/plan/plan.h"
#include "core/review/knowledge.h"
#include "core/review/remark.h"

#include <span>
#include <vector>

namespace proofwalk::review {

struct Context;
class Remarks;

/// One check: it looks at columns only, never at words in free text, and is silent where its columns are not there.
struct Check {
    std::string_view id; ///< never changes its meaning
    Severity severity;
    std::string_view basis;  ///< "the plan itself", "common practice", "read", "from memory", "computed"
    std::string_view source; ///< standard and edition; empty if there is none
    void (*run)(const Context&, Remarks&);
};

/// All checks, in the order in which they run.
std::span<const Check> checks();

/// What the checks have to say, in their order and within each in the order of the plan.
std::vector<Remark> reviewPlan(const plan::Plan& plan, const catalogue::Catalogue& catalogue,
                               const Knowledge& knowledge);

} // namespace proofwalk::review
