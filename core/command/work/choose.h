// SPDX-License-Identifier: GPL-3.0-or-later
// Which computation of a topic the words ask for.
#pragma once

#include "core/command/work/topic.h"

#include <span>
#include <string>

namespace proofwalk::command::work {

struct Chosen {
    const Computation* computation = nullptr; ///< of the topic, which must outlive this
    Given given;
};

/// With `what=NAME` that computation. Else the first that knows every name given and lacks none that it needs; if all
/// lack one, the first that knows every name says which.
/// Errors: work.unknown-what {nearest, wanted}; work.not-together {wanted}: every name is known to the topic, but no
/// computation takes them all; those of Given::read.
Result<Chosen> choose(const Topic& topic, std::span<const std::string> words);

} // namespace proofwalk::command::work
