// SPDX-License-Identifier: GPL-3.0-or-later
// What stands between the installer and the signature: a ladder of rungs, each with its place and reason.
#pragma once

#include "core/walk/deviceview.h"
#include "core/walk/findings.h"

#include <string>
#include <vector>

namespace proofwalk::walk {

/// One thing that is missing, or that the customer must know.
struct Rung {
    std::string code;    ///< words in core/words: "ready.untested"
    std::string subject; ///< what it is about, as people name it: a tag, an account, a name
    std::vector<Argument> arguments;
    bool blocking = true; ///< no final report while it stands
};

/// What the report may be called.
enum class Standing {
    notReady,                 ///< a blocking rung stands
    notCompleteInformed,      ///< "not complete: customer informed"
    completeWithExceptions,   ///< complete with accepted exceptions
    complete,
};
std::string_view wordOf(Standing standing);

struct Readiness {
    std::vector<Rung> rungs; ///< blocking ones first
    Standing standing = Standing::notReady;

    bool blocked() const { return standing == Standing::notReady; }
};

/// As of a time that the report stores; the fold itself reads no clock.
Readiness readinessOf(const State& state, const base::WallClock& asOf);

/// How the site counts: devices by verdict, in the order of the enumerators.
std::array<int, 8> countVerdicts(const State& state);

/// "entry-delay, mill" or "zone 07" or a tag: how people name the subject of a step.
std::string nameOfSubject(const Scope& scope, const StepKey& key);

} // namespace proofwalk::walk
