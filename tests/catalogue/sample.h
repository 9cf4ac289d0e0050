// SPDX-License-Identifier: GPL-3.0-or-later
// A small sheet of our own, to be spoiled by the tests line by line.
#pragma once

#include "core/catalogue/catalogue.h"

#include <QtTest>
#include <algorithm>
#include <string>
#include <string_view>

namespace sample {

using namespace proofwalk;

/// Line 1 is "format = 1".
inline const std::string kind = R"(format = 1
title = "Letter-box switch"
group = "openings"
purposes = ["intrusion"]
signals = ["alarm"]
core-seconds = 12
summary = "A switch behind the flap."

[[before]]
step = "flap-lifted"
kind = "see"
proves = "input"
states = ["unset", "walk-test"]
seconds = 7
act = "Push the flap in."
expect = "The zone shows open."
source = { basis = "common practice" }
)";

/// A step with whatever stands in `keys` besides act, seconds, states and source.
inline std::string step(const std::string& list, const std::string& name, const std::string& keys)
{
    return "\n[[" + list + "]]\nstep = \"" + name + "\"\nstates = [\"unset\"]\nseconds = 1\nact = \"Do " + name
         + ".\"\nsource = { basis = \"common practice\" }\n" + keys;
}

/// The text with one piece of it replaced; the piece must be there.
inline std::string with(std::string text, std::string_view piece, std::string_view instead)
{
    const auto at = text.find(piece);
    if (at == std::string::npos) qFatal("the sample has no such piece");
    return text.replace(at, piece.size(), instead);
}

inline std::string argument(const Error& error, std::string_view name)
{
    const auto found = std::ranges::find(error.arguments, name, &Argument::name);
    if (found == error.arguments.end()) return {};
    if (const auto* text = std::get_if<std::string>(&found->value)) return *text;
    return std::to_string(std::get<std::int64_t>(found->value));
}

/// The project's own catalogue.
inline catalogue::Catalogue whole()
{
    auto files = catalogue::readFolder(PROOFWALK_SOURCE "/core/catalogue");
    if (!files) qFatal("%s: %s", files.error().where.c_str(), files.error().code.c_str());
    auto read = catalogue::Catalogue::read(std::move(*files));
    if (!read) qFatal("%s: %s", read.error().where.c_str(), read.error().code.c_str());
    return *read;
}

} // namespace sample
